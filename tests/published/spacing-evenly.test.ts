import { expect, test } from 'vitest';
import { spaceEvenly } from '../../src/craft/space-evenly';

test("55 to 38 is 17 decreases, in 4 segments of 4 stitches and 13 of 3 (Papermoon Knits, 'Math Monday: Decreasing, Part II, across a row/round')", () => {
  const { kind, shapings, plain } = spaceEvenly({ from: 55, to: 38, worked: 'round' });
  expect([kind, shapings]).toEqual(['decrease', 17]);
  const segments = plain.slice(0, -1).map((stitches) => stitches + 2);
  expect(segments.filter((size) => size === 4)).toHaveLength(4);
  expect(segments.filter((size) => size === 3)).toHaveLength(13);
});

test("30 stitches less 10 have 1 plain stitch between decreases (magazine how-to 'Decreasing multiple stitches across one row', issuhub.com/view/index/4587, page 76)", () => {
  const { shapings, plain } = spaceEvenly({ from: 30, to: 20, worked: 'round' });
  expect(shapings).toBe(10);
  expect(plain).toEqual([...Array<number>(10).fill(1), 0]);
});

test("40 stitches and 4 increases make sections of 8, 8, 8, 8, 8 (cherryblossomlove.com, 'How do you decrease evenly in knitting?')", () => {
  expect(spaceEvenly({ from: 40, to: 44, worked: 'flat', ends: 'whole' }).plain).toEqual([8, 8, 8, 8, 8]);
});
