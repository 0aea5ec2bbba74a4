import { CraftError } from './craft-error';
import { oneOf, wholeCount } from './numbers';

/**
 * Narrowing a fabric of motifs: one stitch is taken out of every gap, so that the motifs stay whole.
 *
 * Flat there are k − 1 gaps between k motifs, in the round k. Afterwards the repeat is one stitch less, and fits to a
 * repeat further up use that.
 *
 * @param o.motifs motifs across; @param o.motif stitches of one
 * @param o.gap plain stitches between two now; @param o.least the fewest there may be
 * @param o.edge stitches at each end, flat
 * @returns the stitches taken out, the gap, the repeat and the count afterwards
 * @throws CraftError where the gap is already at its least
 * @example
 * narrowMotifs({ motifs: 6, motif: 10, gap: 4, least: 2, edge: 1, worked: 'flat' })
 * // { taken: 5, gap: 3, repeat: 13, count: 77 }
 *
 * Source: common practice.
 */
export function narrowMotifs(o: {
  motifs: number;
  motif: number;
  gap: number;
  least: number;
  edge: number;
  worked: 'flat' | 'round';
}): { taken: number; gap: number; repeat: number; count: number } {
  const motifs = wholeCount(o.motifs, 'The number of motifs', 1);
  const motif = wholeCount(o.motif, 'The stitches of a motif', 1);
  const before = wholeCount(o.gap, 'The gap between motifs');
  const least = wholeCount(o.least, 'The least gap between motifs');
  const edge = wholeCount(o.edge, 'The stitches at each edge');
  const flat = oneOf(o.worked, ['flat', 'round'], 'How motifs are worked') === 'flat';
  if (before <= least) {
    throw new CraftError(
      'gap-too-narrow',
      'A gap of {before} cannot lose a stitch when {least} are the fewest: start with a gap of {enough} or more, or leave out a motif.',
      { before, least, enough: least + 1 },
    );
  }
  const gap = before - 1;
  const taken = flat ? motifs - 1 : motifs;
  const count = wholeCount(motifs * motif + taken * gap + (flat ? 2 * edge : 0), 'The count afterwards', 1);
  return { taken, gap, repeat: motif + gap, count };
}
