import type { CellRef } from './source';

/** A result, and what it is called. */
export interface Result extends CellRef {
  readonly label: string;
  /** The results whose number it only takes over. */
  readonly over?: readonly CellRef[];
}
