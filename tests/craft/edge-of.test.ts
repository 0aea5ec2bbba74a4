import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  edgeOf,
  lengthOf,
  shapedSide,
  workPiece,
  type Fabric,
  type Piece,
  type Stretch,
} from '../../src/craft';

const plain: Fabric = { stitches: 1, rows: 1 };
const even = (rows: number): Stretch => ({ kind: 'even', rows, fabric: plain });
const leave = (atStart: number, atEnd: number): Stretch => ({ kind: 'leave', atStart, atEnd, fabric: plain });
const add = (atStart: number, atEnd: number): Stretch => ({ kind: 'add', atStart, atEnd, fabric: plain });
const taper = (to: number, over: number, perRow: number, more: object = {}): Stretch => ({
  ...{ kind: 'taper', to, over, perRow, every: 1, before: 0, after: 0, fabric: plain },
  ...more,
});
const work = (start: number, stretches: Stretch[], more: Partial<Piece> = {}) =>
  workPiece({ name: '', worked: 'flat', start, stretches, ...more });
const edges = (rows: ReturnType<typeof work>) => rows.map(({ edges: at }) => [at.left, at.right]);

describe('what a row changes at its edges', () => {
  test('stitches left at the start of a right-side row are gone from the right edge, of a wrong-side row from the left', () => {
    expect(edges(work(10, [even(2), leave(3, 1), even(1)]))[2]).toEqual([-1, -3]);
    expect(edges(work(10, [even(1), leave(3, 1), even(1)]))[1]).toEqual([-3, -1]);
    expect(edges(work(10, [even(2), add(3, 0), even(1)], { startsOn: 'WS' }))[2]).toEqual([3, 0]);
  });

  test('a taper takes half of its step from either edge', () => {
    expect(edges(work(10, [taper(6, 2, 2)]))).toEqual([
      [-1, -1],
      [-1, -1],
    ]);
  });

  test('a taper by one is at the edge its plan names, whatever came before', () => {
    const front = (edge?: 'left' | 'right') =>
      edges(
        work(10, [
          even(2),
          leave(2, 0),
          even(2),
          taper(6, 1, 2, { perRow: 1, over: 2, ...(edge && { edge }) }),
        ]),
      );
    expect(front().slice(-2)).toEqual([
      [-1, 0],
      [-1, 0],
    ]);
    expect(front('right').slice(-2)).toEqual([
      [0, -1],
      [0, -1],
    ]);
    expect(() => work(10, [taper(8, 2, 1, { edge: 'neck' })])).toThrow('The edge of a taper');
  });

  test('shaping across a row, and all in the round, is at neither edge', () => {
    expect(edges(work(10, [{ kind: 'evenly', to: 6, fabric: plain }]))).toEqual([[0, 0]]);
    expect(edges(work(10, [taper(6, 2, 2)], { worked: 'round' }))).toEqual([
      [0, 0],
      [0, 0],
    ]);
  });
});

describe('the length of an edge', () => {
  test('straight, it is the length of its rows', () => {
    expect(edgeOf(work(10, [even(7)]), 'left')).toEqual({ rows: 7, stitches: 0, length: 7 });
  });

  test('over 4 rows in which the last takes 3 stitches it is 5: 3, 4, 5', () => {
    const rows = work(10, [taper(7, 4, 3, { before: 3, edge: 'left' })]);
    // Of a step of 3 one stitch is left over: 2 at the left edge, 1 at the right.
    expect(edgeOf(rows, 'left').length).toBeCloseTo(Math.hypot(2, 4), 12);
    expect(edgeOf(rows, 'right').length).toBeCloseTo(Math.hypot(1, 4), 12);
  });

  test('stitches bound off lie across it: 2 rows up, 4 across, 3 rows up', () => {
    const rows = work(10, [even(2), leave(4, 0), even(3)]);
    expect(edgeOf(rows, 'right')).toEqual({ rows: 5, stitches: 4, length: 9 });
    expect(edgeOf(rows, 'left')).toEqual({ rows: 5, stitches: 0, length: 5 });
  });

  test('stitches count with their own stretch: the armhole with its underarm, or above it', () => {
    const rows = work(10, [even(2), leave(4, 0), even(3)]);
    expect(edgeOf(rows, 'right', 1, 2)).toEqual({ rows: 3, stitches: 4, length: 7 });
    expect(edgeOf(rows, 'right', 2, 2)).toEqual({ rows: 3, stitches: 0, length: 3 });
    expect(edgeOf(rows, 'right', 0, 0)).toEqual({ rows: 2, stitches: 0, length: 2 });
  });

  test('has its own gauges: 6 stitches at 14 to 10 cm over 16 rows at 12 to 10 cm, all on the last', () => {
    const fabric = { stitches: 1.4, rows: 1.2 };
    const rows = work(30, [{ ...taper(18, 16, 12, { before: 15 }), fabric }]);
    expect(edgeOf(rows, 'left').length).toBeCloseTo(Math.hypot(6 / 1.4, 16 / 1.2), 12);
  });

  test('is no shorter than straight from end to end, and no longer than up and across', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 5 }),
        fc.integer({ min: 1, max: 20 }),
        fc.integer({ min: 0, max: 30 }),
        fc.constantFrom('longFirst' as const, 'shortFirst' as const, 'spread' as const),
        (left, shaped, plainRows, order) => {
          const rows = work(60, [
            even(2),
            leave(0, left),
            taper(60 - left - shaped, shaped + plainRows, 1, { order, edge: 'left' }),
          ]);
          const { length, stitches } = edgeOf(rows, 'left');
          const across = left + shaped;
          const up = lengthOf(rows);
          expect(stitches).toBe(left);
          expect(length).toBeGreaterThanOrEqual(Math.hypot(across, up) - 1e-9);
          expect(length).toBeLessThanOrEqual(across + up + 1e-9);
          expect(edgeOf(rows, 'right').length).toBeCloseTo(up, 9);
        },
      ),
    );
  });

  test('is not measured in the round, nor where there are no rows', () => {
    expect(() => edgeOf(work(10, [even(2)], { worked: 'round' }), 'left')).toThrow('has no edges');
    expect(() => edgeOf(work(10, [even(2)]), 'left', 3)).toThrow('has no rows');
  });
});

test('the shaped edge is the one that changes more, of the stretches asked', () => {
  const rows = work(20, [even(2), leave(4, 0), even(2), taper(13, 3, 1)]);
  expect(shapedSide(rows)).toBe('right');
  expect(shapedSide(rows, 3, 3)).toBe('left');
  expect(shapedSide(rows, 0, 0)).toBe('left');
});
