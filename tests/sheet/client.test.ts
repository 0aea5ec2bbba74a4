import { expose, type Endpoint } from 'comlink';
import { afterEach, describe, expect, test, vi } from 'vitest';
import type { Changes } from '../../src/notebook/changes';
import type { Notebook } from '../../src/notebook/document';
import type { Answer, Place } from '../../src/sheet/answers';
import { SheetClient, type SheetThread } from '../../src/sheet/client';
import { Results } from '../../src/sheet/results';
import { WorkedSheet } from '../../src/sheet/sheet';
import { formula, measure, notebookOf } from './notebook-of';
import { runawayThreads } from './runaway';

const clients: SheetClient[] = [];
afterEach(() => clients.splice(0).forEach((client) => client.stop()));

interface Asked {
  readonly changes: Changes;
  readonly hold: readonly string[];
}

/** A client whose threads are channels in this one, served as told; and what came of it. */
function client(
  answers: (asked: Asked, sheet: WorkedSheet) => Promise<Answer>,
  limit = 200,
  stops: (close: () => void) => void = (close) => close(),
) {
  const results = new Results();
  const told = {
    asked: [] as Asked[],
    held: [] as { cells: readonly string[]; sentence: string }[],
    failed: [] as string[],
    threads: 0,
    answers: 0,
  };
  const start = (): SheetThread => {
    told.threads++;
    const { port1, port2 } = new MessageChannel();
    const sheet = new WorkedSheet();
    expose(
      {
        update: (changes: Changes, hold: readonly string[]) => {
          told.asked.push({ changes, hold });
          return answers({ changes, hold }, sheet);
        },
        check: (text: string, place: Place) => sheet.check(text, place),
      },
      port2 as unknown as Endpoint,
    );
    port2.postMessage('ready');
    const terminate = (): void =>
      stops(() => {
        port1.close();
        port2.close();
      });
    return Object.assign(port1 as unknown as Endpoint, { terminate });
  };
  const on = {
    answer: (answer: Answer) => {
      told.answers++;
      results.apply(answer);
    },
    held: (cells: readonly string[], sentence: string) => void told.held.push({ cells, sentence }),
    failed: (sentence: string) => void told.failed.push(sentence),
  };
  const made = new SheetClient(start, on, limit);
  clients.push(made);
  return { client: made, results, told };
}

const works = ({ changes, hold }: Asked, sheet: WorkedSheet): Promise<Answer> => sheet.update(changes, hold);
const never = new Promise<never>(() => {});
const puts = ({ changes }: Asked): string[] => changes.put.map((cell) => cell.id);
const a = (value: number): Notebook => notebookOf([measure('a', 'number', value), formula('b', 'a * 2')]);
const number = (results: Results, cell: string): number | undefined => results.number('m', cell, 'value');

test('shows a notebook and gets its results', async () => {
  const { client: sheet, results } = client(works);
  sheet.show(a(3));
  await vi.waitFor(() => expect(number(results, 'b')).toBe(6));
});

test('of the notebooks shown while one is worked only the newest is worked next, and told as one change', async () => {
  let release = (): void => {};
  const gate = new Promise<void>((resolve) => (release = resolve));
  const {
    client: sheet,
    results,
    told,
  } = client(async (asked, worked) => {
    if (puts(asked).length === 2) await gate;
    return works(asked, worked);
  });
  const first = a(1);
  sheet.show(first);
  await vi.waitFor(() => expect(told.asked).toHaveLength(1));
  const keystrokes = [12, 123, 1234].map((value) =>
    notebookOf([measure('a', 'number', value), first.sections[0]!.cells[1]!], first.sizes),
  );
  keystrokes.forEach((notebook) => sheet.show(notebook));
  release();
  await vi.waitFor(() => expect(number(results, 'b')).toBe(2468));
  expect(told.asked).toHaveLength(2);
  expect(puts(told.asked[1]!)).toEqual(['a']);
});

test('on opening the first size is told before the others', async () => {
  const { client: sheet, results, told } = client(works);
  const sizes = ['s', 'm', 'l'].map((id) => ({ id, label: id }));
  sheet.show(notebookOf([measure('a', 'number', 3), formula('b', 'a * 2')], sizes));
  await vi.waitFor(() => expect(results.sizes).toEqual(['s', 'm', 'l']));
  expect(told.asked.map(({ changes }) => changes.sizes?.length)).toEqual([1, 3]);
  expect(puts(told.asked[1]!)).toEqual([]);
  expect(results.number('l', 'b', 'value')).toBe(6);
});

