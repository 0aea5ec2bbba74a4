import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CraftError } from '../../src/craft/craft-error';
import { fitCount } from '../../src/craft/fit-count';
import type { Repeat, Rule } from '../../src/craft/types';

const of = (multiple: number, plus: number): Repeat => ({ multiple, plus });

describe('one repeat', () => {
  test('a multiple of 8 plus 3 nearest to 77.2 is 75', () => {
    const fit = fitCount(77.2, [of(8, 3)], 'nearest');
    expect(fit).toMatchObject({ count: 75, below: 75, above: 83 });
    expect(fit.off).toBeCloseTo(-2.2, 12);
  });

  test('a multiple of 8 plus 3 at least 77.2 is 83, at most 77.2 is 75', () => {
    expect(fitCount(77.2, [of(8, 3)], 'up').count).toBe(83);
    expect(fitCount(77.2, [of(8, 3)], 'down').count).toBe(75);
  });

  test('halfway between 75 and 83 the greater is taken', () => {
    expect(fitCount(79, [of(8, 3)], 'nearest').count).toBe(83);
    expect(fitCount(79 - 1e-10, [of(8, 3)], 'nearest').count).toBe(83);
    expect(fitCount(78.99, [of(8, 3)], 'nearest').count).toBe(75);
  });

  test('45 cm at 14 to 10 cm are 63 and not one less: a multiple of 9 fits it exactly', () => {
    expect(fitCount(45 * 1.4, [of(9, 0)], 'down')).toEqual({ count: 63, below: 63, above: 63, off: 0 });
  });

  test('at least one whole repeat: the least multiple of 8 plus 3 is 11', () => {
    expect(fitCount(5, [of(8, 3)], 'nearest')).toEqual({ count: 11, below: null, above: 11, off: 6 });
    expect(() => fitCount(10.9, [of(8, 3)], 'down')).toThrow('the least is 11');
  });

  test('a multiple of 8 minus 1 starts at 7, and a multiple of 4 plus 7 at 11', () => {
    expect(fitCount(0, [of(8, -1)], 'up').count).toBe(7);
    expect(fitCount(0, [of(4, 7)], 'up').count).toBe(11);
    expect(fitCount(12.9, [of(4, 7)], 'nearest').count).toBe(11);
  });

  test('a plus far below 0 still leaves one stitch or more', () => {
    expect(fitCount(0, [of(4, -10)], 'up').count).toBe(2);
    expect(fitCount(0, [of(4, -8)], 'up').count).toBe(4);
  });
});

describe('no repeat', () => {
  test('every whole number from 1 is allowed', () => {
    expect(fitCount(72.8, [], 'nearest')).toMatchObject({ count: 73, below: 72, above: 73 });
    expect(fitCount(0.2, [], 'nearest')).toMatchObject({ count: 1, below: null });
  });

  test('a parity alone takes every second number', () => {
    expect(fitCount(49.5, [], 'nearest', 'even').count).toBe(50);
    expect(fitCount(49.5, [], 'nearest', 'odd').count).toBe(49);
    expect(fitCount(0, [], 'up', 'even').count).toBe(2);
  });
});

