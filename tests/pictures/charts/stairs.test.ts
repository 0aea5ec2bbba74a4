import { expect, test } from 'vitest';
import { goesInSteps } from '../../../src/pictures';

test('a count stands still from one step to the next and then jumps: it goes in steps', () => {
  expect(goesInSteps([[59, 59, 67, 67]])).toBe(true);
  expect(
    goesInSteps([
      [90, 90.5, 91],
      [1, 1, 2],
    ]),
  ).toBe(true);
});

test('a length that moves with every step does not, nor does what never moves', () => {
  expect(goesInSteps([[90, 90.5, 91]])).toBe(false);
  expect(goesInSteps([[8, 8, 8]])).toBe(false);
  expect(goesInSteps([[8, null, 9]])).toBe(false);
  expect(goesInSteps([])).toBe(false);
});