test('is settled once the notebook shown last has been worked', async () => {
  const { client: sheet, results } = client(works);
  sheet.show(a(3));
  expect(sheet.settled).toBe(false);
  await vi.waitFor(() => expect(number(results, 'b')).toBe(6));
  expect(sheet.settled).toBe(true);
  sheet.show(a(4));
  expect(sheet.settled).toBe(false);
});

test('a question to a sheet that was closed is rejected', async () => {
  const { client: sheet } = client(works);
  sheet.stop();
  await expect(sheet.check('1', { cell: 'a', key: 'value' })).rejects.toThrow('not working');
});

test('a question is answered for the notebook shown last', async () => {
  const { client: sheet } = client(works);
  sheet.show(a(1));
  sheet.show(notebookOf([measure('a', 'length', 1), formula('b', 'a * 2')]));
  expect(await sheet.check('a + 1', { cell: 'b', key: 'value' })).toEqual({
    problem: '1 of what? Write CM(1) or IN(1).',
  });
  expect(await sheet.check('a * a', { cell: 'b', key: 'value' })).toEqual({ unit: { length: 2 } });
});

describe('a thread that gives no sign of life', () => {
  const text = (notebook: Notebook, b: string): Notebook =>
    notebookOf([notebook.sections[0]!.cells[0]!, formula('b', b)], notebook.sizes);
  const hangsOn = (bad: string) => (asked: Asked, sheet: WorkedSheet) =>
    asked.changes.put.some(
      (cell) => cell.kind === 'formula' && cell.formula === bad && !asked.hold.includes(cell.id),
    )
      ? never
      : works(asked, sheet);

  test('is stopped, and the next works without what was changed last', async () => {
    const { client: sheet, results, told } = client(hangsOn('a * 666'));
    const first = a(3);
    sheet.show(first);
    await vi.waitFor(() => expect(number(results, 'b')).toBe(6));
    sheet.show(text(first, 'a * 666'));
    await vi.waitFor(() => expect(told.held).toHaveLength(1));
    expect(told.held[0]).toEqual({
      cells: ['b'],
      sentence: '"b" took more than 2 seconds to work, so it is set aside: change it and it is tried again.',
    });
    await vi.waitFor(() =>
      expect(results.trouble('m', 'b', 'value')?.message).toContain('took more than 2 seconds'),
    );
    expect(number(results, 'a')).toBe(3);
    expect(told.threads).toBe(2);

    sheet.show(text(first, 'a * 5'));
    await vi.waitFor(() => expect(number(results, 'b')).toBe(15));
    expect(told.threads).toBe(2);
  });

  test('is not asked again for what hung when a person goes back to it', async () => {
    const { client: sheet, results, told } = client(hangsOn('a * 666'));
    const [first, bad] = [a(3), text(a(3), 'a * 666')];
    const steps = [first, { ...bad, sizes: first.sizes }];
    sheet.show(steps[0]!);
    await vi.waitFor(() => expect(number(results, 'b')).toBe(6));
    sheet.show(steps[1]!);
    await vi.waitFor(() => expect(results.trouble('m', 'b', 'value')).toBeDefined());
    sheet.show(steps[0]!);
    await vi.waitFor(() => expect(number(results, 'b')).toBe(6));
    sheet.show(steps[1]!);
    await vi.waitFor(() => expect(results.trouble('m', 'b', 'value')).toBeDefined());
    expect(told.threads).toBe(2);
  });

  test('has its questions rejected', async () => {
    const { client: sheet, results } = client(hangsOn('a * 666'));
    sheet.show(a(3));
    await vi.waitFor(() => expect(number(results, 'b')).toBe(6));
    sheet.show(text(a(3), 'a * 666'));
    await expect(sheet.check('a', { cell: 'b', key: 'value' })).rejects.toThrow('was stopped');
  });

  test('is not listened to when it answers after all', async () => {
    let late = (_answer: Answer): void => {};
    let hung = false;
    const answers = (asked: Asked, worked: WorkedSheet): Promise<Answer> => {
      if (hung || asked.changes.sizes) return works(asked, worked);
      hung = true;
      return new Promise((resolve) => (late = resolve));
    };
    // A thread may have posted its answer in the moment it was stopped: here it can still be heard.
    const closings: (() => void)[] = [];
    const { client: sheet, results, told } = client(answers, 200, (close) => void closings.push(close));
    const first = a(3);
    sheet.show(first);
    await vi.waitFor(() => expect(number(results, 'b')).toBe(6));
    sheet.show(notebookOf([measure('a', 'number', 4), first.sections[0]!.cells[1]!], first.sizes));
    await vi.waitFor(() => expect(results.trouble('m', 'a', 'value')?.message).toContain('With this value'));
    const answersSoFar = told.answers;
    const [texts, truths, troubles, units] = [[], [], [], []];
    const numbers = new Float64Array([0, 1, 999]);
    late({ firstSlot: 2, slots: [], gone: [], sizes: ['m'], numbers, texts, truths, troubles, units });
    await new Promise((resolve) => setTimeout(resolve, 50));
    expect(told.answers).toBe(answersSoFar);
    expect(number(results, 'b')).toBeUndefined();
    closings.forEach((close) => close());
  });

  test('on opening has all formulas set aside, and they come back one by one except the one that hangs', async () => {
    const notebook = notebookOf([
      measure('a', 'number', 3),
      formula('b', 'a * 2'),
      formula('c', 'a * 666'),
      formula('d', 'b + 1'),
      formula('e', 'c + 1'),
    ]);
    const { client: sheet, results, told } = client(hangsOn('a * 666'));
    sheet.show(notebook);
    await vi.waitFor(() => expect(number(results, 'd')).toBe(7), 3000);
    await vi.waitFor(() => expect(results.trouble('m', 'e', 'value')?.message).toBe('Waits for c.'));
    expect(results.trouble('m', 'c', 'value')?.message).toContain('took more than 2 seconds');
    expect(told.held[0]!.cells).toEqual(['b', 'c', 'd', 'e']);
    expect(told.held[1]!.cells).toEqual(['c']);
    expect(told.failed).toEqual([]);
  });

  test('again and again, whatever is set aside, is given up', async () => {
    const { client: sheet, told } = client(() => never, 40);
    sheet.show(a(1));
    await vi.waitFor(() => expect(told.failed).toHaveLength(1), 3000);
    expect(told.failed[0]).toContain('takes too long to work');
    expect(told.threads).toBeLessThan(8);
  });

  test('but says now and then that it is working is left to finish', async () => {
    const results = new Results();
    const { port1, port2 } = new MessageChannel();
    const sheet = new WorkedSheet();
    expose(
      {
        update: async (changes: Changes, hold: readonly string[]) => {
          for (let i = 0; i < 10; i++) {
            await new Promise((resolve) => setTimeout(resolve, 50));
            port2.postMessage('working');
          }
          return sheet.update(changes, hold);
        },
      },
      port2 as unknown as Endpoint,
    );
    port2.postMessage('ready');
    const held = vi.fn();
    const thread = Object.assign(port1 as unknown as Endpoint, { terminate: () => port1.close() });
    const made = new SheetClient(() => thread, { answer: (answer) => results.apply(answer), held }, 200);
    clients.push(made);
    made.show(a(3));
    await vi.waitFor(() => expect(number(results, 'b')).toBe(6), 3000);
    expect(held).not.toHaveBeenCalled();
  });
});

