import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pickUpEdge } from '../../src/craft/pick-up-edge';
import type { EdgeStretch } from '../../src/craft/types';

const rows = (count: number, pick: number, of: number): EdgeStretch => ({
  kind: 'rows',
  rows: count,
  pick,
  of,
});
const tops = (count: number): EdgeStretch => ({ kind: 'stitches', count });

test('row ends at 3 of 4, stitch tops one for one, 4 to a motif, a curve by its length', () => {
  const edge: EdgeStretch[] = [
    rows(40, 3, 4),
    tops(25),
    { kind: 'motifs', motifs: 6, each: 4 },
    { kind: 'curve', length: 10, stitchesPerCm: 1.5 },
  ];
  expect(pickUpEdge(edge)).toEqual({ total: 94, perStretch: [30, 25, 24, 15], unfitted: 94 });
});

test('45 cm of curve at 14 to 10 cm are 63 stitches and not one less', () => {
  expect(pickUpEdge([{ kind: 'curve', length: 45, stitchesPerCm: 1.4 }])).toEqual({
    total: 63,
    perStretch: [63],
    unfitted: 63,
  });
});

test('the exact sum is shown, and the total is the nearest whole number', () => {
  expect(pickUpEdge([rows(31, 3, 4), tops(20)])).toEqual({
    total: 43,
    perStretch: [23, 20],
    unfitted: 43.25,
  });
});

test('a band in a multiple of 4 plus 2: 93 stitches become 94, and the one goes to the longest stretch', () => {
  const edge = [rows(40, 3, 4), tops(33), rows(40, 3, 4)];
  expect(pickUpEdge(edge, { repeats: [{ multiple: 4, plus: 2 }], rule: 'nearest' })).toEqual({
    total: 94,
    perStretch: [30, 34, 30],
    unfitted: 93,
  });
});

test('a change of 10 over stretches of 50, 30 and 20 is 5, 3 and 2', () => {
  const edge = [tops(50), tops(30), tops(20)];
  expect(pickUpEdge(edge, { repeats: [{ multiple: 110, plus: 0 }], rule: 'up' }).perStretch).toEqual([
    55, 33, 22,
  ]);
  expect(pickUpEdge(edge, { repeats: [{ multiple: 90, plus: 0 }], rule: 'down' }).perStretch).toEqual([
    45, 27, 18,
  ]);
});

test('of equal remainders the first stretch takes the stitch', () => {
  expect(pickUpEdge([rows(30, 3, 4), tops(25), rows(30, 3, 4)]).perStretch).toEqual([23, 25, 22]);
});

test('a stretch of nothing takes nothing', () => {
  expect(pickUpEdge([rows(0, 3, 4), tops(12), tops(0)])).toEqual({
    total: 12,
    perStretch: [0, 12, 0],
    unfitted: 12,
  });
});

test('an edge of a single stitch has a band of one', () => {
  expect(pickUpEdge([tops(1), tops(0)])).toEqual({ total: 1, perStretch: [1, 0], unfitted: 1 });
});

test('a stretch that is missing is said by its number', () => {
  expect(() => pickUpEdge([tops(4), undefined as unknown as EdgeStretch])).toThrow('The kind of stretch 2');
});

test('an edge without a stitch is refused', () => {
  expect(() => pickUpEdge([tops(0), rows(0, 1, 1)])).toThrow('give at least one stretch');
  expect(() => pickUpEdge([])).toThrow('The stretches of the edge are missing');
  expect(() => pickUpEdge([{ kind: 'curve', length: 0.1, stitchesPerCm: 1 }])).toThrow(
    'less than half a stitch',
  );
});

test('more stitches than can be told apart are refused', () => {
  expect(pickUpEdge([tops(100_000_000)]).total).toBe(100_000_000);
  expect(pickUpEdge([tops(50_000_000), tops(49_999_999)]).perStretch).toEqual([50_000_000, 49_999_999]);
  expect(() => pickUpEdge([tops(1_000_000_000), tops(1)])).toThrow('at most 100000000 can be shared out');
  expect(() =>
    pickUpEdge([tops(10)], { repeats: [{ multiple: 1_000_000_000, plus: 0 }], rule: 'up' }),
  ).toThrow('The edge would take 1000000000 stitches');
});

