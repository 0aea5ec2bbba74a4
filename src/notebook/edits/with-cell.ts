import { cellById, type Cell, type Notebook, type Section } from '../document';
import type { Applied } from './edit';

/** What is told where an edit comes too late. */
export const gone: Applied = { refused: 'That cell is no longer in the notebook.' };

/** The notebook with the cells of its sections changed; sections whose cells stay the same stay themselves. */
export function inSections(
  notebook: Notebook,
  change: (cells: readonly Cell[], section: Section) => readonly Cell[],
): Applied {
  const sections = notebook.sections.map((section) => {
    const cells = change(section.cells, section);
    return cells === section.cells ? section : { ...section, cells };
  });
  return { notebook: { ...notebook, sections } };
}

/** The notebook with one cell changed, or why it cannot be. */
export function withCell(
  notebook: Notebook,
  id: string,
  change: (cell: Cell) => Cell | { refused: string },
): Applied {
  const cell = cellById(notebook, id);
  if (!cell) return gone;
  const next = change(cell);
  return 'refused' in next ? next : inSections(notebook, (cells) => replaced(cells, next));
}

/** The cells with one of them in its next state. */
export function replaced(cells: readonly Cell[], next: Cell): readonly Cell[] {
  const at = cells.findIndex((cell) => cell.id === next.id);
  return at < 0 || cells[at] === next ? cells : cells.with(at, next);
}

/** A list with one of its members put elsewhere; undefined where it has no such member. */
export function shifted<T extends { readonly id: string }>(
  list: readonly T[],
  id: string,
  at: number,
): T[] | undefined {
  const member = list.find((candidate) => candidate.id === id);
  return member && list.filter((candidate) => candidate !== member).toSpliced(at, 0, member);
}
