import { expose, type Endpoint } from 'comlink';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { plainMessage } from '../../src/craft';
import type { Changes } from '../../src/notebook/changes';
import type { Notebook } from '../../src/notebook/document';
import type { Answer, CellRef } from '../../src/engine/answers';
import { SheetClient } from '../../src/worker/client';
import type { SheetThread } from '../../src/worker/thread';
import { Results } from '../../src/engine/results';
import { WorkedSheet } from '../../src/engine/sheet';
import { formula, measure, notebookOf } from '../engine/notebook-of';
import { runawayThreads } from './runaway';
import { until } from '../until';

const clients: SheetClient[] = [];
afterEach(() => clients.splice(0).forEach((client) => client.stop()));

interface Sent {
  readonly changes: Changes;
  readonly hold: readonly string[];
  readonly later: readonly string[];
  /** The number of the thread, from 1. */
  readonly thread: number;
}

/** A client whose threads are channels in this one, served as told; and what came of it. */
function client(
  answers: (request: Sent, sheet: WorkedSheet) => Promise<Answer>,
  limit = 200,
  stops: (close: () => void) => void = (close) => close(),
) {
  const results = new Results();
  const calls = {
    requests: [] as Sent[],
    held: [] as { cells: readonly string[]; sentence: string }[],
    comingBack: [] as string[],
    failed: [] as string[],
    threw: [] as unknown[],
    threads: 0,
    /** Those of them that were ended. */
    ended: 0,
    answers: 0,
    /** Has the thread started last break with an event. */
    breaks: (_type: string, _message: string): void => {},
  };
  const start = (): SheetThread => {
    const thread = ++calls.threads;
    const { port1, port2 } = new MessageChannel();
    const sheet = new WorkedSheet();
    expose(
      {
        update: (changes: Changes, hold: readonly string[], later: readonly string[]) => {
          const wanted = { changes, hold, later, thread };
          calls.requests.push(wanted);
          return answers(wanted, sheet);
        },
        check: (text: string, ref: CellRef) => {
          if (text === '6 * 6') throw new Error('Six.');
          return sheet.check(text, ref);
        },
      },
      port2 as unknown as Endpoint,
    );
    port2.postMessage('ready');
    calls.breaks = (type, message) => void port1.dispatchEvent(Object.assign(new Event(type), { message }));
    const terminate = (): void => {
      calls.ended++;
      stops(() => {
        port1.close();
        port2.close();
      });
    };
    return Object.assign(port1 as unknown as Endpoint, { terminate });
  };
  const on = {
    answer: (answer: Answer) => {
      calls.answers++;
      results.apply(answer);
    },
    quarantined: (cells: readonly string[], sentence: string) => void calls.held.push({ cells, sentence }),
    comingBack: (sentence: string) => void calls.comingBack.push(sentence),
    failed: (sentence: string) => void calls.failed.push(sentence),
    threw: (error: unknown) => void calls.threw.push(error),
  };
  const made = new SheetClient(start, on, limit);
  clients.push(made);
  return { client: made, results, calls };
}

const works = ({ changes, hold, later }: Sent, sheet: WorkedSheet): Promise<Answer> =>
  sheet.update(changes, hold, later);
const never = new Promise<never>(() => {});
const puts = ({ changes }: Sent): string[] => changes.put.map((cell) => cell.id);
const a = (value: number): Notebook => notebookOf([measure('a', 'number', value), formula('b', 'a * 2')]);
const number = (results: Results, cell: string): number | undefined => results.number('m', cell, 'value');

test('shows a notebook and gets its results', async () => {
  const { client: sheet, results } = client(works);
  sheet.show(a(3));
  await until(() => expect(number(results, 'b')).toBe(6));
});

