import fc from 'fast-check';
import { afterEach, expect, test } from 'vitest';
import { changesBetween, type Changes } from '../../src/notebook/changes';
import { allCells, type Change, type Notebook, type WhatIf } from '../../src/notebook/document';
import { inputsOf, outputsOf } from '../../src/notebook/kinds';
import { withWhatIf } from '../../src/notebook/what-if';
import type { BackgroundQueue, BackgroundState } from '../../src/worker/background-queue';
import { SheetClient } from '../../src/worker/client';
import { Results } from '../../src/engine/results';
import { WorkedSheet } from '../../src/engine/sheet';
import { followWhatIfs } from '../../src/worker/background-what-ifs';
import { allChanges } from '../engine/all-changes';
import { formula, measure, notebookOf } from '../engine/notebook-of';
import { cells, formulas, numbers } from '../engine/random-cells';
import { runawayThreads } from './runaway';
import { until } from '../until';

const sizes = [
  { id: 's', label: 'S' },
  { id: 'm', label: 'M', chart: { name: 'woman' as const, size: 'M' } },
];

async function fresh(notebook: Notebook): Promise<Record<string, unknown>> {
  const results = new Results();
  results.apply(await new WorkedSheet().update(changesBetween(null, notebook)));
  return allChanges(results, notebook);
}

const wishes = fc.array(
  fc.record({
    at: fc.nat(),
    size: fc.constantFrom('s', null),
    put: fc.oneof(
      fc.record({ value: numbers.filter((number) => number !== null) }),
      fc.record({ formula: formulas }),
    ),
  }),
  { minLength: 1, maxLength: 3 },
);

test('through any edits a what-if has, to the last digit, the results of the notebook it would make', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.uniqueArray(cells, { selector: ({ id }) => id, minLength: 2, maxLength: 8 }),
      wishes,
      fc.array(cells, { maxLength: 5 }),
      async (begin, wish, edits) => {
        let notebook = notebookOf(begin, sizes);
        const refs = allCells(notebook).flatMap((cell) =>
          [...inputsOf(cell), ...outputsOf(cell)].map(({ key }) => ({ cell: cell.id, key })),
        );
        fc.pre(refs.length > 0);
        const changes = wish.map(({ at, size, put }): Change => ({
          ...refs[at % refs.length]!,
          size,
          ...put,
        }));
        const whatIf: WhatIf = { id: 'w', name: 'W', on: true, changes };
        const sheet = new WorkedSheet();
        const results = new Results();
        const lane: BackgroundQueue = { jobs: [], working: true, wake: () => {} };
        followWhatIfs(lane, {
          answer: (_id, answer) => void results.apply(answer),
          gone: () => {},
          failed: () => {},
        });
        const served = { updateWhatIf: (_: string, found: Changes) => sheet.update(found) };
        for (const next of [undefined, ...edits]) {
          if (next) {
            const rest = allCells(notebook).filter(({ id }) => id !== next.id);
            notebook = notebookOf([...rest, next], sizes);
          }
          notebook = { ...notebook, whatIfs: [whatIf] };
          const state = { sheet: served, notebook, isQuarantined: () => false } as unknown as BackgroundState;
          await lane.jobs[0]!(state)?.done;
          const made = withWhatIf(notebook, whatIf);
          expect(allChanges(results, made)).toEqual(await fresh(made));
        }
      },
    ),
    { numRuns: Number(process.env['RUNS'] ?? 25) },
  );
}, 600_000);

const runaway = runawayThreads();
const clients: SheetClient[] = [];
afterEach(() => clients.splice(0).forEach((client) => client.stop()));

function inThread() {
  const results = new Results();
  const whatIfs = new Map<string, Results>();
  const received: string[] = [];
  const held: (readonly string[])[] = [];
  const client = new SheetClient(
    runaway,
    {
      answer(answer) {
        received.push('notebook');
        results.apply(answer);
      },
      quarantined: (ids) => void held.push(ids),
    },
    400,
  );
  clients.push(client);
  followWhatIfs(client, {
    answer(id, answer) {
      received.push(id);
      const of = whatIfs.get(id) ?? new Results();
      whatIfs.set(id, of);
      of.apply(answer);
    },
    gone: (id) => {
      received.push(`${id} gone`);
      whatIfs.delete(id);
    },
    failed: (id, sentence) => void received.push(`${id}: ${sentence}`),
  });
  const b = (of: Results | undefined): number | undefined => of?.number('m', 'b', 'value');
  return { client, results, whatIfs, received, held, b };
}

