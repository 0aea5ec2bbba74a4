import { bySize, writeLength } from '../../format';
import type { Shown } from '../charts';

/** A length of a schematic, without its unit: tenths of a cm, eighths of an inch. */
export function lengthText(cm: number, { unit, decimal }: Shown): string {
  return writeLength(cm, { unit, decimal });
}

/**
 * A measurement in all sizes as patterns write it: smallest first, the rest in brackets; one number where all agree;
 * an en dash for a size that has none.
 *
 * @example
 * sizeList([54.3, 60, null], { unit: 'cm', decimal: '.' }) // '54.3 (60.0, –)'
 */
export function sizeList(values: readonly (number | null)[], shown: Shown): string {
  return bySize(values.map((value) => (value === null ? '–' : lengthText(value, shown))));
}
