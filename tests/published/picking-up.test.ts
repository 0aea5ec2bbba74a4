import { expect, test } from 'vitest';
import { pickUp } from '../../src/craft/pick-up';
import { pickUpRatio } from '../../src/craft/pick-up-ratio';

/** Stitches or rows to 4 in, per cm. */
const per4in = (count: number) => count / 10.16;

test("20 stitches and 26 rows to 4 in: 10 of 13, worked 3 of 4, 3 of 4, 4 of 5 (Kelbourne Woolens, 'Perfectly picked up stitches', 2015)", () => {
  expect(pickUpRatio({ stitchesPerCm: per4in(20), rowsPerCm: per4in(26), most: 13 })).toEqual({
    pick: 10,
    of: 13,
    off: 0,
  });
  expect(pickUp({ rows: 13, stitches: 10 }).groups).toEqual([
    { pick: 3, skip: 1, times: 2 },
    { pick: 4, skip: 1 },
  ]);
});

test("16 stitches and 24 rows to 4 in along 20 in: 80 stitches over 120 rows, 2 of 3 (Men Who Knit community thread 'Picking Up Stitches', menwhoknit.com/community/?q=node/5359)", () => {
  const rows = Math.round(per4in(24) * 20 * 2.54);
  const stitches = Math.round(per4in(16) * 20 * 2.54);
  expect([rows, stitches]).toEqual([120, 80]);
  expect(pickUpRatio({ stitchesPerCm: per4in(16), rowsPerCm: per4in(24) })).toEqual({
    pick: 2,
    of: 3,
    off: 0,
  });
  expect(pickUp({ rows, stitches }).groups).toEqual([{ pick: 2, skip: 1, times: 40 }]);
});
