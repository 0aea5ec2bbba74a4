import { CraftError } from './craft-error';
import { numberParam } from './message-parts';
import { finite, listOf, same, wholeCount } from './numbers';

/*
 * Numbers as a pattern prints them: one for each size, the smallest size first. A size that the pattern has no number
 * for, printed as a dash, stands in the list as a number below 0.
 */

/**
 * The number a size list has for one of its sizes.
 *
 * @param list one number for each size; below 0 where the pattern prints a dash
 * @param which the size, 1 for the first
 * @throws CraftError where the list has no such size, or no number for it
 * @example
 * ofSize([98, 106, 114], 2) // 106
 *
 * Source: common practice.
 */
export function ofSize(list: readonly number[], which: number): number {
  listOf(list, 'The numbers of a size list', 1);
  const size = wholeCount(which, 'The size of a size list', 1);
  if (size > list.length) {
    throw new CraftError(
      'no-such-size',
      'There {sizes, plural, one {is # size} other {are # sizes}}, so there is no number {size}: choose {sizes, plural, one {1} other {one from 1 to #}}.',
      {
        sizes: list.length,
        size: numberParam(size),
      },
    );
  }
  const value = finite(list[size - 1]!, 'A number of a size list');
  if (value < 0) {
    throw new CraftError(
      'not-in-this-size',
      'The pattern prints a dash here: it has no number for this size. Choose another size, or type a number of your own.',
    );
  }
  return value;
}

/**
 * The size whose number in a list is nearest to a wanted one; of two as near, the larger number, and of equal numbers
 * the first size.
 *
 * @param wanted in whatever the list is in
 * @returns the size, 1 for the first
 * @throws CraftError where no size has a number
 * @example
 * nearestSize(101, [90, 98, 106]) // 2
 * nearestSize(102, [90, 98, 106]) // 3, since a tie goes up
 *
 * Source: common practice.
 */
export function nearestSize(wanted: number, list: readonly number[]): number {
  const target = finite(wanted, 'The wanted number');
  let best: { size: number; value: number; off: number } | undefined;
  listOf(list, 'The numbers of a size list', 1).forEach((value, at) => {
    if (finite(value, 'A number of a size list') < 0) return;
    const off = Math.abs(value - target);
    const tie = best !== undefined && same(off, best.off);
    if (!best || (tie ? value > best.value && !same(value, best.value) : off < best.off)) {
      best = { size: at + 1, value, off };
    }
  });
  if (best) return best.size;
  throw new CraftError('not-in-any-size', 'No size has a number here: type one.');
}
