import { describe, expect, test } from 'vitest';
import { areaOf, lengthOf, workPiece } from '../../src/craft';
import type { Fabric, Row } from '../../src/craft';

/*
 * Source: Lindy's Knits & Laces, "How to knit a helpful swatch, part 4", 2020 (lindysknitslaces.com): a body of two
 * rectangles of 20 by 28 in is 1120 square inches, and a sleeve of 8 in at the bottom, 15 in at the top and 18 in long
 * is 207. The published figures are of the shapes; worked in rows they come near, not equal.
 */
const perInch = (n: number) => n / 2.54;
const fabric: Fabric = { stitches: perInch(6), rows: perInch(8) };
const squareInches = (rows: Row[]) => areaOf(rows) / 2.54 ** 2;

describe("Lindy's Knits & Laces 2020", () => {
  test('two body pieces of 20 by 28 in are 1120 square inches', () => {
    const body = workPiece({
      name: 'Body',
      worked: 'flat',
      start: 120,
      stretches: [{ kind: 'even', rows: 224, fabric }],
    });
    expect(lengthOf(body) / 2.54).toBeCloseTo(28, 10);
    expect(2 * squareInches(body)).toBeCloseTo(1120, 8);
  });

  test.each(['longFirst', 'shortFirst', 'spread'] as const)(
    'a sleeve from 8 to 15 in over 18 in, its intervals %s, is 207 square inches to within 2 %%',
    (order) => {
      const sleeve = workPiece({
        name: 'Sleeve',
        worked: 'flat',
        start: 48,
        stretches: [
          { kind: 'taper', fabric, to: 90, over: 144, perRow: 2, every: 1, before: 0, after: 0, order },
        ],
      });
      expect(lengthOf(sleeve) / 2.54).toBeCloseTo(18, 10);
      expect(Math.abs(squareInches(sleeve) - 207)).toBeLessThan(0.02 * 207);
    },
  );

  test('rows that wait for the end of their interval average a little less than the trapezoid', () => {
    const sleeve = workPiece({
      name: 'Sleeve',
      worked: 'flat',
      start: 48,
      stretches: [{ kind: 'taper', fabric, to: 90, over: 147, perRow: 2, every: 1, before: 0, after: 0 }],
    });
    // 21 intervals of 7 rows, each 6 rows at its first count and 1 row at 2 stitches more.
    const meanStitches = (48 + 88) / 2 + 2 / 7;
    expect(squareInches(sleeve)).toBeCloseTo((meanStitches / 6) * (147 / 8), 8);
    expect(meanStitches).toBeLessThan((48 + 90) / 2);
  });
});
