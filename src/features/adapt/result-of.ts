import type { Cell } from '../../notebook';

/** The key of what a cell comes to, where it comes to one number. */
export function keyOf(cell: Cell): string {
  switch (cell.kind) {
    case 'fit':
      return 'count';
    case 'pickUp':
      return 'total';
    case 'yarn':
      return 'grams';
    case 'as made':
      return 'made';
    case 'ease':
      return 'finished';
    default:
      return 'value';
  }
}
