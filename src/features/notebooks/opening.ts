import {
  type KeptNotebook,
  journalKeys,
  openedLast,
  type Replayed,
  storageErrorOf,
  type StorageError,
} from '../../storage';
import type { FileRead, Notebook } from '../../notebook';
import { loadCardigan } from '../../starters/lazy';
import { loadReplay, loadShareAddress } from '../../storage/lazy';
import { loadNotebookFile } from '../../notebook/lazy';

const linkBeginning = '#notebook=';

/** A notebook that was found, with the edits that the journal held of it. */
export interface Found {
  readonly id: string;
  readonly notebook: Notebook;
  /** What the store holds of it; undefined where it holds nothing yet. */
  readonly kept?: KeptNotebook | undefined;
  /** As the store holds it, where edits were replayed on that. */
  readonly stored?: Notebook | undefined;
  readonly replayed?: Replayed | undefined;
}

/** What the page opens with. */
export interface Opening extends Omit<Found, 'id'> {
  /** Undefined for a notebook that is not kept yet. */
  readonly id?: string;
  /** Why the browser keeps nothing, where that showed already. */
  readonly error?: StorageError;
  /** The notebook in the link that the page was opened with, or why there is none. */
  readonly link?: FileRead;
  /** What was kept and could not be opened, and why. */
  readonly damaged?: { readonly title: string; readonly text: string; readonly problem: string };
  /** What the store will have answered, where the person went on with an example before it did. */
  readonly late?: Promise<Opening>;
}

/** The notebook that was open last; the starter cardigan on a first visit, or where that one cannot be read. */
export async function opening(): Promise<Opening> {
  const [last, link] = await Promise.all([lastOne(), linked()]);
  const rest = link ? { link } : {};
  if ('notebook' in last) return { ...last, ...rest };
  return { ...(await example()), ...last, ...rest };
}

/** The starter cardigan, as a page begins with it. */
export async function example(): Promise<Opening> {
  const { cardigan } = await loadCardigan();
  return { notebook: cardigan() };
}

async function lastOne(): Promise<Opening | Omit<Opening, 'notebook'>> {
  try {
    const journal = journalKeys().length > 0 ? await loadReplay() : undefined;
    const chains = journal?.journalled() ?? new Map<string, readonly never[]>();
    const edited = [...chains].map(([id, own]) => ({ id, at: Math.max(...own.map(({ at }) => at)) }));
    const last = await openedLast(edited.sort((one, other) => other.at - one.at)[0]);
    if (!last) return {};
    const { id, kept, text } = last;
    const read = text === undefined ? undefined : await readFile(text);
    if (read && 'problem' in read) {
      return { damaged: { title: kept?.title ?? '', text: text!, problem: read.problem } };
    }
    const own = chains.get(id);
    if (!journal || !own) return read ? { id, kept, notebook: read.notebook } : {};
    const stored = read && kept ? { ...kept, notebook: read.notebook, text } : null;
    const replayed = journal.replay(stored, own);
    if (!replayed.notebook) return {};
    return { id, kept, notebook: replayed.notebook, stored: stored?.notebook, replayed };
  } catch (error) {
    return { error: storageErrorOf(error) };
  }
}

/** The notebook in the address of the page, or why it cannot be read; undefined where there is none in it. */
export async function linked(): Promise<FileRead | undefined> {
  const { hash } = location;
  if (!hash.startsWith(linkBeginning)) return undefined;
  const { textInLink } = await loadShareAddress();
  const found = await textInLink(hash);
  return 'problem' in found ? found : readFile(found.text);
}

/** Takes the notebook of a link that was dealt with out of the address. */
export function forgetLink(): void {
  if (location.hash.startsWith(linkBeginning))
    history.replaceState(null, '', location.pathname + location.search);
}

/** What checks a file is fetched for those who have one: a first visit opens without. */
async function readFile(text: string): Promise<FileRead> {
  return (await loadNotebookFile()).readFile(text);
}
