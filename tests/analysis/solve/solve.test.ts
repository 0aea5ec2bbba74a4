import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import type { Outcome, Wish } from '../../../src/analysis/solve/goal';
import { solve } from '../../../src/analysis/solve/solve';
import type { Search } from '../../../src/analysis/solve/search';

type Results = readonly ((value: number) => Outcome)[];

const back = (results: Results, search: Search, wish: Wish) =>
  solve({
    search,
    wish,
    sizes: results.length,
    tries: async (samples) => samples.map(({ size, value }) => results[size]!(value)),
  });
const value = (wished: number, within = 0): Wish => ({ wish: 'value', value: wished, within });
const nearest = (wished: number, within = 0): Wish => ({ wish: 'nearest', value: wished, within });

/** The stitches of a back in a multiple of 8 plus 3, nearest to half of bust and ease at 1.4 to the cm. */
const backOf = (bust: number) => (ease: number) => 8 * Math.round((((bust + ease) / 2) * 1.4 - 3) / 8) + 3;

describe('a count is a step: all the ease that gives it is an interval', () => {
  test('75 stitches of a bust of 94 cm come of every ease from 7.4 to 18.9 cm', async () => {
    const { sizes } = await back([backOf(94)], { from: 0, to: 40, step: 0.5 }, value(75));
    // 71 / 0.7 − 94 and 79 / 0.7 − 94: halfway to 67 and to 83.
    expect(sizes[0]!.intervals).toHaveLength(1);
    const [{ from, to }] = sizes[0]!.intervals as [{ from: number; to: number }];
    expect(Math.abs(from - (71 / 0.7 - 94))).toBeLessThanOrEqual(1e-6);
    expect(Math.abs(to - (79 / 0.7 - 94))).toBeLessThanOrEqual(1e-6);
  });

  test('both ends of what is found give the wish', async () => {
    const result = backOf(94);
    const { sizes } = await back([result], { from: 0, to: 40, step: 0.5 }, value(75));
    for (const { from, to } of sizes[0]!.intervals) expect([result(from), result(to)]).toEqual([75, 75]);
  });

  test('where the wish is met up to a bound, the bound is the end', async () => {
    const { sizes } = await back([backOf(94)], { from: 10, to: 12, step: 0.5 }, value(75));
    expect(sizes[0]!.intervals).toEqual([{ from: 10, to: 12 }]);
  });
});

describe('a wish that no value can meet', () => {
  test('no ease gives 78 stitches: 75 below and 83 above, and the ease that gives each', async () => {
    const found = (await back([backOf(94)], { from: 0, to: 40, step: 0.5 }, value(78))).sizes[0]!;
    expect(found.intervals).toEqual([]);
    expect(found.below!.result).toBe(75);
    expect(found.above!.result).toBe(83);
    expect(found.below!.intervals).toEqual([
      { from: expect.closeTo(71 / 0.7 - 94, 6), to: expect.closeTo(79 / 0.7 - 94, 6) },
    ]);
    expect(found.above!.intervals[0]!.from).toBeCloseTo(79 / 0.7 - 94, 6);
  });

  test('as near as possible to 78 is 75, three off; to 79 it is both 75 and 83', async () => {
    const near = (await back([backOf(94)], { from: 0, to: 40, step: 0.5 }, nearest(78))).sizes[0]!;
    expect(near).toMatchObject({ off: -3, intervals: [{ from: expect.closeTo(71 / 0.7 - 94, 6) }] });
    const tie = (await back([backOf(94)], { from: 0, to: 40, step: 0.5 }, nearest(79))).sizes[0]!;
    expect(tie.off).toBe(4);
    expect(tie.intervals).toHaveLength(2);
  });

  test('as near as possible to what can be had is that, nothing off', async () => {
    const met = (await back([backOf(94)], { from: 0, to: 40, step: 0.5 }, nearest(75))).sizes[0]!;
    expect(met.off).toBe(0);
    expect(met.intervals).toHaveLength(1);
  });

  test('all results on one side of the wish leave nothing on the other', async () => {
    const found = (await back([backOf(94)], { from: 0, to: 40, step: 0.5 }, value(500))).sizes[0]!;
    expect(found.above).toBeUndefined();
    expect(found.below!.result).toBe(91);
  });
});

describe('a line', () => {
  test('a length of 50 cm to within a millimetre either way is found though it is narrower than a step', async () => {
    const found = (await back([(x) => 7 * x], { from: 0, to: 40, step: 3 }, value(50, 0.1))).sizes[0]!;
    expect(found.intervals).toEqual([{ from: expect.closeTo(49.9 / 7, 5), to: expect.closeTo(50.1 / 7, 5) }]);
  });

  test('a leap over the wish has its two sides as the nearest', async () => {
    const leap = (x: number) => (x < 3.21 ? x : x + 10);
    const found = (await back([leap], { from: 0, to: 10, step: 1 }, value(8))).sizes[0]!;
    expect(found.below!.result).toBeCloseTo(3.21, 6);
    expect(found.above!.result).toBeCloseTo(13.21, 6);
  });
});

describe('whole numbers', () => {
  test('only whole numbers are tried, and the ends of an interval are whole', async () => {
    const tried: number[] = [];
    const { sizes } = await solve({
      search: { from: 0.5, to: 30, step: 1, whole: true },
      wish: value(4),
      sizes: 1,
      tries: async (samples) => {
        tried.push(...samples.map(({ value }) => value));
        return samples.map(({ value }) => Math.floor(value / 5));
      },
    });
    expect(sizes[0]!.intervals).toEqual([{ from: 20, to: 24 }]);
    expect(tried.every(Number.isInteger)).toBe(true);
  });

  test('with a stride of 4, single counts on the way are still found where the result passes the wish', async () => {
    const { sizes } = await back([(x) => x], { from: 1, to: 41, step: 4, whole: true }, value(19));
    expect(sizes[0]!.intervals).toEqual([{ from: 19, to: 19 }]);
  });
});

