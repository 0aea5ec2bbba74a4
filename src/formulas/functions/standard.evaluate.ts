import { CraftError, roundDown, roundNearest, roundUp, whole } from '../../craft';
import type { TradeFunction } from './trade-function';

/*
 * The standard's rounding, after the trade's float edge: 45 × 1.4 is 63 and INT of it is 63, where the bare product is
 * 62.99999999999999 and would lose a stitch. Definitions: OASIS OpenDocument 1.3, part 4 (OpenFormula), 6.16 and 6.17.
 */

function toDecimals(value: number, decimals: number, rounded: (size: number) => number): number {
  const scale = 10 ** roundDown(decimals);
  const size = rounded(Math.abs(value) * scale) / scale;
  if (!Number.isFinite(size)) {
    throw new CraftError('too-many-places', 'A number cannot be rounded to {decimals} decimal places.', {
      decimals,
    });
  }
  return value < 0 ? -size : size;
}

/** Rounding as the standard has it, and what is left over, and the square root. */
export const standard = {
  INT: (value: number) => roundDown(value),
  ROUND: (value: number, decimals: number = 0) => toDecimals(value, decimals, roundNearest),
  ROUNDUP: (value: number, decimals: number = 0) => toDecimals(value, decimals, roundUp),
  ROUNDDOWN: (value: number, decimals: number = 0) => toDecimals(value, decimals, roundDown),
  MOD: (value: number, divisor: number) => {
    if (divisor === 0)
      throw new CraftError('division-by-zero', 'Nothing is left over from a division by zero.');
    return whole(value - divisor * roundDown(value / divisor));
  },
  SQRT: (value: number) => {
    if (value < 0) throw new CraftError('negative', 'There is no square root of a number below zero.');
    return Math.sqrt(value);
  },
} satisfies Record<string, TradeFunction>;
