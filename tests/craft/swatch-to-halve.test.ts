import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { gaugeOf } from '../../src/craft/gauge';
import { swatchToHalve } from '../../src/craft/swatch-to-halve';
import { combineUncertainty } from '../../src/craft/uncertainty';

const one = [{ count: 14, over: 10 }];
const two = [
  { count: 14, over: 10 },
  { count: 15, over: 10 },
];
const sure = { u: 0.3, dof: Infinity };

describe('one reading', () => {
  test('twice as long a reading halves what the gauge alone leaves in doubt', () => {
    const found = swatchToHalve({
      gauge: gaugeOf(one),
      readings: one,
      part: { u: 2, dof: Infinity },
      others: [],
    });
    expect(found).toEqual({
      by: 'length',
      times: expect.closeTo(2, 9),
      count: expect.closeTo(28, 8),
      over: expect.closeTo(20, 8),
    });
  });

  test('that long a reading does halve it, whatever else is in doubt, and one a hair shorter does not', () => {
    const parts = fc.double({ min: 0.01, max: 5, noNaN: true });
    fc.assert(
      fc.property(parts, fc.array(parts, { maxLength: 4 }), (u, rest) => {
        const others = rest.map((other) => ({ u: other, dof: Infinity }));
        const whole = combineUncertainty([{ u, dof: Infinity }, ...others]).expanded;
        const found = swatchToHalve({
          gauge: gaugeOf(one),
          readings: one,
          part: { u, dof: Infinity },
          others,
        });
        if (found.by === 'nothing') {
          expect(combineUncertainty(others).expanded).toBeGreaterThanOrEqual(whole / 2);
          expect(found.left).toBe(combineUncertainty(others).expanded);
          return;
        }
        if (found.by !== 'length') throw new Error('one reading can only be longer');
        const after = (times: number) =>
          combineUncertainty([{ u: u / times, dof: Infinity }, ...others]).expanded;
        expect(after(found.times)).toBeLessThanOrEqual((whole / 2) * (1 + 1e-9));
        expect(after(found.times * (1 - 1e-6))).toBeGreaterThan((whole / 2) * (1 - 1e-9));
      }),
    );
  });
});

describe('readings that scatter', () => {
  test('a third reading more than halves what two leave: Student’s factor falls from 12.7 to 4.3', () => {
    const gauge = gaugeOf(two);
    expect(gauge.dof).toBe(1);
    const found = swatchToHalve({ gauge, readings: two, part: { u: 2, dof: 1 }, others: [] });
    expect(found).toEqual({ by: 'readings', readings: 3 });
  });

  test('of many readings, four times as many are needed', () => {
    const many = Array.from({ length: 25 }, (_reading, at) => ({ count: at % 2 ? 14 : 16, over: 10 }));
    const found = swatchToHalve({
      gauge: gaugeOf(many),
      readings: many,
      part: { u: 1, dof: 24 },
      others: [],
    });
    if (found.by !== 'readings') throw new Error('readings that scatter ask for more of them');
    expect(found.readings).toBeGreaterThan(90);
    expect(found.readings).toBeLessThanOrEqual(100);
  });
});

test('no swatch halves what comes from elsewhere', () => {
  const found = swatchToHalve({
    gauge: gaugeOf(one),
    readings: one,
    part: { u: 0.1, dof: Infinity },
    others: [sure],
  });
  expect(found).toEqual({ by: 'nothing', left: expect.closeTo(0.588, 3) });
});

test('a gauge that has no part in the result is refused, and so is no reading', () => {
  const wanted = { gauge: gaugeOf(one), part: { u: 1, dof: Infinity }, others: [] };
  expect(() => swatchToHalve({ ...wanted, readings: one, part: { u: 0, dof: Infinity } })).toThrow(
    'has to have a part',
  );
  expect(() => swatchToHalve({ ...wanted, readings: [] })).toThrow();
});
