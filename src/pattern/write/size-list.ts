import { bySize } from '../../format';
import { ordinal } from '../../formulas';

/** A value for each size that a line is written for, in the order of its sizes; null where a size skips it. */
export type BySize<T> = readonly (T | null)[];

/** Stands for "not in this size". */
export const notInSize = '–';

/**
 * Values by size as the trade writes them: the first, and the rest in brackets; one where all agree; an en dash where
 * a size skips it.
 *
 * @example sizeList([34, 36, 40])   // '34 (36, 40)'
 * @example sizeList([34, 34, 34])   // '34'
 * @example sizeList([34, null, 40]) // '34 (–, 40)'
 */
export function sizeList(values: BySize<string | number>): string {
  return bySize(values.map((value) => (value === null ? notInSize : String(value))));
}

/**
 * A count with its noun, singular only where every size has one.
 *
 * @example counted([1, 1], 'row')    // '1 row'
 * @example counted([1, 2], 'row')    // '1 (2) rows'
 * @example counted([1, null], 'row') // '1 (–) row'
 */
export function counted(values: BySize<number>, noun: string): string {
  const one = values.every((value) => value === null || value === 1) && values.some((value) => value === 1);
  return `${sizeList(values)} ${one ? noun : `${noun}s`}`;
}

/**
 * How often: "once", "twice", "3 times", or a list.
 *
 * @example times([1, 1]) // 'once'
 * @example times([1, 4]) // '1 (4) times'
 */
export function times(values: BySize<number>): string {
  const list = sizeList(values);
  if (list === '1') return 'once';
  if (list === '2') return 'twice';
  return `${list} times`;
}

/**
 * How often again, after the first time.
 *
 * @example moreTimes([3])    // '3 more times'
 * @example moreTimes([1, 1]) // 'once more'
 */
export function moreTimes(values: BySize<number>): string {
  const list = sizeList(values);
  if (list === '1') return 'once more';
  if (list === '2') return 'twice more';
  return `${list} more times`;
}

/**
 * "6th", and in a list "6th (5th, –)". English ordinals.
 *
 * @example ordinals([6, 5]) // '6th (5th)'
 */
export function ordinals(values: BySize<number>): string {
  return sizeList(values.map((value) => (value === null ? null : ordinal(value))));
}
