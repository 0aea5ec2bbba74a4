import { writeLength, writeNumber } from '../../format';
import type { Settings } from '../../notebook';
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
export function numbersIn(settings: Pick<Settings, 'decimal'>, values: BySize<number>, decimals = 0): string {
  return sizeList(
    values.map((value) =>
      value === null
        ? null
        : writeNumber(value, { decimal: settings.decimal, decimals, trailingZero: false }),
    ),
  );
}

const cmPerYard = 91.44;

/**
 * Long lengths by size, of yarn or trim: metres, or yards where the notebook is in inches.
 *
 * @example yarnLengthIn({ length: 'cm', decimal: '.' }, [11500]) // '115 m'
 */
export function yarnLengthIn(
  settings: Pick<Settings, 'length' | 'decimal'>,
  cm: BySize<number>,
  decimals = 0,
): string {
  const [per, unit] = settings.length === 'cm' ? [100, 'm'] : [cmPerYard, 'yd'];
  return `${numbersIn(
    settings,
    cm.map((value) => (value === null ? null : value / per)),
    decimals,
  )} ${unit}`;
}