describe('several repeats at once', () => {
  test('lace over 12 plus 1 above a rib over 4 plus 1 near 100 is 97', () => {
    expect(fitCount(100, [of(12, 1), of(4, 1)], 'nearest').count).toBe(97);
  });

  test('two repeats that never meet are named, with the reason and a way out', () => {
    expect(() => fitCount(100, [of(5, 0), of(8, 3), of(6, 2)], 'nearest')).toThrow(
      'No count is both a multiple of 8 plus 3 and a multiple of 6 plus 2: the first is always 1 more than a multiple of 2, the second always a multiple of 2. Change the stitches added to one of them by 1, or drop one.',
    );
  });

  test('of repeats that never meet one is changed by the difference of what they leave over, whichever leaves more', () => {
    const why = (...repeats: Repeat[]) => {
      try {
        fitCount(100, repeats, 'nearest');
      } catch (error) {
        return (error as CraftError).message;
      }
      return 'they meet';
    };
    expect(why(of(4, 1), of(8, 3))).toMatch(
      /a multiple of 4 plus 1 and a multiple of 8 plus 3: the first is always 1 more than a multiple of 4, the second always 3 more .* by 2, or drop one\.$/,
    );
    expect(why(of(8, 3), of(4, 1))).toMatch(/always 3 more .* always 1 more .* by 2, or drop one\.$/);
    expect(why(of(6, 0), of(8, -3))).toMatch(
      /^No count is both a multiple of 6 and a multiple of 8 minus 3: the first is always a multiple of 2, the second always 1 more .* by 1, or drop one\.$/,
    );
  });

  test('an even count and a multiple of 8 plus 3 never meet', () => {
    expect(() => fitCount(77, [of(8, 3)], 'nearest', 'even')).toThrow(
      /No count is both a multiple of 8 plus 3 and an even count/,
    );
  });

  test('repeats up to a thousand million are solved exactly', () => {
    const [a, b] = [999_999_937, 1000];
    const fit = fitCount(1e9, [of(a, 5), of(b, 5)], 'up');
    expect(fit.count % b).toBe(5);
    expect((fit.count - 5) % a).toBe(0);
  });

  test('repeats that first meet beyond any garment are refused, not lost in rounding', () => {
    expect(() => fitCount(10, [of(999_999_937, 1), of(999_999_929, 2)], 'nearest')).toThrow(
      /beyond anything/,
    );
  });
});

describe('against counting through every number', () => {
  const repeat = fc.record({
    multiple: fc.integer({ min: 1, max: 24 }),
    plus: fc.integer({ min: -30, max: 30 }),
  });
  const parity = fc.constantFrom(undefined, 'odd' as const, 'even' as const);
  const rule = fc.constantFrom<Rule>('nearest', 'up', 'down');

  function counted(target: number, repeats: Repeat[], rule: Rule, parity?: 'odd' | 'even') {
    const allowed: number[] = [];
    // Beyond the target and the least, one round of everything the multiples have in common is enough.
    const common = repeats.reduce((all, { multiple }) => all * multiple, 2);
    for (let n = 1; n <= target + 60 + common; n++) {
      const fits = repeats.every((r) => n >= r.multiple + r.plus && Math.abs(n - r.plus) % r.multiple === 0);
      if (fits && (parity === undefined || (n % 2 === 1) === (parity === 'odd'))) allowed.push(n);
    }
    if (allowed.length === 0) return 'never meet';
    const below = allowed.filter((n) => n <= target).at(-1) ?? null;
    const above = allowed.find((n) => n >= target) as number;
    if (rule === 'down') return below === null ? 'nothing below' : { count: below, below, above };
    if (rule === 'up' || below === null) return { count: above, below, above };
    return { count: above - target <= target - below ? above : below, below, above };
  }

  test('the count, its neighbours and every refusal are the same', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 4000 }),
        fc.array(repeat, { maxLength: 3 }),
        rule,
        parity,
        (quarters, repeats, rule, parity) => {
          // Quarters are exact in floating point, so the reference needs no float edge.
          const target = quarters / 4;
          const expected = counted(target, repeats, rule, parity);
          if (typeof expected === 'string') {
            expect(() => fitCount(target, repeats, rule, parity)).toThrow(CraftError);
          } else {
            const fit = fitCount(target, repeats, rule, parity);
            expect(fit).toEqual({ ...expected, off: expected.count - target });
          }
        },
      ),
      { numRuns: 3000 },
    );
  });
});

test('a million million stitches are still a count', () => {
  expect(fitCount(1e12, [], 'nearest')).toEqual({ count: 1e12, below: 1e12, above: 1e12, off: 0 });
});

test('a repeat that is missing has no multiple', () => {
  expect(() => fitCount(50, [undefined as unknown as Repeat], 'nearest')).toThrow(
    'The multiple of a repeat has to be a number; it is missing.',
  );
});

test('a target that is no count is refused', () => {
  expect(() => fitCount(NaN, [], 'nearest')).toThrow('The count to come near has to be a number');
  expect(() => fitCount(-5, [], 'nearest')).toThrow('has to be 0 or more; it is −5');
  expect(() => fitCount(50, [of(0, 3)], 'nearest')).toThrow('The multiple of a repeat has to be 1 or more');
  expect(() => fitCount(50, [of(2.5, 3)], 'nearest')).toThrow('2.5 lies between 2 and 3');
});
