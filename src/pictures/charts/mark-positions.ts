/** Px from one mark of a line to the next, about. */
const apart = 130;

/**
 * How far along a line the marks of a size stand, from `left` to `right`: some 130 px apart, those of each size a little
 * after those of the one before, so that they stay apart where the lines of several sizes lie upon each other.
 *
 * @param index of the size among the notebook's sizes, from 0
 * @example markPositionsIn(0, 260, 0) // [19.5, 149.5]
 */
export function markPositionsIn(left: number, right: number, index: number): number[] {
  const many = Math.max(1, Math.round((right - left) / apart));
  const part = (0.15 + 0.7 * ((index * 5) % 12) * (1 / 11)) / many;
  return Array.from({ length: many }, (_, at) => left + (right - left) * (at / many + part));
}
