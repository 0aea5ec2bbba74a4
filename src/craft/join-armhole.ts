import { CraftError } from './craft-error';
import { formatLength } from './quantity-words';
import { formatNumber } from './format';
import { cm, greatest, perCm, positive, rows, stitches, wholeCount, widthOf } from './numbers';
import type { Stitches } from './numbers';

/** How far a sleeve's width may be from its armhole before it shows: our own default, with no source. */
const noticeable = 0.08;

/**
 * The stitches of a sleeve that is joined to an armhole, from the rows of the armhole's sides.
 *
 * Along each side `pick` stitches are picked up for every `of` rows, to the nearest whole stitch (a half goes up),
 * both sides equal. The underarm's stitches come on top, and those that the sleeve's seam will take.
 *
 * @param o.sideRows rows along one side of the armhole
 * @param o.pick stitches picked up for every `of` row ends
 * @param o.underarm stitches across the underarm, in all
 * @param o.seam stitches that the seam takes, in all
 * @returns stitches of the sleeve at the armhole
 * @throws CraftError where a count is not whole, or no stitch is left
 * @example
 * joinArmhole({ sideRows: 31, pick: 3, of: 4, underarm: 8, seam: 2 }) // 56: 23 on each side, 8, and 2
 *
 * Source: common practice.
 */
export function joinArmhole(o: {
  sideRows: number;
  pick: number;
  of: number;
  underarm: number;
  seam: number;
}): number {
  const sideRows = rows(o.sideRows, "The rows along an armhole's side");
  const pick = wholeCount(o.pick, 'The stitches picked up', 1);
  const of = wholeCount(o.of, 'The row ends they are picked up over', 1);
  const underarm = wholeCount(o.underarm, 'The stitches of the underarm');
  const seam = wholeCount(o.seam, 'The stitches the seam takes');
  // Whole numbers beyond 2^53 lose their last digit, so the product is worked where none is lost.
  const side = (2n * BigInt(sideRows) * BigInt(pick) + BigInt(of)) / (2n * BigInt(of));
  const total = 2n * side + BigInt(underarm) + BigInt(seam);
  if (total < 1n) {
    throw new CraftError(
      'nothing-to-join',
      'An armhole without rows, underarm or seam has no stitches to join a sleeve to: give it rows along its sides.',
    );
  }
  if (total > BigInt(greatest)) {
    throw new CraftError(
      'too-large',
      'The armhole would have {total} stitches, beyond anything that can be worked.',
      { total: String(total) },
    );
  }
  return Number(total);
}

/**
 * Whether a sleeve lies flat where it joins its armhole: the sleeve's width at its own gauge against the armhole.
 *
 * @param o.count stitches of the sleeve at the armhole
 * @param o.stitchesPerCm the sleeve's stitch gauge
 * @param o.armhole the length round the armhole, cm
 * @param o.within the part of the armhole by which the two may differ, 0.08 unless told
 * @returns the sleeve's width in cm, `off` = width / armhole − 1, whether it lies flat, and a sentence
 * @example
 * armholeFit({ count: 56, stitchesPerCm: 1.4, armhole: 36 })
 * // { width: 40, off: 0.111, holds: false, message: 'The sleeve is 40 cm … it will flare. …' }
 *
 * Source: common practice for the effect; the 8 % are our own default.
 */
export function armholeFit(o: { count: number; stitchesPerCm: number; armhole: number; within?: number }): {
  width: number;
  off: number;
  holds: boolean;
  message: string;
} {
  const count: Stitches = stitches(o.count, 'The stitches of the sleeve');
  const width = widthOf(count, perCm(o.stitchesPerCm, "The sleeve's stitch gauge"));
  const armhole = cm(o.armhole, 'The length round the armhole');
  const within = positive(o.within ?? noticeable, 'The difference allowed');
  const off = width / armhole - 1;
  const holds = Math.abs(off) <= within + 1e-9;
  const measured = `The sleeve is ${formatLength(width)} where the armhole is ${formatLength(armhole)}`;
  const message = holds
    ? `${measured}: it lies flat.`
    : `${measured}, ${formatNumber(Math.round(Math.abs(off) * 1000) / 10)} % ${off > 0 ? 'more: it will flare. Pick up fewer stitches' : 'less: it will pucker. Pick up more stitches'}, or change the depth of the armhole.`;
  return { width, off, holds, message };
}
