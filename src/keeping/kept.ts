/**
 * Which edits of the journal a record holds, so that none is made twice and none is left out. A writer is one window for as
 * long as it writes one notebook; it numbers its edits from 1.
 */
export interface EditsHeld {
  /** Who wrote the record, and the number of that writer's last edit in it. */
  readonly by: string;
  readonly upTo: number;
  /** The same of writers before, whose edits were replayed. */
  readonly replayed?: Readonly<Record<string, number>>;
}

/** A notebook on the shelf, as the list shows it. */
export interface KeptNotebook {
  readonly id: string;
  readonly title: string;
  /** When it was first kept, and last written: milliseconds since 1970. */
  readonly made: number;
  readonly changed: number;
  /** Goes up with every write. Who writes has to know the one before: see `Shelf.write`. */
  readonly revision: number;
  readonly cells: number;
  readonly sizes: number;
  /** When it was deleted; it is forgotten some time after that. */
  readonly deleted?: number;
  readonly edits?: EditsHeld;
}

/** What a notebook was at a time before. */
export interface EarlierState {
  readonly notebook: string;
  /** When that was written. */
  readonly at: number;
  readonly cells: number;
  readonly sizes: number;
}

/** What is written of a notebook. `text` is the text of a file: what is kept is checked on opening as a file is. */
export interface Written {
  readonly title: string;
  readonly cells: number;
  readonly sizes: number;
  readonly text: string;
  readonly edits?: EditsHeld;
}

/** Days for which a deleted notebook can be brought back. */
export const daysToRegret = 30;

/** Whether a deleted notebook has been so for long enough. */
export function isForgotten({ deleted }: KeptNotebook, now: number): boolean {
  return deleted !== undefined && now - deleted > daysToRegret * 86_400_000;
}
