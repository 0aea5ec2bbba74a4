import type { Cell } from './document';
import type { Input, Output } from './kind';

/**
 * What a result or a value of a cell is called away from it, with the stretch it belongs to.
 *
 * @example called(back, rowsOfTheLowerStretch) // 'Back, hem to underarm, rows'
 */
export function called(cell: Cell, part: Input | Output): string {
  if (part.label === cell.label) return cell.label;
  const stretches = cell.kind === 'piece' ? cell.stretches : cell.kind === 'pickUp' ? cell.edge : [];
  const of = stretches.find(({ name }) => part.key.startsWith(`${name}.`));
  // What is asked of a stretch once it is worked says which.
  const label = 'entry' in part && of?.label ? `${of.label}, ${part.label}` : part.label;
  return `${cell.label}, ${label.toLowerCase()}`;
}
