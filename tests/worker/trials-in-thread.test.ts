import { afterEach, expect, test } from 'vitest';
import type { Change, Notebook } from '../../src/notebook/document';
import { SheetClient } from '../../src/worker/client';
import { Results } from '../../src/engine/results';
import { trialNumber } from '../../src/engine/trial-results';
import { backgroundTrials } from '../../src/worker/background-trials';
import { formula, measure, notebookOf } from '../engine/notebook-of';
import { runawayThreads } from './runaway';
import { until } from '../until';

const runaway = runawayThreads();

const clients: SheetClient[] = [];
afterEach(() => clients.splice(0).forEach((client) => client.stop()));

const wanted = [{ cell: 'b', key: 'value' }];
const a = (value: number): Change => ({ cell: 'a', key: 'value', size: null, value });
const cells = [measure('a', 'number', 3), formula('b', 'a * 2')];
const first = notebookOf(cells);
const edited = (value: number): Notebook =>
  notebookOf([measure('a', 'number', value), cells[1]!], first.sizes);

async function shown(notebook: Notebook = first) {
  const results = new Results();
  const held: (readonly string[])[] = [];
  const received: unknown[] = [];
  const start = (): ReturnType<typeof runaway> => {
    const thread = runaway();
    thread.addEventListener('message', (event) => received.push((event as MessageEvent).data));
    return thread;
  };
  const sheet = new SheetClient(start, {
    answer: (answer) => results.apply(answer),
    quarantined: (ids) => void held.push(ids),
  });
  clients.push(sheet);
  sheet.show(notebook);
  const b = (): number | undefined => results.number('m', 'b', 'value');
  await until(() => expect(b()).toBe(6));
  return { sheet, held, received, b };
}

test('trials are worked in the thread and leave the results on the page as they are', async () => {
  const { sheet, b } = await shown();
  const trials = [1, 10, 100].map((value) => [a(value)]);
  const results = await backgroundTrials(sheet)({ trials, wanted, sizes: ['m'] });
  expect(results.done).toBe(3);
  expect([0, 1, 2].map((trial) => trialNumber(results, trial, 0, 0))).toEqual([2, 20, 200]);
  expect(b()).toBe(6);
});

test('trials asked for before the notebook has been worked are of the notebook all the same', async () => {
  const { sheet } = await shown();
  sheet.show(edited(50));
  const results = await backgroundTrials(sheet)({ trials: [[]], wanted, sizes: ['m'] });
  expect(trialNumber(results, 0, 0, 0)).toBe(100);
});

const many = Array.from({ length: 200_000 }, (_, at) => [a(at)]);

test('long trials tell how far they are, and stop when told to with what they have', async () => {
  const { sheet } = await shown();
  const stop = new AbortController();
  const seen: number[] = [];
  const results = await backgroundTrials(sheet)(
    { trials: many, wanted, sizes: ['m'] },
    {
      signal: stop.signal,
      progress: (done, of) => {
        seen.push(done);
        expect(of).toBe(many.length);
        if (done > 100) stop.abort();
      },
    },
  );
  expect(results.ended).toBe('stopped');
  expect(seen.length).toBeGreaterThan(0);
  expect(results.done).toBeLessThan(many.length);
  expect(trialNumber(results, 100, 0, 0)).toBe(200);
  expect(trialNumber(results, results.done, 0, 0)).toBeUndefined();
});

test('an edit in the midst of long trials is answered at once and ends them', async () => {
  const { sheet, b, held } = await shown();
  let begun = (): void => {};
  const under = new Promise<void>((resolve) => (begun = resolve));
  const work = backgroundTrials(sheet)({ trials: many, wanted, sizes: ['m'] }, { progress: () => begun() });
  await under;
  sheet.show(edited(13));
  await until(() => expect(b()).toBe(26));
  expect((await work).ended).toBe('edited');
  expect(held).toEqual([]);
});

test('trials that wait are stopped without being begun', async () => {
  const { sheet } = await shown();
  const [one, other] = [new AbortController(), new AbortController()];
  const request = { trials: many, wanted, sizes: ['m'] };
  const [before, after] = [
    backgroundTrials(sheet)(request, { signal: one.signal }),
    backgroundTrials(sheet)(request, { signal: other.signal }),
  ];
  other.abort();
  expect(await after).toMatchObject({ done: 0, ended: 'stopped' });
  one.abort();
  expect((await before).ended).toBe('stopped');
  expect((await backgroundTrials(sheet)(request, { signal: one.signal })).ended).toBe('stopped');
});

test('a trial that runs for ever is given up, no cell of the notebook is set aside, and the sheet goes on', async () => {
  const notebook = notebookOf([...cells, formula('c', 'ABS(a)')]);
  const { sheet, held, b } = await shown(notebook);
  // The thread of this test never comes back from ABS(13).
  const results = await backgroundTrials(sheet)({
    trials: [[a(1)], [a(13)]],
    wanted: [{ cell: 'c', key: 'value' }],
    sizes: ['m'],
  });
  expect(results).toMatchObject({ done: 0, ended: 'took too long' });
  const again = await backgroundTrials(sheet)({ trials: [[a(5)]], wanted, sizes: ['m'] });
  expect(trialNumber(again, 0, 0, 0)).toBe(10);
  expect(b()).toBe(6);
  expect(held).toEqual([]);
});

test('an edit that arrives while a trial runs for ever is not blamed for it', async () => {
  const notebook = notebookOf([...cells, formula('c', 'ABS(a)')]);
  const { sheet, held, received, b } = await shown(notebook);
  const work = backgroundTrials(sheet)({
    trials: [[a(13)]],
    wanted: [{ cell: 'c', key: 'value' }],
    sizes: ['m'],
  });
  await until(() => expect(received).toContain('for ever'));
  sheet.show(
    notebookOf([measure('a', 'number', 7), cells[1]!, notebook.sections[0]!.cells[2]!], first.sizes),
  );
  expect((await work).ended).toBe('took too long');
  await until(() => expect(b()).toBe(14));
  expect(held).toEqual([]);
});
