import type { KeptNotebook } from './kept';

/** A browser that does not answer must not keep anybody from working. */
const patience = 3000;

export interface OpenedLast {
  readonly kept: KeptNotebook;
  readonly text: string;
}

/**
 * The notebook that was on the desk last; undefined on a first visit. This is read before anything can be shown, so it
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
        after(read.objectStore('page').get('last'), (id: string | undefined) => {
          if (id === undefined) return;
          after(read.objectStore('notebooks').get(id), (kept: KeptNotebook | undefined) => {
            after(read.objectStore('texts').get(id), (text: string | undefined) => {
              if (kept && text !== undefined && kept.deleted === undefined) last = { kept, text };
            });
          });
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
