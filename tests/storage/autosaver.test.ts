import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { memoryStore, Autosaver, type NotebookStore, type SaveStatus } from '../../src/storage';
import { readFile, type Notebook } from '../../src/notebook';
import { cardigan } from '../../src/starters';
import { edited } from '../notebook/edited';

const titled = (title: string, notebook = cardigan()): Notebook => edited(notebook, { do: 'retitle', title });
const titleOn = async (store: NotebookStore, id = 'a'): Promise<string | undefined> => {
  const found = await store.read(id);
  const read = found && readFile(found.text);
  return read && 'notebook' in read ? read.notebook.title : undefined;
};

let store: NotebookStore;
let stood: SaveStatus[];
let apart: Notebook[];
const autosaverFor = (
  on: NotebookStore,
  notebook = cardigan(),
  known: { revision: number; changed: number } | null = null,
): Autosaver =>
  new Autosaver('a', notebook, known, on, {
    statusChanged: (status) => void stood.push(status),
    apart: (own) => void apart.push(own),
  });

beforeEach(() => {
  vi.useFakeTimers({ now: Date.UTC(2026, 2, 2, 12, 1) });
  store = memoryStore();
  stood = [];
  apart = [];
});
afterEach(() => {
  vi.useRealTimers();
});

describe('an autosaver', () => {
  it('writes nothing of a notebook that was only opened', async () => {
    autosaverFor(store);
    await vi.advanceTimersByTimeAsync(5000);
    expect(await store.list()).toEqual([]);
    expect(stood).toEqual([{ is: 'as it was' }]);
  });

  it('writes within a second of a change, however fast one follows another', async () => {
    const autosaver = autosaverFor(store);
    for (let change = 0; change < 40; change++) {
      autosaver.write(titled(`change ${change}`));
      await vi.advanceTimersByTimeAsync(50);
      if (change >= 20) {
        const shown = Number((await titleOn(store))!.slice(7));
        // 20 changes of 50 ms are a second.
        expect(shown).toBeGreaterThan(change - 20);
      }
    }
    await vi.advanceTimersByTimeAsync(1000);
    expect(await titleOn(store)).toBe('change 39');
    expect(stood.at(-1)).toMatchObject({ is: 'kept' });
    // Some writes for forty changes, not forty.
    expect((await store.list())[0]!.revision).toBeLessThan(15);
  });

  it('remembers a state for each five minutes in which something was changed', async () => {
    const autosaver = autosaverFor(store);
    for (let minute = 0; minute < 20; minute++) {
      autosaver.write(titled(`minute ${minute}`));
      await vi.advanceTimersByTimeAsync(60_000);
    }
    const times = (await store.states('a')).map(({ at }) => new Date(at).getUTCMinutes());
    // Begun at one minute past: what stood at the end of each five minutes.
    expect(times).toEqual([19, 14, 9, 4]);
    expect(times).not.toContain(20);
  });

  it.each([
    ['70 days ahead', 70],
    ['70 days behind', -70],
  ])('takes no earlier state away because the clock is %s', async (_how, days) => {
    const autosaver = autosaverFor(store);
    const right = async (): Promise<void> => {
      for (let state = 0; state < 9; state++) {
        autosaver.write(titled(`state ${state}`));
        await vi.advanceTimersByTimeAsync(5 * 60_000);
      }
    };
    await right();
    const before = await store.states('a');
    expect(before).toHaveLength(8);
    const rightTime = Date.now();
    vi.setSystemTime(rightTime + days * 86_400_000);
    autosaver.write(titled('by a wrong clock'));
    await vi.advanceTimersByTimeAsync(5 * 60_000);
    vi.setSystemTime(rightTime + 10 * 60_000);
    autosaver.write(titled('by the right one again'));
    await vi.advanceTimersByTimeAsync(1000);
    const after = await store.states('a');
    expect(after).toHaveLength(10);
    expect(after.slice(2)).toEqual(before);
    expect(await titleOn(store)).toBe('by the right one again');
  });

  it('has kept what it wrote, and says so, where thinning fails', async () => {
    const broken: NotebookStore = {
      ...store,
      states: async () => {
        throw new DOMException('No.', 'UnknownError');
      },
    };
    const autosaver = autosaverFor(broken);
    autosaver.write(titled('one'));
    await vi.advanceTimersByTimeAsync(1000);
    autosaver.remember();
    autosaver.write(titled('two'));
    await vi.advanceTimersByTimeAsync(1000);
    expect(stood.at(-1)).toMatchObject({ is: 'kept' });
    expect(await titleOn(store)).toBe('two');
  });

  it('does not write over what another window wrote, and says whose work stands apart', async () => {
    const autosaver = autosaverFor(store);
    autosaver.write(titled('mine'));
    await autosaver.keep();
    const theirs = (await store.read('a'))!;
    await store.write(
      'a',
      { title: 'theirs', cells: 1, sizes: 1, text: theirs.text.replace('mine', 'theirs') },
      1,
      {
        now: Date.now(),
        remember: false,
      },
    );
    const own = titled('mine, later');
    autosaver.write(own);
    await vi.advanceTimersByTimeAsync(1000);
    expect(apart).toEqual([own]);
    expect(await titleOn(store)).toBe('theirs');
  });

  it('goes on after a write that failed, says why meanwhile, and keeps the newest once it can', async () => {
    let full = true;
    const limited: NotebookStore = {
      ...store,
      write: async (...given) => {
        if (full) throw new DOMException('Full.', 'QuotaExceededError');
        return store.write(...given);
      },
    };
    const autosaver = autosaverFor(limited);
    autosaver.write(titled('one'));
    await vi.advanceTimersByTimeAsync(1000);
    expect(stood.at(-1)).toEqual({ is: 'not kept', error: 'full' });
    autosaver.write(titled('two'));
    await vi.advanceTimersByTimeAsync(1000);
    full = false;
    await vi.advanceTimersByTimeAsync(6000);
    expect(await titleOn(store)).toBe('two');
    expect(stood.at(-1)).toMatchObject({ is: 'kept' });
  });

  it('that is laid down has written what was left, and writes no more', async () => {
    const autosaver = autosaverFor(store);
    autosaver.write(titled('last'));
    await autosaver.flushAndClose();
    expect(await titleOn(store)).toBe('last');
    autosaver.write(titled('too late'));
    await vi.advanceTimersByTimeAsync(1000);
    expect(await titleOn(store)).toBe('last');
  });

  it('that finds an edit undone while it was being written writes what it was before', async () => {
    let go: () => void = () => {};
    const slow: NotebookStore = {
      ...store,
      write: async (...given) => {
        await new Promise<void>((resolve) => (go = resolve));
        return store.write(...given);
      },
    };
    const before = titled('before');
    const autosaver = autosaverFor(slow, before);
    autosaver.write(titled('after'));
    await vi.advanceTimersByTimeAsync(500);
    autosaver.write(before);
    expect(autosaver.isSaved).toBe(false);
    go();
    await vi.advanceTimersByTimeAsync(500);
    go();
    await vi.advanceTimersByTimeAsync(500);
    expect(await titleOn(store)).toBe('before');
    expect(stood.at(-1)).toMatchObject({ is: 'kept' });
  });

  it('says that a notebook is kept although thinning its earlier states failed', async () => {
    const autosaver = autosaverFor({
      ...store,
      states: async () => {
        throw new DOMException('Lost.', 'UnknownError');
      },
    });
    for (const title of ['one', 'two', 'three']) {
      autosaver.write(titled(title));
      await vi.advanceTimersByTimeAsync(6 * 60_000);
    }
    expect(stood.filter((status) => status.is === 'not kept')).toEqual([]);
    expect(stood.at(-1)).toMatchObject({ is: 'kept' });
  });

  it('that cannot be laid down, since nothing is kept, stays up and tries again', async () => {
    let full = true;
    const autosaver = autosaverFor({
      ...store,
      write: async (...given) => {
        if (full) throw new DOMException('Full.', 'QuotaExceededError');
        return store.write(...given);
      },
    });
    autosaver.write(titled('last'));
    expect(await autosaver.flushAndClose()).toBe(false);
    full = false;
    await vi.advanceTimersByTimeAsync(6000);
    expect([await titleOn(store), autosaver.isSaved]).toEqual(['last', true]);
  });

  it('that waits on a write without end says within five seconds that nothing is kept, and goes on saying so', async () => {
    let go: () => void = () => {};
    const autosaver = autosaverFor({
      ...store,
      write: async (...given) => {
        await new Promise<void>((resolve) => (go = resolve));
        return store.write(...given);
      },
    });
    autosaver.write(titled('one'));
    await vi.advanceTimersByTimeAsync(5000);
    expect(stood.at(-1)).toEqual({ is: 'not kept', error: 'silent' });
    autosaver.write(titled('two'));
    await vi.advanceTimersByTimeAsync(1000);
    expect(stood.at(-1)).toEqual({ is: 'not kept', error: 'silent' });
    go();
    await vi.advanceTimersByTimeAsync(1000);
    go();
    await vi.advanceTimersByTimeAsync(1000);
    expect(stood.at(-1)).toMatchObject({ is: 'kept' });
  });

  it('writes nothing until it is known that no other window does', async () => {
    const autosaver = autosaverFor(store);
    autosaver.wait();
    autosaver.write(titled('mine'));
    await vi.advanceTimersByTimeAsync(1000);
    expect(await store.list()).toEqual([]);
    autosaver.goOn();
    await vi.advanceTimersByTimeAsync(10);
    expect(await titleOn(store)).toBe('mine');
  });
});
