import { journalPrefix, journalStorage } from './journal';

/** What a key says, if it is one of the journal's. */
export function readJournalKey(
  key: string,
): { readonly notebook: string; readonly writer: string; readonly number: number } | undefined {
  if (!key.startsWith(journalPrefix)) return undefined;
  const parts = key.slice(journalPrefix.length).split('/');
  const number = Number(parts.at(-1));
  if (parts.length < 3 || !Number.isSafeInteger(number) || number < 1) return undefined;
  return { notebook: parts.slice(0, -2).join('/'), writer: parts.at(-2)!, number };
}

/** Takes entries out of the journal. */
export function forgetEntries(keys: readonly string[], storage = journalStorage()): void {
  for (const key of keys) {
    try {
      storage?.removeItem(key);
    } catch {
      // It is passed over the next time too.
    }
  }
}
