import { fileVersion, fileVersionOf } from '../notebook';
import { openDatabase, type Database } from './database';
import { stateFrom } from './earlier-state';
import { counted, keptFrom, textFrom, type EarlierState } from './stored-notebook';
import { listing, titleIn, type Found } from './listing';
import type { NotebookStore } from './notebook-store';
import { newestFirst } from './snapshot-retention';

/** What was committed has reached the disk: it outlives a killed process, and a flat battery too. */
const strict = { durability: 'strict' } as const;

/** All the states of a notebook, whatever their times are: a list comes after any other key. */
const ofNotebook = (id: string): IDBKeyRange => IDBKeyRange.bound([id], [id, []]);

/**
 * The store in the browser's own database on the device.
 *
 * @throws DOMException where the browser keeps nothing; every method of the store may throw it too
 */
export async function deviceStore(): Promise<NotebookStore> {
  let database: Database | undefined = await openDatabase(lost);
  function lost(): void {
    database = undefined;
  }
  const opened = async (): Promise<Database> => (database ??= await openDatabase(lost));

  const textLeft = async (id: string): Promise<string | undefined> => {
    const database = await opened();
    const text = textFrom(await database.get('texts', id));
    if (text !== undefined) return text;
    const [newest] = await earlier(database, id);
    return newest && textFrom(await database.get('stateTexts', [id, newest.at]));
  };

  return {
    async list() {
      const all = listing(await found(await opened()));
      return Promise.all(
        all.map(async (kept) => {
          if (!kept.damaged || kept.damaged === 'all' || kept.title !== 'Untitled') return kept;
          return { ...kept, title: titleIn((await textLeft(kept.id)) ?? '') ?? kept.title };
        }),
      );
    },

    async read(id) {
      const read = (await opened()).transaction(['notebooks', 'texts']);
      const [record, found] = await Promise.all([
        read.objectStore('notebooks').get(id),
        read.objectStore('texts').get(id),
      ]);
      const text = textFrom(found);
      return text === undefined ? undefined : { kept: keptFrom(id, record), text };
    },

    textLeft,

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
        const page = write.objectStore('page');
        const record = await notebooks.get(id);
        const before = record && keptFrom(id, record);
        if ((before?.revision ?? 0) !== over) return null;
        const order = nextOrder(await page.get('order'), before?.order, now);
        const textBefore = textFrom(await texts.get(id));
        const older = textBefore !== undefined && (fileVersionOf(textBefore) ?? fileVersion) < fileVersion;
        if (textBefore !== undefined && (remember || older)) {
          const { changed, cells, sizes } = keptFrom(id, record);
          const stateTexts = write.objectStore('stateTexts');
          // A clock that was set back may show a time once more: the state that has it stays.
          let at = changed || now;
          while ((await stateTexts.getKey([id, at])) !== undefined) at++;
          const state = {
            notebook: id,
            at,
            order: before?.order ?? order,
            cells,
            sizes,
            ...(older && { older: true as const }),
          };
          void write.objectStore('states').put(state);
          void stateTexts.put(textBefore, [id, at]);
        }
        const made = before?.made || now;
        const kept = { id, ...what, made, changed: now, revision: over + 1, order: order + 1 };
        void notebooks.put(kept);
        void texts.put(text, id);
        void page.put(id, 'last');
        void page.put(String(kept.order), 'order');
        const failed = await done;
        if (failed) throw failed;
        return kept.revision;
      } catch (error) {
        // A full device shows only as the transaction's own end; what a request says of it is less.
        throw (await done) ?? error;
      }
    },

    async delete(id, at) {
      const write = (await opened()).transaction(['notebooks', 'texts', 'stateTexts'], 'readwrite', strict);
      const notebooks = write.objectStore('notebooks');
      const found = await notebooks.get(id);
      const { deleted: _before, damaged, ...kept } = keptFrom(id, found);
      const text = damaged && textFrom(await write.objectStore('texts').get(id));
      // What is left without an entry gets one.
      if (found || text !== undefined || (await write.objectStore('stateTexts').getKey(ofNotebook(id)))) {
        const title = damaged && kept.title === 'Untitled' ? titleIn(text ?? '') : undefined;
        await notebooks.put({ ...kept, ...(title && { title }), ...(at !== null && { deleted: at }) });
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
      return earlier(await opened(), id);
    },

    async stateAt(id, at) {
      return textFrom(await (await opened()).get('stateTexts', [id, at]));
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

/** What there is of notebooks: read at once, or, where a record stands in the way of that, one by one. */
async function found(database: Database): Promise<Found> {
  const read = database.transaction(['notebooks', 'texts', 'stateTexts']);
  const keys = [
    read.objectStore('notebooks').getAllKeys(),
    read.objectStore('texts').getAllKeys(),
    read.objectStore('stateTexts').getAllKeys(),
  ] as const;
  const [[ids, texts, stateTexts], records] = await Promise.all([
    Promise.all(keys),
    read
      .objectStore('notebooks')
      .getAll()
      .catch(() => undefined),
    read.done.catch(() => undefined),
  ]);
  const entries = new Map<string, unknown>();
  for (const [at, id] of ids.entries())
    entries.set(id, records ? records[at] : await database.get('notebooks', id).catch(() => undefined));
  return { entries, texts, stateTexts };
}

/** The earlier states that have a text, the newest first; one whose record is gone has its text all the same. */
async function earlier(database: Database, id: string): Promise<EarlierState[]> {
  const read = database.transaction(['states', 'stateTexts']);
  const [records, texts] = await Promise.all([
    read.objectStore('states').getAll(ofNotebook(id)),
    read.objectStore('stateTexts').getAllKeys(ofNotebook(id)),
  ]);
  const byTime = new Map(records.map((record) => [record.at, record]));
  return newestFirst(texts.map(([, at]) => stateFrom(id, at, byTime.get(at))));
}

/**
 * The number of a write, more than that of any before. It is counted; where the count is lost, the clock gives a number
 * that is large enough.
 */
function nextOrder(last: string | undefined, own: number | undefined, now: number): number {
  return Math.max(counted(Number(last)) ?? Math.floor(now), own ?? 0) + 1;
}
