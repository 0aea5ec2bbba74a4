import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { slope, stepOf } from '../../../src/analysis/uncertainty/slopes';

/** The slope of a function at a value, from its values alone; and held to 14 digits, as the sheet holds them. */
function slopeOf(of: (x: number) => number, x: number): number {
  const step = stepOf(x);
  const held = (value: number) => Number(of(value).toPrecision(14));
  const about = (by: number) => ({ here: held(x), below: held(x - by), above: held(x + by) });
  return slope(about(step), step, about(step / 2));
}

const gauges = fc.double({ min: 0.3, max: 8, noNaN: true });
const lengths = fc.double({ min: 0.5, max: 300, noNaN: true });

describe('against the derivatives that calculus gives', () => {
  it.each<[string, (x: number, a: number) => number, (x: number, a: number) => number]>([
    ['N / g', (g, n) => n / g, (g, n) => -n / g ** 2],
    ['W · g', (g, w) => w * g, (_g, w) => w],
    [
      'an area, over both gauges',
      (g, n) => n / g / (g + 1),
      (g, n) => -n / g ** 2 / (g + 1) - n / g / (g + 1) ** 2,
    ],
    [
      'a slope by Pythagoras',
      (g, n) => Math.hypot(n / g, 10),
      (g, n) => -(n ** 2) / g ** 3 / Math.hypot(n / g, 10),
    ],
    ['a share of itself', (g, n) => (n * g) / (g + 5), (g, n) => (n * 5) / (g + 5) ** 2],
  ])('%s, to seven digits', (_what, of, derivative) => {
    fc.assert(
      fc.property(gauges, lengths, (g, a) => {
        const right = derivative(g, a);
        expect(Math.abs(slopeOf((x) => of(x, a), g) - right)).toBeLessThanOrEqual(
          1e-7 * Math.abs(right) + 1e-8,
        );
      }),
    );
  });
});

describe('a count that is rounded within a formula is held at what it is', () => {
  const half = (x: number) => Math.round(x * 10) / x;
  test('right on the edge where it would be another, from either side', () => {
    // 24.5 rounds up to 25: below it is 24, so only what is above tells the slope of 25 / x.
    expect(slopeOf(half, 2.45)).toBeCloseTo(-25 / 2.45 ** 2, 2);
    const up = (x: number) => Math.ceil(x * 10 - 1e-9) / x;
    expect(slopeOf(up, 2.4)).toBeCloseTo(-24 / 2.4 ** 2, 2);
  });

  test('and a step narrower than its distance to the edge does not see it', () => {
    expect(slopeOf(half, 2.42)).toBeCloseTo(-24 / 2.42 ** 2, 6);
  });
});

test('at a bend, as where the larger of two lengths changes, the slope is between those of its sides', () => {
  const larger = (x: number) => Math.max(3 * x, 6 + x - 2);
  expect(slopeOf(larger, 2)).toBeCloseTo(2, 6);
});

test('what does not move has no slope, and an extremum none either', () => {
  expect(slopeOf(() => 42, 3)).toBe(0);
  expect(slopeOf((x) => (x - 3) ** 2, 3)).toBeCloseTo(0, 8);
});