describe('a thread of its own', () => {
  const runaway = runawayThreads();

  const inThread = () => {
    const results = new Results();
    const held: (readonly string[])[] = [];
    const made = new SheetClient(
      runaway,
      { answer: (answer) => results.apply(answer), held: (cells) => void held.push(cells) },
      400,
    );
    clients.push(made);
    return { made, results, held };
  };

  test('that a formula keeps running for ever is stopped, and the notebook goes on without that formula', async () => {
    const { made, results, held } = inThread();
    const cells = [measure('a', 'number', 13), formula('b', 'a * 2')];
    const first = notebookOf(cells);
    made.show(first);
    await vi.waitFor(() => expect(number(results, 'b')).toBe(26), 10_000);
    made.show(notebookOf([...cells, formula('c', 'ABS(a)'), formula('d', 'c + 1')].slice(0, 3), first.sizes));
    await vi.waitFor(() => expect(held).toEqual([['c']]), 10_000);
    await vi.waitFor(
      () => expect(results.trouble('m', 'c', 'value')?.message).toContain('set aside'),
      10_000,
    );
    expect(number(results, 'b')).toBe(26);
    made.show(notebookOf([...cells, formula('c', 'ABS(a + 1)')], first.sizes));
    await vi.waitFor(() => expect(number(results, 'c')).toBe(14), 10_000);
  }, 40_000);

  test('that hangs on opening brings back every formula but that one', async () => {
    const { made, results, held } = inThread();
    made.show(
      notebookOf([
        measure('a', 'number', 13),
        formula('b', 'ABS(a)'),
        formula('c', 'a * 2'),
        formula('d', 'b + c'),
      ]),
    );
    await vi.waitFor(() => expect(number(results, 'c')).toBe(26), 20_000);
    await vi.waitFor(() => expect(results.trouble('m', 'd', 'value')?.message).toBe('Waits for b.'), 10_000);
    expect(held).toEqual([['b', 'c', 'd'], ['b']]);
  }, 40_000);
});
