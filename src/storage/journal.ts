import { allCells, type Notebook, fileVersion } from '../notebook';
import { isEmptyPatch, patchBetween, type NotebookPatch } from './patch';

/** An edit in the journal. */
export interface JournalEntry {
  readonly version: 1;
  /** The version of the file in whose form its cells are written; 2 where it is not said, as it was before this was. */
  readonly file?: number;
  /** Milliseconds since 1970. */
  readonly at: number;
  /** Of a writer's first edit: the revision it was made over; 0 where nothing was in the store, so that it holds all. */
  readonly over?: number;
  /** Edits of writers before that had been replayed on that revision. */
  readonly replayed?: Readonly<Record<string, number>>;
  readonly patch: NotebookPatch;
}

/** What the journal needs of `localStorage`. */
export type JournalStorage = Pick<Storage, 'getItem' | 'setItem' | 'removeItem' | 'key' | 'length'>;

/** What a notebook was in the store when a writer began with it. */
export interface JournalBase {
  readonly revision: number;
  readonly replayed?: Readonly<Record<string, number>> | undefined;
}

/** What the key of every entry begins with. */
export const journalPrefix = 'easewright edit/';

/** Cells of the largest notebook that is written whole, when it is not in the store yet: some milliseconds. */
const mostWhole = 1000;

/** The key of an entry. */
export function journalKey(notebook: string, writer: string, number: number): string {
  return `${journalPrefix}${notebook}/${writer}/${number}`;
}

/** The keys of the journal's entries. */
export function journalKeys(storage: JournalStorage | undefined = journalStorage()): string[] {
  try {
    const keys = Array.from({ length: storage?.length ?? 0 }, (_one, at) => storage!.key(at) ?? '');
    return keys.filter((key) => key.startsWith(journalPrefix));
  } catch {
    return [];
  }
}

/** The browser's storage for the journal; undefined where it has none for this page. */
export function journalStorage(): JournalStorage | undefined {
  try {
    return globalThis.localStorage;
  } catch {
    return undefined;
  }
}

/**
 * A write-ahead journal of one writer of one notebook. Each edit is written at once, in the same task that made it, so
 * that leaving the page straight after it loses nothing; the store follows when it can. What is written is the edit (its
 * patch), never the notebook, but for the first edit of a notebook that is not in the store at all.
 *
 * `saved` takes out what the store holds. What is left when the page goes is replayed by whoever opens the notebook next
 * (`replay.ts`).
 */
export class Journal {
  readonly notebook: string;
  readonly writer: string = newId();
  readonly #base: JournalBase;
  readonly #storage: JournalStorage | undefined;
  #last: Notebook;
  #number = 0;
  #saved = 0;
  #broken = false;
  #refused = false;

  /** @param last the state that `base` and the edits replayed on it come to; `revision` 0: it is not in the store */
  constructor(notebook: string, last: Notebook, base: JournalBase, storage = journalStorage()) {
    this.notebook = notebook;
    this.#last = last;
    this.#base = base;
    this.#storage = storage;
  }

  /** The number of the last edit. */
  get number(): number {
    return this.#number;
  }

  /** Whether there are edits that the store does not hold. */
  get pending(): boolean {
    return this.#number > this.#saved;
  }

  /** Edits of writers before that are in this writer's states. */
  get replayed(): Readonly<Record<string, number>> | undefined {
    return this.#base.replayed;
  }

  /** Whether every edit that is not in the store is in the journal. */
  get complete(): boolean {
    return !this.#broken;
  }

  /** Writes what led to this state. With `whole`, even if it is the state that the writer began with. */
  note(next: Notebook, whole = false): void {
    if (next === this.#last && !whole) return;
    const first = this.#number === 0 && this.#base.revision === 0;
    const patch = first ? undefined : patchBetween(this.#last, next);
    this.#last = next;
    if (patch && isEmptyPatch(patch)) return;
    this.#number++;
    if (this.#broken) return;
    this.#refused ||= !this.#storage;
    if (!this.#storage || (first && allCells(next).length > mostWhole)) {
      this.#broken = true;
      return;
    }
    const { revision: over, replayed } = this.#base;
    const entry: JournalEntry = {
      version: 1,
      file: fileVersion,
      at: Date.now(),
      ...(this.#number === 1 ? { over, ...(replayed ? { replayed } : {}) } : {}),
      patch: patch ?? patchBetween(null, next),
    };
    try {
      this.#storage.setItem(journalKey(this.notebook, this.writer, this.#number), JSON.stringify(entry));
    } catch {
      // Full, or refused. What comes after it could not be replayed without it: the store has to be quick.
      this.#broken = this.#refused = true;
    }
  }

  /** Whether the browser refused to take an edit. */
  get refused(): boolean {
    return this.#refused;
  }

  /** The store holds every edit up to this one. */
  saved(upTo: number): void {
    for (let number = this.#saved + 1; number <= upTo; number++) this.#remove(number);
    this.#saved = Math.max(this.#saved, upTo);
    if (this.#number === this.#saved) this.#broken = false;
  }

  /** The state is the one in the store again: what led away from it and back is not needed. */
  rewind(): void {
    // The last first: should the page go in the midst of it, what is left still begins at what the store holds.
    for (let number = this.#number; number > this.#saved; number--) this.#remove(number);
    this.#number = this.#saved;
    this.#broken = false;
  }

  #remove(number: number): void {
    try {
      this.#storage?.removeItem(journalKey(this.notebook, this.writer, number));
    } catch {
      // It is passed over when it is found: the store names the last edit in it.
    }
  }
}

/** An id that is not used elsewhere, in a page without a secure connection too. */
function newId(): string {
  return crypto.randomUUID?.() ?? [...crypto.getRandomValues(new Uint32Array(4))].join('-');
}
