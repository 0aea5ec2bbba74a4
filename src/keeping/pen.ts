import { allCells, writeFile, type Notebook } from '../notebook';
import type { Written } from './kept';
import type { Shelf } from './shelf';
import { beginsSpan, thinned } from './thinning';
import { troubleOf, type Trouble } from './trouble';

/** How a notebook stands with the shelf. */
export type Standing =
  /** As it was opened, and not kept: nothing was changed. */
  | { readonly is: 'as it was' }
  | { readonly is: 'kept'; readonly at: number }
  /** Changed, and soon kept. */
  | { readonly is: 'keeping' }
  | { readonly is: 'not kept'; readonly trouble: Trouble };

/** What is known of a notebook on the shelf. */
export interface Known {
  readonly revision: number;
  readonly changed: number;
}

/** What a pen tells. */
export interface Told {
  stands(standing: Standing): void;
  /** Somebody else has written the notebook meanwhile: what is here was not written, and has to stand apart. */
  apart(notebook: Notebook): void;
}

/** Milliseconds after a change in which others are waited for, so that a row of them is written once. */
const pause = 200;
/** Milliseconds after which a write that failed is tried again. */
const again = 5000;

/** What is written of a notebook. */
export function writtenOf(notebook: Notebook): Written {
  const { title, sizes } = notebook;
  return { title, cells: allCells(notebook).length, sizes: sizes.length, text: writeFile(notebook) };
}

/**
 * Writes one notebook to the shelf: what it is told of is kept within a second. One write is under way at a time, and of
 * the states it is told meanwhile only the newest is written next.
 */
export class Pen {
  readonly id: string;
  readonly #shelf: Shelf;
  readonly #told: Told;
  #known: Known;
  #newest: Notebook;
  #written: Notebook | null;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #turn: Promise<void> = Promise.resolve();
  #remember = false;
  #down = false;

  /** @param known what is on the shelf, where `notebook` is that; null where nothing is kept yet */
  constructor(id: string, notebook: Notebook, known: Known | null, shelf: Shelf, told: Told) {
    this.id = id;
    this.#shelf = shelf;
    this.#told = told;
    this.#known = known ?? { revision: 0, changed: 0 };
    this.#newest = notebook;
    this.#written = notebook;
    told.stands(known ? { is: 'kept', at: known.changed } : { is: 'as it was' });
  }

  /** The notebook as it is now. */
  write(notebook: Notebook): void {
    this.#newest = notebook;
    if (this.#down || notebook === this.#written) return;
    this.#told.stands({ is: 'keeping' });
    this.#timer ??= setTimeout(() => void this.keep(), pause);
  }

  /** Writes the notebook even though it is as it was opened: one that was begun on purpose. */
  async begin(): Promise<void> {
    this.#written = null;
    await this.keep();
  }

  /** What is on the shelf now becomes an earlier state with the next write, however short a time it stood there. */
  remember(): void {
    this.#remember = true;
  }

  /** Writes now whatever is not kept yet. */
  keep(): Promise<void> {
    clearTimeout(this.#timer);
    this.#timer = undefined;
    return (this.#turn = this.#turn.then(() => this.#write()));
  }

  /** Begins anew from what is on the shelf, which another window wrote. */
  takeIn(notebook: Notebook, known: Known): void {
    this.#newest = notebook;
    this.#written = notebook;
    this.#known = known;
    this.#told.stands({ is: 'kept', at: known.changed });
  }

  /** Whether all it was told of is on the shelf. */
  get dry(): boolean {
    return this.#written === this.#newest;
  }

  /** Writes what is left, and nothing after that. */
  async lay(): Promise<void> {
    await this.keep();
    this.#down = true;
    clearTimeout(this.#timer);
  }

  async #write(): Promise<void> {
    const notebook = this.#newest;
    if (this.#down || notebook === this.#written) return;
    const now = Date.now();
    const remember = this.#remember || beginsSpan(this.#known.changed, now);
    try {
      const options = { now, remember };
      const revision = await this.#shelf.write(this.id, writtenOf(notebook), this.#known.revision, options);
      if (revision === null) {
        this.#down = true;
        this.#told.apart(notebook);
        return;
      }
      this.#known = { revision, changed: now };
      this.#written = notebook;
      this.#remember = false;
      if (this.dry) this.#told.stands({ is: 'kept', at: now });
      if (remember) await this.#thin();
    } catch (error) {
      this.#told.stands({ is: 'not kept', trouble: troubleOf(error) });
      if (!this.#down) this.#timer ??= setTimeout(() => void this.keep(), again);
    }
  }

  /** What is written is kept, whether or not this succeeds: it is tried again with the next state. */
  async #thin(): Promise<void> {
    try {
      await this.#shelf.thin(this.id, thinned(await this.#shelf.states(this.id)));
    } catch {
      // One state too many does no harm.
    }
  }
}
