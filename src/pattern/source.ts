import type { Piece } from '../craft';
import type { Notebook } from '../notebook';

/**
 * What a pattern is written from: the notebook, and what was worked out of it, by size, cell and key (of an input or
 * an output of the cell). Lengths are cm, masses grams, gauges per cm, shares fractions, as everywhere in a notebook.
 */
export interface PatternSource {
  readonly notebook: Notebook;
  /** A number, or undefined where there is none (nothing given, a trouble, a text). */
  number(size: string, cell: string, key: string): number | undefined;
  /** Whether a check holds; undefined where that is not known. */
  truth(size: string, cell: string, key: string): boolean | undefined;
  /** Why there is no result, as a sentence. */
  errorAt(size: string, cell: string, key: string): string | undefined;
  /** The plan of a piece in a size, or why there is none. */
  plan(size: string, cell: string): Piece | { readonly problem: string };
}
