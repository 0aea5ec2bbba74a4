import { expect, test } from 'vitest';
import { finished, fitName } from '../../src/craft';

/*
 * Source: Craft Yarn Council, Standards & Guidelines for Crochet and Knitting, the fit of garments: a classic fit has 2 to
 * 4 in of ease; from memory. The rest is arithmetic: the upper ends of its women's busts, 2 in wider, in inches of 2.54 cm.
 */
test.each([
  [30, 32, 81.28],
  [34, 36, 91.44],
  [38, 40, 101.6],
  [42, 44, 111.76],
  [46, 48, 121.92],
  [50, 52, 132.08],
  [54, 56, 142.24],
  [58, 60, 152.4],
  [62, 64, 162.56],
])('a bust of %s in with 2 in of classic ease is %s in (%s cm)', (bust, inches, cm) => {
  const ease = { length: 2 * 2.54 };
  const whole = finished(bust * 2.54, ease);
  expect(whole / 2.54).toBeCloseTo(inches, 12);
  expect(whole).toBeCloseTo(cm, 9);
  expect(fitName(bust * 2.54, ease)).toEqual({ name: 'classic', between: false });
});
