import fc from 'fast-check';
import { expect, test } from 'vitest';
import { plainMessage } from '../../src/craft';
import { unpacked } from '../../src/engine';
import { changesBetween } from '../../src/notebook/changes';
import { allCells, type Change, type Notebook } from '../../src/notebook/document';
import { inputsOf, outputsOf } from '../../src/notebook/kinds';
import { withChanges } from '../../src/notebook/what-if';
import type { CellRef } from '../../src/engine/answers';
import { Results } from '../../src/engine/results';
import { WorkedSheet } from '../../src/engine/sheet';
import { trialNumber, trialResult } from '../../src/engine/trial-results';
import { Trials } from '../../src/engine/trials';
import { trialsOf } from '../../src/engine/trials-in-turn';
import { allChanges } from './all-changes';
import { fit, formula, measure, notebookOf, swatch } from './notebook-of';
import { cells, formulas, numbers } from './random-cells';
import { vNeck } from '../notebooks/v-neck';

const sizes = [
  { id: 's', label: 'S' },
  { id: 'm', label: 'M', chart: { name: 'woman' as const, size: 'M' } },
];
const sizeIds = sizes.map(({ id }) => id);

async function sheetOf(notebook: Notebook): Promise<{ sheet: WorkedSheet; results: Results }> {
  const sheet = new WorkedSheet();
  const results = new Results();
  results.apply(await sheet.update(changesBetween(null, notebook)));
  return { sheet, results };
}

function refsOf(notebook: Notebook): CellRef[] {
  return allCells(notebook).flatMap((cell) =>
    [...inputsOf(cell), ...outputsOf(cell)].map(({ key }) => ({ cell: cell.id, key })),
  );
}

function read(results: Results, size: string, { cell, key }: CellRef): unknown {
  return (
    results.number(size, cell, key) ??
    results.text(size, cell, key) ??
    results.truth(size, cell, key) ??
    results.error(size, cell, key)
  );
}

const notebooks = fc
  .uniqueArray(cells, { selector: ({ id }) => id, minLength: 2, maxLength: 8 })
  .map((some) => notebookOf(some, sizes));
/** A change of the input or output that has that place among those of the notebook, counted round. */
const changes = fc.record({
  at: fc.nat(),
  size: fc.constantFrom('s', 'm', null, null, null),
  put: fc.oneof(
    fc.record({ value: numbers.filter((number) => number !== null) }),
    fc.record({ formula: formulas }),
  ),
});

test('a trial of any changes gives, to the last digit, what a fresh sheet of the changed notebook gives', async () => {
  await fc.assert(
    fc.asyncProperty(
      notebooks,
      fc.array(fc.array(changes, { maxLength: 3 }), { minLength: 1, maxLength: 4 }),
      fc.array(fc.nat(), { minLength: 1, maxLength: 3 }),
      async (notebook, wishes, wantedAt) => {
        const refs = refsOf(notebook);
        fc.pre(refs.length > 0);
        const { sheet, results: live } = await sheetOf(notebook);
        const before = allChanges(live, notebook);
        const wanted = wantedAt.map((at) => refs[at % refs.length]!);
        const trials = wishes.map((wish) =>
          wish
            .map(({ at, size, put }): Change => ({ ...refs[at % refs.length]!, size, ...put }))
            // A value instead of a worked result is held, which no notebook can say.
            .filter((change) => change.formula !== undefined || takesValue(notebook, change)),
        );
        const work = new Trials(sheet);
        // Twice: the second time on the sheets that the first has left.
        for (let time = 0; time < 2; time++) {
          const results = work.run({ trials, wanted, sizes: sizeIds });
          expect(results.done).toBe(trials.length);
          for (const [trial, list] of trials.entries()) {
            const { notebook: changed, refused } = withChanges(notebook, list);
            const fresh = (await sheetOf(changed)).results;
            for (const [size, id] of sizeIds.entries()) {
              for (const [at, ref] of wanted.entries()) {
                expect(trialInWords(results, trial, size, at)).toEqual(
                  refused.length > 0 ? { message: refused[0]!.sentence } : read(fresh, id, ref),
                );
              }
            }
          }
        }
        live.apply(await sheet.update({ put: [], drop: [] }));
        expect(allChanges(live, notebook)).toEqual(before);
      },
    ),
    { numRuns: Number(process.env['RUNS'] ?? 30) },
  );
}, 600_000);