test('of the notebooks shown while one is worked only the newest is worked next, and told as one change', async () => {
  let release = (): void => {};
  const gate = new Promise<void>((resolve) => (release = resolve));
  const {
    client: sheet,
    results,
    calls,
  } = client(async (request, worked) => {
    if (puts(request).length === 2) await gate;
    return works(request, worked);
  });
  const first = a(1);
  sheet.show(first);
  await until(() => expect(calls.requests).toHaveLength(1));
  const keystrokes = [12, 123, 1234].map((value) =>
    notebookOf([measure('a', 'number', value), first.sections[0]!.cells[1]!], first.sizes),
  );
  keystrokes.forEach((notebook) => sheet.show(notebook));
  release();
  await until(() => expect(number(results, 'b')).toBe(2468));
  expect(calls.requests).toHaveLength(2);
  expect(puts(calls.requests[1]!)).toEqual(['a']);
});

test('on opening the first size is told before the others', async () => {
  const { client: sheet, results, calls } = client(works);
  const sizes = ['s', 'm', 'l'].map((id) => ({ id, label: id }));
  sheet.show(notebookOf([measure('a', 'number', 3), formula('b', 'a * 2')], sizes));
  await until(() => expect(results.sizes).toEqual(['s', 'm', 'l']));
  expect(calls.requests.map(({ changes }) => changes.sizes?.length)).toEqual([1, 3]);
  expect(puts(calls.requests[1]!)).toEqual([]);
  expect(results.number('l', 'b', 'value')).toBe(6);
});

test('is settled once the notebook shown last has been worked', async () => {
  const { client: sheet, results } = client(works);
  sheet.show(a(3));
  expect(sheet.settled).toBe(false);
  await until(() => expect(number(results, 'b')).toBe(6));
  expect(sheet.settled).toBe(true);
  sheet.show(a(4));
  expect(sheet.settled).toBe(false);
});

test('a question to a sheet that was closed is rejected', async () => {
  const { client: sheet } = client(works);
  sheet.stop();
  await expect(sheet.check('1', { cell: 'a', key: 'value' })).rejects.toThrow(
    'Nothing can be calculated right now',
  );
});

test('a question is answered for the notebook shown last', async () => {
  const { client: sheet } = client(works);
  sheet.show(a(1));
  sheet.show(notebookOf([measure('a', 'length', 1), formula('b', 'a * 2')]));
  const checked = await sheet.check('a + 1', { cell: 'b', key: 'value' });
  expect('problem' in checked && plainMessage(checked.problem)).toBe('1 of what? Write CM(1) or IN(1).');
  expect(await sheet.check('a * a', { cell: 'b', key: 'value' })).toEqual({ unit: { length: 2 } });
});