test('what is wrong is said of the stretch it is wrong with', () => {
  expect(() => pickUpEdge([tops(4), rows(10.5, 3, 4)])).toThrow(
    'The number of row ends of stretch 2 has to be a whole',
  );
  expect(() => pickUpEdge([tops(4), rows(10, 3, 0)])).toThrow('on stretch 2 has to be 1 or more; it is 0.');
});

describe('whatever the edge', () => {
  const small = fc.integer({ min: 1, max: 8 });
  const stretch: fc.Arbitrary<EdgeStretch> = fc.oneof(
    fc.record({
      kind: fc.constant('rows' as const),
      rows: fc.integer({ min: 0, max: 300 }),
      pick: small,
      of: small,
    }),
    fc.record({ kind: fc.constant('stitches' as const), count: fc.integer({ min: 0, max: 300 }) }),
    fc.record({ kind: fc.constant('motifs' as const), motifs: fc.integer({ min: 0, max: 30 }), each: small }),
    fc.record({
      kind: fc.constant('curve' as const),
      length: fc.double({ min: 0, max: 90, noNaN: true }),
      stitchesPerCm: fc.double({ min: 0.3, max: 5, noNaN: true }),
    }),
  );
  const edge = fc.array(stretch, { minLength: 1, maxLength: 8 });
  const fit = fc.option(
    fc.record({
      repeats: fc.tuple(
        fc.record({ multiple: fc.integer({ min: 1, max: 12 }), plus: fc.integer({ min: 0, max: 5 }) }),
      ),
      rule: fc.constantFrom('nearest' as const, 'up' as const),
    }),
    { nil: undefined },
  );
  const exact = (one: EdgeStretch) => {
    if (one.kind === 'rows') return (one.rows * one.pick) / one.of;
    if (one.kind === 'stitches') return one.count;
    if (one.kind === 'motifs') return one.motifs * one.each;
    return one.length * one.stitchesPerCm;
  };
  const sum = (list: number[]) => list.reduce((total, one) => total + one, 0);

  test('the stretches add up to the total, and each is within a stitch of its share of it', () => {
    fc.assert(
      fc.property(edge, fit, (stretches, band) => {
        const sizes = stretches.map(exact);
        fc.pre(sum(sizes) >= 0.5);
        const { total, perStretch, unfitted } = pickUpEdge(stretches, band);
        expect(Math.abs(unfitted / sum(sizes) - 1)).toBeLessThan(2e-9);
        expect(sum(perStretch)).toBe(total);
        expect(perStretch.every((count) => Number.isInteger(count) && count >= 0)).toBe(true);
        const misses = perStretch.map((count, i) => Math.abs(count - (total * sizes[i]!) / sum(sizes)));
        expect(Math.max(...misses)).toBeLessThan(1 + 1e-6);
      }),
      { numRuns: 5000 },
    );
  });

  test('a fitted total fits the band, an unfitted one is the nearest whole number', () => {
    fc.assert(
      fc.property(edge, fit, (stretches, band) => {
        fc.pre(sum(stretches.map(exact)) >= 0.5);
        const { total, unfitted } = pickUpEdge(stretches, band);
        if (band) {
          const [{ multiple, plus }] = band.repeats;
          expect((total - plus) % multiple).toBe(0);
        } else expect(Math.abs(total - unfitted)).toBeLessThanOrEqual(0.5 + 1e-6);
      }),
      { numRuns: 3000 },
    );
  });

  test('the edge worked from its other end has the same total, and stretches that differ by a stitch at most', () => {
    fc.assert(
      fc.property(edge, fit, (stretches, band) => {
        fc.pre(sum(stretches.map(exact)) >= 0.5);
        const there = pickUpEdge(stretches, band);
        const back = pickUpEdge([...stretches].reverse(), band);
        expect(back.total).toBe(there.total);
        const differences = back.perStretch
          .reverse()
          .map((count, i) => Math.abs(count - there.perStretch[i]!));
        expect(Math.max(...differences)).toBeLessThanOrEqual(1);
      }),
      { numRuns: 3000 },
    );
  });
});
