import { journalled, lockOf, replay, writtenOf, type NotebookStore } from '../../storage';
import { readFile } from '../../notebook';
import type { Found } from './opening';

export const openElsewhere =
  'That notebook is being edited in another window. Do this there, or close that window.';
const gone = 'That notebook is no longer there.';

/** Does something to a notebook that no window writes at the moment. */
export async function alone(id: string, act: () => Promise<string | undefined>): Promise<string | undefined> {
  if (!navigator.locks) return act();
  return navigator.locks.request(lockOf(id), { ifAvailable: true }, (lock) => (lock ? act() : openElsewhere));
}

/** What the store and the journal hold of a notebook; undefined for nothing; or why it cannot be opened. */
export async function findOn(
  store: NotebookStore,
  id: string,
): Promise<Found | { readonly problem: string } | undefined> {
  const there = await store.read(id);
  const read = there && readFile(there.text);
  if (read && 'problem' in read) return read;
  const chains = journalled().get(id);
  if (!chains) return there && read ? { id, notebook: read.notebook, kept: there.kept } : undefined;
  const stored = there && read ? { ...there.kept, notebook: read.notebook, text: there.text } : null;
  const replayed = replay(stored, chains);
  if (!replayed.notebook) return undefined;
  return { id, notebook: replayed.notebook, kept: there?.kept, stored: stored?.notebook, replayed };
}

/** Makes a copy of a notebook; gives back why not. The open notebook stays the one that was open last. */
export async function duplicateOn(
  store: NotebookStore,
  id: string,
  inWorkspace: string,
): Promise<string | undefined> {
  const found = await store.read(id);
  const read = found && readFile(found.text);
  if (!read) return gone;
  if ('problem' in read) return read.problem;
  const title = `${read.notebook.title.slice(0, 190)} (copy)`;
  await store.write(crypto.randomUUID(), writtenOf({ ...read.notebook, title }), 0, {
    now: Date.now(),
    remember: false,
  });
  await store.setLast(inWorkspace);
  return undefined;
}

/** Gives a notebook that no window writes another title; gives back why not. */
export async function renameOn(
  store: NotebookStore,
  id: string,
  title: string,
  inWorkspace: string,
): Promise<string | undefined> {
  const found = await store.read(id);
  const read = found && readFile(found.text);
  if (!read) return gone;
  if ('problem' in read) return read.problem;
  const renamed = { ...read.notebook, title: title.trim().slice(0, 200) || 'Untitled' };
  // The same edits of the journal are in it as before.
  const { edits, revision } = found.kept;
  const written = { ...writtenOf(renamed), ...(edits ? { edits } : {}) };
  const now = await store.write(id, written, revision, { now: Date.now(), remember: false });
  await store.setLast(inWorkspace);
  return now === null ? openElsewhere : undefined;
}

/** Asks the browser not to clear what is kept, once there is more than one notebook to lose. */
export async function askToStay(store: NotebookStore): Promise<void> {
  try {
    const there = (await store.list()).filter(({ deleted }) => deleted === undefined);
    if (there.length > 1 && !(await navigator.storage.persisted())) await navigator.storage.persist();
  } catch {
    // A browser that cannot be asked keeps things as it does.
  }
}
