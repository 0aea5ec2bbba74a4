import { describe, expect, test } from 'vitest';
import fc from 'fast-check';
import { workPiece, type Stretch } from '../../../src/craft';
import { offsOf, straightLine, tapersIn } from '../../../src/pictures/charts/ideal-line';
import { edgesOf } from '../../../src/pictures/charts/series';
import { moss, rowsOf, sleeve } from './pieces';

const piece = (start: number, stretches: Stretch[]) =>
  workPiece({ name: 'Piece', worked: 'flat', start, stretches });
const taper = (to: number, over: number, perRow = 2): Stretch => {
  return { kind: 'taper', fabric: moss, to, over, perRow, every: 1, before: 0, after: 0 };
};
const even = (rows: number): Stretch => ({ kind: 'even', fabric: moss, rows });

describe('the tapers among worked rows', () => {
  test('70 stitches to 40, 2 on each shaping round, is one taper of 15 shaping rounds', () => {
    const plan = sleeve(70, 40, 90);
    const [found, ...others] = tapersIn(workPiece(plan), plan.stretches);
    expect(others).toEqual([]);
    expect(found).toMatchObject({ first: 0, last: 89, from: 70, to: 40, step: -2 });
    expect(found!.shaped.map((i) => i + 1)).toEqual(Array.from({ length: 15 }, (_, k) => 6 * (k + 1)));
  });

  test('are found without being told the stretches, and neither a gathered row nor rib is one', () => {
    const plan = sleeve(70, 40, 90);
    expect(tapersIn(workPiece(plan))).toEqual(tapersIn(workPiece(plan), plan.stretches));
  });

  test('stitches left before a taper fall on its first row and do not belong to it', () => {
    const rows = piece(80, [even(4), { kind: 'leave', fabric: moss, atStart: 5, atEnd: 5 }, taper(60, 20)]);
    expect(tapersIn(rows)).toMatchObject([{ first: 4, last: 23, from: 70, to: 60, step: -2 }]);
  });

  test('stitches left before even rows do not make a taper of them', () => {
    expect(
      tapersIn(piece(80, [even(4), { kind: 'leave', fabric: moss, atStart: 5, atEnd: 5 }, even(9)])),
    ).toEqual([]);
  });

  test('a taper that is shaped on every row starts on the count before its first', () => {
    expect(tapersIn(piece(10, [taper(16, 3)]))).toMatchObject([{ from: 10, to: 16, shaped: [0, 1, 2] }]);
  });

  test('rows that change by differing counts, as round a neck, have no straight line', () => {
    expect(tapersIn(rowsOf([20, 16, 13, 11, 10, 10]))).toEqual([]);
  });

  test('one shaped row among plain ones is a taper where the stretch says so, even as its first row', () => {
    const stretch: Stretch = { ...taper(8, 4), after: 3 } as Stretch;
    expect(tapersIn(piece(10, [stretch]), [stretch])).toMatchObject([{ from: 10, to: 8, shaped: [0] }]);
    expect(tapersIn(piece(10, [{ kind: 'evenly', fabric: moss, to: 8 }]))).toEqual([]);
  });
});

describe('the straight line of a taper', () => {
  test('goes from the width before its first row to the width after its last', () => {
    const rows = piece(28, [even(2), taper(14, 14)]);
    const [found] = tapersIn(rows);
    const [start, end] = straightLine(rows, edgesOf(rows, 'taper'), found!);
    expect([start.x, end.x]).toEqual([1, 8]);
    expect(start.y).toBeCloseTo(20, 12);
    expect(end.y).toBeCloseTo(10, 12);
  });

  test('from 10 stitches to 8 over 4 rows, both on row 4: half a stitch wider on row 1, 1.5 on row 3, on it at the end', () => {
    const rows = piece(10, [taper(8, 4)]);
    expect([...offsOf(rows, tapersIn(rows)[0]!)]).toEqual([0.5, 1, 1.5, 0]);
  });

  test('an increase is narrower than its line until its shaping row', () => {
    const rows = piece(8, [taper(10, 4)]);
    expect([...offsOf(rows, tapersIn(rows)[0]!)]).toEqual([-0.5, -1, -1.5, 0]);
  });

  test('is straight by length, not by rows, where rows differ in height', () => {
    const striped = { stitches: 1, rows: 1, heights: [3, 1] };
    const rows = piece(12, [{ ...taper(8, 4), fabric: striped } as Stretch]);
    // 2 stitches on row 2 and 2 on row 4; after row 1 three eighths of the length are worked.
    expect([...offsOf(rows, tapersIn(rows)[0]!)]).toEqual([1.5, 0, 1.5, 0]);
  });

  test('is met at the end, and with shaping spread as evenly as can be never missed by more than a step', () => {
    const plans = fc.record({
      steps: fc.integer({ min: 1, max: 40 }),
      plain: fc.integer({ min: 0, max: 200 }),
      perRow: fc.integer({ min: 1, max: 4 }),
    });
    fc.assert(
      fc.property(plans, ({ steps, plain, perRow }) => {
        const to = 5;
        const spread = { ...taper(to, steps + plain, perRow), order: 'spread' } as Stretch;
        const rows = piece(to + steps * perRow, [spread]);
        const offs = offsOf(rows, tapersIn(rows, [spread])[0]!);
        expect(offs.at(-1)).toBeCloseTo(0, 9);
        for (const off of offs) expect(Math.abs(off)).toBeLessThanOrEqual(perRow + 1e-9);
      }),
    );
  });
});
