import { keptFrom, lastWrittenFirst, type KeptNotebook } from './stored-notebook';

/** What stands in the database, as it is found: any of it may be damaged, or gone without the rest. */
export interface Found {
  /** The records of the list, by their keys; undefined where one cannot be read. */
  readonly entries: ReadonlyMap<string, unknown>;
  /** The keys of the texts, and of those of earlier states. */
  readonly texts: readonly string[];
  readonly stateTexts: readonly (readonly [notebook: string, at: number])[];
}

/**
 * Every notebook of which anything is there, the last written first. One damaged record costs at most itself: a text
 * whose entry is gone is listed, and an entry whose text is gone.
 */
export function listing({ entries, texts, stateTexts }: Found): KeptNotebook[] {
  const withText = new Set(texts);
  const withEarlier = new Set(stateTexts.map(([notebook]) => notebook));
  const ids = new Set([...entries.keys(), ...withText, ...withEarlier]);
  return lastWrittenFirst(
    [...ids].map((id) => {
      const kept = keptFrom(id, entries.get(id));
      if (withText.has(id)) return kept;
      return { ...kept, damaged: withEarlier.has(id) ? 'text' : 'all' };
    }),
  );
}

/** The title in a text that may not be readable as a notebook. */
export function titleIn(text: string): string | undefined {
  const [, title] = /"title"\s*:\s*("(?:[^"\\]|\\.)*")/.exec(text) ?? [];
  try {
    return title === undefined ? undefined : String(JSON.parse(title)).slice(0, 200) || undefined;
  } catch {
    return undefined;
  }
}
