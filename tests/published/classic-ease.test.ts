import { expect, test } from 'vitest';
import { finished, fitName } from '../../src/craft';

/*
 * Source: Yay For Yarn, "Dotty Pullover" size table: classic fit, 2 in positive ease, after the Craft Yarn Council's
 * women's sizes. Its centimetres are rounded to a
 * millimetre, but for a bust of 50 in, where it prints 132 for 132.08.
 */
test.each([
  [30, 32, 81.3],
  [34, 36, 91.4],
  [38, 40, 101.6],
  [42, 44, 111.8],
  [46, 48, 121.9],
  [50, 52, 132],
  [54, 56, 142.2],
  [58, 60, 152.4],
  [62, 64, 162.6],
])(
  'Yay For Yarn, Dotty Pullover: a bust of %s in with 2 in of classic ease is %s in (%s cm)',
  (bust, inches, cm) => {
    const ease = { length: 2 * 2.54 };
    const whole = finished(bust * 2.54, ease);
    expect(whole / 2.54).toBeCloseTo(inches, 12);
    expect(Math.abs(whole - cm)).toBeLessThan(0.081);
    expect(fitName(bust * 2.54, ease)).toEqual({ name: 'classic', between: false });
  },
);
