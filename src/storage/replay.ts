import {
  readFile,
  type Notebook,
  fileFormat,
  fileVersion,
  fileVersionOf,
  migrated,
  migrations,
} from '../notebook';
import type { EditsHeld } from './stored-notebook';
import { journalKeys, journalStorage, type JournalEntry, type JournalStorage } from './journal';
import { readJournalKey } from './journal-entries';
import type { NotebookPatch } from './patch';
import { patched } from './patched';

/** The entries of one writer of a notebook, in order; `undefined` for one that cannot be read. */
export interface Chain {
  readonly writer: string;
  readonly entries: ReadonlyMap<number, JournalEntry | undefined>;
  /** When the last of them was written. */
  readonly at: number;
  readonly keys: readonly string[];
  /** Whether a newer version of the page wrote them: they wait for that version. */
  readonly newer: boolean;
}

/** A notebook as the store holds it. */
export interface Stored {
  readonly revision: number;
  readonly edits?: EditsHeld | undefined;
  readonly notebook: Notebook;
  /** The text it was read from: edits are made on it as it stood, where it is of an older version of the file. */
  readonly text?: string | undefined;
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
  /** Whether a newer version of the page made some of the edits: they are not in the notebook, and stay in the journal. */
  readonly newer: boolean;
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
  let newer = false;
  for (const { number, key } of sorted) {
    const entry = entryIn(storage.getItem(key));
    newer ||= entry === 'newer';
    entries.set(number, entry === 'newer' ? undefined : entry);
    if (entry && entry !== 'newer') at = Math.max(at, entry.at);
  }
  return { writer, entries, at, keys: sorted.map(({ key }) => key), newer };
}

/** The version of the file when the journal came: entries of that time do not say theirs. */
const firstFile = 2;

/** An entry as far as it can be looked at by itself; what comes of it is checked as a file is. */
function entryIn(text: string | null): JournalEntry | 'newer' | undefined {
  try {
    const entry = JSON.parse(text ?? '') as Partial<Record<keyof JournalEntry, unknown>> | null;
    const { version, file = firstFile, at, over, patch } = entry ?? {};
    if (!isVersion(version) || !isVersion(file)) return undefined;
    if (version > 1 || file > fileVersion) return 'newer';
    if (!Number.isFinite(at) || typeof patch !== 'object' || patch === null) return undefined;
    if (over !== undefined && !Number.isSafeInteger(over)) return undefined;
    return { ...(entry as unknown as JournalEntry), file };
  } catch {
    return undefined;
  }
}

const isVersion = (value: unknown): value is number => Number.isSafeInteger(value) && (value as number) > 0;

/**
 * Makes the edits in the journal again that the store does not hold. A writer's edits fit where the store holds what they
 * were made on: its own last record, or the revision it began with. Edits that do not fit were made while another window
 * took the notebook over; they become a notebook of its own, made of what is there now and of what they changed.
 *
 * What comes of it is checked as a file is. Where that finds it damaged, the edits are left out and `unread` says so.
 * Edits are made on the notebook in the form of the file they were written in, and the whole is then brought to this one.
 * Those of a newer version of the page are left as they are.
 *
 * @param stored what the store holds; null where it holds nothing of this notebook
 */
