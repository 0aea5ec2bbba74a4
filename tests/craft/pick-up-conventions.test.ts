import { expect, test } from 'vitest';
import { pickUpAgainstConvention, pickUpConventions } from '../../src/craft/pick-up-conventions';

test('common practice: 1 stitch a single crochet row, 3 for 2 half doubles, 2 a double, 3 a treble (US terms)', () => {
  const perRow = (fabric: keyof typeof pickUpConventions) =>
    pickUpConventions[fabric].pick / pickUpConventions[fabric].of;
  expect([
    perRow('single crochet'),
    perRow('half double crochet'),
    perRow('double crochet'),
    perRow('treble'),
  ]).toEqual([1, 1.5, 2, 3]);
  expect([perRow('stockinette'), perRow('garter')]).toEqual([0.75, 0.5]);
});

test('20 stitches and 26 rows: 10 of 13 by the gauges, 3 of 4 by convention, which is 2.5 % too few', () => {
  const both = pickUpAgainstConvention({
    fabric: 'stockinette',
    rowsPerCm: 2.6,
    stitchesPerCm: 2,
    most: 13,
  });
  expect(both).toMatchObject({ worked: { pick: 10, of: 13, off: 0 }, convention: { pick: 3, of: 4 } });
  expect(both.difference).toBeCloseTo(-0.025, 12);
});

test('a double crochet row less than two stitches high takes fewer than the convention', () => {
  const both = pickUpAgainstConvention({ fabric: 'double crochet', rowsPerCm: 0.8, stitchesPerCm: 1.4 });
  expect(both.worked).toEqual({ pick: 7, of: 4, off: 0 });
  expect(both.difference).toBeCloseTo(1 / 7, 12);
});

test('gauges that agree with the convention differ from it by nothing', () => {
  const both = pickUpAgainstConvention({ fabric: 'garter', rowsPerCm: 4, stitchesPerCm: 2 });
  expect(both).toEqual({
    worked: { pick: 1, of: 2, off: 0 },
    convention: { pick: 1, of: 2 },
    difference: 0,
  });
});

test('10.5 stitches and 14 rows are 3 of 4 as common practice has it, for all that the quotient is not quite 0.75', () => {
  expect(0.75 / (1.05 / 1.4)).not.toBe(1);
  const both = pickUpAgainstConvention({ fabric: 'stockinette', rowsPerCm: 1.4, stitchesPerCm: 1.05 });
  expect(both.difference).toBe(0);
});
