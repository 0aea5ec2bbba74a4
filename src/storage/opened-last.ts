import { keptFrom, lastWrittenFirst, textFrom, type KeptNotebook } from './stored-notebook';

/** The notebook that was open last. What the journal alone holds of it has no record and no text yet. */
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
 * The notebook that was open last; where it is not known which, or that one is deleted or has no text, the one
 * written last of the others; undefined on a first visit. This is read before anything can be shown, so it does without
 * the library that the rest of keeping is fetched with. A database that does not answer is waited for: until it does,
 * nobody knows whether something is kept.
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
        read.oncomplete = () => {
          database.close();
          resolve(last);
        };
        read.onabort = () => fails(read.error);
        const [notebooks, texts] = [read.objectStore('notebooks'), read.objectStore('texts')];
        /** The notebook of the journal, where it was edited after the last write of the other. */
        const edited = (): void => {
          const { id, at } = journalled ?? {};
          if (id === undefined || id === last?.id || (last?.kept && last.kept.changed > at!)) return;
          whatever(notebooks.get(id), (record) => {
            const kept = record === undefined ? undefined : keptFrom(id, record);
            if (kept?.deleted !== undefined) return;
            whatever(texts.get(id), (found) => (last = { id, kept, text: textFrom(found) }));
          });
        };
        /** Takes the first that has a text and is not deleted. */
        const accept = ([kept, ...others]: readonly KeptNotebook[], none: () => void): void => {
          if (!kept) none();
          else if (kept.deleted !== undefined) accept(others, none);
          else
            whatever(texts.get(kept.id), (found) => {
              const text = textFrom(found);
              if (text === undefined) return accept(others, none);
              last = { id: kept.id, kept, text };
              edited();
            });
        };
        const newest = (): void =>
          after(notebooks.getAll(), (all: { id: string }[]) => {
            accept(lastWrittenFirst(all.map((record) => keptFrom(record.id, record))), edited);
          });
        after(read.objectStore('page').get('last'), (id) => {
          if (typeof id !== 'string') newest();
          else whatever(notebooks.get(id), (record) => accept([keptFrom(id, record)], newest));
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