export function replay(stored: Stored | null, chains: readonly Chain[]): Replayed {
  const known = heldIn(stored?.edits);
  const made: Record<string, number> = {};
  const apart: Notebook[] = [];
  let notebook = stored?.notebook ?? null;
  let state = stored && stateOf(stored);
  let unread = false;
  const next = (chain: Chain): number => (known[chain.writer] ?? 0) + 1;
  const fits = (chain: Chain): boolean => {
    if (chain.writer === stored?.edits?.by && Object.keys(made).length === 0) return true;
    const first = chain.entries.get(1);
    return next(chain) === 1 && first?.over === (stored?.revision ?? 0) && sameNumbers(first.replayed, made);
  };
  const ours = chains.filter(({ newer }) => !newer);
  const left = ours.filter((chain) => lastOf(chain) >= next(chain));
  while (left.length > 0) {
    const fitting = left.findIndex(fits);
    const [chain] = left.splice(Math.max(0, fitting), 1) as [Chain];
    // Of those that do not fit, the first entry may be of any number.
    const from = fitting < 0 ? Math.max(next(chain), firstOf(chain)) : next(chain);
    const { last, after } = played(state, chain, from);
    unread ||= last !== lastOf(chain);
    if (!after) continue;
    if (fitting < 0) apart.push(after.notebook);
    else {
      ({ notebook, state } = after);
      made[chain.writer] = last;
    }
  }
  const newer = chains.some((chain) => chain.newer && lastOf(chain) >= next(chain));
  return { notebook, made, apart, unread, newer, keys: ours.flatMap(({ keys }) => keys) };
}

/** The last edit of each writer that a record holds. */
export function heldIn(edits: EditsHeld | undefined): Readonly<Record<string, number>> {
  return edits ? { ...edits.replayed, [edits.by]: edits.upTo } : {};
}

const lastOf = ({ entries }: Chain): number => Math.max(...entries.keys());
const firstOf = ({ entries }: Chain): number => Math.min(...entries.keys());

/** A notebook in the form of a version of the file, which may be an older one. */
interface State {
  readonly version: number;
  readonly notebook: Notebook;
}

/** What edits are made on: the store's text as it stands where that is of an older version. */
function stateOf({ notebook, text }: Stored): State {
  const version = text === undefined ? undefined : fileVersionOf(text);
  if (version === undefined || version >= fileVersion) return { version: fileVersion, notebook };
  return { version, notebook: (JSON.parse(text!) as { notebook: Notebook }).notebook };
}

/** Makes a chain's edits from a number on, as far as they follow one another; checks what comes of them. */
function played(
  before: State | null,
  chain: Chain,
  from: number,
): { readonly after?: { readonly notebook: Notebook; readonly state: State }; readonly last: number } {
  let at = before;
  let last = from - 1;
  for (let entry = chain.entries.get(from); entry; entry = chain.entries.get(last + 1)) {
    const next = tried(entry.over === 0 ? null : at, entry);
    if (!next) break;
    at = next;
    last++;
  }
  const notebook = last >= from && at ? checked(at) : undefined;
  if (!notebook) return { last: from - 1 };
  const state = at!.version < fileVersion ? at! : { version: fileVersion, notebook };
  return { after: { notebook, state }, last };
}

function tried(before: State | null, { file: version = firstFile, patch }: JournalEntry): State | undefined {
  try {
    if (before && before.version > version) {
      // Another window, of a later version of the page, has gone past these edits.
      const notebook = patched(before.notebook, laterPatch(patch, version, before));
      return notebook && { version: before.version, notebook };
    }
    const notebook = patched(before && inVersion(before, version), patch);
    return notebook && { version, notebook };
  } catch {
    // Not of the form of a patch at all.
    return undefined;
  }
}

function inVersion({ version, notebook }: State, to: number): Notebook {
  return (migrated({ version, notebook }, version, migrations, to) as { notebook: Notebook }).notebook;
}

/** A patch in the form of a later version: what stands in it is brought there in a notebook of its own. */
function laterPatch(patch: NotebookPatch, version: number, { notebook, version: to }: State): NotebookPatch {
  const { set = {}, cells = [] } = patch;
  const own = { ...notebook, ...set, sections: [{ id: 'cells', label: '', cells }] };
  const later = inVersion({ version, notebook: own }, to);
  const fields = Object.keys(set).map((key) => [key, later[key as keyof Notebook]]);
  return {
    ...patch,
    ...(patch.set ? { set: Object.fromEntries(fields) as NonNullable<NotebookPatch['set']> } : {}),
    ...(patch.cells ? { cells: later.sections[0]!.cells } : {}),
  };
}

function checked({ version, notebook }: State): Notebook | undefined {
  try {
    const read = readFile(JSON.stringify({ format: fileFormat, version, notebook }));
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
