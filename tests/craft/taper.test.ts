import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CraftError } from '../../src/craft/craft-error';
import { taper, taperFrom } from '../../src/craft/taper';
import type { Order } from '../../src/craft/types';
import { withoutHanging } from '../without-hanging';

const plain = { before: 0, after: 0 };

describe('shaping on any row', () => {
  test('63 to 43 over 60 rows, 2 a time: every 6th row, 10 times', () => {
    const plan = taper({ from: 63, to: 43, over: 60, perRow: 2, every: 1, ...plain });
    expect(plan.intervals).toEqual([{ every: 6, times: 10 }]);
    expect(plan.shapingRows).toEqual([6, 12, 18, 24, 30, 36, 42, 48, 54, 60]);
    expect(plan.counts[4]).toBe(63);
    expect(plan.counts[5]).toBe(61);
    expect(plan.counts[59]).toBe(43);
  });

  test('over 63 rows three of the intervals are a row longer: first, last, or spread', () => {
    const over63 = { from: 63, to: 43, over: 63, perRow: 2, every: 1 as const, ...plain };
    expect(taper(over63).intervals).toEqual([
      { every: 7, times: 3 },
      { every: 6, times: 7 },
    ]);
    expect(taper({ ...over63, order: 'shortFirst' }).intervals).toEqual([
      { every: 6, times: 7 },
      { every: 7, times: 3 },
    ]);
    // Ends at 6.3, 12.6, 18.9, 25.2, 31.5, 37.8, 44.1, 50.4, 56.7 and 63, each to the nearest row.
    expect(taper({ ...over63, order: 'spread' }).shapingRows).toEqual([
      6, 13, 19, 25, 32, 38, 44, 50, 57, 63,
    ]);
  });

  test('plain rows stand before and after', () => {
    const plan = taper({ from: 20, to: 26, over: 30, perRow: 2, every: 1, before: 10, after: 5 });
    expect(plan.shapingRows).toEqual([15, 20, 25]);
    expect(plan.counts.slice(25)).toEqual([26, 26, 26, 26, 26]);
  });
});

describe('shaping on right-side rows', () => {
  test('from a right-side row, the last right-side row of an interval of 6 is its 5th', () => {
    const plan = taper({ from: 30, to: 26, over: 13, perRow: 2, every: 2, ...plain });
    expect(plan.intervals).toEqual([{ every: 6, times: 2 }]);
    expect(plan.shapingRows).toEqual([5, 11]);
    expect(plan.counts).toEqual([30, 30, 30, 30, 28, 28, 28, 28, 28, 28, 26, 26, 26]);
  });

  test('from a wrong-side row it is the 6th', () => {
    const plan = taper({ from: 30, to: 26, over: 12, perRow: 2, every: 2, ...plain, startsOn: 'WS' });
    expect(plan.shapingRows).toEqual([6, 12]);
  });

  test('an odd number of plain rows before turns the sides of the intervals', () => {
    const plan = taper({ from: 30, to: 26, over: 13, perRow: 2, every: 2, before: 1, after: 0 });
    expect(plan.shapingRows).toEqual([7, 13]);
  });

  test('a row that makes no whole pair stays plain at the end', () => {
    const plan = taper({ from: 30, to: 26, over: 11, perRow: 2, every: 2, ...plain });
    expect(plan.intervals).toEqual([
      { every: 6, times: 1 },
      { every: 4, times: 1 },
    ]);
    expect(plan.shapingRows).toEqual([5, 9]);
    expect(plan.counts).toHaveLength(11);
  });

  test('in the round every round is on the right side, and the last of its interval is shaped', () => {
    const plan = taperFrom({ from: 30, to: 26, over: 12, perRow: 2, every: 2, ...plain }, 'round');
    expect(plan.shapingRows).toEqual([6, 12]);
  });
});

describe('every right-side row shaped', () => {
  test('rows 1 and 3 of 3 are right-side rows: two shapings fit', () => {
    const plan = taper({ from: 10, to: 6, over: 3, perRow: 2, every: 2, ...plain });
    expect(plan.shapingRows).toEqual([1, 3]);
    expect(plan.intervals).toEqual([{ every: 2, times: 2 }]);
    expect(plan.counts).toEqual([8, 8, 6]);
    expect(() => taper({ from: 10, to: 6, over: 3, perRow: 2, every: 2, ...plain, startsOn: 'WS' })).toThrow(
      '4 rows would do',
    );
  });

  test('one shaping row is one row, and one row of many is one too', () => {
    expect(() => taper({ from: 5, to: 4, over: 1, perRow: 1, every: 1, before: 1, after: 0 })).toThrow(
      'takes 1 shaping row, too many for 1 row of which 1 stays plain: 2 rows would do.',
    );
    expect(() => taper({ from: 5, to: 4, over: 0, perRow: 1, every: 1, ...plain })).toThrow(
      'takes 1 shaping row, too many for 0 rows: 1 row would do.',
    );
    expect(() => taper({ from: 5, to: 5, over: 1, perRow: 1, every: 1, before: 1, after: 1 })).toThrow(
      '1 plain row before and 1 after make 2, more than the 1 row there is: work 2 or more',
    );
    expect(() => taper({ from: 5, to: 4, over: 9, perRow: 2, every: 1, ...plain })).toThrow(
      'From 5 to 4 is 1 stitch, which 2 on a row do not divide',
    );
  });
});

