import { IDBFactory } from 'fake-indexeddb';
import 'fake-indexeddb/auto';
import { unwrap } from 'idb';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { deviceStore, titleIn, writtenOf, type NotebookStore } from '../../src/storage';
import { openDatabase } from '../../src/storage/database';
import { openedLast } from '../../src/storage/opened-last';
import { readFile } from '../../src/notebook';
import { cardigan } from '../../src/starters';
import { damages } from './damages';

const titled = (title: string) => writtenOf({ ...cardigan(), title });
const stores = ['notebooks', 'texts', 'states', 'stateTexts', 'page'] as const;
type Stores = (name: string) => IDBObjectStore;

let store: NotebookStore;
beforeEach(async () => {
  globalThis.indexedDB = new IDBFactory();
  store = await deviceStore();
  await store.write('b', titled('Other'), 0, { now: 10, remember: false });
  await store.write('a', titled('Before'), 0, { now: 20, remember: false });
  await store.write('a', titled('Spoilt'), 1, { now: 30, remember: true });
});

/** Does something to the database itself, past the store. */
async function spoil(damage: (store: Stores) => void): Promise<void> {
  const database = await openDatabase();
  const write = database.transaction([...stores], 'readwrite');
  const own = unwrap(write);
  damage((name) => own.objectStore(name));
  await write.done;
  database.close();
}

/** A request that fails as one does whose record is damaged on the disk. */
function failing<Request extends IDBRequest>(request: Request): Request {
  const error = new DOMException('Unreadable.', 'DataError');
  Object.defineProperty(request, 'error', { get: () => error, set: () => {} });
  request.addEventListener = (type: string, then: EventListenerOrEventListenerObject | null) => {
    if (type === 'error') setTimeout(then as () => void);
  };
  return request;
}
const byId = async (id: string) => (await store.list()).find((kept) => kept.id === id);

describe.each(damages.map((one) => [one.what, one] as const))(
  'damage: %s',
  (_what, { left, reported: isReported, damage }) => {
    beforeEach(() => spoil((store) => damage(store, 'a')));

    it('is listed, with its title where any is left, and said where it shows; others are as they were', async () => {
      const [kept, other] = [await byId('a'), await byId('b')];
      expect(kept).toMatchObject({ title: 'Spoilt' });
      expect(kept!.deleted).toBeUndefined();
      expect(kept!.damaged !== undefined).toBe(isReported);
      for (const number of [kept!.changed, kept!.made, kept!.revision, kept!.cells, kept!.sizes])
        expect(number).toSatisfy(Number.isFinite);
      expect(other).toMatchObject({ title: 'Other', changed: 10, revision: 1 });
      expect(other!.damaged).toBeUndefined();
      expect(await store.list()).toHaveLength(2);
    });

    it('leaves what is left of the text within reach, and the page opens', async () => {
      const text = (await store.textLeft('a'))!;
      const whole = titled(left === 'earlier' ? 'Before' : 'Spoilt').text;
      if (left === 'text') expect(whole.startsWith(text) && text.length > 1000).toBe(true);
      else expect(readFile(text)).toEqual(readFile(whole));
      const opened = (await openedLast())!;
      expect(opened.text).toBe(left === 'earlier' ? titled('Other').text : opened.id === 'a' ? text : '');
    });

    it('does not keep earlier states from being read, nor the work from going on', async () => {
      for (const { at } of await store.states('a')) expect(await store.stateAt('a', at)).toBeDefined();
      expect(await store.states('a')).not.toEqual([]);
      const found = await store.read('a');
      if (left === 'earlier') {
        expect(found).toBeUndefined();
        return;
      }
      const before = await store.states('a');
      const revision = await store.write('a', titled('After'), found!.kept.revision, {
        now: 40,
        remember: true,
      });
      expect(revision).toBe(found!.kept.revision + 1);
      const after = await byId('a');
      expect(after).toMatchObject({ title: 'After', changed: 40 });
      expect(after!.damaged).toBeUndefined();
      expect((await store.list())[0]!.id).toBe('a');
      // What was written over is an earlier state, and the newest.
      const states = await store.states('a');
      expect(states).toHaveLength(before.length + 1);
      expect(await store.stateAt('a', states[0]!.at)).toBe(found!.text);
    });

    it('can be deleted and brought back, and taken away whole', async () => {
      await store.delete('a', 50);
      expect(await byId('a')).toMatchObject({ title: 'Spoilt', deleted: 50 });
      await store.delete('a', null);
      expect((await byId('a'))!.deleted).toBeUndefined();
      await store.forget('a');
      const database = await openDatabase();
      expect((await store.list()).map(({ id }) => id)).toEqual(['b']);
      for (const store of ['states', 'stateTexts'] as const)
        expect(await database.getAllKeys(store)).toEqual([]);
      database.close();
    });
  },
);

describe('a damaged record', () => {
  it('that cannot be read at all costs only itself in the list', async () => {
    const { getAll, get } = IDBObjectStore.prototype;
    const fails = vi.spyOn(IDBObjectStore.prototype, 'getAll').mockImplementation(function (
      this: IDBObjectStore,
    ) {
      const request = getAll.call(this);
      return this.name === 'notebooks' ? failing(request) : request;
    });
    const unreadable = vi.spyOn(IDBObjectStore.prototype, 'get').mockImplementation(function (
      this: IDBObjectStore,
      key,
    ) {
      const request = get.call(this, key);
      return this.name === 'notebooks' && key === 'a' ? failing(request) : request;
    });
    const entries = await store.list();
    fails.mockRestore();
    unreadable.mockRestore();
    expect(entries.map(({ id, title, damaged }) => [id, title, damaged])).toEqual([
      ['b', 'Other', undefined],
      ['a', 'Spoilt', 'entry'],
    ]);
  });

  it('of which only earlier states are left is listed, and they can be had', async () => {
    await spoil((store) => {
      store('notebooks').delete('a');
      store('texts').delete('a');
    });
    expect(await byId('a')).toMatchObject({ title: 'Before', damaged: 'text' });
    expect(await store.textLeft('a')).toBe(titled('Before').text);
    await store.delete('a', 50);
    expect(await byId('a')).toMatchObject({ deleted: 50 });
  });

  it('of which no text is left says so', async () => {
    await spoil((store) => {
      store('texts').delete('a');
      store('stateTexts').clear();
    });
    expect(await byId('a')).toMatchObject({ title: 'Spoilt', damaged: 'all' });
    expect(await store.textLeft('a')).toBeUndefined();
    expect(await store.states('a')).toEqual([]);
  });

  it('may have its title in a text that is no notebook', () => {
    expect(titleIn('{"notebook":{"title":"A \\"good\\" one","settings')).toBe('A "good" one');
    for (const none of ['', '{"title":3', '{"title":"\\x"', '{"title":"cut'])
      expect(titleIn(none)).toBeUndefined();
  });
});
