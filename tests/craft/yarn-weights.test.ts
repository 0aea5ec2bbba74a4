import fc from 'fast-check';
import { expect, test } from 'vitest';
import { yarnWeights, yarnWeightsFor } from '../../src/craft/yarn-weights';

const names = (over4in: number, fabric: 'stockinette' | 'singleCrochet') =>
  yarnWeightsFor({ stitchesPerCm: over4in / 10.16, fabric }).map(({ name }) => name);

test('18 stitches of stockinette to 4 in lie in medium', () => {
  expect(names(18, 'stockinette')).toEqual(['medium']);
});

test('24 stitches of stockinette to 4 in lie in fine and in light', () => {
  expect(names(24, 'stockinette')).toEqual(['fine', 'light']);
});

test('14 stitches of single crochet to 10 cm are 14.2 to 4 in, in light and in medium', () => {
  const weights = yarnWeightsFor({ stitchesPerCm: 1.4, fabric: 'singleCrochet' });
  expect(weights.map(({ number }) => number)).toEqual([3, 4]);
});

test('between two ranges the nearest whole number of stitches to 4 in decides', () => {
  expect(names(20.4, 'stockinette')).toEqual(['medium']);
  expect(names(20.5, 'stockinette')).toEqual(['light']);
});

test('finer than lace is no published weight', () => {
  expect(names(41, 'stockinette')).toEqual([]);
  expect(names(33, 'singleCrochet')).toEqual([]);
});

test('every gauge that is counted up to 40 lies in a weight, and in no more than two neighbours', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.01, max: 40.49, noNaN: true }), (over4in) => {
      const found = yarnWeightsFor({ stitchesPerCm: over4in / 10.16, fabric: 'stockinette' });
      expect(found.length === 1 || (found.length === 2 && found[1]!.number === found[0]!.number + 1)).toBe(
        true,
      );
    }),
    { numRuns: 2000 },
  );
});

test('the weights run from the finest to the thickest', () => {
  expect(yarnWeights.map(({ number }) => number)).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
  for (const measure of ['stockinette', 'singleCrochet'] as const) {
    const ranges = yarnWeights.flatMap((weight) => (weight[measure] ? [weight[measure]] : []));
    expect(ranges.every((range, i) => i === 0 || range[1] < ranges[i - 1]![1])).toBe(true);
  }
});