describe('nothing to shape', () => {
  test('from 20 to 20 is plain rows', () => {
    expect(taper({ from: 20, to: 20, over: 3, perRow: 2, every: 1, ...plain })).toEqual({
      shapingRows: [],
      intervals: [],
      counts: [20, 20, 20],
    });
  });
});

describe('what cannot be worked', () => {
  test('a difference that is no multiple is refused with the two nearest counts', () => {
    expect(() => taper({ from: 45, to: 60, over: 40, perRow: 2, every: 1, ...plain })).toThrow(
      'end on 59 or 61',
    );
    expect(() => taper({ from: 60, to: 45, over: 40, perRow: 2, every: 1, ...plain })).toThrow(
      'end on 46 or 44',
    );
  });

  test('a count below one stitch is not offered', () => {
    expect(() => taper({ from: 5, to: 2, over: 40, perRow: 2, every: 1, ...plain })).toThrow(
      'end on 3 or 1, or start 1 nearer',
    );
    expect(() => taper({ from: 5, to: 1, over: 40, perRow: 3, every: 1, ...plain })).toThrow(
      'end on 2, or start 1 nearer',
    );
  });

  test('too few rows are refused with how many would do', () => {
    expect(() => taper({ from: 63, to: 43, over: 19, perRow: 2, every: 2, before: 2, after: 3 })).toThrow(
      'From 63 to 43 takes 10 shaping rows, too many for 19 rows of which 5 stay plain: 24 rows would do. Or shape on every row instead of every second, leave fewer plain rows, shape more stitches on a row, or change the count by less.',
    );
    expect(
      taper({ from: 63, to: 43, over: 24, perRow: 2, every: 2, before: 2, after: 3 }).shapingRows,
    ).toHaveLength(10);
  });

  test('only ways out that there are are named: without plain rows there are none to leave out', () => {
    expect(() => taper({ from: 63, to: 43, over: 9, perRow: 2, every: 1, ...plain })).toThrow(
      'From 63 to 43 takes 10 shaping rows, too many for 9 rows: 10 rows would do. Or shape more stitches on a row, or change the count by less.',
    );
  });

  test('more plain rows than rows are refused', () => {
    expect(() => taper({ from: 63, to: 63, over: 4, perRow: 2, every: 1, before: 3, after: 2 })).toThrow(
      'work 5 or more',
    );
  });

  test('a million rows are worked within a second, and more are refused', () => {
    const long = {
      from: 1,
      to: 400_001,
      over: 1_000_000,
      perRow: 1,
      every: 1 as const,
      order: 'spread' as const,
      ...plain,
    };
    const plan = withoutHanging(() => taper(long));
    expect(plan.counts.at(-1)).toBe(400_001);
    expect(() => taper({ ...long, over: 1_000_001 })).toThrow('1000000 rows are the most');
  });
});

