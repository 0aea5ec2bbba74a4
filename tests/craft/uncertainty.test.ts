import { describe, expect, test } from 'vitest';
import { gaugeOf } from '../../src/craft/gauge';
import { t95 } from '../../src/craft/student-t';
import { combineUncertainty, countUncertainty, widthUncertainty } from '../../src/craft/uncertainty';

const one = gaugeOf([{ count: 14, over: 10 }]);
const two = gaugeOf([
  { count: 14, over: 10 },
  { count: 15, over: 10 },
]);

describe('a width', () => {
  test('146 stitches from one reading of 14 to 10 cm are 104.3 ± 4.2 cm', () => {
    const width = widthUncertainty({ count: 146, gauge: one });
    expect(width.width).toBeCloseTo(104.2857, 4);
    expect(width.u).toBeCloseTo((146 * 0.0288675135) / 1.96, 8);
    expect(width.expanded).toBeCloseTo(1.959964 * width.u, 5);
  });

  test('two readings are expanded by 12.7', () => {
    const width = widthUncertainty({ count: 100, gauge: two });
    expect(width.expanded / width.u).toBeCloseTo(12.7062, 4);
  });

  test('the tape’s own uncertainty joins in quadrature, and makes the freedom greater', () => {
    const without = widthUncertainty({ count: 100, gauge: two });
    const joined = widthUncertainty({ count: 100, gauge: two, uTape: without.u });
    expect(joined.u).toBeCloseTo(without.u * Math.SQRT2, 12);
    // Welch–Satterthwaite: (2u²)² / (u⁴/1) = 4 degrees of freedom.
    expect(joined.expanded / joined.u).toBeCloseTo(t95(4), 10);
  });

  test('its u is what moving the gauge by its own u moves the width by', () => {
    const moved = Math.abs(100 / (two.perCm + 1e-6) - 100 / two.perCm) / 1e-6;
    expect(widthUncertainty({ count: 100, gauge: two }).u).toBeCloseTo(moved * two.u, 3);
  });
});

describe('a target count', () => {
  test('52 cm at one reading of 14 to 10 cm ask for 72.8 ± 2.9 stitches', () => {
    const count = countUncertainty({ width: 52, uWidth: 0, gauge: one });
    expect(count.target).toBeCloseTo(72.8, 12);
    expect(count.u).toBeCloseTo(52 * 0.0288675135, 8);
    expect(count.expanded).toBeCloseTo(2.942, 3);
  });

  test('a width that is itself unsure adds its part', () => {
    const count = countUncertainty({ width: 52, uWidth: 0.5, gauge: one });
    expect(count.u).toBeCloseTo(Math.hypot(52 * one.u, 1.4 * 0.5), 12);
  });
});

describe('independent parts', () => {
  test('3 and 4 combine to 5', () => {
    const combined = combineUncertainty([
      { u: 3, dof: Infinity },
      { u: 4, dof: Infinity },
    ]);
    expect(combined).toEqual({ u: 5, dof: Infinity, expanded: expect.closeTo(9.7998, 4) });
  });

  test('one part keeps its own freedom, and n equal parts of one degree have n', () => {
    expect(combineUncertainty([{ u: 2, dof: 3.5 }]).dof).toBeCloseTo(3.5, 12);
    expect(combineUncertainty(Array(6).fill({ u: 2, dof: 1 })).dof).toBeCloseTo(6, 12);
  });

  test('nothing unsure is exact', () => {
    expect(combineUncertainty([])).toEqual({ u: 0, dof: Infinity, expanded: 0 });
    expect(widthUncertainty({ count: 14, gauge: { perCm: 1.4, u: 0, dof: Infinity } }).expanded).toBe(0);
  });

  test('a part that is no uncertainty is refused', () => {
    expect(() => combineUncertainty([{ u: -1, dof: 1 }])).toThrow('0 or more; not −1');
    expect(() => combineUncertainty([{ u: 1, dof: 0 }])).toThrow('Degrees of freedom are 1 or more');
    expect(() => combineUncertainty([{ u: Infinity, dof: 1 }])).toThrow('0 or more; not endless');
    expect(() => combineUncertainty([undefined as never])).toThrow('0 or more; not missing');
  });

  test('without a gauge there is neither a width nor a count', () => {
    const gauge = undefined as never;
    expect(() => widthUncertainty({ count: 14, gauge })).toThrow('The gauge has to be a number');
    expect(() => countUncertainty({ width: 10, uWidth: 0, gauge })).toThrow('it is missing.');
  });
});
