import fc from 'fast-check';
import { beforeEach, describe, expect, it } from 'vitest';
import {
  heldAfter,
  Journal,
  journalKey,
  journalKeys,
  journalled,
  memoryStore,
  recover,
  replay,
  writtenOf,
  type EditsHeld,
  type JournalBase,
  type NotebookStore,
  type Stored,
} from '../../src/storage';
import { forgetEntries } from '../../src/storage/journal-entries';
import { allCells, readFile, writeFile, type Notebook } from '../../src/notebook';
import { cardigan } from '../../src/starters';
import { edited } from '../notebook/edited';
import { MapStorage } from './journal-storage';

let storage: MapStorage;
beforeEach(() => {
  storage = new MapStorage();
});

const titled = (title: string, notebook: Notebook): Notebook => edited(notebook, { do: 'retitle', title });
const hand = (value: number, notebook: Notebook): Notebook =>
  edited(notebook, { do: 'give', cell: 'hand', key: 'value', size: null, value });
const handIn = (notebook: Notebook | null): unknown => allCells(notebook!).find(({ id }) => id === 'hand');
const journal = (last: Notebook, base: JournalBase): Journal => new Journal('a', last, base, storage);
const stored = (notebook: Notebook, revision: number, edits?: EditsHeld): Stored => ({
  notebook,
  revision,
  edits,
});
const chains = () => journalled(storage).get('a') ?? [];

describe('edits in the journal', () => {
  it('that the store does not hold are made again, in order', () => {
    const base = cardigan();
    const own = journal(base, { revision: 4 });
    own.note(titled('One', base));
    own.note(titled('Two', titled('One', base)));
    const { notebook, made, apart, unread } = replay(stored(base, 4), chains());
    expect([notebook?.title, made, apart, unread]).toEqual(['Two', { [own.writer]: 2 }, [], false]);
  });

  it('that the store holds are not made twice', () => {
    const base = cardigan();
    const own = journal(base, { revision: 4 });
    const one = titled('One', base);
    own.note(one);
    // Written, and the page gone before the entry was taken out; or after, and one more edit made.
    const held = stored(one, 5, { by: own.writer, upTo: 1 });
    expect(replay(held, chains()).made).toEqual({});
    own.note(titled('Two', one));
    expect(replay(held, chains()).notebook?.title).toBe('Two');
    own.saved(1);
    expect(replay(held, chains()).notebook?.title).toBe('Two');
    own.saved(2);
    expect(journalKeys(storage)).toEqual([]);
  });

  it('of a notebook that the store does not hold at all make it', () => {
    const base = cardigan();
    const own = journal(base, { revision: 0 });
    own.note(hand(23, base));
    own.note(titled('Two', hand(23, base)));
    const { notebook } = replay(null, chains());
    expect(notebook).toEqual(titled('Two', hand(23, base)));
  });

  it('that were undone again are not made', () => {
    const base = cardigan();
    const own = journal(base, { revision: 4 });
    own.note(titled('One', base));
    own.note(base);
    expect(replay(stored(base, 4), chains()).notebook).toEqual(base);
    own.rewind();
    expect(journalKeys(storage)).toEqual([]);
    own.note(titled('Later', base));
    expect(replay(stored(base, 4), chains()).notebook?.title).toBe('Later');
  });

  it('of a window that went on from replayed edits are made on those', () => {
    const base = cardigan();
    const first = journal(base, { revision: 4 });
    first.note(titled('First', base));
    const { notebook, made } = replay(stored(base, 4), chains());
    const second = journal(notebook!, { revision: 4, replayed: made });
    second.note(hand(23, notebook!));
    const both = replay(stored(base, 4), chains());
    expect([both.notebook?.title, handIn(both.notebook), both.apart]).toEqual([
      'First',
      handIn(hand(23, base)),
      [],
    ]);
    // Also where the clock was put back meanwhile, so that the second is listed first.
    expect(replay(stored(base, 4), [...chains()].reverse()).notebook).toEqual(both.notebook);
  });

  it('of a notebook the store does not hold, gone on with by another window, are made once', () => {
    const base = cardigan();
    journal(base, { revision: 0 }).note(titled('First', base));
    const { notebook, made } = replay(null, chains());
    journal(notebook!, { revision: 0, replayed: made }).note(hand(23, notebook!));
    const both = replay(null, chains());
    expect([both.notebook?.title, handIn(both.notebook), both.apart]).toEqual([
      'First',
      handIn(hand(23, base)),
      [],
    ]);
  });

  it('that another window has gone past are a notebook of its own', () => {
    const base = cardigan();
    const asleep = journal(base, { revision: 4 });
    asleep.note(hand(77, base));
    const theirs = titled('Theirs', base);
    const { notebook, apart } = replay(stored(theirs, 6, { by: 'another', upTo: 3 }), chains());
    expect([notebook?.title, handIn(notebook)]).toEqual(['Theirs', handIn(base)]);
    expect(apart.map(handIn)).toEqual([handIn(hand(77, base))]);
  });

  it('after one that is missing or damaged are left out, and it is said', () => {
    const base = cardigan();
    const own = journal(base, { revision: 4 });
    const states = ['One', 'Two', 'Three'].map((title) => titled(title, base));
    for (const state of states) own.note(state);
    const key = journalKey('a', own.writer, 2);
    const whole = storage.getItem(key)!;
    for (const damage of [undefined, '', '{', 'null', '{"version":1,"at":1,"patch":{"unset":["sizes"]}}']) {
      if (damage === undefined) storage.removeItem(key);
      else storage.setItem(key, damage);
      const { notebook, unread } = replay(stored(base, 4), chains());
      expect(unread).toBe(true);
      // What comes of a patch that is none is refused whole, as a damaged file is.
      expect(['One', base.title]).toContain(notebook?.title);
    }
    storage.setItem(key, whole);
    expect(replay(stored(base, 4), chains()).notebook?.title).toBe('Three');
  });

  it('whatever stands in them, give a sound notebook or none', () => {
    const base = cardigan();
    fc.assert(
      fc.property(
        fc.record({
          version: fc.constant(1),
          at: fc.constant(1),
          over: fc.option(fc.constantFrom(0, 4), { nil: undefined }),
          patch: fc.oneof(
            fc.json().map((text) => JSON.parse(text) as unknown),
            fc.record({
              set: fc.oneof(fc.dictionary(fc.string(), fc.jsonValue()), fc.jsonValue()),
              cells: fc.oneof(fc.array(fc.jsonValue()), fc.jsonValue()),
              sections: fc.oneof(fc.array(fc.jsonValue()), fc.jsonValue()),
              wording: fc.jsonValue(),
              unset: fc.jsonValue(),
            }),
          ),
        }),
        (entry) => {
          storage.setItem(journalKey('a', 'w', 1), JSON.stringify(entry));
          for (const there of [stored(base, 4), null]) {
            const { notebook, apart } = replay(there, chains());
            for (const one of [...(notebook ? [notebook] : []), ...apart]) {
              expect(readFile(writeFile(one))).toHaveProperty('notebook');
            }
          }
          expect('polluted' in {}).toBe(false);
        },
      ),
      { numRuns: 100 },
    );
  });

  it('that find no room are not followed by others, until all is in the store', () => {
    const base = cardigan();
    const own = journal(base, { revision: 4 });
    own.note(titled('One', base));
    storage.most = 0;
    own.note(titled('Two', base));
    storage.most = Infinity;
    own.note(titled('Three', base));
    expect([own.complete, own.refused]).toEqual([false, true]);
    expect(replay(stored(base, 4), chains()).notebook?.title).toBe('One');
    own.saved(3);
    expect(own.complete).toBe(true);
    own.note(titled('Four', base));
    const held = stored(titled('Three', base), 5, { by: own.writer, upTo: 3 });
    expect(replay(held, chains()).notebook?.title).toBe('Four');
  });
});

