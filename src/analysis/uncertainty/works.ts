import type { CellRef } from '../../engine';

/** A place with another value in it: one for each size, in their order; undefined leaves it as it is there. */
export interface Moved {
  readonly ref: CellRef;
  readonly values: readonly (number | undefined)[];
}

/** A place with another formula in it. */
export interface Instead {
  readonly ref: CellRef;
  readonly formula: string;
}

/** What is to be worked: the notebook with some places held at a value, and, try by try, with one more place moved. */
export interface Work {
  /** A place with another formula in it, in every try. */
  readonly instead?: Instead;
  readonly quarantined: readonly Moved[];
  /** `null` moves nothing. */
  readonly tries: readonly (Moved | null)[];
  readonly wanted: readonly CellRef[];
}

/** The numbers that come of it: of each try, of each wanted place, in each size; undefined where there is none. */
export type Works = (work: Work) => Promise<readonly (readonly (readonly (number | undefined)[])[])[]>;
