import { allCells, writeFile, type Notebook } from '../notebook';
import type { Journal } from './journal';
import { forgetEntries } from './journal-entries';
import type { EditsHeld, Written } from './stored-notebook';
import type { NotebookStore } from './notebook-store';
import { beginsSpan, thinned } from './snapshot-retention';
import { storageErrorOf, type StorageError } from './storage-error';

/** How a notebook stands with the store. */
export type SaveStatus =
  /** As it was opened, and not kept: nothing was changed. */
  | { readonly is: 'as it was' }
  | { readonly is: 'kept'; readonly at: number }
  /** Changed, and soon kept. */
  | { readonly is: 'keeping' }
  | { readonly is: 'not kept'; readonly error: StorageError };

/** What is known of a notebook in the store. */
export interface Known {
  readonly revision: number;
  readonly changed: number;
  readonly edits?: EditsHeld | undefined;
}

/** What an autosaver tells. */
export interface AutosaveEvents {
  statusChanged(status: SaveStatus): void;
  /** Somebody else has written the notebook meanwhile: what is here was not written, and has to stand apart. */
  apart(notebook: Notebook): void;
}

/** Milliseconds after a change in which others are waited for, so that a row of them is written once. */
const pause = 200;
/** Milliseconds after which a write that failed is tried again. */
const again = 5000;
/** Milliseconds after which a write that does not end is said to hang; with the pause before it, within five seconds. */
const silentAfter = 4000;
/** Writers that a record names, beside its own: a window that sleeps looks there whether its edits were replayed. */
const mostNamed = 16;

/** What is written of a notebook. */
export function writtenOf(notebook: Notebook): Written {
  const { title, sizes } = notebook;
  return { title, cells: allCells(notebook).length, sizes: sizes.length, text: writeFile(notebook) };
}

/**
 * Writes one notebook to the store: what it is told of is in the journal at once, and kept within a second. One write is
 * under way at a time, and of the states it is told meanwhile only the newest is written next. What is not kept is tried
 * again for as long as the page lives, also after `lay`.
 */
export class Autosaver {
  readonly id: string;
  readonly #store: NotebookStore;
  readonly #events: AutosaveEvents;
  #known: Known;
  #journal: Journal | undefined;
  #newest: Notebook;
  #written: Notebook | null;
  #status: SaveStatus;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #queue: Promise<void> = Promise.resolve();
  #remember = false;
  /** Keys of entries of the journal that the next write makes needless. */
  #replayed: readonly string[] = [];
  #waits = false;
  #writing = false;
  #down = false;

