import fc from 'fast-check';
import { expect, test } from 'vitest';
import { evenParts } from '../../src/craft/even-parts';

test('13 in three parts are 4, 5, 4; leaning down 4, 4, 5', () => {
  expect(evenParts(13, 3)).toEqual([4, 5, 4]);
  expect(evenParts(13, 3, 'down')).toEqual([4, 4, 5]);
});

test('5 in two parts: the half goes up, so the longer part comes first', () => {
  expect(evenParts(5, 2)).toEqual([3, 2]);
  expect(evenParts(5, 2, 'down')).toEqual([2, 3]);
});

test('fewer than parts leaves parts of nothing', () => {
  expect(evenParts(0, 3)).toEqual([0, 0, 0]);
  expect(evenParts(1, 3)).toEqual([0, 1, 0]);
});

test('part i ends at i · total / parts, to the nearest or the whole number below, and parts differ by at most one', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 1_000_000_000 }),
      fc.integer({ min: 1, max: 100 }),
      fc.constantFrom('nearest' as const, 'down' as const),
      (total, parts, lean) => {
        const sizes = evenParts(total, parts, lean);
        expect(sizes).toHaveLength(parts);
        const n = BigInt(parts);
        let end = 0n;
        const ends = sizes.map((size) => (end += BigInt(size)));
        const wanted = sizes.map((_, index) => {
          const at = BigInt(index + 1) * BigInt(total);
          return lean === 'down' ? at / n : (2n * at + n) / (2n * n);
        });
        expect(ends).toEqual(wanted);
        expect(Math.max(...sizes) - Math.min(...sizes)).toBeLessThanOrEqual(1);
      },
    ),
    { numRuns: 3000 },
  );
});
