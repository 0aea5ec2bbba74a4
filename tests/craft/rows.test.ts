import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaOf, lengthOf, stitchesIn, widthAt } from '../../src/craft/rows';
import type { Fabric, Row } from '../../src/craft/types';
import { workPiece } from '../../src/craft/work-piece';

const fabric: Fabric = { stitches: 1.4, rows: 1.6 };
const cuff = workPiece({
  name: 'Cuff',
  worked: 'flat',
  start: 28,
  stretches: [{ kind: 'even', rows: 32, fabric }],
});

describe('a cuff of 28 stitches and 32 rows at 14 and 16 to 10 cm', () => {
  test('is 20 cm long and 20 cm wide: 400 cm² and 896 stitches', () => {
    expect(lengthOf(cuff)).toBeCloseTo(20, 12);
    expect(areaOf(cuff)).toBeCloseTo(400, 10);
    expect(stitchesIn(cuff)).toBe(896);
    expect(widthAt(cuff, 7)).toBeCloseTo(20, 12);
  });
});

describe('the width at a length', () => {
  const steps = workPiece({
    name: 'Steps',
    worked: 'flat',
    start: 10,
    stretches: [{ kind: 'rows', counts: [10, 12, 14], fabric: { stitches: 1, rows: 0.5 } }],
  });

  test('is that of the last row worked by then: rows 2 cm high end at 2, 4 and 6 cm', () => {
    expect([0, 1, 2, 2.1, 4, 5, 6].map((length) => widthAt(steps, length))).toEqual([
      10, 10, 10, 12, 12, 14, 14,
    ]);
  });

  test('a row that ends at the length but for floating point ends at it', () => {
    expect(widthAt(steps, 2 + 1e-12)).toBe(10);
    expect(widthAt(steps, 6 + 1e-12)).toBe(14);
  });

  test('beyond the piece is refused with how long it is', () => {
    expect(() => widthAt(steps, 6.5)).toThrow(
      'The piece is 6 cm long: it has no width at 6.5 cm. Measure at 6 cm or less.',
    );
    expect(() => widthAt([], 0)).toThrow('The rows of a piece are missing');
    expect(() => widthAt(steps, -1)).toThrow('has to be 0 or more');
  });
});

test('no rows have no length, no area and no stitches', () => {
  expect([lengthOf([]), areaOf([]), stitchesIn([])]).toEqual([0, 0, 0]);
});

test('a million rows of a tenth of a centimetre are 1 km, to the last digit', () => {
  const row = { height: 0.1, width: 0.3, count: 1 } as Row;
  const long = Array<Row>(1_000_000).fill(row);
  expect(lengthOf(long)).toBe(100_000);
  expect(areaOf(long)).toBeCloseTo(30_000, 9);
});

test('the area is the sum of width × height, whatever the rows', () => {
  const length = fc.double({ min: 0.1, max: 200, noNaN: true });
  const row = fc.record({
    width: length,
    height: length,
    count: fc.integer({ min: 1, max: 400 }),
  }) as fc.Arbitrary<Row>;
  fc.assert(
    fc.property(fc.array(row, { maxLength: 60 }), (rows) => {
      let area = 0;
      let long = 0;
      let stitches = 0;
      for (const { width, height, count } of rows) {
        area += width * height;
        long += height;
        stitches += count;
      }
      expect(Math.abs(areaOf(rows) - area)).toBeLessThanOrEqual(1e-12 * area);
      expect(Math.abs(lengthOf(rows) - long)).toBeLessThanOrEqual(1e-12 * long);
      expect(stitchesIn(rows)).toBe(stitches);
    }),
    { numRuns: 2000 },
  );
});
