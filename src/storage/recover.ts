import { readFile, type Notebook } from '../notebook';
import { forgetEntries } from './journal-entries';
import type { EditsHeld } from './stored-notebook';
import { writtenOf } from './autosaver';
import { heldIn, replay, type Chain } from './replay';
import type { NotebookStore } from './notebook-store';

/** What was recovered of a notebook that no window has open. */
export interface Recovered {
  /** Titles of the notebooks that were made of edits which fitted no revision. */
  readonly apart: readonly string[];
  /** The title of the notebook, where some of its edits could not be read. */
  readonly unread?: string;
  /** The title of the notebook, where a newer version of the page made some of its edits: they wait for that. */
  readonly newer?: string;
}

/** The title of work that another window had gone past. */
export function titleApart(title: string): string {
  return `${title.slice(0, 180)} (other window)`;
}

/** What a record says of edits once these have been replayed on it. */
export function heldAfter(
  before: EditsHeld | undefined,
  made: Readonly<Record<string, number>>,
): EditsHeld | undefined {
  const by = Object.keys(made).at(-1);
  if (by === undefined) return before;
  const { [by]: upTo, ...replayed } = { ...heldIn(before), ...made };
  return { by, upTo: upTo!, ...(Object.keys(replayed).length > 0 ? { replayed } : {}) };
}

/**
 * Writes to the store what the journal alone holds of a notebook that no window has open: who calls this holds its lock. A
 * notebook that was deleted is left as it is, and its edits too, until it is brought back and opened.
 *
 * @throws what the store throws; the entries then stay in the journal
 */
export async function recover(
  store: NotebookStore,
  id: string,
  chains: readonly Chain[],
): Promise<Recovered> {
  const found = await store.read(id);
  if (found?.kept.deleted !== undefined) return { apart: [] };
  const read = found && readFile(found.text);
  // A damaged record keeps its edits: they may fit what is left of it.
  if (read && 'problem' in read) return { apart: [] };
  const stored = found && read ? { ...found.kept, notebook: read.notebook, text: found.text } : null;
  const { notebook, made, apart, unread, newer, keys } = replay(stored, chains);
  const last = await store.last();
  if (notebook && Object.keys(made).length > 0) {
    const edits = heldAfter(stored?.edits, made);
    const written = { ...writtenOf(notebook), ...(edits ? { edits } : {}) };
    const options = { now: Date.now(), remember: true };
    if ((await store.write(id, written, stored?.revision ?? 0, options)) === null) return { apart: [] };
  }
  const titles: string[] = [];
  for (const own of apart) {
    const title = titleApart(own.title);
    await writeNew(store, { ...own, title });
    titles.push(title);
  }
  if (last !== undefined) await store.setLast(last);
  forgetEntries(keys);
  const title = (notebook ?? stored?.notebook)?.title ?? 'A notebook';
  return { apart: titles, ...(unread ? { unread: title } : {}), ...(newer ? { newer: title } : {}) };
}

async function writeNew(store: NotebookStore, notebook: Notebook): Promise<void> {
  await store.write(crypto.randomUUID(), writtenOf(notebook), 0, { now: Date.now(), remember: false });
}