/** What a trial gave, an error in its words. */
function trialInWords(...given: Parameters<typeof trialResult>): unknown {
  const value = trialResult(...given);
  return typeof value === 'object' ? { ...value, message: plainMessage(unpacked(value.message)) } : value;
}

/** Whether a value can be given there, as an edit. */
function takesValue(notebook: Notebook, { cell: id, key, size }: Change): boolean {
  const cell = allCells(notebook).find((one) => one.id === id)!;
  const input = inputsOf(cell).find((one) => one.key === key);
  return input !== undefined && (size === null || !('formula' in input.entry));
}

function isInput(notebook: Notebook, { cell: id, key }: CellRef): boolean {
  const cell = allCells(notebook).find((one) => one.id === id)!;
  return inputsOf(cell).some((input) => input.key === key);
}

test('after an edit of the notebook trials are of the edited one', async () => {
  await fc.assert(
    fc.asyncProperty(notebooks, cells, changes, fc.nat(), async (first, cell, change, wantedAt) => {
      const refs = refsOf(first);
      fc.pre(refs.length > 0);
      const { sheet } = await sheetOf(first);
      const work = new Trials(sheet);
      const wanted = [refs[wantedAt % refs.length]!];
      work.run({ trials: [[]], wanted, sizes: sizeIds });
      const rest = allCells(first).filter(({ id }) => id !== cell.id);
      const second = notebookOf([...rest, cell], [{ ...sizes[0]!, label: 'other' }, sizes[1]!]);
      await sheet.update(changesBetween(first, second));
      const inputs = refsOf(second).filter((ref) => isInput(second, ref));
      const trial = inputs.length
        ? [{ ...inputs[change.at % inputs.length]!, size: null, ...change.put } as Change]
        : [];
      const results = work.run({ trials: [trial], wanted, sizes: sizeIds });
      const { notebook: changed, refused } = withChanges(second, trial);
      const fresh = (await sheetOf(changed)).results;
      const there = refsOf(second).some(
        ({ cell: id, key }) => id === wanted[0]!.cell && key === wanted[0]!.key,
      );
      for (const [size, id] of sizeIds.entries()) {
        const shown = trialInWords(results, 0, size, 0);
        if (refused.length > 0) expect(shown).toEqual({ message: refused[0]!.sentence });
        else if (there) expect(shown).toEqual(read(fresh, id, wanted[0]!));
        else expect(shown).toMatchObject({ message: expect.stringContaining('no longer in the notebook') });
      }
    }),
    { numRuns: 40 },
  );
}, 600_000);

const fitted = (): Notebook =>
  notebookOf(
    [
      swatch('body', 14, 16),
      measure('bust', 'length', { each: { s: 90, m: 100 } }),
      fit('back', 'bust / 2 * body_sts'),
      formula('width', 'back / body_sts'),
    ],
    sizes,
  );

test('a count that is held stays what it is while the gauge moves', async () => {
  const work = await trialsOf(fitted());
  const gauge: Change = { cell: 'body', key: 'sts.0.count', size: null, value: 13 };
  const results = await work({
    trials: [
      [gauge],
      [gauge, { cell: 'back', key: 'count', size: null, value: 67 }],
      [
        gauge,
        { cell: 'back', key: 'count', size: 's', value: 67 },
        { cell: 'back', key: 'count', size: 'm', value: 75 },
      ],
      [gauge],
      [],
    ],
    wanted: [{ cell: 'width', key: 'value' }],
    sizes: ['s', 'm'],
  });
  const widths = [0, 1, 2, 3, 4].map((trial) => [0, 1].map((size) => trialNumber(results, trial, size, 0)));
  // HyperFormula is set to 14 digits.
  const digits = (value: number): number => Number(value.toPrecision(15));
  expect(widths[0]).toEqual([59 / 1.3, 67 / 1.3].map(digits));
  expect(widths[1]).toEqual([67 / 1.3, 67 / 1.3].map(digits));
  expect(widths[2]).toEqual([67 / 1.3, 75 / 1.3].map(digits));
  expect(widths[3]).toEqual(widths[0]);
  expect(widths[4]).toEqual([67 / 1.4, 67 / 1.4].map(digits));
});

