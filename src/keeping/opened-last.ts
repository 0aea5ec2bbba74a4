import type { KeptNotebook } from './kept';

/** The notebook that was on the desk last. What the journal alone holds of it has no record and no text yet. */
export interface OpenedLast {
  readonly id: string;
  readonly kept?: KeptNotebook | undefined;
  readonly text?: string | undefined;
}

/** A notebook that the journal holds edits of, and when the last of them was made. */
export interface Journalled {
  readonly id: string;
  readonly at: number;
}

/**
 * The notebook that was on the desk last; undefined on a first visit. This is read before anything can be shown, so it
 * does without the library that the rest of keeping is fetched with. A database that does not answer is waited for: until
 * it does, nobody knows whether something is kept.
 *
 * @param journalled the notebook edited last by the journal; it is taken where that was after the last write
 * @throws DOMException where the browser keeps nothing
 */
export function openedLast(journalled?: Journalled): Promise<OpenedLast | undefined> {
  return new Promise((resolve, reject) => {
    const fails = (error: unknown): void => reject(error as Error);
    const open = indexedDB.open('easewright');
    // Nothing is there yet: whoever keeps something first makes it.
    open.onupgradeneeded = () => {
      resolve(journalled && { id: journalled.id });
      open.transaction?.abort();
    };
    open.onerror = () => fails(open.error);
    open.onsuccess = () => {
      const database = open.result;
      let last: OpenedLast | undefined;
      try {
        const read = database.transaction(['page', 'notebooks', 'texts']);
        const found = (id: string, then: (kept?: KeptNotebook, text?: string) => void): void =>
          after(read.objectStore('notebooks').get(id), (kept: KeptNotebook | undefined) => {
            after(read.objectStore('texts').get(id), (text: string | undefined) => then(kept, text));
          });
        read.oncomplete = () => {
          database.close();
          resolve(last);
        };
        read.onabort = () => fails(read.error);
        after(read.objectStore('page').get('last'), (id: string | undefined) => {
          const edited = (): void => {
            const { id: own, at } = journalled ?? {};
            if (own === undefined || own === last?.id || (last?.kept && last.kept.changed > at!)) return;
            found(own, (kept, text) => {
              if (kept?.deleted === undefined) last = { id: own, kept, text };
            });
          };
          if (id === undefined) edited();
          else {
            found(id, (kept, text) => {
              if (kept && text !== undefined && kept.deleted === undefined) last = { id, kept, text };
              edited();
            });
          }
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
