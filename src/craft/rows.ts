import { CraftError } from './craft-error';
import { lengthParam } from './message-parts';
import { listOf, notNegative, same } from './numbers';
import type { Row } from './types';

/**
 * The length of worked rows: the sum of their heights, cm.
 *
 * @example lengthOf(workPiece(cuff)) // 2, for two rows 1 cm high
 *
 * Source: common practice.
 */
export function lengthOf(rows: Row[]): number {
  return sum(rows, (row) => row.height);
}

/**
 * The area of worked rows, cm²: each row is a strip as wide as its count and as high as the row. A tapered piece so
 * comes out a little smaller than the trapezoid drawn through its ends.
 *
 * @example areaOf(workPiece(cuff)) // 40, for two rows 20 cm wide and 1 cm high
 *
 * Source: common practice; held against published areas in tests/published/areas-for-yarn.test.ts.
 */
export function areaOf(rows: Row[]): number {
  return sum(rows, (row) => row.width * row.height);
}

/**
 * The stitches in worked rows, all told: what working time goes by.
 *
 * @example stitchesIn(workPiece(cuff)) // 56, for two rows of 28
 *
 * Source: common practice.
 */
export function stitchesIn(rows: Row[]): number {
  return sum(rows, (row) => row.count);
}

/**
 * The width of a piece at a length from its start, cm: that of the last row worked by then. At 0 it is the first
 * row's; where a row ends exactly at the length, that row's.
 *
 * @param length cm from the start
 * @throws CraftError where there are no rows, or the piece is shorter than the length
 * @example widthAt(workPiece(cuff), 1.5) // 20
 *
 * Source: common practice ("measure across when the piece is so long").
 */
export function widthAt(rows: Row[], length: number): number {
  listOf(rows, 'The rows of a piece', 1);
  const wanted = notNegative(length, 'The length to measure at');
  let worked = 0;
  for (const row of rows) {
    worked = known(worked + row.height);
    if (worked >= wanted || same(worked, wanted)) return known(row.width);
  }
  throw new CraftError(
    'too-long',
    'The piece is {worked} long: it has no width at {length}. Measure at {worked} or less.',
    { worked: lengthParam(worked), length: lengthParam(length) },
  );
}

/** A running sum that keeps what each addition rounds away, so that a million rows add up as exactly as two. */
function sum(rows: Row[], of: (row: Row) => number): number {
  listOf(rows, 'The rows of a piece');
  let total = 0;
  let lost = 0;
  for (const row of rows) {
    const part = of(row) - lost;
    const next = total + part;
    lost = next - total - part;
    total = next;
  }
  return known(total);
}

/** Rows from `workPiece` are whole; rows put together by hand may lack a number, which would spoil every sum. */
function known(x: number): number {
  if (Number.isFinite(x)) return x;
  throw new CraftError(
    'not-a-number',
    'A row has no count, width or height to measure by: work the piece to get its rows.',
  );
}
