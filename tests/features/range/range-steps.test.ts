import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mostSteps, rangeSteps } from '../../../src/features/range/steps';

const problem = (...range: [number, number, number, boolean?]): string => {
  const read = rangeSteps(...range);
  return 'problem' in read ? read.problem : 'none';
};

describe('the steps of a range', () => {
  it('have both ends where the step comes out even, and stop before the end where not', () => {
    expect(rangeSteps(10, 12, 0.5)).toEqual({ values: [10, 10.5, 11, 11.5, 12] });
    expect(rangeSteps(0, 1, 0.1)).toEqual({ values: [0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1] });
    expect(rangeSteps(0, 1, 0.4)).toEqual({ values: [0, 0.4, 0.8] });
    expect(rangeSteps(5, 5, 1)).toEqual({ values: [5] });
  });

  it('say what is wrong with a step of 0, one that goes down, and an end before its start', () => {
    expect(problem(0, 10, 0)).toContain('type how far one step goes');
    expect(problem(0, 10, -1)).toContain('without a minus');
    expect(problem(10, 0, 1)).toContain('exchange them');
    expect(problem(NaN, 0, 1)).toContain('Type a start');
    expect(problem(0, Infinity, 1)).toContain('Type a start');
  });

  it('are more than the start alone, unless that is the end', () => {
    expect(problem(0, 30, 100)).toContain('The first step goes beyond the end');
    expect(problem(0, 30, 30)).toBe('none');
  });

  it('of a count are whole', () => {
    expect(problem(4, 12, 0.2, true)).toContain('whole step');
    expect(problem(4.5, 12, 1, true)).toContain('whole start');
    expect(problem(4, 12.5, 1, true)).toBe('none');
  });

  it('are not made where there would be a million', () => {
    expect(problem(0, 10, 1e-5)).toContain('1,000,001 steps, and 5,000 are the most');
    expect(problem(0, 1e9, 1e-9)).toContain('take a longer step or a shorter range');
  });

  it('lie within the range, a step apart, whatever it is', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e4, max: 1e4, noNaN: true }),
        fc.double({ min: 0, max: 1e3, noNaN: true }),
        fc.double({ min: 1e-3, max: 1e3, noNaN: true }),
        (start, span, step) => {
          const read = rangeSteps(start, start + span, step);
          if ('problem' in read) {
            if (read.problem.includes('beyond the end')) expect(span).toBeLessThan(step);
            else expect(span / step).toBeGreaterThan(mostSteps - 2);
            return;
          }
          const { values } = read;
          expect(values.length).toBeLessThanOrEqual(mostSteps);
          const close = 1e-6 * Math.max(1, Math.abs(start));
          values.forEach((value, at) => expect(Math.abs(value - start - at * step)).toBeLessThan(close));
          expect(values.at(-1)!).toBeLessThan(start + span + close);
          expect(values.at(-1)! + step).toBeGreaterThan(start + span - close);
        },
      ),
    );
  });
});
