import { expect, test } from 'vitest';
import { hangingGrowth, lengthToWork, strainOf } from '../../src/craft/hanging';

const dress = { length: 60, strain: 0.02, mass: 0.05 };

test('60 cm of 0.05 g/cm² that gives 2 % per gram per cm grows by 1.8 cm, so 58.2 are worked', () => {
  expect(hangingGrowth(dress)).toBeCloseTo(1.8, 12);
  expect(lengthToWork(dress)).toBeCloseTo(58.2, 12);
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

test('a fabric that would grow by all of its length is refused', () => {
  expect(() => lengthToWork({ length: 60, strain: 1, mass: 0.05 })).toThrow('would grow by 90\u00a0cm');
});

test('a fabric that would grow by just its length is refused too, and one that gives nothing has no strain', () => {
  expect(() => lengthToWork({ length: 2, strain: 1, mass: 1 })).toThrow('would grow by 2\u00a0cm');
  expect(strainOf({ length: 10, stretched: 10, width: 10, grams: 50 })).toBe(0);
});
