import { keptFrom, lastWrittenFirst, textFrom, type KeptNotebook } from './kept';

/** A browser that does not answer must not keep anybody from working. */
const patience = 3000;

export interface OpenedLast {
  readonly kept: KeptNotebook;
  readonly text: string;
}

/**
 * The notebook that was on the desk last; where it is not known which, or that one is deleted or has no text, the one
 * written last of the others; undefined on a first visit. This is read before anything can be shown, so it
 * does without the library that the rest of keeping is fetched with.
 *
 * @throws DOMException where the browser keeps nothing
 */
export function openedLast(): Promise<OpenedLast | undefined> {
  return new Promise((resolve, reject) => {
    const fails = (error: unknown): void => reject(error as Error);
    setTimeout(() => fails(new DOMException('The browser does not answer.', 'TimeoutError')), patience);
    const open = indexedDB.open('easewright');
    // Nothing is there yet: whoever keeps something first makes it.
    open.onupgradeneeded = () => {
      resolve(undefined);
      open.transaction?.abort();
    };
    open.onerror = () => fails(open.error);
    open.onsuccess = () => {
      const database = open.result;
      let last: OpenedLast | undefined;
      try {
        const read = database.transaction(['page', 'notebooks', 'texts']);
        read.oncomplete = () => {
          database.close();
          resolve(last);
        };
        read.onabort = () => fails(read.error);
        const [notebooks, texts] = [read.objectStore('notebooks'), read.objectStore('texts')];
        /** Takes the first that has a text and is not deleted. */
        const take = ([kept, ...others]: readonly KeptNotebook[], none: () => void): void => {
          if (!kept) none();
          else if (kept.deleted !== undefined) take(others, none);
          else
            whatever(texts.get(kept.id), (found) => {
              const text = textFrom(found);
              if (text === undefined) take(others, none);
              else last = { kept, text };
            });
        };
        const newest = (): void =>
          after(notebooks.getAll(), (all: { id: string }[]) => {
            take(lastWrittenFirst(all.map((record) => keptFrom(record.id, record))), () => {});
          });
        after(read.objectStore('page').get('last'), (id) => {
          if (typeof id !== 'string') newest();
          else whatever(notebooks.get(id), (record) => take([keptFrom(id, record)], newest));
        });
      } catch (error) {
        database.close();
        fails(error);
      }
    };
  });
}

function after<Found>(request: IDBRequest, then: (found: Found) => void): void {
  request.onsuccess = () => then(request.result as Found);
}

/** The same, and a record that cannot be read is as if it were not there. */
function whatever(request: IDBRequest, then: (found: unknown) => void): void {
  after(request, then);
  request.onerror = (event) => {
    event.preventDefault();
    event.stopPropagation();
    then(undefined);
  };
}
