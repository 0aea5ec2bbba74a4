import { markPositionsIn, rowAt } from '../charts';
import type { Outline } from './outline';
import type { Corner } from './outline-path';

/**
 * Where the marks of a size stand on the two edges of its outline, in cm: on a row each, those of every size at another
 * height, so that they tell outlines apart that lie upon each other, without colours and dashes.
 *
 * @param sizeIndex of the size among the notebook's sizes, from 0
 */
export function edgeMarks({ edges, left, right }: Outline, sizeIndex: number, pxPerCm: number): Corner[] {
  const length = edges.at(-1) ?? 0;
  return markPositionsIn(0, length * pxPerCm, sizeIndex).flatMap((along) => {
    const y = along / pxPerCm;
    const row = rowAt(edges, y);
    return [left[row]!, right[row]!].map((x) => ({ x, y }));
  });
}
