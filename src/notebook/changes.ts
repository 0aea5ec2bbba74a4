import { allCells, type Cell, type Notebook, type Size } from './document';

/** What differs between two notebooks, as far as results can depend on it. */
export interface Changes {
  /** The sizes in order, where anything about them changed. */
  readonly sizes?: readonly Size[];
  /** Cells that are new or not the same as before. */
  readonly put: readonly Cell[];
  /** Ids of cells that are gone. */
  readonly drop: readonly string[];
}

/**
 * What to tell a sheet that holds `before` so that it holds `after`. Works by identity: a notebook made
 * by an edit shares all the cells that the edit left alone.
 */
export function changesBetween(before: Notebook | null, after: Notebook): Changes {
  const old = new Map(before ? allCells(before).map((cell) => [cell.id, cell]) : []);
  const put: Cell[] = [];
  for (const cell of allCells(after)) {
    if (old.get(cell.id) !== cell) put.push(cell);
    old.delete(cell.id);
  }
  const sizes = before?.sizes === after.sizes ? {} : { sizes: after.sizes };
  return { ...sizes, put, drop: [...old.keys()] };
}

export function nothingChanged(changes: Changes): boolean {
  return !changes.sizes && changes.put.length === 0 && changes.drop.length === 0;
}
