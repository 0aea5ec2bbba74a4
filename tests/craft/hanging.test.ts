import fc from 'fast-check';
import { expect, test } from 'vitest';
import { hangingGrowth, lengthToWork, strainOf } from '../../src/craft/hanging';

const dress = { length: 60, strain: 0.02, mass: 0.05 };

test('60 cm of 0.05 g/cm² that gives 2 % per gram per cm grow by 1.8 cm, and 58.3 hang at 60', () => {
  expect(hangingGrowth(dress)).toBeCloseTo(1.8, 12);
  // (√(1 + 2 · 0.001 · 60) − 1) / 0.001
  expect(lengthToWork(dress)).toBeCloseTo(58.3005, 4);
});

test('90 cm of a heavy fabric: 81.4 are worked, which hang at 90', () => {
  const heavy = { length: 90, strain: 0.02, mass: 0.13 };
  expect(lengthToWork(heavy)).toBeCloseTo((Math.sqrt(1.468) - 1) / 0.0026, 9);
  expect(lengthToWork(heavy)).toBeCloseTo(81.39, 2);
});

test('what is worked, hung, is the length wanted; a fabric that gives nothing is worked as it hangs', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 200, noNaN: true }),
      fc.double({ min: 0, max: 0.1, noNaN: true }),
      fc.double({ min: 0.01, max: 0.2, noNaN: true }),
      (length, strain, mass) => {
        fc.pre(strain * mass * length < 3.9);
        const worked = lengthToWork({ length, strain, mass });
        expect(worked + hangingGrowth({ length: worked, strain, mass })).toBeCloseTo(length, 9);
      },
    ),
  );
  expect(lengthToWork({ length: 60, strain: 0, mass: 0.05 })).toBe(60);
});

test('twice the length grows four times as much', () => {
  expect(hangingGrowth({ ...dress, length: 120 })).toBeCloseTo(7.2, 12);
});

test('the growth is what adding up strip by strip gives, each stretched by what hangs below it', () => {
  const strips = 10_000;
  const high = dress.length / strips;
  let growth = 0;
  for (let i = 0; i < strips; i++) growth += high * dress.strain * (dress.mass * high * (i + 0.5));
  expect(hangingGrowth(dress)).toBeCloseTo(growth, 9);
});

test('a swatch 10 cm wide that 50 g stretch from 10 to 11 cm gives 2 % per gram per cm', () => {
  expect(strainOf({ length: 10, stretched: 11, width: 10, grams: 50 })).toBeCloseTo(0.02, 12);
  expect(() => strainOf({ length: 11, stretched: 10, width: 10, grams: 50 })).toThrow('exchange the two');
});

test('a fabric that would grow by all of the length worked is refused', () => {
  // 40 cm of it weigh 40 · 0.1 = 4 g a cm: they grow by 1 · 0.1 · 40² / 2 = 80.
  expect(() => lengthToWork({ length: 120, strain: 1, mass: 0.1 })).toThrow(
    'Hanging, 40 cm of this fabric would grow by 80 cm',
  );
});

test('a fabric that would grow by just its length is refused too, and one that gives nothing has no strain', () => {
  expect(() => lengthToWork({ length: 4, strain: 1, mass: 1 })).toThrow('would grow by 2 cm');
  expect(lengthToWork({ length: 3.99, strain: 1, mass: 1 })).toBeLessThan(2);
  expect(strainOf({ length: 10, stretched: 10, width: 10, grams: 50 })).toBe(0);
});