describe('notebooks that no window has open', () => {
  let store: NotebookStore;
  const titles = async (): Promise<string[]> => (await store.list()).map(({ title }) => title).sort();
  const recovered = () => recover(store, 'a', chains());
  // What `recover` takes out is in the browser's own storage.
  const clear = (): void => forgetEntries(journalKeys(storage), storage);

  beforeEach(async () => {
    store = memoryStore();
    await store.write('b', writtenOf(titled('Other', cardigan())), 0, { now: 1, remember: false });
  });

  it('get their edits written, once, and what was open last stays that', async () => {
    await store.write('a', writtenOf(cardigan()), 0, { now: 1, remember: false });
    await store.setLast('b');
    journal(cardigan(), { revision: 1 }).note(titled('One', cardigan()));
    await recovered();
    expect([await titles(), await store.last()]).toEqual([['One', 'Other'], 'b']);
    await recovered();
    expect((await store.list()).find(({ id }) => id === 'a')?.revision).toBe(2);
    clear();
  });

  it('that were deleted stay so, with their edits', async () => {
    await store.write('a', writtenOf(cardigan()), 0, { now: 1, remember: false });
    await store.delete('a', 5);
    journal(cardigan(), { revision: 1 }).note(titled('One', cardigan()));
    await recovered();
    expect((await store.list()).find(({ id }) => id === 'a')).toMatchObject({ deleted: 5, revision: 1 });
    expect(journalKeys(storage)).toHaveLength(1);
  });

  it('leave work that fits nothing in a notebook of its own', async () => {
    await store.write('a', writtenOf(cardigan()), 0, { now: 1, remember: false });
    await store.write('a', writtenOf(titled('Theirs', cardigan())), 1, { now: 2, remember: false });
    journal(cardigan(), { revision: 1 }).note(hand(77, cardigan()));
    expect((await recovered()).apart).toEqual(['Theirs (other window)']);
    expect(await titles()).toEqual(['Other', 'Theirs', 'Theirs (other window)']);
  });

  it('are named in the record with the last edit of each writer', () => {
    expect(heldAfter(undefined, { w: 3 })).toEqual({ by: 'w', upTo: 3 });
    expect(heldAfter({ by: 'v', upTo: 2 }, { w: 3 })).toEqual({ by: 'w', upTo: 3, replayed: { v: 2 } });
    expect(heldAfter({ by: 'w', upTo: 2 }, { w: 3 })).toEqual({ by: 'w', upTo: 3 });
  });
});
