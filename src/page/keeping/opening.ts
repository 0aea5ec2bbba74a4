import { openedLast } from '../../keeping/opened-last';
import { troubleOf, type Trouble } from '../../keeping/trouble';
import type { FileRead, Notebook } from '../../notebook';

/** What the page opens with. */
export interface Opening {
  readonly notebook: Notebook;
  /** What is kept of it; undefined where it is not kept yet. */
  readonly kept?: { readonly id: string; readonly revision: number; readonly changed: number };
  /** Why the browser keeps nothing, where that showed already. */
  readonly trouble?: Trouble;
  /** The notebook in the link that the page was opened with, or why there is none. */
  readonly link?: FileRead;
  /** What was kept and could not be opened, and why. */
  readonly damaged?: { readonly title: string; readonly text: string; readonly problem: string };
}

/** The notebook that was open last; the starter cardigan on a first visit, or where that one cannot be read. */
export async function opening(): Promise<Opening> {
  const [last, link] = await Promise.all([lastOne(), linked()]);
  const rest = link ? { link } : {};
  if ('notebook' in last) return { ...last, ...rest };
  const { cardigan } = await import('../../starters/cardigan');
  return { notebook: cardigan(), ...last, ...rest };
}

async function lastOne(): Promise<Opening | Omit<Opening, 'notebook'>> {
  try {
    const last = await openedLast();
    if (!last) return {};
    const { kept, text } = last;
    const read = await readFile(text);
    if ('notebook' in read) return { notebook: read.notebook, kept };
    return { damaged: { title: kept.title, text, problem: read.problem } };
  } catch (error) {
    return { trouble: troubleOf(error) };
  }
}

/** The notebook in the address of the page, or why it cannot be read; undefined where there is none in it. */
export async function linked(): Promise<FileRead | undefined> {
  const { hash } = location;
  if (!hash.startsWith('#notebook=')) return undefined;
  const { textInLink } = await import('../../keeping/link');
  const found = await textInLink(hash);
  return 'problem' in found ? found : readFile(found.text);
}

/** What checks a file is fetched for those who have one: a first visit opens without. */
async function readFile(text: string): Promise<FileRead> {
  return (await import('../../notebook/file')).readFile(text);
}
