import { bracketed } from '../../format';
import { verifyPiece } from '../verify';
import type { PerSize } from './types';

/** The count after each row of some lines, by size; null in a size that is not worked. */
export type RowsBySize = readonly (readonly number[] | null)[];

/**
 * What lines of instructions come to, counted stitch by stitch in every size by the same reader that proves a written
 * pattern; a sentence where they cannot be followed in some size.
 *
 * @param counts the stitches there are before the first of them
 */
export function countedLines(
  lines: readonly string[],
  counts: PerSize,
  sizes: readonly string[],
): RowsBySize | { readonly problem: string } {
  const rows: (readonly number[] | null)[] = [];
  for (const [sizeIndex, count] of counts.entries()) {
    if (count === null) {
      rows.push(null);
      continue;
    }
    const start = bracketed(counts.map((one) => String(one ?? '–')));
    const followed = verifyPiece([`Cast on ${start} sts.`, ...lines], { sizes, sizeIndex });
    const [problem] = followed.problems;
    if (problem) return { problem: `Size ${sizes[sizeIndex]!}: ${problem.problem}` };
    rows.push(followed.counts);
  }
  return rows.some((list) => list !== null && list.length > 0) ? rows : { problem: 'It works no row.' };
}

const ownSize = /^\s*sizes?\s+\S.*:\s/iu;

/** Whether a line says what single sizes do: "Size M: dec 1 st …". */
export const isForSizes = (text: string): boolean => ownSize.test(text);
