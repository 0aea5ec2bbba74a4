import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { workPiece, type Piece, type Stretch } from '../../../src/craft';
import { outlineOf } from '../../../src/pictures/schematic/outline';
import { cornersOf, outlinePath } from '../../../src/pictures/schematic/outline-path';

const plain = { stitches: 1, rows: 1 };

function outline(start: number, stretches: Stretch[], worked: Piece['worked'] = 'flat') {
  const plan: Piece = { name: '', worked, start, stretches };
  return outlineOf(workPiece(plan), plan);
}

const even = (rows: number): Stretch => ({ kind: 'even', rows, fabric: plain });
const leave = (atStart: number, atEnd: number): Stretch => ({ kind: 'leave', atStart, atEnd, fabric: plain });
const taper = (to: number, over: number, perRow: number): Stretch => {
  return { kind: 'taper', to, over, perRow, every: 1, before: 0, after: 0, fabric: plain };
};

/** Where the two edges are, row by row. */
const edges = ({ left, right }: ReturnType<typeof outline>) => [...left].map((x, i) => [x, right[i]]);

describe('the outline of a piece', () => {
  it('stitches left at the start of a right-side row are gone from its right edge', () => {
    expect(edges(outline(10, [even(2), leave(4, 0), even(1)]))).toEqual([
      [-5, 5],
      [-5, 5],
      [-5, 1],
    ]);
  });

  it('stitches left at the start of a wrong-side row are gone from the left edge', () => {
    expect(edges(outline(10, [even(1), leave(4, 0), even(1)])).at(-1)).toEqual([-1, 5]);
  });

  it('stitches added at the end of a right-side row widen its left edge', () => {
    const add: Stretch = { kind: 'add', atStart: 0, atEnd: 3, fabric: plain };
    expect(edges(outline(10, [even(2), add, even(1)])).at(-1)).toEqual([-8, 5]);
  });

  it('a taper by two takes one stitch from either edge', () => {
    expect(edges(outline(10, [taper(6, 2, 2)]))).toEqual([
      [-4, 4],
      [-3, 3],
    ]);
  });

  it('after plain rows a taper by one is at the edge opposite the underarm: a neck', () => {
    const front = outline(10, [even(2), leave(2, 0), even(2), taper(6, 2, 1)]);
    expect(edges(front).slice(-3)).toEqual([
      [-5, 3],
      [-4, 3],
      [-3, 3],
    ]);
  });

  it('directly after stitches left at one edge a taper by one goes on along that edge: an armhole', () => {
    const front = outline(10, [even(2), leave(2, 0), taper(6, 2, 1)]);
    expect(edges(front).slice(-2)).toEqual([
      [-5, 2],
      [-5, 1],
    ]);
  });

  it('a step says where stitches alone were left, though the row is narrowed across besides', () => {
    const narrowed: Stretch = { kind: 'eachRepeat', repeats: 2, by: -1, fabric: plain };
    const front = outline(10, [even(2), leave(2, 0), narrowed]);
    expect(front.steps).toEqual([
      { row: 2, stretch: 1, edge: 'right', end: 'start', kind: 'leave', from: 5, to: 3 },
    ]);
    expect(edges(front).at(-1)).toEqual([-4, 2]);
  });

  it('in the round it lies flat at half the round, about its middle, with no edge to step', () => {
    const tube = outline(10, [even(1), leave(2, 0), even(1)], 'round');
    expect(edges(tube)).toEqual([
      [-2.5, 2.5],
      [-2, 2],
    ]);
    expect(tube.steps).toEqual([]);
  });

  const stretches = fc.array(
    fc.oneof(
      fc.record({
        kind: fc.constant('even' as const),
        rows: fc.integer({ min: 1, max: 30 }),
        fabric: fabrics(),
      }),
      fc.record({
        kind: fc.constant('rows' as const),
        counts: fc.array(fc.integer({ min: 1, max: 90 }), { minLength: 1, maxLength: 20 }),
        fabric: fabrics(),
      }),
      fc.record({
        kind: fc.constant('add' as const),
        atStart: fc.integer({ min: 0, max: 9 }),
        atEnd: fc.integer({ min: 0, max: 9 }),
        fabric: fabrics(),
      }),
    ),
    { maxLength: 5 },
  );

  function fabrics() {
    return fc.record({
      stitches: fc.double({ min: 0.5, max: 4, noNaN: true }),
      rows: fc.double({ min: 0.5, max: 5, noNaN: true }),
    });
  }

  it('every row is exactly as wide as it is worked, at the height the rows below it come to', () => {
    fc.assert(
      fc.property(stretches, fc.constantFrom('flat' as const, 'round' as const), (some, worked) => {
        const plan: Piece = { name: '', worked, start: 20, stretches: [...some, even(1)] };
        const rows = workPiece(plan);
        const drawn = outlineOf(rows, plan);
        let height = 0;
        rows.forEach((row, i) => {
          expect(drawn.edges[i]).toBe(height);
          height += row.height;
          const width = worked === 'round' ? row.width / 2 : row.width;
          expect(drawn.right[i]! - drawn.left[i]!).toBeCloseTo(width, 9);
        });
        const corners = cornersOf(drawn);
        expect(Math.max(...corners.map(({ y }) => y))).toBe(height);
      }),
    );
  });

  it('ten thousand rows of one width are one step of the path', () => {
    const long = outline(40, [even(10_000)]);
    const scale = { x: (cm: number) => cm, y: (cm: number) => cm };
    expect(outlinePath(long, scale)).toBe('M-20 0V10000H20V0Z');
  });

  it('a piece of one row has four corners', () => {
    expect(cornersOf(outline(4, [even(1)]))).toHaveLength(4);
  });
});
