import { describe, expect, it } from 'vitest';
import { distinctSizes } from '../../../src/pictures/charts/palette';
import { lineAt, rangeMarks } from '../../../src/pictures/charts/range-marks';

const steps = Array.from({ length: 41 }, (_, at) => 10 + at / 2);
const ends = [60, 860] as const;
const stepAt = (x: number): number => 10 + ((x - 60) / 800) * 20;

describe('the marks along a range', () => {
  it('stand on the line: on the level of a stair, and on the slope of a line', () => {
    const stair = { steps, values: steps.map((ease) => 8 * Math.round(ease / 8) + 3), stairs: true };
    const slope = { steps, values: steps.map((ease) => 3 * ease - 1), stairs: false };
    for (let sizeIndex = 0; sizeIndex < distinctSizes; sizeIndex++) {
      for (const { value } of rangeMarks(stair, sizeIndex, ends, stepAt))
        expect(stair.values).toContain(value);
      for (const { x, value } of rangeMarks(slope, sizeIndex, ends, stepAt))
        expect(value).toBeCloseTo(3 * stepAt(x) - 1, 9);
    }
  });

  it('tell twelve sizes apart whose counts are the same: no two stand in one place', () => {
    const same = { steps, values: steps.map(() => 83), stairs: true };
    const all = Array.from({ length: distinctSizes }, (_, sizeIndex) =>
      rangeMarks(same, sizeIndex, ends, stepAt),
    );
    expect(all.every((marks) => marks.length >= 2)).toBe(true);
    const along = all.flatMap((marks) => marks.map(({ x }) => x)).toSorted((a, b) => a - b);
    // A mark is eight px wide as it is drawn.
    expect(Math.min(...along.slice(1).map((x, at) => x - along[at]!))).toBeGreaterThan(7);
  });

  it('are not drawn where nothing could be worked', () => {
    const gaps = { steps: [0, 1, 2, 3], values: [5, null, null, 9], stairs: true };
    expect([0, 0.2, 1, 2.6, 3, 4].map((at) => lineAt(gaps, at))).toEqual([
      5,
      undefined,
      undefined,
      undefined,
      9,
      undefined,
    ]);
  });
});