describe('a thread that is silent', () => {
  const text = (notebook: Notebook, b: string): Notebook =>
    notebookOf([notebook.sections[0]!.cells[0]!, formula('b', b)], notebook.sizes);
  const hangsOn = (bad: string) => (request: Sent, sheet: WorkedSheet) =>
    request.changes.put.some(
      (cell) => cell.kind === 'formula' && cell.formula === bad && !request.hold.includes(cell.id),
    )
      ? never
      : works(request, sheet);

  test('is stopped, and the next works without what was changed last', async () => {
    const { client: sheet, results, calls } = client(hangsOn('a * 666'));
    const first = a(3);
    sheet.show(first);
    await until(() => expect(number(results, 'b')).toBe(6));
    sheet.show(text(first, 'a * 666'));
    await until(() => expect(calls.held).toHaveLength(1));
    expect(calls.held[0]).toEqual({
      cells: ['b'],
      sentence: '"b" takes too long to calculate, so it is left out for now. Change it to try again.',
    });
    expect(results.error('m', 'b', 'value')?.message).toBe(
      'This takes too long. Shorten the formula, or try again.',
    );
    expect(number(results, 'a')).toBe(3);
    expect(calls.threads).toBe(2);

    sheet.show(text(first, 'a * 5'));
    await until(() => expect(number(results, 'b')).toBe(15));
    expect(calls.threads).toBe(2);
  });

  test('is not asked again for what hung when a person goes back to it', async () => {
    const { client: sheet, results, calls } = client(hangsOn('a * 666'));
    const [first, bad] = [a(3), text(a(3), 'a * 666')];
    const steps = [first, { ...bad, sizes: first.sizes }];
    sheet.show(steps[0]!);
    await until(() => expect(number(results, 'b')).toBe(6));
    sheet.show(steps[1]!);
    await until(() => expect(results.error('m', 'b', 'value')).toBeDefined());
    sheet.show(steps[0]!);
    await until(() => expect(number(results, 'b')).toBe(6));
    sheet.show(steps[1]!);
    await until(() => expect(results.error('m', 'b', 'value')).toBeDefined());
    expect(calls.threads).toBe(2);
  });

  test('leaves the questions that wait to the next', async () => {
    const { client: sheet, results } = client(hangsOn('a * 666'));
    sheet.show(a(3));
    await until(() => expect(number(results, 'b')).toBe(6));
    sheet.show(text(a(3), 'a * 666'));
    expect(await sheet.check('a', { cell: 'b', key: 'value' })).toEqual({ unit: {} });
  });

  test('is not listened to when it answers after all', async () => {
    let late = (_answer: Answer): void => {};
    let hung = false;
    const answers = (request: Sent, worked: WorkedSheet): Promise<Answer> => {
      if (hung || request.changes.sizes) return works(request, worked);
      hung = true;
      return new Promise((resolve) => (late = resolve));
    };
    // A thread may have posted its answer in the moment it was stopped: here it can still be heard.
    const closings: (() => void)[] = [];
    const { client: sheet, results, calls } = client(answers, 200, (close) => void closings.push(close));
    const first = a(3);
    sheet.show(first);
    await until(() => expect(number(results, 'b')).toBe(6));
    sheet.show(notebookOf([measure('a', 'number', 4), first.sections[0]!.cells[1]!], first.sizes));
    await until(() => expect(results.error('m', 'a', 'value')?.message).toContain('With this value'));
    const answersSoFar = calls.answers;
    const [texts, truths, problems, units] = [[], [], [], []];
    const numbers = new Float64Array([0, 1, 999]);
    late({
      firstSlot: 2,
      slots: [],
      gone: [],
      sizes: ['m'],
      numbers,
      texts,
      truths,
      errors: problems,
      units,
    });
    // What comes through another channel afterwards comes later.
    sheet.show(notebookOf([measure('a', 'number', 5), first.sections[0]!.cells[1]!], first.sizes));
    await until(() => expect(number(results, 'b')).toBe(10));
    expect(calls.answers).toBe(answersSoFar + 1);
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
    const { client: sheet, results, calls } = client(hangsOn('a * 666'));
    sheet.show(notebook);
    await until(() => expect(number(results, 'd')).toBe(7));
    await until(() => expect(results.error('m', 'e', 'value')?.message).toBe('Needs c.'));
    expect(results.error('m', 'c', 'value')?.message).toContain('This takes too long');
    expect(calls.comingBack).toEqual(['Still calculating…']);
    expect(calls.requests[1]).toMatchObject({ hold: ['b', 'c', 'd', 'e'], later: ['b', 'c', 'd', 'e'] });
    expect(calls.held.map(({ cells }) => cells)).toEqual([['c']]);
    expect(calls.failed).toEqual([]);
  });

  test('and whose standby is silent as well is told from a busy machine by one without any formula', async () => {
    const both = [formula('c', 'a * 666'), formula('d', 'a * 777')];
    const hangs = (request: Sent, sheet: WorkedSheet): Promise<Answer> =>
      both.some(({ id }) => puts(request).includes(id) && !request.hold.includes(id))
        ? never
        : works(request, sheet);
    const {
      client: sheet,
      results,
      calls,
    } = client((request, worked) =>
      // The first has been told one that hangs, and its standby finds the other in the notebook.
      request.thread === 1 && !puts(request).includes('c') ? works(request, worked) : hangs(request, worked),
    );
    const first = notebookOf([measure('a', 'number', 3), formula('b', 'a * 2'), both[1]!]);
    sheet.show(first);
    await until(() => expect(number(results, 'b')).toBe(6));
    sheet.show(notebookOf([...first.sections[0]!.cells, both[0]!], first.sizes));
    await until(() => expect(calls.held.map(({ cells }) => cells)).toEqual([['d'], ['c']]));
    await until(() => expect(number(results, 'b')).toBe(6));
    expect(calls.failed).toEqual([]);
  });

  test('because the machine is busy is not blamed: its standby is no quicker, and is ended when it beats', async () => {
    let release = (): void => {};
    const busy = new Promise<void>((resolve) => (release = resolve));
    const {
      client: sheet,
      results,
      calls,
    } = client(async (request, worked) => {
      await busy;
      return works(request, worked);
    });
    sheet.show(a(3));
    await until(() => expect(calls.requests.map(({ thread }) => thread)).toEqual([1, 2]));
    release();
    await until(() => expect(number(results, 'b')).toBe(6));
    await until(() => expect(calls.ended).toBe(1));
    sheet.show(text(a(3), 'a * 5'));
    await until(() => expect(number(results, 'b')).toBe(15));
    expect(calls.requests.at(-1)!.thread).toBe(1);
    expect([calls.held, calls.comingBack, calls.failed]).toEqual([[], [], []]);
  });

  test('when whatever is left out is silent as well is waited for', async () => {
    let release = (): void => {};
    const busy = new Promise<void>((resolve) => (release = resolve));
    const {
      client: sheet,
      results,
      calls,
    } = client(async (request, worked) => {
      if (request.thread > 1) return never;
      if (puts(request).includes('b') && !request.changes.sizes) await busy;
      return works(request, worked);
    });
    const first = a(3);
    sheet.show(first);
    await until(() => expect(number(results, 'b')).toBe(6));
    sheet.show(text(first, 'a * 5'));
    // The standby without the cell, and the one without any formula.
    await until(() => expect(calls.requests.map(({ hold }) => hold)).toEqual([[], [], ['b'], ['b']]));
    release();
    await until(() => expect(number(results, 'b')).toBe(15));
    expect(calls.threads).toBe(3);
    await until(() => expect(calls.ended).toBe(2));
    expect([calls.held, calls.comingBack, calls.failed]).toEqual([[], [], []]);
  });
});

