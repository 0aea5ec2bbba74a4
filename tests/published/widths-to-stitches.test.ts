import { expect, test } from 'vitest';
import { fitCount } from '../../src/craft';

/*
 * Source: Knitting Unplugged, "How to figure out decrease and increase placement when adjusting sleeve length and cap
 * shaping", 2016 (knittingunplugged.com). Its lengths are in inches, its gauge 5½ stitches to the inch.
 */
test.each([
  [9, 49.5, 50],
  [13, 71.5, 72],
])(
  'Knitting Unplugged 2016: %s in at 5½ to the inch are %s, worked as an even %s',
  (inches, exact, count) => {
    const perCm = 5.5 / 2.54;
    const target = inches * 2.54 * perCm;
    expect(target).toBeCloseTo(exact, 12);
    expect(fitCount(target, [], 'nearest', 'even').count).toBe(count);
  },
);
