import { expect, test } from 'vitest';
import { timeFor } from '../../src/craft/time';

test('27000 stitches at 15 a minute are 30 hours', () => {
  expect(timeFor({ stitches: 27000, perMinute: 15 })).toEqual({ hours: 30 });
});

test('twice the pace is half the time', () => {
  const slow = timeFor({ stitches: 12345, perMinute: 12.5 }).hours;
  expect(timeFor({ stitches: 12345, perMinute: 25 }).hours).toBeCloseTo(slow / 2, 12);
});

test('no stitches take no time, and a pace of nothing never ends', () => {
  expect(timeFor({ stitches: 0, perMinute: 20 })).toEqual({ hours: 0 });
  expect(() => timeFor({ stitches: 100, perMinute: 0 })).toThrow('has to be more than 0; it is 0.');
});