describe('an error in a thread', () => {
  test('is not called slowness: another works the whole notebook, and nothing is left out', async () => {
    const {
      client: sheet,
      results,
      calls,
    } = client((request, worked) => {
      if (request.thread === 1 && puts(request).length === 1) throw new Error('Out of memory.');
      return works(request, worked);
    });
    const first = a(3);
    sheet.show(first);
    await until(() => expect(number(results, 'b')).toBe(6));
    sheet.show(notebookOf([measure('a', 'number', 4), first.sections[0]!.cells[1]!], first.sizes));
    await until(() => expect(number(results, 'b')).toBe(8));
    expect(calls.threads).toBe(2);
    expect([calls.held, calls.comingBack, calls.failed]).toEqual([[], [], []]);
  });

  test('that comes again and again is told in its own words, and the next change tries again', async () => {
    let broken = true;
    const {
      client: sheet,
      results,
      calls,
    } = client((request, worked) => {
      if (broken) throw new Error('Out of memory.');
      return works(request, worked);
    });
    sheet.show(a(3));
    await until(() => expect(calls.failed).toHaveLength(1));
    expect(calls.failed[0]).toBe(
      'Something broke while calculating (Out of memory.). Your notebook is safe. It is tried again at your next change.',
    );
    expect(calls.threads).toBe(3);
    expect(sheet.working).toBe(false);
    broken = false;
    sheet.show(a(4));
    await until(() => expect(number(results, 'b')).toBe(8));
    expect([calls.held, calls.failed.length]).toEqual([[], 1]);
  });

  test('that no call answers with is heard as well', async () => {
    let broken = true;
    const {
      client: sheet,
      results,
      calls,
    } = client((request, worked) => {
      if (!broken) return works(request, worked);
      broken = false;
      calls.breaks('error', 'Out of memory.');
      return never;
      // So long a silence never is: it is the error that ends the thread.
    }, 3_600_000);
    sheet.show(a(3));
    await until(() => expect(number(results, 'b')).toBe(6));
    expect([calls.threads, calls.held, calls.failed]).toEqual([2, [], []]);
  });

  test('at a question answers the question, and the thread goes on', async () => {
    const { client: sheet, results, calls } = client(works);
    sheet.show(a(3));
    await expect(sheet.check('6 * 6', { cell: 'b', key: 'value' })).rejects.toThrow(
      'Something broke while calculating (Six.)',
    );
    sheet.show(a(4));
    await until(() => expect(number(results, 'b')).toBe(8));
    expect([calls.threads, calls.held, calls.failed]).toEqual([1, [], []]);
  });

  test('before it began is told as that, and the next change tries again', async () => {
    let loads = false;
    const started: (() => void)[] = [];
    const failed: string[] = [];
    const sheet = new SheetClient(
      () => {
        const { port1, port2 } = new MessageChannel();
        expose({ update: () => never }, port2 as unknown as Endpoint);
        started.push(() => void port1.dispatchEvent(new Event(loads ? 'loaded' : 'error')));
        return Object.assign(port1 as unknown as Endpoint, {
          terminate() {
            port1.close();
            port2.close();
          },
        });
      },
      { answer() {}, quarantined() {}, failed: (sentence) => void failed.push(sentence) },
    );
    clients.push(sheet);
    sheet.show(a(3));
    started[0]!();
    expect(failed).toEqual([expect.stringMatching(/did not load.*Is there a network\?/)]);
    loads = true;
    sheet.show(a(4));
    expect(started).toHaveLength(2);
  });

  test('of whoever takes an answer does not keep the next from being worked', async () => {
    let shown = false;
    const {
      client: sheet,
      results,
      calls,
    } = client((request, worked) => {
      // While the first is worked: nothing else brings it up once that is taken.
      if (!shown) sheet.show(notebookOf([measure('a', 'number', 4)]));
      shown = true;
      return works(request, worked);
    });
    const applyAnswer = vi.spyOn(results, 'apply').mockImplementationOnce(() => {
      throw new Error('The page broke.');
    });
    sheet.show(a(3));
    await until(() => expect(calls.threw).toEqual([new Error('The page broke.')]));
    await until(() => expect(applyAnswer).toHaveBeenCalledTimes(2));
    expect(calls.threads).toBe(1);
  });
});

describe('a thread of its own', () => {
  const runaway = runawayThreads();

  const inThread = () => {
    const results = new Results();
    const held: (readonly string[])[] = [];
    const made = new SheetClient(
      runaway,
      { answer: (answer) => results.apply(answer), quarantined: (cells) => void held.push(cells) },
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
    await until(() => expect(number(results, 'b')).toBe(26));
    made.show(notebookOf([...cells, formula('c', 'ABS(a)'), formula('d', 'c + 1')].slice(0, 3), first.sizes));
    await until(() => expect(held).toEqual([['c']]));
    await until(() => expect(results.error('m', 'c', 'value')?.message).toContain('This takes too long'));
    expect(number(results, 'b')).toBe(26);
    made.show(notebookOf([...cells, formula('c', 'ABS(a + 1)')], first.sizes));
    await until(() => expect(number(results, 'c')).toBe(14));
  });

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
    await until(() => expect(number(results, 'c')).toBe(26));
    await until(() => expect(results.error('m', 'd', 'value')?.message).toBe('Needs b.'));
    expect(held).toEqual([['b']]);
  });
});