const given = (value: number): Change => ({ cell: 'a', key: 'value', size: null, value });
const whatIf = (id: string, value: number, on = true): WhatIf => ({
  id,
  name: id,
  on,
  changes: [given(value)],
});
const base = notebookOf([measure('a', 'number', 3), formula('b', 'a * 2 + c'), measure('c', 'number', 0)]);

test('what-ifs that are on are worked after the notebook itself, and edits of it flow into them', async () => {
  const { client, results, whatIfs, received, b } = inThread();
  const first: Notebook = { ...base, whatIfs: [whatIf('x', 10), whatIf('y', 20), whatIf('z', 30, false)] };
  client.show(first);
  await until(() => expect(b(whatIfs.get('y'))).toBe(40));
  expect(received).toEqual(['notebook', 'x', 'y']);
  expect([b(results), b(whatIfs.get('x'))]).toEqual([6, 20]);
  const [section] = first.sections;
  const cells = section!.cells.with(2, measure('c', 'number', 1));
  const second = { ...first, sections: [{ ...section!, cells }] };
  client.show(second);
  await until(() => expect(b(whatIfs.get('y'))).toBe(41));
  expect([b(results), b(whatIfs.get('x'))]).toEqual([7, 21]);
  expect(received.slice(3)).toEqual(['notebook', 'x', 'y']);
  client.show({ ...second, whatIfs: [whatIf('x', 10, false)] });
  await until(() => expect(whatIfs.size).toBe(0));
});

test('a what-if that runs for ever is set aside, and nothing of the notebook is', async () => {
  const { client, results, whatIfs, received, held, b } = inThread();
  const [section] = base.sections;
  const cells = [...section!.cells, formula('d', 'ABS(a)')];
  // The thread of this test never comes back from ABS(13).
  const notebook: Notebook = {
    ...base,
    sections: [{ ...section!, cells }],
    whatIfs: [whatIf('bad', 13), whatIf('good', 5)],
  };
  client.show(notebook);
  await until(() => expect(b(whatIfs.get('good'))).toBe(10));
  expect(b(results)).toBe(6);
  expect(received.find((text) => text.startsWith('bad'))).toContain(
    'takes too long to calculate. Change it to try again.',
  );
  expect(held).toEqual([]);
  client.show({ ...notebook, whatIfs: [whatIf('bad', 14), notebook.whatIfs![1]!] });
  await until(() => expect(b(whatIfs.get('bad'))).toBe(28));
});

test('a what-if that breaks down is built again, and told of only where it does so again', async () => {
  const texts: string[] = [];
  const results = new Results();
  const lane: BackgroundQueue = { jobs: [], working: true, wake: () => {} };
  followWhatIfs(lane, {
    answer: (_id, answer) => void results.apply(answer),
    gone: () => {},
    failed: (_id, sentence) => void texts.push(sentence),
  });
  let sheet = new WorkedSheet();
  let breaks = 0;
  const served = {
    async updateWhatIf(_: string, changes: Changes) {
      // In the midst of it: some of what changed is in the sheet.
      const answer = await sheet.update(changes);
      if (breaks > 0) {
        breaks--;
        throw new Error('Out of memory.');
      }
      return answer;
    },
    dropWhatIf: () => void (sheet = new WorkedSheet()),
  };
  const work = async (notebook: Notebook): Promise<void> => {
    const state = { sheet: served, notebook, isQuarantined: () => false } as unknown as BackgroundState;
    for (let next = lane.jobs[0]!(state); next; next = lane.jobs[0]!(state)) await next.done;
  };
  const b = (): number | undefined => results.number('m', 'b', 'value');
  await work({ ...base, whatIfs: [whatIf('x', 10)] });
  expect(b()).toBe(20);
  breaks = 1;
  await work({ ...base, whatIfs: [whatIf('x', 20)] });
  expect([b(), texts]).toEqual([40, []]);
  breaks = 2;
  await work({ ...base, whatIfs: [whatIf('x', 30)] });
  expect(texts).toEqual([
    'Something broke while calculating "x". Your notebook is safe. Change it to try again.',
  ]);
  await work({ ...base, whatIfs: [whatIf('x', 40)] });
  expect([b(), texts.length]).toEqual([80, 1]);
});