  /**
   * @param known what is in the store, where `notebook` is that; null where nothing is kept yet
   * @param journal where every edit is written at once
   */
  constructor(
    id: string,
    notebook: Notebook,
    known: Known | null,
    store: NotebookStore,
    events: AutosaveEvents,
    journal?: Journal,
  ) {
    this.id = id;
    this.#store = store;
    this.#events = events;
    this.#known = known ?? { revision: 0, changed: 0 };
    this.#journal = journal;
    this.#newest = notebook;
    this.#written = notebook;
    this.#status = known ? { is: 'kept', at: known.changed } : { is: 'as it was' };
    events.statusChanged(this.#status);
  }

  get notebook(): Notebook {
    return this.#newest;
  }

  get status(): SaveStatus {
    return this.#status;
  }

  /** Whether this autosaver itself was told of edits that are not in the store. */
  get hasOwnEdits(): boolean {
    return this.#journal ? this.#journal.pending : !this.isSaved;
  }

  /** Whether edits are only as safe as the store is quick, since the browser has no journal for them. */
  get withoutJournal(): boolean {
    return this.#journal?.refused ?? false;
  }

  /** Whether leaving the page now would lose something: it is neither in the store nor in the journal. */
  get atRisk(): boolean {
    return !this.isSaved && !this.#down && !(this.#journal?.complete ?? false);
  }

  /** The notebook as it is now. */
  write(notebook: Notebook): void {
    this.#newest = notebook;
    if (this.#down) return;
    this.#journal?.note(notebook);
    if (notebook === this.#written && !this.#timer) return;
    if (this.#status.is !== 'not kept') this.#setStatus({ is: 'keeping' });
    // What the journal could not take is not left waiting for more.
    this.#timer ??= setTimeout(() => void this.keep(), this.#journal?.complete === false ? 0 : pause);
  }

  /** Writes the notebook even though it is as it was opened: one that was begun on purpose. */
  async begin(): Promise<void> {
    this.#written = null;
    this.#journal?.note(this.#newest, true);
    await this.keep();
  }

  /** Nothing of the notebook as it is now is in the store, although it was not changed here. */
  unwritten(): void {
    this.#written = null;
  }

  /** Takes what is left of its edits out of the journal: they are kept in another way. */
  forgetJournal(): void {
    this.#journal?.rewind();
  }

  /** Whether the store holds all edits that this autosaver was told of, as the record there says. */
  isIn(edits: EditsHeld | undefined): boolean {
    if (!this.hasOwnEdits) return true;
    if (!this.#journal || !edits) return false;
    const last = edits.by === this.#journal.writer ? edits.upTo : edits.replayed?.[this.#journal.writer];
    return (last ?? 0) >= this.#journal.number;
  }

  /** Writes nothing until `goOn`: whether another window writes this notebook is not known yet. */
  wait(): void {
    this.#waits = true;
  }

  goOn(): void {
    this.#waits = false;
    if (this.isSaved) this.#forgetReplayed();
    else void this.keep();
  }

  /** Whether it writes nothing more. */
  get down(): boolean {
    return this.#down;
  }

  get waits(): boolean {
    return this.#waits;
  }

  /** Entries of the journal that are in the notebook as it is here: they are taken out once that is in the store. */
  replaces(keys: readonly string[]): void {
    this.#replayed = keys;
  }

  #forgetReplayed(): void {
    forgetEntries(this.#replayed);
    this.#replayed = [];
  }

  /** What is in the store now becomes an earlier state with the next write, however short a time it stood there. */
  remember(): void {
    this.#remember = true;
  }

  /** Writes now whatever is not kept yet. */
  keep(): Promise<void> {
    clearTimeout(this.#timer);
    this.#timer = undefined;
    return (this.#queue = this.#queue.then(() => this.#write()));
  }

  /** Begins again from what is in the store, which another window wrote. */
  adopt(notebook: Notebook, known: Known, journal?: Journal): void {
    this.#newest = notebook;
    this.#written = notebook;
    this.#known = known;
    this.#journal = journal;
    this.#setStatus({ is: 'kept', at: known.changed });
  }

  /** Whether all it was told of is in the store. */
  get isSaved(): boolean {
    return this.#written === this.#newest && !this.#writing;
  }

  /** Writes what is left, and nothing after that. Where that fails it stays up and tries again; false comes back. */
  async flushAndClose(): Promise<boolean> {
    await this.keep();
    if (!this.isSaved) return false;
    this.drop();
    return true;
  }

  /** Writes nothing more. */
  drop(): void {
    this.#down = true;
    clearTimeout(this.#timer);
    this.#timer = undefined;
  }

  async #write(): Promise<void> {
    const notebook = this.#newest;
    if (this.#down || this.#waits) return;
    if (notebook === this.#written) {
      this.#journal?.rewind();
      if (this.#status.is === 'keeping') this.#setStatus(this.#resting());
      return;
    }
    const now = Date.now();
    const upTo = this.#journal?.number ?? 0;
    const remember = this.#remember || beginsSpan(this.#known.changed, now);
    const edits = this.#edits(upTo);
    const hangs = setTimeout(() => this.#setStatus({ is: 'not kept', error: 'silent' }), silentAfter);
    this.#writing = true;
    try {
      const written = { ...writtenOf(notebook), ...(edits ? { edits } : {}) };
      const revision = await this.#store.write(this.id, written, this.#known.revision, { now, remember });
      clearTimeout(hangs);
      this.#writing = false;
      if (revision === null) {
        this.drop();
        this.#events.apart(this.#newest);
        return;
      }
      this.#known = { revision, changed: now, edits };
      this.#written = notebook;
      this.#remember = false;
      this.#journal?.saved(upTo);
      this.#forgetReplayed();
      this.#setStatus(this.isSaved ? { is: 'kept', at: now } : { is: 'keeping' });
      // An undo may have gone back meanwhile to what was kept before.
      if (!this.isSaved) this.#timer ??= setTimeout(() => void this.keep(), pause);
    } catch (error) {
      clearTimeout(hangs);
      this.#writing = false;
      this.#setStatus({ is: 'not kept', error: storageErrorOf(error) });
      if (!this.#down) this.#timer ??= setTimeout(() => void this.keep(), again);
      return;
    }
    if (remember) await this.#thin();
  }

  /** What the record says of the edits in it. */
  #edits(upTo: number): EditsHeld | undefined {
    if (!this.#journal) return this.#known.edits;
    const { by, upTo: before = 0, replayed } = this.#known.edits ?? {};
    const named = { ...replayed, ...(by === undefined ? {} : { [by]: before }), ...this.#journal.replayed };
    delete named[this.#journal.writer];
    const last = Object.entries(named).slice(-mostNamed);
    return {
      by: this.#journal.writer,
      upTo,
      ...(last.length > 0 ? { replayed: Object.fromEntries(last) } : {}),
    };
  }

  #resting(): SaveStatus {
    const { revision, changed } = this.#known;
    return revision === 0 ? { is: 'as it was' } : { is: 'kept', at: changed };
  }

  #setStatus(status: SaveStatus): void {
    this.#status = status;
    this.#events.statusChanged(status);
  }

  /** The notebook is kept, whatever becomes of this: what is not thinned now is with the next write. */
  async #thin(): Promise<void> {
    try {
      await this.#store.thin(this.id, thinned(await this.#store.states(this.id)));
    } catch {
      // Earlier states that are too many do no harm.
    }
  }
}
