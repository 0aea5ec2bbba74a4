import fc from 'fast-check';
import { expect, it, test } from 'vitest';
import { servesMost } from '../../../src/analysis/solve/serves-most';
import { tidyWithin } from '../../../src/analysis/solve/tidy-within';

test('of two stretches that serve as many sizes, the wider comes first', () => {
  expect(servesMost([[{ from: 0, to: 5 }], [{ from: 4, to: 9 }], [{ from: 7, to: 9 }]])).toEqual([
    { from: 7, to: 9, sizes: [1, 2] },
    { from: 4, to: 5, sizes: [0, 1] },
  ]);
});

test('two sizes that only touch are served together by the value where they touch', () => {
  expect(servesMost([[{ from: 0, to: 5 }], [{ from: 5, to: 9 }]])).toEqual([
    { from: 5, to: 5, sizes: [0, 1] },
  ]);
});

test('where no size is served, there is nothing', () => {
  expect(servesMost([[], []])).toEqual([]);
});

it('serves as many sizes as the best of all values that can be tried', () => {
  const lists = fc.array(
    fc.uniqueArray(fc.integer({ min: 0, max: 30 }), { maxLength: 8 }).map((ends) => {
      const sorted = [...ends].sort((a, b) => a - b);
      return Array.from({ length: Math.floor(sorted.length / 2) }, (_pair, at) => ({
        from: sorted[2 * at]!,
        to: sorted[2 * at + 1]!,
      }));
    }),
    { minLength: 1, maxLength: 6 },
  );
  fc.assert(
    fc.property(lists, (intervals) => {
      const served = (value: number) =>
        intervals.flatMap((list, size) =>
          list.some(({ from, to }) => from <= value && value <= to) ? [size] : [],
        );
      const all = Array.from({ length: 121 }, (_value, at) => served(at / 4));
      const best = Math.max(...all.map((sizes) => sizes.length));
      const found = servesMost(intervals);
      if (best === 0) expect(found).toEqual([]);
      for (const { from, to, sizes } of found) {
        expect(sizes).toHaveLength(best);
        expect(served((from + to) / 2)).toEqual(sizes);
      }
      // Every value that serves the most lies in one of them.
      all.forEach((sizes, at) => {
        if (best === 0 || sizes.length < best) return;
        expect(found.some(({ from, to }) => from <= at / 4 && at / 4 <= to)).toBe(true);
      });
    }),
  );
});

test.each([
  [17.143, 22.857, 1, 20],
  [1.121, 1.139, 1, 1.13],
  [0, 1.094, 1, 0.5],
  [9.986, 11.254, 1, 11],
  [-0.2, 0.3, 1, 0],
  [43, 47, 2.54, 18 * 2.54],
  [3.3333333, 3.3333334, 1, 3.33333335],
])('a number to remember between %s and %s, written by %s, is %s', (from, to, scale, tidy) => {
  expect(tidyWithin({ from, to }, scale)).toBeCloseTo(tidy, 8);
});
