import { notNegative } from './numbers';

/**
 * The standard uncertainty of a value that lies within ± `half` of what was read, any value in between as likely.
 *
 * @param half half the width of what it may be, in any unit
 * @returns in the same unit
 * @throws CraftError where it is negative or not a number
 * @example
 * withinLimits(0.5) // 0.289: a tape read to within half a centimetre either way
 *
 * Source: JCGM 100:2008 (GUM), 4.3.7.
 */
export function withinLimits(half: number): number {
  return notNegative(half, 'How far it may be off') / Math.sqrt(3);
}
