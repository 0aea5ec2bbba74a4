import { allCells, type Cell, type Notebook, type Size } from './document';
import { asWorked } from './piece-start';

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
  const sizes = before?.sizes === after.sizes ? {} : { sizes: after.sizes };
  const [old, now] = [before ? worked(before) : [], worked(after)];
  // Most edits leave all cells but one the same, and as many: those before it and those after it need no looking up.
  let start = 0;
  while (start < now.length && old[start] === now[start]) start++;
  let end = 0;
  while (end < now.length - start && end < old.length - start && old.at(-1 - end) === now.at(-1 - end)) end++;
  const replaced = new Map(old.slice(start, old.length - end).map((cell) => [cell.id, cell]));
  const put: Cell[] = [];
  for (const cell of now.slice(start, now.length - end)) {
    if (replaced.get(cell.id) !== cell) put.push(cell);
    replaced.delete(cell.id);
  }
  return { ...sizes, put, drop: [...replaced.keys()] };
}

/** The cells as they are worked: in knitting a piece that is picked up begins on the wrong side. */
function worked(notebook: Notebook): Cell[] {
  const cells = allCells(notebook);
  return notebook.settings.craft === 'knitting' ? cells.map((cell) => asWorked(notebook, cell)) : cells;
}

/** Whether two notebooks are the same to whoever works them: a title or a setting may still be another. */
export function nothingChanged(changes: Changes): boolean {
  return !changes.sizes && changes.put.length === 0 && changes.drop.length === 0;
}