describe('several sizes', () => {
  test('the ease that serves most sizes comes first, with the sizes it fails', async () => {
    const { most } = await back(
      [() => true, (x) => x > 4 && x < 9, (x) => x > 6, (x) => x > 8 && x < 8.5],
      { from: 0, to: 10, step: 0.1 },
      { wish: 'holds' },
    );
    expect(most).toEqual([{ from: expect.closeTo(8, 5), to: expect.closeTo(8.5, 5), sizes: [0, 1, 2, 3] }]);
  });

  test('what cannot be worked in a size is not met there, and is told', async () => {
    const { sizes, most } = await back(
      [() => undefined, (x) => x > 5],
      { from: 0, to: 10, step: 1 },
      { wish: 'holds' },
    );
    expect(sizes[0]).toMatchObject({ worked: false, intervals: [] });
    expect(most).toEqual([{ from: expect.closeTo(5, 5), to: 10, sizes: [1] }]);
  });

  test('a result that never moves is told to be such', async () => {
    const { sizes } = await back([() => 4, (x) => Math.floor(x)], { from: 0, to: 10, step: 1 }, value(4));
    expect(sizes.map(({ moves }) => moves)).toEqual([false, true]);
  });
});

it('stops between two tries once it is told to', async () => {
  const stop = new AbortController();
  let wanted = 0;
  const working = solve({
    search: { from: 0, to: 1000, step: 0.5 },
    wish: value(3),
    sizes: 1,
    tries: async (list) => {
      wanted += list.length;
      if (wanted > 200) stop.abort();
      return list.map(() => 1);
    },
    signal: stop.signal,
  });
  await expect(working).rejects.toMatchObject({ name: 'AbortError' });
  expect(wanted).toBeLessThan(400);
});

it('tells how far it is', async () => {
  const stated: number[] = [];
  await solve({
    search: { from: 0, to: 100, step: 0.5 },
    wish: value(3),
    sizes: 1,
    tries: async (list) => list.map(({ value }) => value),
    progress: (part) => stated.push(part),
  });
  expect(stated.length).toBeGreaterThan(2);
  expect(stated).toEqual([...stated].sort((a, b) => a - b));
  expect(stated.at(-1)).toBe(1);
});

/** Steps at random places: the result between two of them. */
const stairs = fc
  .uniqueArray(fc.integer({ min: 1, max: 9999 }), { minLength: 0, maxLength: 30 })
  .chain((indices) =>
    fc.record({
      sizeIndices: fc.constant(indices.map((index) => index / 100).sort((a, b) => a - b)),
      results: fc.array(fc.integer({ min: 0, max: 6 }), {
        minLength: indices.length + 1,
        maxLength: indices.length + 1,
      }),
    }),
  );

describe('against what is known of random stairs', () => {
  it('every interval wider than the step is found, its ends to 1e-6, and nothing else', async () => {
    await fc.assert(
      fc.asyncProperty(
        stairs,
        fc.integer({ min: 0, max: 6 }),
        fc.constantFrom(0.25, 0.5, 1.3),
        async ({ sizeIndices: indices, results }, wished, step) => {
          const result = (x: number) => results[indices.filter((index) => index <= x).length]!;
          const ends = [0, ...indices, 100];
          const known: { from: number; to: number }[] = [];
          results.forEach((got, at) => {
            if (got !== wished) return;
            const [from, to] = [ends[at]!, ends[at + 1]!];
            if (known.at(-1)?.to === from) known.at(-1)!.to = to;
            else known.push({ from, to });
          });
          const { intervals } = (await back([result], { from: 0, to: 100, step }, value(wished))).sizes[0]!;
          for (const { from, to } of known) {
            if (to - from <= step) continue;
            // A gap narrower than the step may be passed over, and then the interval is part of a wider one.
            expect(intervals.some((found) => found.from <= from + 1e-6 && found.to >= to - 1e-6)).toBe(true);
          }
          for (const { from, to } of intervals) {
            expect(result(from)).toBe(wished);
            expect(result(to)).toBe(wished);
            const isEnd = (x: number) => ends.some((end) => Math.abs(end - x) <= 1e-6);
            expect(isEnd(from) && isEnd(to)).toBe(true);
          }
        },
      ),
    );
  });

  it('as near as possible is as near as any of the values that were tried', async () => {
    await fc.assert(
      fc.asyncProperty(
        stairs,
        fc.integer({ min: -3, max: 9 }),
        async ({ sizeIndices: indices, results }, wished) => {
          const result = (x: number) => results[indices.filter((index) => index <= x).length]!;
          const found = (await back([result], { from: 0, to: 100, step: 0.5 }, nearest(wished))).sizes[0]!;
          const tried = Array.from({ length: 201 }, (_try, at) => Math.abs(result(at / 2) - wished));
          expect(Math.abs(found.off)).toBeLessThanOrEqual(Math.min(...tried));
          for (const { from, to } of found.intervals) {
            expect(Math.abs(result(from) - wished)).toBe(Math.abs(found.off));
            expect(Math.abs(result(to) - wished)).toBe(Math.abs(found.off));
          }
        },
      ),
    );
  });
});
