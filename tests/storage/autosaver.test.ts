import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { memoryShelf, Pen, type Shelf, type Standing } from '../../src/storage';
import { readFile, type Notebook } from '../../src/notebook';
import { cardigan } from '../../src/starters';
import { edited } from '../notebook/edited';

const titled = (title: string, notebook = cardigan()): Notebook => edited(notebook, { do: 'retitle', title });
const titleOn = async (shelf: Shelf, id = 'a'): Promise<string | undefined> => {
  const found = await shelf.read(id);
  const read = found && readFile(found.text);
  return read && 'notebook' in read ? read.notebook.title : undefined;
};

let shelf: Shelf;
let stood: Standing[];
let apart: Notebook[];
const penOn = (
  on: Shelf,
  notebook = cardigan(),
  known: { revision: number; changed: number } | null = null,
): Pen =>
  new Pen('a', notebook, known, on, {
    stands: (standing) => void stood.push(standing),
    apart: (own) => void apart.push(own),
  });

beforeEach(() => {
  vi.useFakeTimers({ now: Date.UTC(2026, 2, 2, 12, 1) });
  shelf = memoryShelf();
  stood = [];
  apart = [];
});
afterEach(() => {
  vi.useRealTimers();
});

describe('a pen', () => {
  it('writes nothing of a notebook that was only opened', async () => {
    penOn(shelf);
    await vi.advanceTimersByTimeAsync(5000);
    expect(await shelf.list()).toEqual([]);
    expect(stood).toEqual([{ is: 'as it was' }]);
  });

  it('writes within a second of a change, however fast one follows another', async () => {
    const pen = penOn(shelf);
    for (let change = 0; change < 40; change++) {
      pen.write(titled(`change ${change}`));
      await vi.advanceTimersByTimeAsync(50);
      if (change >= 20) {
        const shown = Number((await titleOn(shelf))!.slice(7));
        // 20 changes of 50 ms are a second.
        expect(shown).toBeGreaterThan(change - 20);
      }
    }
    await vi.advanceTimersByTimeAsync(1000);
    expect(await titleOn(shelf)).toBe('change 39');
    expect(stood.at(-1)).toMatchObject({ is: 'kept' });
    // Some writes for forty changes, not forty.
    expect((await shelf.list())[0]!.revision).toBeLessThan(15);
  });

  it('remembers a state for each five minutes in which something was changed', async () => {
    const pen = penOn(shelf);
    for (let minute = 0; minute < 20; minute++) {
      pen.write(titled(`minute ${minute}`));
      await vi.advanceTimersByTimeAsync(60_000);
    }
    const times = (await shelf.states('a')).map(({ at }) => new Date(at).getUTCMinutes());
    // Begun at one minute past: what stood at the end of each five minutes.
    expect(times).toEqual([19, 14, 9, 4]);
    expect(times).not.toContain(20);
  });

  it.each([
    ['70 days ahead', 70],
    ['70 days behind', -70],
  ])('takes no earlier state away because the clock is %s', async (_how, days) => {
    const pen = penOn(shelf);
    const right = async (): Promise<void> => {
      for (let state = 0; state < 9; state++) {
        pen.write(titled(`state ${state}`));
        await vi.advanceTimersByTimeAsync(5 * 60_000);
      }
    };
    await right();
    const before = await shelf.states('a');
    expect(before).toHaveLength(8);
    const rightTime = Date.now();
    vi.setSystemTime(rightTime + days * 86_400_000);
    pen.write(titled('by a wrong clock'));
    await vi.advanceTimersByTimeAsync(5 * 60_000);
    vi.setSystemTime(rightTime + 10 * 60_000);
    pen.write(titled('by the right one again'));
    await vi.advanceTimersByTimeAsync(1000);
    const after = await shelf.states('a');
    expect(after).toHaveLength(10);
    expect(after.slice(2)).toEqual(before);
    expect(await titleOn(shelf)).toBe('by the right one again');
  });

  it('has kept what it wrote, and says so, where thinning fails', async () => {
    const broken: Shelf = {
      ...shelf,
      states: async () => {
        throw new DOMException('No.', 'UnknownError');
      },
    };
    const pen = penOn(broken);
    pen.write(titled('one'));
    await vi.advanceTimersByTimeAsync(1000);
    pen.remember();
    pen.write(titled('two'));
    await vi.advanceTimersByTimeAsync(1000);
    expect(stood.at(-1)).toMatchObject({ is: 'kept' });
    expect(await titleOn(shelf)).toBe('two');
  });

  it('does not write over what another window wrote, and says whose work stands apart', async () => {
    const pen = penOn(shelf);
    pen.write(titled('mine'));
    await pen.keep();
    const theirs = (await shelf.read('a'))!;
    await shelf.write(
      'a',
      { title: 'theirs', cells: 1, sizes: 1, text: theirs.text.replace('mine', 'theirs') },
      1,
      {
        now: Date.now(),
        remember: false,
      },
    );
    const own = titled('mine, later');
    pen.write(own);
    await vi.advanceTimersByTimeAsync(1000);
    expect(apart).toEqual([own]);
    expect(await titleOn(shelf)).toBe('theirs');
  });

  it('goes on after a write that failed, says why meanwhile, and keeps the newest once it can', async () => {
    let full = true;
    const limited: Shelf = {
      ...shelf,
      write: async (...given) => {
        if (full) throw new DOMException('Full.', 'QuotaExceededError');
        return shelf.write(...given);
      },
    };
    const pen = penOn(limited);
    pen.write(titled('one'));
    await vi.advanceTimersByTimeAsync(1000);
    expect(stood.at(-1)).toEqual({ is: 'not kept', trouble: 'full' });
    pen.write(titled('two'));
    await vi.advanceTimersByTimeAsync(1000);
    full = false;
    await vi.advanceTimersByTimeAsync(6000);
    expect(await titleOn(shelf)).toBe('two');
    expect(stood.at(-1)).toMatchObject({ is: 'kept' });
  });

  it('that is laid down has written what was left, and writes no more', async () => {
    const pen = penOn(shelf);
    pen.write(titled('last'));
    await pen.lay();
    expect(await titleOn(shelf)).toBe('last');
    pen.write(titled('too late'));
    await vi.advanceTimersByTimeAsync(1000);
    expect(await titleOn(shelf)).toBe('last');
  });

  it('that finds an edit undone while it was being written writes what it was before', async () => {
    let go: () => void = () => {};
    const slow: Shelf = {
      ...shelf,
      write: async (...given) => {
        await new Promise<void>((resolve) => (go = resolve));
        return shelf.write(...given);
      },
    };
    const before = titled('before');
    const pen = penOn(slow, before);
    pen.write(titled('after'));
    await vi.advanceTimersByTimeAsync(500);
    pen.write(before);
    expect(pen.dry).toBe(false);
    go();
    await vi.advanceTimersByTimeAsync(500);
    go();
    await vi.advanceTimersByTimeAsync(500);
    expect(await titleOn(shelf)).toBe('before');
    expect(stood.at(-1)).toMatchObject({ is: 'kept' });
  });

  it('says that a notebook is kept although thinning its earlier states failed', async () => {
    const pen = penOn({
      ...shelf,
      states: async () => {
        throw new DOMException('Lost.', 'UnknownError');
      },
    });
    for (const title of ['one', 'two', 'three']) {
      pen.write(titled(title));
      await vi.advanceTimersByTimeAsync(6 * 60_000);
    }
    expect(stood.filter((standing) => standing.is === 'not kept')).toEqual([]);
    expect(stood.at(-1)).toMatchObject({ is: 'kept' });
  });

  it('that cannot be laid down, since nothing is kept, stays up and tries again', async () => {
    let full = true;
    const pen = penOn({
      ...shelf,
      write: async (...given) => {
        if (full) throw new DOMException('Full.', 'QuotaExceededError');
        return shelf.write(...given);
      },
    });
    pen.write(titled('last'));
    expect(await pen.lay()).toBe(false);
    full = false;
    await vi.advanceTimersByTimeAsync(6000);
    expect([await titleOn(shelf), pen.dry]).toEqual(['last', true]);
  });

  it('that waits on a write without end says within five seconds that nothing is kept, and goes on saying so', async () => {
    let go: () => void = () => {};
    const pen = penOn({
      ...shelf,
      write: async (...given) => {
        await new Promise<void>((resolve) => (go = resolve));
        return shelf.write(...given);
      },
    });
    pen.write(titled('one'));
    await vi.advanceTimersByTimeAsync(5000);
    expect(stood.at(-1)).toEqual({ is: 'not kept', trouble: 'silent' });
    pen.write(titled('two'));
    await vi.advanceTimersByTimeAsync(1000);
    expect(stood.at(-1)).toEqual({ is: 'not kept', trouble: 'silent' });
    go();
    await vi.advanceTimersByTimeAsync(1000);
    go();
    await vi.advanceTimersByTimeAsync(1000);
    expect(stood.at(-1)).toMatchObject({ is: 'kept' });
  });

  it('writes nothing until it is known that no other window does', async () => {
    const pen = penOn(shelf);
    pen.wait();
    pen.write(titled('mine'));
    await vi.advanceTimersByTimeAsync(1000);
    expect(await shelf.list()).toEqual([]);
    pen.goOn();
    await vi.advanceTimersByTimeAsync(10);
    expect(await titleOn(shelf)).toBe('mine');
  });
});
