import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { pointsOf, wrongSearch } from '../../../src/analysis/solve/search';

describe('a search that cannot be made says why, and what would do', () => {
  test.each([
    ['the bounds the wrong way round', { from: 40, to: 0, step: 1 }, 'wrong way round'],
    ['one bound twice', { from: 4, to: 4, step: 1 }, 'put them apart'],
    ['a step of nothing', { from: 0, to: 40, step: 0 }, 'more than 0'],
    ['a step back', { from: 0, to: 40, step: -1 }, 'more than 0'],
    ['no step at all', { from: 0, to: 40, step: NaN }, 'more than 0'],
    ['no bound', { from: NaN, to: 40, step: 1 }, 'Type the least'],
    ['an endless bound', { from: 0, to: Infinity, step: 1 }, 'Type the least'],
    ['a million steps', { from: 0, to: 40, step: 0.00004 }, '1 000 000 steps, and the most is 10 000'],
    ['no whole number', { from: 4.2, to: 4.8, step: 1, whole: true }, 'no whole number'],
  ])('%s', (_what, search, sentence) => {
    expect(wrongSearch(search)).toContain(sentence);
  });

  it('has nothing to say of one that can', () => {
    expect(wrongSearch({ from: 0, to: 40, step: 0.1 })).toBeUndefined();
    expect(wrongSearch({ from: -4, to: 4.5, step: 1, whole: true })).toBeUndefined();
  });
});

describe('the values that are tried', () => {
  it('begin and end with the bounds, in order, no further apart than a step', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -50, max: 50, noNaN: true }),
        fc.double({ min: 0.01, max: 100, noNaN: true }),
        fc.double({ min: 0.05, max: 30, noNaN: true }),
        (from, span, step) => {
          const points = pointsOf({ from, to: from + span, step });
          expect(points[0]).toBe(from);
          expect(points.at(-1)).toBe(from + span);
          for (let at = 1; at < points.length; at++) {
            expect(points[at]!).toBeGreaterThan(points[at - 1]!);
            expect(points[at]! - points[at - 1]!).toBeLessThanOrEqual(step * (1 + 1e-6) + 1e-9);
          }
        },
      ),
    );
  });

  it('of a count are whole, the last of them too', () => {
    expect(pointsOf({ from: 0.5, to: 4, step: 0.1, whole: true })).toEqual([1, 2, 3, 4]);
    expect(pointsOf({ from: 1, to: 12, step: 5, whole: true })).toEqual([1, 6, 11, 12]);
  });
});
