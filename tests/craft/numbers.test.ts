import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CraftError } from '../../src/craft/craft-error';
import {
  cm,
  finite,
  grams,
  listOf,
  minus,
  notNegative,
  oneOf,
  perCm,
  plus,
  positive,
  roundDown,
  roundNearest,
  roundUp,
  rows,
  rowsOver,
  same,
  stitches,
  stitchesAcross,
  times,
  whole,
  wholeCount,
  wholeNumber,
  widthOf,
} from '../../src/craft/numbers';
import { formatNumber } from '../../src/craft/format';
import type { Rows, Stitches } from '../../src/craft/numbers';

describe('kinds of number', () => {
  test('45 cm at 14 stitches to 10 cm take 63 stitches, and 63 stitches are 45 cm wide', () => {
    const across = stitchesAcross(cm(45, 'The width'), perCm(1.4, 'The gauge'));
    expect(whole(across)).toBe(63);
    expect(widthOf(stitches(63, 'The count'), perCm(1.4, 'The gauge'))).toBeCloseTo(45, 12);
  });

  test('30 cm at 12 rows to 10 cm take 36 rows', () => {
    expect(rowsOver(cm(30, 'The length'), perCm(1.2, 'The gauge'))).toBe(36);
  });

  test('two of a kind add up, and a kind stays what it is', () => {
    const back: Stitches = stitches(75, 'The back');
    const both: Stitches = plus(back, back);
    expect(both).toBe(150);
    expect(minus(both, back)).toBe(75);
    expect(times(back, 2)).toBe(150);
  });

  test('stitches and rows do not add up: the type check refuses it', () => {
    const across: Stitches = stitches(10, 'The stitches');
    const high: Rows = rows(12, 'The rows');
    // @ts-expect-error stitches and rows are different kinds
    plus(across, high);
    // @ts-expect-error a width is not a count
    widthOf(cm(10, 'The width'), perCm(1, 'The gauge'));
    // @ts-expect-error a sum of two kinds is neither
    const mixed: Stitches = across + high;
    expect(mixed).toBe(22);
  });
});

describe('the float edge', () => {
  test('45 × 1.4 is 63 and not 62.99999999999999', () => {
    expect(45 * 1.4).not.toBe(63);
    expect(whole(45 * 1.4)).toBe(63);
    expect(roundDown(45 * 1.4)).toBe(63);
  });

  test('750 g × 1.1 / 25 g is 33 balls and not 34', () => {
    expect((750 * 1.1) / 25).toBeGreaterThan(33);
    expect(roundUp((750 * 1.1) / 25)).toBe(33);
  });

  test('a value farther than 1e-9 from a whole number is not that number', () => {
    expect(roundUp(33 + 1e-6)).toBe(34);
    expect(roundDown(63 - 1e-6)).toBe(62);
    expect(whole(77.2)).toBe(77.2);
  });

  test('a half goes up, on both sides of 0, even where floating point has blurred it', () => {
    expect(roundNearest(49.5)).toBe(50);
    expect(roundNearest(71.5 - 1e-12)).toBe(72);
    expect(roundNearest(2.4)).toBe(2);
    expect(roundNearest(-2.5)).toBe(-2);
    expect(Object.is(roundNearest(-0.5), 0)).toBe(true);
  });

  test('no rounding leaves a negative zero', () => {
    for (const round of [whole, roundUp, roundDown, roundNearest]) {
      expect(Object.is(round(-0), 0)).toBe(true);
      expect(Object.is(round(-1e-15), 0)).toBe(true);
    }
    expect(Object.is(roundUp(-0.4), 0)).toBe(true);
  });

  test('a quotient of whole numbers rounds as whole numbers divide', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 100_000 }), fc.integer({ min: 1, max: 1000 }), (a, b) => {
        const exact = a / b;
        expect(roundUp(exact)).toBe(Math.floor((a + b - 1) / b));
        expect(roundDown(exact)).toBe((a - (a % b)) / b);
        expect(roundNearest(exact)).toBe(Math.floor((2 * a + b) / (2 * b)));
      }),
      { numRuns: 5000 },
    );
  });

  test('two ways to the same number are the same', () => {
    expect(same(0.1 + 0.2, 0.3)).toBe(true);
    expect(same(0.3, 0.3001)).toBe(false);
  });

  test('the edge is a part in a thousand million of a great number, and as much of 1 below it', () => {
    expect(whole(1e6 + 5e-4)).toBe(1e6);
    expect(whole(1e6 + 5e-3)).toBe(1e6 + 5e-3);
    expect(whole(-1e6 - 5e-4)).toBe(-1e6);
    expect(whole(1e-9)).toBe(0);
    expect(whole(2e-9)).toBe(2e-9);
    expect(same(1e6, 1e6 + 5e-4)).toBe(true);
    expect(same(1e6, 1e6 + 5e-3)).toBe(false);
    expect(same(-1e6, -1e6 - 5e-4)).toBe(true);
    expect(same(0, 1e-9)).toBe(true);
    expect(same(0, 2e-9)).toBe(false);
    expect(same(5, -5)).toBe(false);
  });
});

