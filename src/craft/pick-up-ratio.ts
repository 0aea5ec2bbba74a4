import { CraftError } from './craft-error';
import { numberParam } from './message-parts';
import { perCm, same, wholeCount, whole } from './numbers';

/** More stitches than this to a row, or rows to a stitch, are two gauges that do not belong together. */
const farthest = 1_000_000;

/**
 * The ratio at which stitches are picked up along row ends so that the edge lies flat: `pick` stitches for every
 * `of` rows.
 *
 * Exactly it would be stitchesPerCm / rowsPerCm stitches a row. Of all fractions with `of` up to `most` and `pick` at
 * least 1 it is the nearest to that; of two equally near, the one over fewer rows, then the greater. Found by walking
 * down the tree of fractions (Stern–Brocot): between two neighbours the next fraction is the sum of their tops over
 * the sum of their bottoms, and no other is as near with so small a bottom.
 *
 * @param o.rowsPerCm row gauge of the fabric whose edge it is
 * @param o.stitchesPerCm stitch gauge of what is picked up
 * @param o.most the most rows a ratio may run over, 8 unless told
 * @returns `pick`, `of`, and `off`: how far the ratio is from the exact one, as a part of that one (0.02 is 2 % more)
 * @throws CraftError where a gauge is not more than 0, or `most` not a whole number from 1
 * @example
 * pickUpRatio({ rowsPerCm: 2.6, stitchesPerCm: 2, most: 13 }) // { pick: 10, of: 13, off: 0 }
 * pickUpRatio({ rowsPerCm: 2.6, stitchesPerCm: 2 })           // { pick: 3, of: 4, off: -0.025 }
 *
 * Source: the tree of M. A. Stern (1858) and A. Brocot (1861); the ratio itself is common practice.
 */
export function pickUpRatio(o: { rowsPerCm: number; stitchesPerCm: number; most?: number }): {
  pick: number;
  of: number;
  off: number;
} {
  const rowsPerCm = perCm(o.rowsPerCm, 'The row gauge of the edge');
  const stitchesPerCm = perCm(o.stitchesPerCm, 'The stitch gauge of what is picked up');
  const most = wholeCount(o.most ?? 8, 'The most rows a ratio runs over', 1);
  if (most > farthest) {
    throw new CraftError(
      'too-large',
      'A ratio over up to {most} rows cannot be followed; ask for one over {farthest} at most, and 8 is usual.',
      { most, farthest },
    );
  }
  const exact = whole(stitchesPerCm / rowsPerCm);
  if (exact > farthest || exact * farthest < 1) {
    throw new CraftError(
      'too-far-apart',
      'A stitch gauge of {stitchesPerCm} and a row gauge of {rowsPerCm} to the cm do not go together: check that both are per cm.',
      { stitchesPerCm: numberParam(stitchesPerCm), rowsPerCm: numberParam(rowsPerCm) },
    );
  }

  const { pick, of } = nearestFraction(exact, most);
  const got = pick / of;
  return { pick, of, off: same(got / exact, 1) ? 0 : (got - exact) / exact };
}

function nearestFraction(exact: number, most: number): { pick: number; of: number } {
  // The walk starts between the whole numbers on both sides: from 0 it would take a step for each of them.
  const floor = Math.floor(exact);
  let low = { pick: floor, of: 1 };
  let high = { pick: floor + 1, of: 1 };
  while (low.of + high.of <= most) {
    const between = { pick: low.pick + high.pick, of: low.of + high.of };
    const value = between.pick / between.of;
    if (same(value / exact, 1)) return between;
    if (value < exact) low = between;
    else high = between;
  }
  if (low.pick < 1) return high;
  const below = exact - low.pick / low.of;
  const above = high.pick / high.of - exact;
  if (same(below / exact, above / exact)) return low.of < high.of ? low : high;
  return below < above ? low : high;
}
