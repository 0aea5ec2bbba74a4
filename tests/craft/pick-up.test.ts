import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pickUp } from '../../src/craft/pick-up';

const groups = (rows: number, stitches: number) => pickUp({ rows, stitches }).groups;

test('10 stitches over 13 rows: 3 of 4, 3 of 4, 4 of 5', () => {
  expect(groups(13, 10)).toEqual([
    { pick: 3, skip: 1, times: 2 },
    { pick: 4, skip: 1 },
  ]);
});

test('3 of 4 all the way: 90 stitches over 120 rows', () => {
  expect(groups(120, 90)).toEqual([{ pick: 3, skip: 1, times: 30 }]);
});

test('half as many stitches as rows is 1 of 2', () => {
  expect(groups(20, 10)).toEqual([{ pick: 1, skip: 1, times: 10 }]);
});

test('fewer than half: one segment for each stitch, picked up at its end', () => {
  expect(groups(20, 6)).toEqual([
    { pick: 1, skip: 2, times: 2 },
    { pick: 1, skip: 3 },
    { pick: 1, skip: 2, times: 2 },
    { pick: 1, skip: 3 },
  ]);
  expect(groups(9, 1)).toEqual([{ pick: 1, skip: 8 }]);
});

test('as many stitches as rows is one in every row end', () => {
  expect(groups(18, 18)).toEqual([{ pick: 1, skip: 0, times: 18 }]);
});

test('3 stitches for 2 double-height rows: row ends take 1 and 2 by turns', () => {
  expect(groups(4, 6)).toEqual([
    { pick: 1, skip: 0 },
    { pick: 2, skip: 0 },
    { pick: 1, skip: 0 },
    { pick: 2, skip: 0 },
  ]);
});

test('2 stitches in every double crochet row', () => {
  expect(groups(12, 24)).toEqual([{ pick: 2, skip: 0, times: 12 }]);
});

test('equal segments are one group, however many they are', () => {
  expect(groups(1_000_000_000, 500_000_000)).toEqual([{ pick: 1, skip: 1, times: 500_000_000 }]);
  expect(() => groups(1_000_000_000, 700_000_001)).toThrow('1000000 are the most');
});

test('a million unequal segments are laid out: one stitch more than there are rows goes into one of them', () => {
  const twos = groups(1_000_000, 1_000_001).filter(({ pick }) => pick === 2);
  expect(twos).toEqual([{ pick: 2, skip: 0 }]);
});

describe('whatever the counts', () => {
  const counts = fc.tuple(fc.integer({ min: 1, max: 1500 }), fc.integer({ min: 1, max: 1500 }));
  const each = (list: { pick: number; skip: number; times?: number }[]) =>
    list.flatMap(({ times = 1, pick, skip }) => Array.from({ length: times }, () => ({ pick, skip })));
  const sum = (list: number[]) => list.reduce((total, one) => total + one, 0);

  test('exactly the stitches asked for, over exactly the rows there are', () => {
    fc.assert(
      fc.property(counts, ([rows, stitches]) => {
        const all = each(groups(rows, stitches));
        expect(sum(all.map(({ pick }) => pick))).toBe(stitches);
        expect(sum(all.map(({ pick, skip }) => (skip === 0 ? 1 : pick + skip)))).toBe(rows);
      }),
      { numRuns: 5000 },
    );
  });

  test('segments differ by at most one row, row ends by at most one stitch', () => {
    fc.assert(
      fc.property(counts, ([rows, stitches]) => {
        const sizes = each(groups(rows, stitches)).map(({ pick, skip }) => pick + skip);
        expect(Math.max(...sizes) - Math.min(...sizes)).toBeLessThanOrEqual(1);
      }),
      { numRuns: 3000 },
    );
  });

  test('no two row ends running are skipped where there is a stitch for every two, and no two picked where there is not', () => {
    fc.assert(
      fc.property(counts, ([rows, stitches]) => {
        const list = groups(rows, stitches);
        if (stitches >= rows) expect(list.every(({ skip }) => skip === 0)).toBe(true);
        else if (2 * stitches >= rows)
          expect(list.every(({ skip, pick }) => skip === 1 && pick >= 1)).toBe(true);
        else expect(list.every(({ skip, pick }) => skip >= 1 && pick === 1)).toBe(true);
      }),
      { numRuns: 3000 },
    );
  });

  test('groups that repeat are said once, with how many times', () => {
    fc.assert(
      fc.property(counts, ([rows, stitches]) => {
        const list = groups(rows, stitches);
        const fresh = list.every(
          (group, i) => i === 0 || group.pick !== list[i - 1]!.pick || group.skip !== list[i - 1]!.skip,
        );
        expect(fresh).toBe(true);
        expect(list.every(({ times }) => times === undefined || times > 1)).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });

  test('the larger groups are spread: any two stretches of as many groups differ by at most one row or stitch', () => {
    fc.assert(
      fc.property(counts, fc.nat(), fc.nat(), fc.nat(), ([rows, stitches], a, b, long) => {
        const sizes = each(groups(rows, stitches)).map(({ pick, skip }) => pick + skip);
        const length = 1 + (long % sizes.length);
        const stretchAt = (start: number) => {
          const from = start % (sizes.length - length + 1);
          return sum(sizes.slice(from, from + length));
        };
        expect(Math.abs(stretchAt(a) - stretchAt(b))).toBeLessThanOrEqual(1);
      }),
      { numRuns: 3000 },
    );
  });
});
