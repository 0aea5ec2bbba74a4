import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pickUpRatio } from '../../src/craft/pick-up-ratio';

test('20 stitches and 26 rows ask for 10 of 13; over 8 rows at most 3 of 4, which is 2.5 % too few', () => {
  expect(pickUpRatio({ stitchesPerCm: 2, rowsPerCm: 2.6, most: 13 })).toEqual({ pick: 10, of: 13, off: 0 });
  const short = pickUpRatio({ stitchesPerCm: 2, rowsPerCm: 2.6 });
  expect(short).toMatchObject({ pick: 3, of: 4 });
  expect(short.off).toBeCloseTo(-0.025, 12);
});

test('16 stitches and 24 rows ask for 2 of 3', () => {
  expect(pickUpRatio({ stitchesPerCm: 16 / 10.16, rowsPerCm: 24 / 10.16 })).toEqual({
    pick: 2,
    of: 3,
    off: 0,
  });
});

test('rows twice as high as stitches are wide take 2 stitches each', () => {
  expect(pickUpRatio({ stitchesPerCm: 1.4, rowsPerCm: 0.7 })).toEqual({ pick: 2, of: 1, off: 0 });
});

test('5 stitches for 3 rows is found above one stitch a row', () => {
  expect(pickUpRatio({ stitchesPerCm: 1.5, rowsPerCm: 0.9 })).toEqual({ pick: 5, of: 3, off: 0 });
});

test('at least 1 stitch is picked up, however flat the rows: 1 of 8, and how far that is off', () => {
  const flat = pickUpRatio({ stitchesPerCm: 1, rowsPerCm: 20 });
  expect(flat).toMatchObject({ pick: 1, of: 8 });
  expect(flat.off).toBeCloseTo(1.5, 12);
});

test('over a single row only whole stitches can be picked up, halfway the greater', () => {
  expect(pickUpRatio({ stitchesPerCm: 3, rowsPerCm: 2, most: 1 })).toMatchObject({ pick: 2, of: 1 });
  expect(pickUpRatio({ stitchesPerCm: 2.8, rowsPerCm: 2, most: 1 })).toMatchObject({ pick: 1, of: 1 });
});

test('two ratios equally near: the one over fewer rows (5 of 12 lies midway between 1 of 3 and 1 of 2)', () => {
  expect(pickUpRatio({ stitchesPerCm: 5, rowsPerCm: 12, most: 3 })).toMatchObject({ pick: 1, of: 2 });
});

test('of 1 of 2 and 2 of 3, equally near 7 of 12, the one over fewer rows is the lesser', () => {
  expect(pickUpRatio({ stitchesPerCm: 7, rowsPerCm: 12, most: 3 })).toMatchObject({ pick: 1, of: 2 });
});

test('a ratio within a thousand millionth is exact: 33461 of 47321 for the root of a half', () => {
  expect(pickUpRatio({ stitchesPerCm: Math.SQRT1_2, rowsPerCm: 1, most: 1_000_000 })).toEqual({
    pick: 33_461,
    of: 47_321,
    off: 0,
  });
});

test('a million stitches to a row, and a million rows to a stitch, are the farthest that are followed', () => {
  expect(pickUpRatio({ stitchesPerCm: 1e6, rowsPerCm: 1 })).toEqual({ pick: 1e6, of: 1, off: 0 });
  expect(pickUpRatio({ stitchesPerCm: 1e-6, rowsPerCm: 1 })).toMatchObject({ pick: 1, of: 8 });
});

test('gauges that do not belong together are refused with what to check', () => {
  expect(() => pickUpRatio({ stitchesPerCm: 1e-3, rowsPerCm: 1e9 })).toThrow('check that both are per cm');
  expect(() => pickUpRatio({ stitchesPerCm: 1, rowsPerCm: 1_000_001 })).toThrow('do not go together');
  expect(() => pickUpRatio({ stitchesPerCm: 1_000_001, rowsPerCm: 1 })).toThrow('do not go together');
  expect(() => pickUpRatio({ stitchesPerCm: 1e9, rowsPerCm: 1e-3 })).toThrow('check that both are per cm');
});

test('a ratio over a thousand million rows is refused, one over a million is found', () => {
  expect(() => pickUpRatio({ stitchesPerCm: 2, rowsPerCm: 2.6, most: 1_000_000_000 })).toThrow('8 is usual');
  expect(pickUpRatio({ stitchesPerCm: 2, rowsPerCm: 2.6, most: 1_000_000 })).toEqual({
    pick: 10,
    of: 13,
    off: 0,
  });
});

describe('against every fraction there is', () => {
  const gauge = fc.double({ min: 0.2, max: 8, noNaN: true });

  test('no fraction over as many rows is nearer, and none over fewer rows is as near', () => {
    fc.assert(
      fc.property(gauge, gauge, fc.integer({ min: 1, max: 24 }), (stitchesPerCm, rowsPerCm, most) => {
        const { pick, of, off } = pickUpRatio({ stitchesPerCm, rowsPerCm, most });
        const exact = stitchesPerCm / rowsPerCm;
        let nearest = Infinity;
        let overFewest = 0;
        for (let rows = 1; rows <= most; rows++) {
          for (const stitches of [Math.floor(exact * rows), Math.ceil(exact * rows)]) {
            const miss = Math.abs(Math.max(1, stitches) / rows - exact) / exact;
            if (miss < nearest - 1e-9) [nearest, overFewest] = [miss, rows];
          }
        }
        expect(pick).toBeGreaterThanOrEqual(1);
        expect(Math.abs(pick / of - exact) / exact).toBeLessThanOrEqual(nearest + 1e-9);
        expect(of).toBeLessThanOrEqual(overFewest);
        expect(off).toBeCloseTo((pick / of - exact) / exact, 8);
      }),
      { numRuns: 5000 },
    );
  });

  test('a ratio of whole gauges is found exactly where its rows are few enough', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 1, max: 60 }), (stitches, rows) => {
        const divisor = ((a: number, b: number) => {
          while (b) [a, b] = [b, a % b];
          return a;
        })(stitches, rows);
        const ratio = pickUpRatio({
          stitchesPerCm: stitches / 10.16,
          rowsPerCm: rows / 10.16,
          most: rows / divisor,
        });
        expect(ratio).toEqual({ pick: stitches / divisor, of: rows / divisor, off: 0 });
      }),
      { numRuns: 3000 },
    );
  });
});
