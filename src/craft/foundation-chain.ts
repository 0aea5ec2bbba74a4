import { CraftError } from './craft-error';
import { stitches, wholeCount } from './numbers';

/**
 * The foundation chain for a first row of crochet.
 *
 * The chain is one for each stitch and the turning chain on top; where the turning chain counts as the first stitch,
 * one chain fewer. Common turning chains: 1 for single crochet, not counted; 2 for half double; 3 for double; 4 for
 * treble (US terms).
 *
 * @param o.stitches stitches of the first row
 * @param o.turning chains of the turning chain
 * @param o.counts whether the turning chain counts as a stitch
 * @returns chains to make
 * @throws CraftError where a count is not whole, or a turning chain of none is said to count
 * @example
 * foundationChain({ stitches: 75, turning: 1, counts: false }) // 76
 * foundationChain({ stitches: 75, turning: 3, counts: true })  // 77
 *
 * Source: common practice.
 */
export function foundationChain(o: { stitches: number; turning: number; counts: boolean }): number {
  const row = stitches(o.stitches, 'The stitches of the first row');
  const turning = wholeCount(o.turning, 'The turning chain');
  if (o.counts && turning === 0) {
    throw new CraftError(
      'no-turning-chain',
      'A turning chain of 0 cannot count as a stitch: give its chains, or say that it does not count.',
    );
  }
  return row + turning - (o.counts ? 1 : 0);
}
