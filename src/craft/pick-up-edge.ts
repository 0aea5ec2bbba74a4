import { CraftError } from './craft-error';
import { message, type Message } from './message';
import { numberParam } from './message-parts';
import { fitCount } from './fit-count';
import {
  listOf,
  notNegative,
  oneOf,
  perCm,
  roundDown,
  roundNearest,
  rows,
  same,
  stitches,
  whole,
  wholeCount,
} from './numbers';
import type { EdgeStretch, Repeat, Rule } from './types';

/** Beyond this a share can no longer be told from the whole number beside it. */
const mostStitches = 100_000_000;

/**
 * The stitches picked up along an edge that is made of several stretches: a neck, a front edge, a blanket's border.
 *
 * Row ends take `pick` stitches for every `of` rows, stitch tops one for one, motifs or chains `each` stitches, a
 * curve its length × the stitch gauge. `unfitted` is the exact sum. The total is the nearest whole number, or with
 * `fit` the count that fits the band's multiple. What the total adds or takes away is shared over the stretches by
 * their size, in whole stitches: everyone gets the whole part of its share, and the stitches left over go to the
 * largest remainders (of equal ones, to the first). `perStretch` adds up to `total`.
 *
 * @param edge the stretches in working order; a stretch of 0 rows, stitches or cm takes no stitch
 * @param fit the repeats of the band and the rule for fitting it, as for fitCount
 * @returns the total, the stitches of each stretch, and the exact sum
 * @throws CraftError where a count or gauge is no such thing, and where the whole edge takes no stitch
 * @example
 * pickUpEdge(
 *   [
 *     { kind: 'rows', rows: 30, pick: 3, of: 4 },
 *     { kind: 'stitches', count: 25 },
 *     { kind: 'rows', rows: 30, pick: 3, of: 4 },
 *   ],
 *   { repeats: [{ multiple: 4, plus: 2 }], rule: 'nearest' },
 * )
 * // { total: 70, perStretch: [23, 25, 22], unfitted: 70 }
 *
 * Source: common practice; the largest remainder is Hamilton's way of sharing out whole seats, and held against it in
 * tests/published/classical-problems.test.ts.
 */
export function pickUpEdge(
  edge: EdgeStretch[],
  fit?: { repeats: Repeat[]; rule: Rule },
): { total: number; perStretch: number[]; unfitted: number } {
  const exact = listOf(edge, 'The stretches of the edge', 1).map((stretch, index) =>
    exactStitches(stretch, index + 1),
  );
  const unfitted = whole(exact.reduce((sum, one) => sum + one, 0));
  withinReach(unfitted);
  if (unfitted === 0) {
    throw new CraftError(
      'nothing-to-pick-up',
      'The edge takes no stitch: give at least one stretch rows, stitches, motifs or a length.',
    );
  }
  const total = fit ? fitCount(unfitted, fit.repeats, fit.rule).count : roundNearest(unfitted);
  if (total < 1) {
    throw new CraftError(
      'nothing-to-pick-up',
      'The edge is less than half a stitch long: make it longer, or leave it without a band.',
    );
  }
  withinReach(total);
  return { total, perStretch: shared(total, exact, unfitted), unfitted };
}

function withinReach(count: number): void {
  if (count <= mostStitches) return;
  throw new CraftError(
    'too-large',
    'The edge would take {count} stitches, and at most {mostStitches} can be shared out: check its counts and its gauge.',
    { count: numberParam(count), mostStitches },
  );
}

function exactStitches(stretch: EdgeStretch, which: number): number {
  const its = (what: string): Message =>
    message('of-a-stretch', '{what} stretch {which}', { what, which: { stretch: which } });
  oneOf(stretch?.kind, ['rows', 'stitches', 'motifs', 'curve'], its('The kind of'));
  switch (stretch.kind) {
    case 'rows': {
      const rowEnds = rows(stretch.rows, its('The number of row ends of'));
      const pick = stitches(stretch.pick, its('The number of stitches picked up on'));
      const of = wholeCount(stretch.of, its('The number of row ends they are picked up over on'), 1);
      return (rowEnds * pick) / of;
    }
    case 'stitches':
      return stitches(stretch.count, its('The number of stitch tops of'), 0);
    case 'motifs': {
      const motifs = wholeCount(stretch.motifs, its('The number of motifs of'));
      return motifs * stitches(stretch.each, its('The number of stitches for each motif of'));
    }
    case 'curve': {
      const length = notNegative(stretch.length, its('The length of'));
      return length * perCm(stretch.stitchesPerCm, its('The stitch gauge of'));
    }
  }
}

/** Shares `total` out by size, in whole stitches, what is left over to the largest remainders. */
function shared(total: number, exact: number[], unfitted: number): number[] {
  const quotas = exact.map((size) => whole((size / unfitted) * total));
  const counts = quotas.map(roundDown);
  const left = total - counts.reduce((sum, count) => sum + count, 0);
  const byRemainder = quotas.map((quota, index) => ({ index, remainder: quota - counts[index]! }));
  byRemainder.sort((a, b) =>
    same(a.remainder, b.remainder) ? a.index - b.index : b.remainder - a.remainder,
  );
  for (const { index } of byRemainder.slice(0, left)) counts[index]!++;
  return counts;
}
