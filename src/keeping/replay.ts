import { readFile, writeFile, type Notebook } from '../notebook';
import type { EditsHeld } from './kept';
import {
  journalKeys,
  journalStorage,
  readJournalKey,
  type JournalEntry,
  type JournalStorage,
} from './journal';
import { patched } from './patched';

/** The entries of one writer of a notebook, in order; `undefined` for one that cannot be read. */
export interface Chain {
  readonly writer: string;
  readonly entries: ReadonlyMap<number, JournalEntry | undefined>;
  /** When the last of them was written. */
  readonly at: number;
  readonly keys: readonly string[];
}

/** A notebook as the store holds it. */
export interface Stored {
  readonly revision: number;
  readonly edits?: EditsHeld | undefined;
  readonly notebook: Notebook;
}

/** What comes of a notebook and of what the journal holds of it. */
export interface Replayed {
  /** The notebook with every edit that fits; null where there is none. */
  readonly notebook: Notebook | null;
  /** The last edit of each writer that was replayed now; none where the store holds them all. */
  readonly made: Readonly<Record<string, number>>;
  /** Work that fits no revision in the store: each is a notebook of its own. */
  readonly apart: readonly Notebook[];
  /** Whether something could not be read. */
  readonly unread: boolean;
  /** Keys of the entries that are not needed once all of the above is in the store. */
  readonly keys: readonly string[];
}

/** Everything in the journal, by notebook. */
export function journalled(storage: JournalStorage | undefined = journalStorage()): Map<string, Chain[]> {
  const found = new Map<string, Map<string, { number: number; key: string }[]>>();
  for (const key of journalKeys(storage)) {
    const read = readJournalKey(key);
    if (!read) continue;
    const writers = found.get(read.notebook) ?? new Map<string, { number: number; key: string }[]>();
    found.set(read.notebook, writers);
    writers.set(read.writer, [...(writers.get(read.writer) ?? []), { number: read.number, key }]);
  }
  const chains = new Map<string, Chain[]>();
  for (const [notebook, writers] of found) {
    const own = [...writers].map(([writer, entries]) => chainOf(writer, entries, storage!));
    chains.set(
      notebook,
      own.sort((one, other) => one.at - other.at),
    );
  }
  return chains;
}

function chainOf(
  writer: string,
  found: readonly { readonly number: number; readonly key: string }[],
  storage: JournalStorage,
): Chain {
  const sorted = [...found].sort((one, other) => one.number - other.number);
  const entries = new Map<number, JournalEntry | undefined>();
  let at = 0;
  for (const { number, key } of sorted) {
    const entry = entryIn(storage.getItem(key));
    entries.set(number, entry);
    at = Math.max(at, entry?.at ?? 0);
  }
  return { writer, entries, at, keys: sorted.map(({ key }) => key) };
}

/** An entry as far as it can be looked at by itself; what comes of it is checked as a file is. */
function entryIn(text: string | null): JournalEntry | undefined {
  try {
    const entry = JSON.parse(text ?? '') as Partial<JournalEntry> | null;
    const { version, at, over, patch } = entry ?? {};
    if (version !== 1 || !Number.isFinite(at) || typeof patch !== 'object' || patch === null)
      return undefined;
    if (over !== undefined && !Number.isSafeInteger(over)) return undefined;
    return entry as JournalEntry;
  } catch {
    return undefined;
  }
}

/**
 * Makes the edits in the journal again that the store does not hold. A writer's edits fit where the store holds what they
 * were made on: its own last record, or the revision it began with. Edits that do not fit were made while another window
 * took the notebook over; they become a notebook of its own, made of what is there now and of what they changed.
 *
 * What comes of it is checked as a file is. Where that finds it damaged, the edits are left out and `unread` says so.
 *
 * @param stored what the store holds; null where it holds nothing of this notebook
 */
export function replay(stored: Stored | null, chains: readonly Chain[]): Replayed {
  const known = heldIn(stored?.edits);
  const made: Record<string, number> = {};
  const apart: Notebook[] = [];
  let notebook = stored?.notebook ?? null;
  let unread = false;
  const next = (chain: Chain): number => (known[chain.writer] ?? 0) + 1;
  const fits = (chain: Chain): boolean => {
    if (chain.writer === stored?.edits?.by && Object.keys(made).length === 0) return true;
    const first = chain.entries.get(1);
    return next(chain) === 1 && first?.over === (stored?.revision ?? 0) && sameNumbers(first.replayed, made);
  };
  const left = chains.filter((chain) => lastOf(chain) >= next(chain));
  while (left.length > 0) {
    const fitting = left.findIndex(fits);
    const [chain] = left.splice(Math.max(0, fitting), 1) as [Chain];
    // Of those that do not fit, the first entry may be of any number.
    const from = fitting < 0 ? Math.max(next(chain), firstOf(chain)) : next(chain);
    const { last, notebook: after } = played(notebook, chain, from);
    unread ||= last !== lastOf(chain);
    if (!after) continue;
    if (fitting < 0) apart.push(after);
    else {
      notebook = after;
      made[chain.writer] = last;
    }
  }
  return { notebook, made, apart, unread, keys: chains.flatMap(({ keys }) => keys) };
}

/** The last edit of each writer that a record holds. */
export function heldIn(edits: EditsHeld | undefined): Readonly<Record<string, number>> {
  return edits ? { ...edits.replayed, [edits.by]: edits.upTo } : {};
}

const lastOf = ({ entries }: Chain): number => Math.max(...entries.keys());
const firstOf = ({ entries }: Chain): number => Math.min(...entries.keys());

/** Makes a chain's edits from a number on, as far as they follow one another; checks what comes of them. */
function played(
  before: Notebook | null,
  chain: Chain,
  from: number,
): { readonly notebook?: Notebook | undefined; readonly last: number } {
  let at = before;
  let last = from - 1;
  for (let entry = chain.entries.get(from); entry; entry = chain.entries.get(last + 1)) {
    const next = tried(entry.over === 0 ? null : at, entry);
    if (!next) break;
    at = next;
    last++;
  }
  const sound = last >= from && at ? checked(at) : undefined;
  return sound ? { notebook: sound, last } : { last: from - 1 };
}

function tried(before: Notebook | null, entry: JournalEntry): Notebook | undefined {
  try {
    return patched(before, entry.patch);
  } catch {
    // Not of the form of a patch at all.
    return undefined;
  }
}

function checked(notebook: Notebook): Notebook | undefined {
  try {
    const read = readFile(writeFile(notebook));
    return 'notebook' in read ? read.notebook : undefined;
  } catch {
    return undefined;
  }
}

function sameNumbers(
  one: Readonly<Record<string, number>> | undefined,
  other: Readonly<Record<string, number>>,
): boolean {
  const own = Object.entries(one ?? {});
  return own.length === Object.keys(other).length && own.every(([writer, last]) => other[writer] === last);
}
