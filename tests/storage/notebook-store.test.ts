import { IDBFactory } from 'fake-indexeddb';
import 'fake-indexeddb/auto';
import { beforeEach, describe, expect, it } from 'vitest';
import { deviceStore, memoryStore, type NotebookStore, type Written } from '../../src/storage';
import { thinned } from '../../src/storage/snapshot-retention';
import { openedLast } from '../../src/storage/opened-last';
import { fileVersion } from '../../src/notebook/file-head';

const written = (text: string): Written => ({ title: `Title ${text}`, cells: 3, sizes: 2, text });
const at = (now: number, remember = false) => ({ now, remember });

describe.each<[string, () => Promise<NotebookStore>]>([
  ['on the device', deviceStore],
  ['in memory', async () => memoryStore()],
])('the shelf %s', (_where, make) => {
  let store: NotebookStore;
  beforeEach(async () => {
    globalThis.indexedDB = new IDBFactory();
    store = await make();
  });

  it('holds what was written last, and lists it, the newest first', async () => {
    expect(await store.write('a', written('one'), 0, at(10))).toBe(1);
    expect(await store.write('b', written('two'), 0, at(20))).toBe(1);
    expect(await store.write('a', written('three'), 1, at(30))).toBe(2);
    const kept = { id: 'a', title: 'Title three', cells: 3, sizes: 2, made: 10, changed: 30, revision: 2 };
    expect(await store.read('a')).toMatchObject({ kept, text: 'three' });
    expect((await store.list()).map(({ id }) => id)).toEqual(['a', 'b']);
    expect(await store.last()).toBe('a');
    await store.setLast('b');
    expect(await store.last()).toBe('b');
    expect(await store.read('c')).toBeUndefined();
  });

  it('is not written by one who does not know what stands there: neither work goes', async () => {
    await store.write('a', written('one'), 0, at(10));
    await store.write('a', written('theirs'), 1, at(20));
    expect(await store.write('a', written('mine'), 1, at(30, true))).toBeNull();
    expect(await store.write('a', written('mine'), 0, at(30))).toBeNull();
    expect((await store.read('a'))?.text).toBe('theirs');
    expect(await store.states('a')).toEqual([]);
  });

  it('remembers what stood there where it is told to, and forgets what is thinned', async () => {
    await store.write('a', written('one'), 0, at(10));
    await store.write('a', written('two'), 1, at(20, true));
    await store.write('a', written('three'), 2, at(30));
    await store.write('a', written('four'), 3, at(40, true));
    await store.write('b', written('other'), 0, at(50));
    expect((await store.states('a')).map((state) => state.at)).toEqual([30, 10]);
    expect(await store.stateAt('a', 10)).toBe('one');
    expect(await store.stateAt('a', 30)).toBe('three');
    await store.thin('a', [10]);
    expect((await store.states('a')).map((state) => state.at)).toEqual([30]);
    expect(await store.stateAt('a', 10)).toBeUndefined();
    expect(await store.states('b')).toEqual([]);
  });

  it('lists what was written last first, also after a clock was ahead', async () => {
    await store.write('a', written('one'), 0, at(70 * 86_400_000));
    await store.write('b', written('two'), 0, at(20));
    await store.write('c', written('three'), 0, at(10));
    expect((await store.list()).map(({ id }) => id)).toEqual(['c', 'b', 'a']);
  });

  it('keeps every earlier state in its order where a clock shows the same times once more', async () => {
    const times = [10, 20, 10, 20, 5];
    for (const [revision, now] of times.entries())
      await store.write('a', written(`text ${revision}`), revision, at(now, true));
    const texts = (await store.states('a')).map((state) => store.stateAt('a', state.at));
    expect(await Promise.all(texts)).toEqual(['text 3', 'text 2', 'text 1', 'text 0']);
  });

  it('brings back what was deleted, until it is forgotten', async () => {
    await store.write('a', written('one'), 0, at(10));
    await store.write('a', written('two'), 1, at(20, true));
    await store.delete('a', 100);
    const [deleted] = await store.list();
    expect(deleted).toMatchObject({ id: 'a', deleted: 100 });
    await store.delete('a', null);
    expect((await store.list())[0]).not.toHaveProperty('deleted');
    await store.forget('a');
    expect([await store.list(), await store.states('a'), await store.stateAt('a', 10)]).toEqual([
      [],
      [],
      undefined,
    ]);
  });
});

describe('a notebook in an older form of the file', () => {
  const older = '{"format":"easewright notebook","version":1,"notebook":{}}';
  const newer = `{"format":"easewright notebook","version":${fileVersion},"notebook":{}}`;

  it('stays as it was, once and for all, when it is first written in this version’s form', async () => {
    globalThis.indexedDB = new IDBFactory();
    const store = await deviceStore();
    await store.write('a', written(older), 0, at(10));
    await store.write('a', written(newer), 1, at(20));
    await store.write('a', written(newer), 2, at(30));
    const states = await store.states('a');
    expect(states).toMatchObject([{ at: 10, older: true }]);
    expect(await store.stateAt('a', 10)).toBe(older);
    const others = Array.from({ length: 200 }, (_one, order) => ({ at: 300 - order, order: 300 - order }));
    // Wherever it stands among the others: it is neither the oldest nor one of the newest.
    for (let index = 30; index < 190; index++) {
      const own = { ...states[0]!, order: 300 - index };
      expect(thinned([...others.slice(0, index), own, ...others.slice(index)])).not.toContain(10);
    }
  });
});

describe('what was open last', () => {
  beforeEach(() => {
    globalThis.indexedDB = new IDBFactory();
  });

  it('is nothing on a first visit, and looking for it makes nothing', async () => {
    expect(await openedLast()).toBeUndefined();
    expect(await indexedDB.databases()).toEqual([]);
  });

  it('is the notebook written or opened last; where that was deleted, the one written last of the others', async () => {
    const store = await deviceStore();
    await store.write('a', written('one'), 0, at(10));
    await store.write('b', written('two'), 0, at(20));
    expect((await openedLast())?.text).toBe('two');
    await store.setLast('a');
    expect((await openedLast())?.text).toBe('one');
    await store.delete('a', 30);
    expect((await openedLast())?.text).toBe('two');
    await store.delete('b', 30);
    expect(await openedLast()).toBeUndefined();
  });

  it('of a browser that keeps nothing throws, and hangs nobody', async () => {
    globalThis.indexedDB = {
      open() {
        throw new DOMException('No.', 'SecurityError');
      },
    } as unknown as IDBFactory;
    await expect(openedLast()).rejects.toThrow('No.');
    await expect(deviceStore()).rejects.toThrow('No.');
  });
});
