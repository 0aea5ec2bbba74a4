import { journalStorage } from '../../storage';

const keyOf = (notebook: string): string => `easewright pattern/${notebook}`;
const inMemory = new Map<string, string>();

/** A pattern that was put in, and that no notebook was made of yet, as it was left; undefined where there is none. */
export function draftOf(notebook: string): string | undefined {
  try {
    return inMemory.get(notebook) ?? journalStorage()?.getItem(keyOf(notebook)) ?? undefined;
  } catch {
    return undefined;
  }
}

/**
 * Keeps a pattern as it stands, for when its view, or the page, is opened again. `null` takes it away, since it is in a
 * notebook. Where the browser has no storage for it, it stays as long as the page does.
 */
export function keepDraft(notebook: string, text: string | null): void {
  if (text === null) inMemory.delete(notebook);
  else inMemory.set(notebook, text);
  try {
    if (text === null) journalStorage()?.removeItem(keyOf(notebook));
    else journalStorage()?.setItem(keyOf(notebook), text);
  } catch {
    // Full: it is in memory.
  }
}
