import { expect, test } from 'vitest';
import { fitBands } from '../../src/craft/fit-bands';

test('the bands run from tight to roomy, and leave the published gaps at −2 to 0 and 0 to 2 in', () => {
  const ends = fitBands.map((band) => band.ease);
  expect(ends).toEqual([
    [-4, -2],
    [0, 0],
    [2, 4],
    [4, 6],
    [6, Infinity],
  ]);
  expect(new Set(fitBands.map((band) => band.name)).size).toBe(5);
});
