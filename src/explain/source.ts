import type { Notebook } from '../notebook';
import type { Unit } from '../formulas';

/** A place where a result stands. */
export interface CellRef {
  readonly cell: string;
  readonly key: string;
}

/** What a working is made from: the notebook, and a way to ask for its results. Lengths are cm, as stored. */
export interface WorkingSource {
  readonly notebook: Notebook;
  number(size: string, cell: string, key: string): number | undefined;
  text(size: string, cell: string, key: string): string | undefined;
  truth(size: string, cell: string, key: string): boolean | undefined;
  /** Why there is no result, as a sentence. */
  errorAt(size: string, cell: string, key: string): string | undefined;
  unit(cell: string, key: string): Unit | undefined;
}
