import type { Cell } from './document';

/**
 * The label of a stretch of a piece or of an edge, 1 for the first; undefined where the cell has no such stretch.
 *
 * @example stretchLabel(sleeve, 2) // 'Armhole to wrist'
 */
export function stretchLabel(cell: Cell | undefined, stretch: number): string | undefined {
  const stretches = cell?.kind === 'piece' ? cell.stretches : cell?.kind === 'pickUp' ? cell.edge : [];
  return stretches[stretch - 1]?.label;
}
