import { CraftError } from './craft-error';
import { evenParts } from './even-parts';
import { mostRows, rows, stitches } from './numbers';

/**
 * How to pick up an exact number of stitches along an exact number of row ends, evenly.
 *
 * - At least one stitch for two rows: the rows are cut into segments that differ by at most one row, and the last row
 *   end of each segment is skipped: `{ pick: 3, skip: 1 }` is 3 of 4.
 * - Fewer: one segment for each stitch, which is picked up at its end: `{ pick: 1, skip: 3 }` is skip 3, pick up 1.
 * - A stitch in every row end, or more: `skip` is 0, and each group is one row end that takes `pick` stitches; the
 *   larger ones are spread evenly.
 *
 * Groups stand in working order; a group that is worked several times running carries `times`.
 *
 * Counts are rows and stitches. Throws a CraftError when one of them is not whole or below 1, and beyond a million
 * segments.
 *
 * @example
 * pickUp({ rows: 13, stitches: 10 })
 * // { groups: [{ pick: 3, skip: 1, times: 2 }, { pick: 4, skip: 1 }] }: 3 of 4 row ends twice, then 4 of 5
 *
 * Source: common practice; checked against the published examples in tests/published/picking-up.test.ts.
 */
export function pickUp(o: { rows: number; stitches: number }): {
  groups: { pick: number; skip: number; times?: number }[];
} {
  const rowEnds: number = rows(o.rows, 'The number of row ends', 1);
  const count: number = stitches(o.stitches, 'The number of stitches to pick up');

  if (count >= rowEnds) {
    return { groups: inRuns(segments(count, rowEnds), (size) => ({ pick: size, skip: 0 })) };
  }
  const skipped = rowEnds - count;
  if (skipped <= count) {
    return { groups: inRuns(segments(rowEnds, skipped), (size) => ({ pick: size - 1, skip: 1 })) };
  }
  return { groups: inRuns(segments(rowEnds, count), (size) => ({ pick: 1, skip: size - 1 })) };
}

/** The sizes of the segments, as runs of equal ones: [size, times]. */
function segments(total: number, parts: number): [size: number, times: number][] {
  // Equal segments are one run, however many they are.
  if (total % parts === 0) return [[total / parts, parts]];
  if (parts > mostRows) {
    throw new CraftError(
      'too-many',
      'Spread over {parts} segments the edge is longer than can be laid out; {mostRows} are the most.',
      { parts, mostRows },
    );
  }
  const runs: [number, number][] = [];
  for (const size of evenParts(total, parts, 'down')) {
    const last = runs.at(-1);
    if (last && last[0] === size) last[1]++;
    else runs.push([size, 1]);
  }
  return runs;
}

function inRuns(
  runs: [size: number, times: number][],
  group: (size: number) => { pick: number; skip: number },
): { pick: number; skip: number; times?: number }[] {
  return runs.map(([size, times]) => (times > 1 ? { ...group(size), times } : group(size)));
}