test('holding a count gives what a formula with that count in its place gives', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.integer({ min: 1, max: 300 }),
      fc.integer({ min: 5, max: 40 }),
      async (count, sts) => {
        const gauge: Change = { cell: 'body', key: 'sts.0.count', size: null, value: sts };
        const wanted = refsOf(fitted());
        const requested = { wanted, sizes: sizeIds };
        const work = new Trials((await sheetOf(fitted())).sheet);
        const held = work.run({
          ...requested,
          trials: [[gauge, { cell: 'back', key: 'count', size: null, value: count }]],
        });
        const given = work.run({
          ...requested,
          trials: [[gauge, { cell: 'back', key: 'count', size: null, formula: `STS(${count})` }]],
        });
        expect(held).toEqual(given);
      },
    ),
    { numRuns: 30 },
  );
});

test('what keeps a trial from being made is a sentence in each of its results, and the next is worked', async () => {
  const work = await trialsOf(fitted());
  const wanted = [
    { cell: 'width', key: 'value' },
    { cell: 'gone', key: 'value' },
  ];
  const results = await work({
    trials: [
      [{ cell: 'lost', key: 'value', size: null, value: 1 }],
      [{ cell: 'back', key: 'multiple', size: null, value: 2.5 }],
      [{ cell: 'body', key: 'sts.0.count', size: null, formula: '1 / (1 - 1)' }],
      [],
    ],
    wanted,
    sizes: ['m', 'nowhere'],
  });
  const shown = [0, 1, 2, 3].map((trial) => trialInWords(results, trial, 0, 0));
  expect(shown[0]).toMatchObject({ message: expect.stringContaining('no longer in the notebook') });
  expect(shown[1]).toEqual({ message: 'Multiple of must be a whole number.' });
  expect(shown[2]).toMatchObject({ message: expect.stringContaining('Needs'), from: { cell: 'body' } });
  expect(shown[3]).toBeCloseTo(67 / 1.4, 10);
  expect(trialInWords(results, 3, 0, 1)).toMatchObject({
    message: expect.stringContaining('choose another'),
  });
  expect(trialInWords(results, 3, 1, 0)).toEqual({ message: 'That size is no longer in the notebook.' });
});

test('trials tell how far they are, stop when told to, and end when the notebook is edited', async () => {
  const notebook = vNeck();
  const { sheet } = await sheetOf(notebook);
  const wanted = {
    trials: Array.from({ length: 50 }, (_, at): Change[] => [
      { cell: 'body', key: 'sts.0.count', size: null, value: 20 + at },
    ]),
    wanted: refsOf(notebook).slice(-20),
    sizes: notebook.sizes.map(({ id }) => id),
  };
  const steps = (goesOn: (done: number) => boolean) => new Trials(sheet).steps(wanted, goesOn);
  const seen: number[] = [];
  const stopped = finish(
    steps((done) => {
      seen.push(done);
      return done < 5;
    }),
  );
  expect(stopped).toMatchObject({ done: 5, ended: 'stopped' });
  expect(seen).toEqual([0, 1, 2, 3, 4, 5]);

  const work = steps(() => true);
  for (let step = 0; step < 30; step++) expect(work.next().done).toBe(false);
  await sheet.update({ put: [], drop: [], sizes: notebook.sizes.slice(1) });
  const edited = finish(work);
  expect(edited.ended).toBe('edited');
  expect(edited.done).toBeLessThan(50);
});

function finish<Made>(work: Generator<void, Made>): Made {
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
  }
}

test('a formula in an input is held at a value in the sizes it is given for', async () => {
  const notebook = notebookOf(
    [measure('bust', 'length', 94), formula('half', 'bust / 2'), formula('front', 'half - CM(4)')],
    sizes,
  );
  const work = await trialsOf(notebook);
  const { numbers } = await work({
    trials: [[{ cell: 'half', key: 'value', size: 's', value: 40 }], []],
    wanted: [{ cell: 'front', key: 'value' }],
    sizes: sizeIds,
  });
  expect([...numbers]).toEqual([36, 43, 43, 43]);
});
