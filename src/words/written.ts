import { writeLength, writeNumber, type Settings } from '../notebook';
import { sizeList, type BySize } from './size-list';

/**
 * Lengths by size in the notebook's unit.
 *
 * @example lengthIn({ length: 'cm', decimal: '.' }, [26, 27.5]) // '26 (27.5) cm'
 */
export function lengthIn(settings: Pick<Settings, 'length' | 'decimal'>, cm: BySize<number>): string {
  const written = cm.map((value) =>
    value === null
      ? null
      : writeLength(value, { unit: settings.length, decimal: settings.decimal, trailingZero: false }),
  );
  return `${sizeList(written)} ${settings.length}`;
}

/** Numbers by size with up to so many decimals. */
export function numbersIn(settings: Pick<Settings, 'decimal'>, values: BySize<number>, places = 0): string {
  return sizeList(
    values.map((value) =>
      value === null ? null : writeNumber(value, { decimal: settings.decimal, places, trailingZero: false }),
    ),
  );
}
