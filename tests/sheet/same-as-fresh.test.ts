import fc from 'fast-check';
import { HyperFormula } from 'hyperformula';
import { expect, test, vi } from 'vitest';
import { changesBetween } from '../../src/notebook/changes';
import type { Cell, Entry, Notebook, Size } from '../../src/notebook/document';
import { Results } from '../../src/sheet/results';
import { WorkedSheet } from '../../src/sheet/sheet';
import { everythingTold } from './everything-told';
import { notebookOf } from './notebook-of';

const names = ['bust', 'back', 'back_sts', 'body', 'sleeve', 'x', 'y', 'z'];
const sizeIds = ['s', 'm', 'l'];

const formulas = fc.oneof(
  fc.constantFrom(
    'bust + 10',
    'bust + CM(10)',
    'x',
    'y + x',
    'z * 2',
    'x / (y - y)',
    'bust * body_sts',
    'FITREPEAT(bust * body_sts; 8; 3)',
    'ROUNDCOUNT(bust * body_rows; "even")',
    'bst * 2',
    'bust +',
    '',
    '9 ^ 999',
    'x + 9 ^ 999',
    'IF(x > y; x; z)',
    'IF(bust > CM(90); STS(4); STS(2))',
    'PIECELENGTH(back)',
    'PIECEROWS(sleeve)',
    'back_length + CM(1)',
    'sleeve_end',
    'body',
    'body_sts',
    '"text"',
    'TRUE()',
    'x & y',
    'SQRT(x)',
    'INT(x * 1.4)',
    'MOD(x; y)',
    'bust > x',
    '7',
    '0',
    '12.5',
    'EVENROWS(ROWS(10); body)',
    'PIECE("flat"; STS(20); "held"; EVENROWS(ROWS(10); body))',
  ),
  fc
    .tuple(fc.constantFrom(...names), fc.constantFrom(...'+-*/'), fc.constantFrom(...names))
    .map((parts) => parts.join(' ')),
);

const numbers = fc.oneof(fc.constantFrom(0, -1, 1, 2, 2.5, 8, 14, 60, 90.5, 1e9), fc.constant(null));
const entries: fc.Arbitrary<Entry> = fc.oneof(
  fc.record({ value: numbers }),
  fc.record({ each: fc.dictionary(fc.constantFrom(...sizeIds), numbers) }),
  fc.record({ formula: formulas }),
  fc.record({
    chart: fc.constantFrom('bust', 'upperArm'),
    point: fc.constantFrom('lower', 'upper'),
  }) as fc.Arbitrary<Entry>,
  fc.record({
    chart: fc.constant('bust'),
    point: fc.constant('middle'),
    own: fc.dictionary(fc.constantFrom(...sizeIds), fc.constantFrom(88, 91.2)),
  }) as fc.Arbitrary<Entry>,
);

const base = {
  id: fc.constantFrom(...'abcdefgh'),
  name: fc.constantFrom(...names),
  label: fc.constantFrom('Bust', 'Back', 'X'),
};
const reading = fc.record({ count: entries, over: entries });
const readings = fc.array(reading, { minLength: 1, maxLength: 2 });
const stretchBase = {
  name: fc.constantFrom('rib', 'upper'),
  label: fc.constant('Rib'),
  fabric: fc.constantFrom('body', 'x'),
};
const cells = fc.oneof(
  fc.record({
    kind: fc.constant('measure'),
    ...base,
    unit: fc.constantFrom('length', 'stitches', 'number'),
    entry: entries,
  }),
  fc.record({ kind: fc.constant('formula'), ...base, formula: formulas }),
  fc.record({ kind: fc.constant('formula'), ...base, formula: formulas }),
  fc.record({
    kind: fc.constant('ease'),
    ...base,
    by: fc.constantFrom('length', 'percent'),
    body: entries,
    ease: entries,
  }),
  fc.record({
    kind: fc.constant('swatch'),
    ...base,
    worked: fc.constant(''),
    stitches: readings,
    rows: readings,
  }),
  fc.record({
    kind: fc.constant('fit'),
    ...base,
    counts: fc.constantFrom('stitches', 'rows'),
    target: entries,
    multiple: entries,
    plus: entries,
    rule: fc.constantFrom('nearest', 'up', 'down'),
  }),
  fc.record(
    {
      kind: fc.constant('piece'),
      ...base,
      worked: fc.constantFrom('flat', 'round'),
      start: entries,
      ends: fc.constant('held'),
      stretches: fc.array(fc.record({ kind: fc.constant('even'), ...stretchBase, rows: entries }), {
        maxLength: 2,
      }),
      taken: fc.dictionary(fc.constantFrom('length', 'rows'), formulas),
    },
    { requiredKeys: ['kind', 'id', 'name', 'label', 'worked', 'start', 'ends', 'stretches'] },
  ),
  fc.record({ kind: fc.constant('note'), ...base, text: fc.constant('') }),
) as fc.Arbitrary<Cell>;

const sizes: fc.Arbitrary<Size[]> = fc.uniqueArray(
  fc.record(
    {
      id: fc.constantFrom(...sizeIds),
      label: fc.constant('S'),
      chart: fc.record({ name: fc.constant('woman' as const), size: fc.constantFrom('S', 'M', 'nowhere') }),
    },
    { requiredKeys: ['id', 'label'] },
  ),
  { selector: ({ id }) => id, minLength: 0, maxLength: 3 },
);

