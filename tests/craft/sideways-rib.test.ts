import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pickUp } from '../../src/craft/pick-up';
import { sidewaysRib } from '../../src/craft/sideways-rib';

test('a hem of 92 cm at 15 rows to 10 cm is 138 rows of rib', () => {
  expect(sidewaysRib({ length: 92, rowsPerCm: 1.5 })).toEqual({ rows: 138, exact: 138, off: 0 });
});

test('45 cm at 14 rows to 10 cm are 63 rows: an odd number becomes the even one above, or below when told', () => {
  expect(sidewaysRib({ length: 45, rowsPerCm: 1.4 })).toEqual({ rows: 64, exact: 63, off: 1 });
  expect(sidewaysRib({ length: 45, rowsPerCm: 1.4, rule: 'down' })).toEqual({ rows: 62, exact: 63, off: -1 });
});

test('a rib is at least one ridge of two rows', () => {
  expect(sidewaysRib({ length: 0.5, rowsPerCm: 1.4 }).rows).toBe(2);
  expect(() => sidewaysRib({ length: 0.5, rowsPerCm: 1.4, rule: 'down' })).toThrow('the least is 2');
});

test('138 rows of rib take 116 stitches of body: 22 row ends are skipped', () => {
  const { rows } = sidewaysRib({ length: 92, rowsPerCm: 1.5 });
  const skipped = pickUp({ rows, stitches: 116 }).groups.reduce(
    (sum, { skip, times = 1 }) => sum + skip * times,
    0,
  );
  expect(skipped).toBe(22);
});

test('whatever the edge, the rows are even and within one row of it', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 2, max: 300, noNaN: true }),
      fc.double({ min: 1, max: 6, noNaN: true }),
      (length, rowsPerCm) => {
        const { rows, exact, off } = sidewaysRib({ length, rowsPerCm });
        expect(rows % 2).toBe(0);
        expect(Math.abs(off)).toBeLessThanOrEqual(1 + 1e-9);
        expect(exact).toBeCloseTo(length * rowsPerCm, 6);
        expect(rows - exact).toBeCloseTo(off, 6);
      },
    ),
    { numRuns: 3000 },
  );
});
