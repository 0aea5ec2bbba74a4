import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chanceAbove, chanceWithin, t95 } from '../../src/craft/student-t';

describe("Student's factor", () => {
  test('for one and two degrees of freedom it is what the closed forms give', () => {
    expect(t95(1)).toBeCloseTo(Math.tan(0.475 * Math.PI), 9);
    expect(t95(2)).toBeCloseTo(0.95 * Math.sqrt(2 / (1 - 0.95 ** 2)), 11);
  });

  test('for endless freedom it is the normal distribution’s 1.959963984540054', () => {
    expect(t95(Infinity)).toBeCloseTo(1.959963984540054, 12);
  });

  test('it falls as the degrees of freedom rise, whole or not', () => {
    const freedom = fc.double({ min: 1, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(freedom, freedom, (a, b) => {
        fc.pre(b > a * 1.001);
        expect(t95(a)).toBeGreaterThan(t95(b));
        expect(t95(b)).toBeGreaterThan(t95(Infinity));
      }),
      { numRuns: 1000 },
    );
  });

  test('for large freedom it approaches the normal factor as (z³ + z) / 4ν', () => {
    const z = t95(Infinity);
    for (const dof of [1e4, 1e6, 1e9, 1e12]) {
      expect((t95(dof) - z) * dof).toBeCloseTo((z ** 3 + z) / 4, dof < 1e9 ? 2 : -1);
    }
    expect(t95(1e12)).toBeCloseTo(z, 11);
  });

  test('less than one degree of freedom is refused', () => {
    expect(() => t95(0.5)).toThrow('Degrees of freedom are 1 or more');
    expect(() => t95(NaN)).toThrow('Degrees of freedom are 1 or more');
  });
});

describe('chances', () => {
  test('of one degree of freedom half lies within ±1', () => {
    expect(chanceWithin(1, 1)).toBeCloseTo(0.5, 14);
  });

  test('of the normal distribution 68.2689492137 % lie within ±1 and 95.4499736104 % within ±2', () => {
    expect(chanceWithin(1, Infinity)).toBeCloseTo(0.682689492137, 12);
    expect(chanceWithin(2, Infinity)).toBeCloseTo(0.954499736104, 12);
  });

  test('for one, two, three and four degrees of freedom they are what the closed forms give', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 50, noNaN: true }), (t) => {
        expect(chanceWithin(t, 1)).toBeCloseTo((2 / Math.PI) * Math.atan(t), 12);
        expect(chanceWithin(t, 2)).toBeCloseTo(t / Math.sqrt(2 + t * t), 12);
        const third = t / Math.sqrt(3);
        expect(chanceWithin(t, 3)).toBeCloseTo(
          (2 / Math.PI) * (third / (1 + third * third) + Math.atan(third)),
          12,
        );
        const q = 1 + (t * t) / 4;
        expect(chanceWithin(t, 4)).toBeCloseTo((t / 2 / Math.sqrt(q)) * (1.5 - (t * t) / 8 / q), 12);
      }),
      { numRuns: 2000 },
    );
  });

  test('the factor and the chance are each other’s inverse', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 1e9, noNaN: true }), (dof) => {
        expect(chanceWithin(t95(dof), dof)).toBeCloseTo(0.95, 12);
      }),
      { numRuns: 1000 },
    );
  });

  test('above and below add up to one', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -30, max: 30, noNaN: true }),
        fc.double({ min: 1, max: 100, noNaN: true }),
        (t, dof) => {
          expect(chanceAbove(t, dof) + chanceAbove(-t, dof)).toBeCloseTo(1, 14);
        },
      ),
      { numRuns: 1000 },
    );
    expect(chanceAbove(0, 5)).toBe(0.5);
    expect(() => chanceWithin(-1, 5)).toThrow('0 or more');
  });
});
