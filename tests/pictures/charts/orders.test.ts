import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { workPiece } from '../../../src/craft';
import { inOrder, offsByRow, orderOf, otherOrders } from '../../../src/pictures/charts/orders';
import { offsGraph, offsTable } from '../../../src/pictures/charts/graph-spec';
import { sleeve, specOf } from './pieces';

const size = (id: string, plan: ReturnType<typeof sleeve>) => ({
  id,
  label: id,
  rows: workPiece(plan),
  plan,
});

describe('the orders of a taper', () => {
  test('of 63 to 43 over 64 rows: four longer intervals of 7 first, last, or spread', () => {
    const shaped = (order: 'longFirst' | 'shortFirst' | 'spread') =>
      workPiece(inOrder(sleeve(63, 43, 64), order))
        .slice(0, 64)
        .filter(({ change }) => change !== 0)
        .map(({ number }) => number);
    expect(shaped('longFirst')).toEqual([7, 14, 21, 28, 34, 40, 46, 52, 58, 64]);
    expect(shaped('shortFirst')).toEqual([6, 12, 18, 24, 30, 36, 43, 50, 57, 64]);
    // Bresenham's line: the k-th of 10 shaping rows stands within half a row of 6.4 k.
    shaped('spread').forEach((row, k) => expect(Math.abs(row - 6.4 * (k + 1))).toBeLessThanOrEqual(0.5));
  });

  test('change nothing but where the shaping rows stand', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 30, max: 60 }),
        fc.integer({ min: 1, max: 9 }),
        fc.integer({ min: 10, max: 120 }),
        (from, shapings, over) => {
          const plan = sleeve(from, from - 2 * Math.min(shapings, 6), Math.max(over, shapings));
          const worked = (['longFirst', 'shortFirst', 'spread'] as const).map((order) =>
            workPiece(inOrder(plan, order)),
          );
          for (const rows of worked) {
            expect(rows).toHaveLength(worked[0]!.length);
            expect(rows.at(-1)).toEqual(worked[0]!.at(-1));
            expect(rows.filter(({ change }) => change !== 0)).toHaveLength(
              worked[0]!.filter(({ change }) => change !== 0).length,
            );
          }
        },
      ),
    );
  });

  test('beside a piece are the two it is not worked in, each with the plan’s own rows in every size', () => {
    const sizes = [size('m', sleeve(70, 40, 92)), size('l', sleeve(76, 42, 93))];
    const others = otherOrders([...sizes, { id: 'x', label: 'X', rows: null, problem: 'Missing.' }]);
    expect(others.map(({ id, label }) => [id, label])).toEqual([
      ['shortFirst', 'shorter intervals first'],
      ['spread', 'intervals spread evenly'],
    ]);
    expect(others[1]!.sizes.map(({ rows }) => rows?.length ?? null)).toEqual([103, 104, null]);
    expect(orderOf(inOrder(sleeve(70, 40, 90), 'spread'))).toBe('spread');
  });

  test('are all three where the tapers of a piece differ, and none of a piece without a taper', () => {
    const twice = sleeve(70, 50, 40);
    const [taper] = twice.stretches;
    if (taper?.kind !== 'taper') throw new Error('The sleeve begins with a taper.');
    const plan = { ...twice, stretches: [taper, { ...taper, to: 30, order: 'spread' as const }] };
    expect(orderOf(plan)).toBeNull();
    expect(otherOrders([size('m', plan)])).toHaveLength(3);
    const even = { ...twice, stretches: twice.stretches.slice(2) };
    expect(otherOrders([size('m', even)])).toEqual([]);
  });

  test('spread stays nearest to the straight line: half a step and half a row at most', () => {
    const rows = workPiece(inOrder(sleeve(70, 40, 92), 'spread'));
    const offs = offsByRow(rows).slice(0, 92) as number[];
    expect(Math.max(...offs.map(Math.abs))).toBeLessThanOrEqual(2 + (30 / 92) * 0.5 + 1e-9);
    expect(
      offsByRow(rows)
        .slice(92)
        .every((off) => off === null),
    ).toBe(true);
  });
});

test('the graph of how far the orders are off has a line for each, and the table the same numbers', () => {
  const sizes = [size('m', sleeve(70, 40, 92))];
  const spec = specOf(sizes, { which: 'taper', highlighted: 'm', overlays: otherOrders(sizes) });
  const graph = offsGraph(spec)!;
  expect(graph.lines.map(({ label, letter }) => [label, letter])).toEqual([
    ['shorter intervals first', 'A'],
    ['intervals spread evenly', 'B'],
    ['longer intervals first (as it is)', ''],
  ]);
  // Of 92 rows to 15 shapings the first two intervals are of 7, the rest of 6: before the seventh row 6/92 of 30 sts.
  expect(graph.lines[2]!.values[5]).toBeCloseTo((6 / 92) * 30, 9);
  expect(graph.lines[2]!.values[6]).toBeCloseTo((7 / 92) * 30 - 2, 9);
  expect(graph.lines[2]!.values[95]).toBeNull();
  expect(graph.reading(5)).toEqual({
    heading: 'Round 6',
    lines: [
      'Longer intervals first (as it is): 2.0 sts',
      'Intervals spread evenly: 0.0 sts',
      'Shorter intervals first: 0.0 sts',
    ],
  });
  const { headings, rows } = offsTable(spec);
  expect(headings).toHaveLength(4);
  expect(rows[5]).toEqual(['6', '2.0', '0.0', '0.0']);
  expect(rows.at(-1)).toEqual(['103', '–', '–', '–']);
  expect(offsGraph({ ...spec, highlighted: null })).toBeNull();
});