describe('any taper that can be worked', () => {
  const some = fc
    .record({
      shapings: fc.integer({ min: 0, max: 40 }),
      perRow: fc.integer({ min: 1, max: 4 }),
      every: fc.constantFrom(1 as const, 2 as const),
      spare: fc.integer({ min: 0, max: 100 }),
      before: fc.integer({ min: 0, max: 9 }),
      after: fc.integer({ min: 0, max: 9 }),
      least: fc.integer({ min: 1, max: 50 }),
      grows: fc.boolean(),
      order: fc.constantFrom<Order>('longFirst', 'shortFirst', 'spread'),
      startsOn: fc.constantFrom('RS' as const, 'WS' as const),
    })
    .map(({ shapings, spare, least, grows, ...plan }) => {
      const other = least + shapings * plan.perRow;
      const over = plan.before + plan.after + shapings * plan.every + spare;
      return { ...plan, over, from: grows ? least : other, to: grows ? other : least };
    });

  test('ends on its count, in its rows, with intervals that differ by at most one `every`', () => {
    fc.assert(
      fc.property(some, (plan) => {
        const { shapingRows, intervals, counts } = taper(plan);
        const shapings = Math.abs(plan.from - plan.to) / plan.perRow;
        expect(shapingRows).toHaveLength(shapings);
        expect(counts).toHaveLength(plan.over);
        expect(counts.at(-1) ?? plan.to).toBe(plan.to);

        const lengths = intervals.flatMap(({ every, times }) => Array<number>(times).fill(every));
        expect(lengths).toHaveLength(shapings);
        if (shapings === 0) return;
        expect(Math.max(...lengths) - Math.min(...lengths)).toBeLessThanOrEqual(plan.every);
        const free = plan.over - plan.before - plan.after;
        const used = lengths.reduce((sum, length) => sum + length, 0);
        expect(used).toBe(free - (free % plan.every));

        // Every interval holds its one shaping row, as late as its sides allow.
        let end = plan.before;
        lengths.forEach((length, i) => {
          end += length;
          const row = shapingRows[i] as number;
          const side = (n: number) => ((n % 2 === 1) === (plan.startsOn === 'RS') ? 'RS' : 'WS');
          expect(row).toBe(plan.every === 1 || side(end) === 'RS' ? end : end - 1);
          if (plan.every === 2) expect(side(row)).toBe('RS');
        });
        expect(shapingRows[0]).toBeGreaterThan(plan.before);
        expect(shapingRows.at(-1)).toBeLessThanOrEqual(plan.over - plan.after);

        // The counts change on the shaping rows, by `perRow`, and nowhere else.
        const changed = counts.flatMap((count, i) => (count === (counts[i - 1] ?? plan.from) ? [] : [i + 1]));
        expect(changed).toEqual(shapingRows);
        const step = Math.sign(plan.to - plan.from) * plan.perRow;
        shapingRows.forEach((row, i) => expect(counts[row - 1]).toBe(plan.from + (i + 1) * step));
      }),
      { numRuns: 3000 },
    );
  });

  test('the longer intervals come first, last, or so that no end strays half a unit from the straight line', () => {
    fc.assert(
      fc.property(some, (plan) => {
        const lengths = taper(plan).intervals.flatMap(({ every, times }) => Array<number>(times).fill(every));
        const sorted = [...lengths].sort((a, b) => a - b);
        if (plan.order === 'longFirst') expect(lengths).toEqual(sorted.reverse());
        if (plan.order === 'shortFirst') expect(lengths).toEqual(sorted);
        if (plan.order === 'spread') {
          const all = lengths.reduce((sum, length) => sum + length, 0);
          let end = 0;
          lengths.forEach((length, i) => {
            end += length;
            const straight = ((i + 1) * all) / lengths.length;
            expect(Math.abs(end - straight)).toBeLessThanOrEqual(plan.every / 2 + 1e-9);
          });
        }
      }),
      { numRuns: 3000 },
    );
  });

  test('worked the other way, shaping falls on the same rows and the counts mirror', () => {
    fc.assert(
      fc.property(some, (plan) => {
        const one = taper(plan);
        const other = taper({ ...plan, from: plan.to, to: plan.from });
        expect(other.shapingRows).toEqual(one.shapingRows);
        expect(other.intervals).toEqual(one.intervals);
        expect(other.counts).toEqual(one.counts.map((count) => plan.from + plan.to - count));
      }),
      { numRuns: 1000 },
    );
  });

  test('any number of rows with enough right-side rows is worked, and the fewest is the number said', () => {
    fc.assert(
      fc.property(some, (plan) => {
        const shapings = Math.abs(plan.from - plan.to) / plan.perRow;
        fc.pre(shapings > 0);
        // By brute force: the rows on which shaping may fall, one by one.
        const mayShape = (row: number) => plan.every === 1 || (row % 2 === 1) === (plan.startsOn === 'RS');
        const room = (over: number): number => {
          let rows = 0;
          for (let row = plan.before + 1; row <= over - plan.after; row++) if (mayShape(row)) rows++;
          return rows;
        };
        let least = plan.before + plan.after;
        while (room(least) < shapings) least++;
        for (let over = least; over < least + 4; over++) {
          const { shapingRows } = taper({ ...plan, over });
          expect(shapingRows).toHaveLength(shapings);
          expect(new Set(shapingRows).size).toBe(shapings);
          expect(shapingRows.every((row) => row > plan.before && row <= over - plan.after)).toBe(true);
          expect(shapingRows.every(mayShape)).toBe(true);
        }
        expect(() => taper({ ...plan, over: least - 1 })).toThrow(CraftError);
        expect(() => taper({ ...plan, over: least - 1 })).toThrow(
          `: ${least} ${least === 1 ? 'row' : 'rows'} would do`,
        );
      }),
      { numRuns: 1000 },
    );
  });
});