describe('guards', () => {
  const refused = (work: () => unknown, code: string, says: RegExp) => {
    try {
      work();
    } catch (error) {
      expect(error).toBeInstanceOf(CraftError);
      expect((error as CraftError).code).toBe(code);
      expect((error as CraftError).message).toMatch(says);
      return;
    }
    expect.unreachable('nothing was refused');
  };

  test('what is no number is refused by name', () => {
    refused(
      () => finite(NaN, 'The ease'),
      'not-a-number',
      /^The ease has to be a number; it is not a number\.$/,
    );
    refused(() => finite(Infinity, 'The ease'), 'not-a-number', /endless/);
    refused(() => finite('5' as unknown as number, 'The ease'), 'not-a-number', /"5"/);
    refused(() => finite(undefined as unknown as number, 'The ease'), 'not-a-number', /missing/);
    refused(() => finite(1e13, 'The ease'), 'too-large', /beyond anything/);
    expect(finite(-4, 'The ease')).toBe(-4);
  });

  test('a length is more than 0', () => {
    refused(() => positive(0, 'The width'), 'not-positive', /more than 0; it is 0/);
    refused(() => positive(-3, 'The width'), 'not-positive', /it is −3/);
    refused(() => positive(1e-300, 'The width'), 'too-small', /smaller than anything/);
    expect(positive(0.5, 'The width')).toBe(0.5);
  });

  test('a reserve is 0 or more', () => {
    refused(() => notNegative(-0.1, 'The reserve'), 'negative', /0 or more; it is −0\.1/);
    expect(Object.is(notNegative(-0, 'The reserve'), 0)).toBe(true);
  });

  test('a count is whole, and the sentence says between which two it lies', () => {
    refused(() => wholeCount(3.5, 'The count'), 'not-whole', /3\.5 lies between 3 and 4/);
    refused(() => wholeCount(0, 'The count', 1), 'too-few', /1 or more; it is 0/);
    expect(wholeNumber(-3, 'The plus')).toBe(-3);
    expect(wholeCount(7, 'The count')).toBe(7);
  });

  test('a word is one of those there are', () => {
    refused(
      () => oneOf('sideways' as string, ['flat', 'round'], 'The way'),
      'not-a-choice',
      /"flat" or "round"; it is "sideways"/,
    );
    expect(oneOf('flat', ['flat', 'round'], 'The way')).toBe('flat');
  });

  test('a list is a list, neither too short nor too long', () => {
    refused(() => listOf('no' as unknown as [], 'The readings'), 'not-a-list', /have to be a list/);
    refused(() => listOf([], 'The readings', 1), 'too-few', /1 or more/);
    refused(() => listOf([1, 2, 3], 'The readings', 0, 2), 'too-many', /2 are the most/);
    expect(listOf([1, 2], 'The readings')).toEqual([1, 2]);
  });

  test('a million million and a millionth of a millionth are the last that are taken', () => {
    expect(finite(1e12, 'The length')).toBe(1e12);
    expect(finite(-1e12, 'The ease')).toBe(-1e12);
    refused(() => finite(-1e13, 'The ease'), 'too-large', /less than minus a million million/);
    expect(positive(1e-12, 'The gauge')).toBe(1e-12);
    refused(() => positive(9e-13, 'The gauge'), 'too-small', /next to nothing/);
    expect(cm(1e-12, 'The width')).toBe(1e-12);
    expect(grams(1e12, 'The weight')).toBe(1e12);
  });

  test('0 is a number, a reserve and a count of rows, but no count of stitches', () => {
    for (const zero of [0, -0]) {
      expect(Object.is(finite(zero, 'The ease'), 0)).toBe(true);
      expect(Object.is(notNegative(zero, 'The reserve'), 0)).toBe(true);
      expect(Object.is(wholeNumber(zero, 'The plus'), 0)).toBe(true);
    }
    expect(wholeCount(0, 'The motifs')).toBe(0);
    expect(rows(0, 'The rows')).toBe(0);
    refused(() => rows(-1, 'The rows'), 'too-few', /0 or more; it is −1/);
    refused(() => rows(1, 'The rows', 2), 'too-few', /2 or more; it is 1/);
    refused(() => stitches(0, 'The count'), 'too-few', /1 or more; it is 0/);
    expect(stitches(0, 'The count', 0)).toBe(0);
  });

  test('a list may be as short and as long as is told, and a million long unless told', () => {
    expect(listOf([1, 2], 'The readings', 2, 2)).toEqual([1, 2]);
    expect(listOf([], 'The readings')).toEqual([]);
    expect(listOf(Array<number>(1_000_000), 'The rows')).toHaveLength(1_000_000);
    refused(() => listOf(Array<number>(1_000_001), 'The rows'), 'too-many', /1000000 are the most/);
  });

  test('what is missing is said to be missing, and words are quoted, the first 40 letters of them', () => {
    expect(formatNumber(undefined)).toBe('missing');
    expect(formatNumber(null)).toBe('missing');
    expect(formatNumber(true)).toBe('not a number');
    expect(formatNumber(NaN)).toBe('not a number');
    expect(formatNumber('x'.repeat(50))).toBe(`"${'x'.repeat(40)}"`);
  });

  test('the greatest and the smallest numbers are said in words, on both sides of 0', () => {
    expect(formatNumber(Infinity)).toBe('endless');
    expect(formatNumber(1e12)).toBe('1000000000000');
    expect(formatNumber(-1e12)).toBe('−1000000000000');
    expect(formatNumber(-1e13)).toBe('less than minus a million million');
    expect(formatNumber(1e-6)).toBe('0.000001');
    expect(formatNumber(9e-7)).toBe('next to nothing');
    expect(formatNumber(-0)).toBe('0');
  });

  test('numbers are said with 6 digits, and counts in full', () => {
    expect(formatNumber(62.99999999999999)).toBe('63');
    expect(formatNumber(1234567)).toBe('1234567');
    expect(formatNumber(2.857142857)).toBe('2.85714');
    expect(formatNumber(-Infinity)).toBe('endlessly negative');
    expect(formatNumber({})).toBe('not a number');
    expect(formatNumber(1e300)).toBe('more than a million million');
    expect(formatNumber(-1e-300)).toBe('a hair below 0');
  });
});
