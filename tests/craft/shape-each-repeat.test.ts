import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fitCount } from '../../src/craft/fit-count';
import { shapeEachRepeat } from '../../src/craft/shape-each-repeat';

test('one stitch out of each of 10 repeats takes 83 (8 × 10 + 3) to 73 (7 × 10 + 3)', () => {
  expect(shapeEachRepeat({ count: 83, repeats: 10, by: -1 })).toBe(73);
});

test('one stitch into each of 6 repeats takes 36 to 42', () => {
  expect(shapeEachRepeat({ count: 36, repeats: 6, by: 1 })).toBe(42);
});

test('no change in the repeats is no change in the row', () => {
  expect(shapeEachRepeat({ count: 36, repeats: 6, by: 0 })).toBe(36);
});

test('6 repeats of 6 can lose 5 stitches each and not 6', () => {
  expect(shapeEachRepeat({ count: 36, repeats: 6, by: -5 })).toBe(6);
  // The 3 edge stitches beside 5 repeats of 8 do not make up for repeats that are gone.
  expect(() => shapeEachRepeat({ count: 43, repeats: 5, by: -8 })).toThrow('at most 7 can go from each');
  expect(() => shapeEachRepeat({ count: 36, repeats: 6, by: -6 })).toThrow(
    '6 out of each of 6 repeats is more than 36 stitches can lose: at most 5 can go from each, and each keeps at least one.',
  );
});

test('repeats of a single stitch can lose nothing', () => {
  expect(() => shapeEachRepeat({ count: 7, repeats: 6, by: -2 })).toThrow('work fewer repeats');
  expect(() => shapeEachRepeat({ count: 6, repeats: 7, by: 1 })).toThrow(
    '7 repeats do not fit on 6 stitches; 6 are the most',
  );
});

test('a count that fits a multiple of m plus n fits a multiple of m + by plus n afterwards', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 2, max: 40 }),
      fc.integer({ min: 0, max: 12 }),
      fc.integer({ min: 1, max: 60 }),
      fc.integer({ min: -39, max: 10 }),
      (multiple, plus, repeats, by) => {
        fc.pre(multiple + by >= 1);
        const after = shapeEachRepeat({ count: multiple * repeats + plus, repeats, by });
        const fit = fitCount(after, [{ multiple: multiple + by, plus }], 'nearest');
        expect(fit.count).toBe(after);
        expect(after).toBe((multiple + by) * repeats + plus);
      },
    ),
    { numRuns: 3000 },
  );
});

test('repeats of a single stitch each can grow, and repeats of two can lose one', () => {
  expect(shapeEachRepeat({ count: 6, repeats: 6, by: 1 })).toBe(12);
  expect(() => shapeEachRepeat({ count: 12, repeats: 6, by: -2 })).toThrow('at most 1 can go from each');
});
