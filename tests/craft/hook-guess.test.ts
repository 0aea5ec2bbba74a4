import { expect, test } from 'vitest';
import { guessGauge } from '../../src/craft/hook-guess';

test('15 stitches to 10 cm with a 6 mm hook would be about 12 with 7.5 mm, and it is only a guess', () => {
  expect(guessGauge({ perCm: 1.5, hook: 6, other: 7.5 })).toEqual({
    perCm: expect.closeTo(1.2, 12),
    guess: true,
  });
});

test('the same hook has the same gauge', () => {
  expect(guessGauge({ perCm: 1.5, hook: 6, other: 6 }).perCm).toBe(1.5);
});
