import { CraftError } from './craft-error';
import { message } from './message';
import { finite, stitches, wholeNumber } from './numbers';

/**
 * The count after every repeat of a row has lost or gained the same number of stitches.
 *
 * `count` stitches hold `repeats` repeats, with or without edge stitches beside them; `by` is the change of each
 * repeat, negative for decreases. The count afterwards is count + repeats · by.
 *
 * Throws a CraftError when a count is not whole, when there are more repeats than stitches, and when a repeat would
 * not keep a single stitch.
 *
 * @example
 * shapeEachRepeat({ count: 83, repeats: 10, by: -1 }) // 73: a multiple of 8 plus 3 becomes one of 7 plus 3
 *
 * Source: common practice.
 */
export function shapeEachRepeat(o: { count: number; repeats: number; by: number }): number {
  const count: number = stitches(o.count, 'The count the row starts from');
  const repeats: number = stitches(o.repeats, 'The number of repeats');
  const by = wholeNumber(o.by, 'The change of each repeat');
  if (repeats > count) {
    throw new CraftError(
      'no-room',
      '{repeats} repeats do not fit on {count, plural, one {# stitch} other {# stitches}}; {count} {count, plural, one {is} other {are}} the most, of one stitch each.',
      { repeats, count },
    );
  }
  const after = count + repeats * by;
  if (after < repeats) {
    const most = Math.floor(count / repeats) - 1;
    const instead =
      most > 0
        ? message('at-most', 'at most {most} can go from each, and each keeps at least one.', { most })
        : 'each is a single stitch already, so work fewer repeats.';
    throw new CraftError(
      'nothing-left',
      '{by} out of {repeats, plural, one {the one repeat} other {each of # repeats}} is more than {count, plural, one {# stitch} other {# stitches}} can lose: {instead}',
      {
        by: -by,
        repeats,
        count,
        instead,
      },
    );
  }
  return finite(after, 'The count after the row');
}
