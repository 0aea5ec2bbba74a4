import { describe, expect, test } from 'vitest';
import {
  bodyMeasures,
  chartNames,
  chartPoint,
  chartPoints,
  chartRange,
  charts,
} from '../../src/craft/charts';

test("a woman's M has a bust of 36 to 38 in: 91.44 to 96.52 cm, in the middle 93.98", () => {
  const range = chartRange('woman', 'M', 'bust');
  expect(range.low).toBeCloseTo(91.44, 10);
  expect(range.high).toBeCloseTo(96.52, 10);
  expect(range).not.toHaveProperty('note');
  expect(chartPoint('woman', 'M', 'bust', 'lower')).toBeCloseTo(91.44, 10);
  expect(chartPoint('woman', 'M', 'bust', 'upper')).toBeCloseTo(96.52, 10);
  expect(chartPoint('woman', 'M', 'bust')).toBeCloseTo(93.98, 10);
});

test("a number that the chart prints alone is both ends of its range: a child's 8 has an upper arm of 8½ in", () => {
  const { low, high } = chartRange('child', '8', 'upperArm');
  expect(low).toBeCloseTo(21.59, 10);
  expect(high).toBe(low);
});

test("a note stands beside the measure it is about: a man's back length is the back hip length", () => {
  expect(chartRange('man', 'L', 'backWaistLength').note).toContain('back hip length');
  expect(chartRange('man', 'L', 'bust')).not.toHaveProperty('note');
  expect(chartRange('baby', '24 months', 'neckToWrist').note).toContain('from 14 to 18');
});

describe.each([...chartNames])("the %s's chart", (name) => {
  test.each([...bodyMeasures])(
    'has %s for every size, no end below its start, and no size below the one before',
    (measure) => {
      const ranges = charts[name].sizes.map((size) => chartRange(name, size, measure));
      expect(charts[name].measures[measure]).toHaveLength(ranges.length);
      ranges.forEach(({ low, high }, i) => {
        expect(low).toBeGreaterThan(7);
        expect(high).toBeGreaterThanOrEqual(low);
        expect(high).toBeLessThan(160);
        expect(low).toBeGreaterThanOrEqual(ranges[i - 1]?.low ?? 0);
        expect(high).toBeGreaterThanOrEqual(ranges[i - 1]?.high ?? 0);
      });
    },
  );
});

test('a size that is not charted is answered with those that are', () => {
  expect(() => chartRange('man', 'XS', 'bust')).toThrow(
    'There is no size in the man\'s chart called "XS": there are S, M, L, XL, 2XL.',
  );
  expect(() => chartRange('cat' as never, 'S', 'bust')).toThrow('there are woman, man, child, baby');
  expect(() => chartRange('man', 'S', 'head' as never)).toThrow(
    'There is no measure in the man\'s chart called "head"',
  );
  expect(() => chartPoint('man', 'S', 'bust', 'top' as never)).toThrow(`there are ${chartPoints.join(', ')}`);
});

test('what every object inherits is no chart', () => {
  expect(() => chartRange('constructor' as never, 'S', 'bust')).toThrow(
    'There is no chart called "constructor"',
  );
});
