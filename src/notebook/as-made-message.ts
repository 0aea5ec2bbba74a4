import type { AsMadeCell, Settings, Size } from './document';
import { capital, writeLength } from '../format';

/**
 * A measurement as the pattern prints it: that it is as made goes without saying there.
 *
 * @example measureLabel('Finished bust, as made') // 'Finished bust'
 */
export function measureLabel(label: string): string {
  return label.replace(/,?\s+as made$/iu, '') || label;
}

/**
 * What is said where a measurement as made is further from the wanted one than it may be, size by size.
 *
 * @param number the number of an input or output of the cell in a size, by its key; undefined where it has none
 * @example
 * asMadeMessage(cell, [{ id: 'm', label: 'M' }], settings, number)
 * // ['M: Finished bust is 99.8 cm where 103.8 is wanted.']
 */
export function asMadeMessage(
  cell: Pick<AsMadeCell, 'label'>,
  sizes: readonly Size[],
  { length, decimal }: Settings,
  number: (size: string, key: string) => number | undefined,
): string[] {
  const write = (cm: number): string => writeLength(cm, { unit: length, decimal });
  return sizes.flatMap(({ id, label }) => {
    const [made, wish, within] = ['made', 'wish', 'within'].map((key) => number(id, key));
    if (made === undefined || wish === undefined || within === undefined) return [];
    if (Math.abs(made - wish) <= within * (1 + 1e-9)) return [];
    return [
      `${label}: ${capital(measureLabel(cell.label))} is ${write(made)}\u00a0${length} where ${write(wish)} is wanted.`,
    ];
  });
}
