import { openDatabase } from './database';
import type { KeptNotebook } from './kept';

/** A browser that does not answer must not keep anybody from working. */
const patience = 3000;

/**
 * The notebook that was on the desk last; undefined on a first visit.
 *
 * @throws DOMException where the browser keeps nothing
 */
export async function openedLast(): Promise<
  { readonly kept: KeptNotebook; readonly text: string } | undefined
> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const tired = new Promise<never>((_resolve, reject) => {
    timer = setTimeout(
      () => reject(new DOMException('The browser does not answer.', 'TimeoutError')),
      patience,
    );
  });
  try {
    return await Promise.race([readLast(), tired]);
  } finally {
    clearTimeout(timer);
  }
}

async function readLast(): Promise<{ kept: KeptNotebook; text: string } | undefined> {
  const database = await openDatabase();
  try {
    const read = database.transaction(['page', 'notebooks', 'texts']);
    const id = await read.objectStore('page').get('last');
    if (id === undefined) return undefined;
    const kept = await read.objectStore('notebooks').get(id);
    const text = await read.objectStore('texts').get(id);
    return kept && text !== undefined && kept.deleted === undefined ? { kept, text } : undefined;
  } finally {
    database.close();
  }
}
