import { openDatabase, type Database } from './database';
import type { KeptNotebook } from './kept';
import type { Shelf } from './shelf';

/** What was committed has reached the disk: it outlives a killed process, and a flat battery too. */
const strict = { durability: 'strict' } as const;

/** All the states of a notebook: their times are numbers, which come before any text. */
const ofNotebook = (id: string): IDBKeyRange => IDBKeyRange.bound([id, -Infinity], [id, Infinity]);

/**
 * The shelf in the browser's own database on the device.
 *
 * @throws DOMException where the browser keeps nothing; every method of the shelf may throw it too
 */
export async function deviceShelf(): Promise<Shelf> {
  let database: Database | undefined = await openDatabase(lost);
  function lost(): void {
    database = undefined;
  }
  const opened = async (): Promise<Database> => (database ??= await openDatabase(lost));

  return {
    async list() {
      const all: KeptNotebook[] = await (await opened()).getAll('notebooks');
      return all.sort((one, other) => other.changed - one.changed);
    },

    async read(id) {
      const read = (await opened()).transaction(['notebooks', 'texts']);
      const [kept, text] = await Promise.all([
        read.objectStore('notebooks').get(id),
        read.objectStore('texts').get(id),
      ]);
      return kept && text !== undefined ? { kept, text } : undefined;
    },

    async write(id, { text, ...what }, over, { now, remember }) {
      const write = (await opened()).transaction(
        ['notebooks', 'texts', 'states', 'stateTexts', 'page'],
        'readwrite',
        strict,
      );
      const done = write.done.then(
        () => undefined,
        (error: unknown) => error ?? new DOMException('The write was given up.', 'AbortError'),
      );
      try {
        const notebooks = write.objectStore('notebooks');
        const texts = write.objectStore('texts');
        const before = await notebooks.get(id);
        if ((before?.revision ?? 0) !== over) return null;
        if (before && remember) {
          const { changed: at, cells, sizes } = before;
          const textBefore = await texts.get(id);
          if (textBefore !== undefined) {
            void write.objectStore('states').put({ notebook: id, at, cells, sizes });
            void write.objectStore('stateTexts').put(textBefore, [id, at]);
          }
        }
        const kept = { id, ...what, made: before?.made ?? now, changed: now, revision: over + 1 };
        void notebooks.put(kept);
        void texts.put(text, id);
        void write.objectStore('page').put(id, 'last');
        const failed = await done;
        if (failed) throw failed;
        return kept.revision;
      } catch (error) {
        // A full device shows only as the transaction's own end; what a request says of it is less.
        throw (await done) ?? error;
      }
    },

    async delete(id, at) {
      const write = (await opened()).transaction('notebooks', 'readwrite', strict);
      const found = await write.store.get(id);
      if (found) {
        const { deleted: _before, ...kept } = found;
        await write.store.put(at === null ? kept : { ...kept, deleted: at });
      }
      await write.done;
    },

    async forget(id) {
      const write = (await opened()).transaction(
        ['notebooks', 'texts', 'states', 'stateTexts'],
        'readwrite',
        strict,
      );
      await Promise.all([
        write.objectStore('notebooks').delete(id),
        write.objectStore('texts').delete(id),
        write.objectStore('states').delete(ofNotebook(id)),
        write.objectStore('stateTexts').delete(ofNotebook(id)),
        write.done,
      ]);
    },

    async states(id) {
      return (await (await opened()).getAll('states', ofNotebook(id))).reverse();
    },

    async stateAt(id, at) {
      return (await opened()).get('stateTexts', [id, at]);
    },

    async thin(id, times) {
      if (times.length === 0) return;
      const write = (await opened()).transaction(['states', 'stateTexts'], 'readwrite');
      await Promise.all([
        ...times.flatMap((at) => [
          write.objectStore('states').delete([id, at]),
          write.objectStore('stateTexts').delete([id, at]),
        ]),
        write.done,
      ]);
    },

    last: async () => (await opened()).get('page', 'last'),
    async setLast(id) {
      await (await opened()).put('page', id, 'last');
    },
  };
}
