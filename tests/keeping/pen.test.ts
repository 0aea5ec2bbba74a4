import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { memoryShelf, Pen, type Shelf, type Standing } from '../../src/keeping';
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
});
