import { CraftError } from './craft-error';
import { numberParam } from './message-parts';
import { listOf, perCm, stitches, wholeCount, widthOf } from './numbers';
import type { Cm, PerCm, Stitches } from './numbers';

/**
 * The width round a garment once it is sewn up: seams take stitches.
 *
 * Each seam takes `taken` stitches from both of its sides.
 *
 * @param o.stitches the stitches of each piece; @param o.seams how many seams join them
 * @param o.taken stitches a seam takes from each side
 * @param o.stitchesPerCm the stitch gauge
 * @returns the finished width, cm
 * @throws CraftError where the seams take all there is
 * @example
 * seamedWidth({ stitches: [75, 75], seams: 2, taken: 1, stitchesPerCm: 1.4 }) // 104.3, from 107.1 laid side by side
 *
 * Source: common practice.
 */
export function seamedWidth(o: {
  stitches: number[];
  seams: number;
  taken: number;
  stitchesPerCm: number;
}): number {
  const pieces = listOf(o.stitches, 'The stitches of the pieces', 1);
  const all = pieces.reduce((sum, count) => sum + stitches(count, 'The stitches of a piece'), 0);
  const [lost, gauge] = lostTo(o);
  if (lost >= all) {
    throw new CraftError(
      'nothing-left',
      'The seams take {lost, plural, one {# stitch} other {# stitches}}, and the pieces have {all}: take fewer into each seam.',
      { lost, all: numberParam(all) },
    );
  }
  return widthOf((all - lost) as Stitches, gauge);
}

/**
 * The width that seams cost, in cm.
 *
 * @example
 * seamAllowance({ seams: 2, taken: 1, stitchesPerCm: 1.4 }) // 2.86: two seams, a stitch from each side, 14 sts to 10 cm
 *
 * Source: common practice.
 */
export function seamAllowance(o: { seams: number; taken: number; stitchesPerCm: number }): Cm {
  const [lost, gauge] = lostTo(o);
  return widthOf(lost, gauge);
}

function lostTo(o: { seams: number; taken: number; stitchesPerCm: number }): [Stitches, PerCm] {
  const seams = wholeCount(o.seams, 'The number of seams');
  const taken = wholeCount(o.taken, 'The stitches a seam takes from each side');
  return [(2 * seams * taken) as Stitches, perCm(o.stitchesPerCm, 'The stitch gauge')];
}
