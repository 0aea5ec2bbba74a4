import { describe, expect, test } from 'vitest';
import { fitCount, hangingGrowth, pickUpEdge, strainOf } from '../../src/craft';
import { evenParts } from '../../src/craft/even-parts';

/* Source: Sunzi Suanjing, 3rd to 5th century, the problem of the Chinese remainder theorem; from memory. */
test('Sunzi: by threes 2 are left, by fives 3, by sevens 2: 23, and again every 105', () => {
  const repeats = [
    { multiple: 3, plus: 2 },
    { multiple: 5, plus: 3 },
    { multiple: 7, plus: 2 },
  ];
  expect(fitCount(24, repeats, 'nearest')).toMatchObject({ below: 23, above: 128 });
});

/*
 * Source: G. Toussaint, "The Euclidean Algorithm Generates Traditional Musical Rhythms", Bridges 2005: the distances
 * between beats spread as evenly as can be over the pulses of a bar; from memory. A rhythm may begin on any of its beats.
 */
describe('Toussaint 2005: beats spread evenly over pulses', () => {
  test.each([
    [3, 8, '332'],
    [5, 12, '32322'],
    [5, 13, '23233'],
    [5, 16, '33334'],
    [7, 16, '3222322'],
  ])('%s beats over %s pulses are %s', (beats, pulses, rhythm) => {
    const parts = evenParts(pulses, beats).join('');
    expect(parts).toHaveLength(rhythm.length);
    expect(rhythm + rhythm).toContain(parts);
  });
});

/*
 * Source: the Alabama paradox as it is taught, after M. Balinski and H. P. Young, Fair Representation, 1982: states of
 * 6, 6 and 2 share seats by Hamilton's largest remainders, and one seat more costs the smallest a seat; from memory.
 */
test.each([
  [10, [4, 4, 2]],
  [11, [5, 5, 1]],
])("Hamilton's largest remainders: %s seats for states of 6, 6 and 2 are %s", (seats, shares) => {
  const states = [6, 6, 2].map((count) => ({ kind: 'stitches' as const, count }));
  const fit = { repeats: [{ multiple: seats, plus: 0 }], rule: 'down' as const };
  expect(pickUpEdge(states, fit)).toMatchObject({ total: seats, perStretch: shares });
});

/*
 * Source: S. Timoshenko, Strength of Materials, part I: a bar that hangs grows under its own weight by half of what the
 * same weight would stretch it by at its end; from memory.
 */
test('Timoshenko: a strip grows under its own weight by half of what that weight at its end would stretch it by', () => {
  const [length, width, mass] = [60, 10, 0.05];
  const grams = length * width * mass;
  const strain = strainOf({ length, stretched: 63.6, width, grams });
  expect(hangingGrowth({ length, strain, mass })).toBeCloseTo(3.6 / 2, 12);
});