type Edit = (notebook: Notebook) => Notebook;
const all = (notebook: Notebook): readonly Cell[] => notebook.sections[0]!.cells;
const withCells = (notebook: Notebook, changed: readonly Cell[]): Notebook => ({
  ...notebook,
  sections: [{ ...notebook.sections[0]!, cells: changed }],
});

const edits: fc.Arbitrary<Edit> = fc.oneof(
  // A cell is put in, or in the place of the one that has its id.
  {
    weight: 6,
    arbitrary: cells.map((cell): Edit => (notebook) => {
      const there = all(notebook).some(({ id }) => id === cell.id);
      return withCells(
        notebook,
        there ? all(notebook).map((old) => (old.id === cell.id ? cell : old)) : [...all(notebook), cell],
      );
    }),
  },
  {
    weight: 1,
    arbitrary: base.id.map(
      (id): Edit =>
        (notebook) =>
          withCells(
            notebook,
            all(notebook).filter((cell) => cell.id !== id),
          ),
    ),
  },
  { weight: 1, arbitrary: sizes.map((next): Edit => (notebook) => ({ ...notebook, sizes: next })) },
  // A formula or a value in the place of another, under the same name.
  {
    weight: 5,
    arbitrary: fc.tuple(base.id, formulas, entries).map(
      ([id, formula, entry]): Edit =>
        (notebook) =>
          withCells(
            notebook,
            all(notebook).map((cell) => {
              if (cell.id !== id) return cell;
              if (cell.kind === 'formula') return { ...cell, formula };
              return cell.kind === 'measure' ? { ...cell, entry } : cell;
            }),
          ),
    ),
  },
  // Another name, or two names exchanged, without the formulas following.
  {
    weight: 2,
    arbitrary: fc.tuple(base.id, base.name).map(
      ([id, name]): Edit =>
        (notebook) =>
          withCells(
            notebook,
            all(notebook).map((cell) => (cell.id === id ? { ...cell, name } : cell)),
          ),
    ),
  },
  {
    weight: 1,
    arbitrary: fc.tuple(base.id, base.id).map(([one, other]): Edit => (notebook) => {
      const [a, b] = [one, other].map((id) => all(notebook).find((cell) => cell.id === id)?.name);
      if (!a || !b) return notebook;
      return withCells(
        notebook,
        all(notebook).map((cell) =>
          cell.id === one ? { ...cell, name: b } : cell.id === other ? { ...cell, name: a } : cell,
        ),
      );
    }),
  },
  {
    weight: 1,
    arbitrary: fc.tuple(base.id, fc.constantFrom('Bust', 'Renamed')).map(
      ([id, label]): Edit =>
        (notebook) =>
          withCells(
            notebook,
            all(notebook).map((cell) => (cell.id === id ? { ...cell, label } : cell)),
          ),
    ),
  },
  {
    weight: 1,
    arbitrary: fc.constant<Edit>((notebook) => withCells(notebook, [...all(notebook)].reverse())),
  },
);

async function fresh(notebook: Notebook): Promise<Record<string, unknown>> {
  const results = new Results();
  results.apply(await new WorkedSheet().update(changesBetween(null, notebook)));
  return everythingTold(results, notebook);
}

/** Makes the edits on a sheet and on nothing, and compares after each. */
async function keepsUp(
  begin: readonly Cell[],
  then: readonly Edit[],
  trip: () => void = () => {},
): Promise<void> {
  let before: Notebook | null = null;
  let notebook = notebookOf(
    [...new Map(begin.map((cell) => [cell.id, cell])).values()],
    [
      { id: 's', label: 'S' },
      { id: 'm', label: 'M', chart: { name: 'woman', size: 'M' } },
    ],
  );
  const sheet = new WorkedSheet();
  const results = new Results();
  for (const edit of [(same: Notebook) => same, ...then]) {
    notebook = edit(notebook);
    trip();
    const answer = await sheet.update(changesBetween(before, notebook));
    vi.restoreAllMocks();
    results.apply(answer);
    before = notebook;
    expect(everythingTold(results, notebook)).toEqual(await fresh(notebook));
  }
}

const notebooks = fc.array(cells, { maxLength: 8 });
const sequences = fc.array(edits, { minLength: 1, maxLength: 12 });
const runs = Number(process.env['RUNS'] ?? 40);

test('after any sequence of edits every number, text, unit and trouble is that of a fresh sheet', async () => {
  await fc.assert(
    fc.asyncProperty(notebooks, sequences, (begin, then) => keepsUp(begin, then)),
    { numRuns: runs },
  );
}, 600_000);

test('so it is when HyperFormula throws in the midst of it', async () => {
  const throwOnce = (): void => {
    vi.spyOn(HyperFormula.prototype, 'setCellContents').mockImplementationOnce(() => {
      throw new Error('lost');
    });
  };
  await fc.assert(
    fc.asyncProperty(notebooks, sequences, (begin, then) => keepsUp(begin, then, throwOnce)),
    { numRuns: Math.ceil(runs / 4) },
  );
}, 600_000);
