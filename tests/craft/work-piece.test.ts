import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CraftError } from '../../src/craft/craft-error';
import { spaceEvenly } from '../../src/craft/space-evenly';
import { taper } from '../../src/craft/taper';
import type { Fabric, Piece, Row, Stretch } from '../../src/craft/types';
import { workPiece } from '../../src/craft/work-piece';

const fabric: Fabric = { name: 'single crochet', stitches: 1.4, rows: 1.6 };
const rib: Fabric = { name: 'rib', stitches: 2, rows: 1.25 };

const flat = (start: number, ...stretches: Stretch[]): Piece => ({
  name: 'Back',
  worked: 'flat',
  start,
  stretches,
});
const round = (start: number, ...stretches: Stretch[]): Piece => ({
  name: 'Yoke',
  worked: 'round',
  start,
  stretches,
});
const even = (rows: number, of = fabric): Stretch => ({ kind: 'even', rows, fabric: of });
const counts = (rows: Row[]) => rows.map((row) => row.count);
const changes = (rows: Row[]) => rows.map((row) => row.change);

describe('rows', () => {
  test('63 stitches at 14 to 10 cm are 45 cm wide, and a row at 16 to 10 cm is 0.625 cm high', () => {
    const [row] = workPiece(flat(63, even(1)));
    expect(row).toEqual({
      number: 1,
      side: 'RS',
      stretch: 0,
      fabric,
      count: 63,
      change: 0,
      edges: { left: 0, right: 0 },
      width: expect.closeTo(45, 12),
      height: 0.625,
    });
  });

  test('flat, sides alternate from the right side, or from the wrong side where the piece starts on it', () => {
    const sides = (piece: Piece) => workPiece(piece).map((row) => row.side);
    expect(sides(flat(10, even(3), even(2)))).toEqual(['RS', 'WS', 'RS', 'WS', 'RS']);
    expect(sides({ ...flat(10, even(3)), startsOn: 'WS' })).toEqual(['WS', 'RS', 'WS']);
    expect(sides(round(10, even(2)))).toEqual(['round', 'round']);
  });

  test('each stretch is in its own fabric, and rows are numbered through', () => {
    const rows = workPiece(flat(20, even(2, rib), even(1)));
    expect(rows.map((row) => [row.number, row.stretch, row.fabric.name, row.width, row.height])).toEqual([
      [1, 0, 'rib', 10, 0.8],
      [2, 0, 'rib', 10, 0.8],
      [3, 1, 'single crochet', 20 / 1.4, 0.625],
    ]);
  });

  test('rows of different heights are cycled from the first row of the stretch', () => {
    const lace: Fabric = { stitches: 1, rows: 1, heights: [0.5, 0.5, 1.5] };
    const rows = workPiece(flat(10, even(4, lace), even(2, lace)));
    expect(rows.map((row) => row.height)).toEqual([0.5, 0.5, 1.5, 0.5, 0.5, 0.5]);
  });

  test('a stretch of no rows changes nothing', () => {
    expect(counts(workPiece(flat(10, even(0), even(1))))).toEqual([10]);
    expect(workPiece(flat(10))).toEqual([]);
  });
});

describe('kinds of stretch', () => {
  const everySecond: Stretch = {
    ...{ kind: 'taper', fabric, to: 26, over: 12 },
    ...{ perRow: 2, every: 2, before: 0, after: 0 },
  };

  test('a taper follows its plan', () => {
    const plan = { to: 43, over: 60, perRow: 2, every: 1 as const, before: 0, after: 0 };
    const rows = workPiece(flat(63, { kind: 'taper', fabric, ...plan }));
    expect(counts(rows)).toEqual(taper({ from: 63, ...plan }).counts);
    expect(rows[5]?.change).toBe(-2);
  });

  test('a taper that begins on a wrong-side row still shapes on right-side rows', () => {
    const rows = workPiece(flat(30, even(3), everySecond));
    const shaped = rows.filter((row) => row.change !== 0);
    expect(shaped.map((row) => [row.number, row.side])).toEqual([
      [9, 'RS'],
      [15, 'RS'],
    ]);
  });

  test('a taper that opens a piece on the right side shapes the 5th and the 11th row, the right-side ones', () => {
    const rows = workPiece(flat(30, everySecond));
    expect(rows.flatMap((row) => (row.change === 0 ? [] : [row.number]))).toEqual([5, 11]);
  });

  test('in the round a taper on every second round shapes the last of each interval', () => {
    expect(
      workPiece(round(30, everySecond)).flatMap((row) => (row.change === 0 ? [] : [row.number])),
    ).toEqual([6, 12]);
  });

  test('shaping evenly is one row', () => {
    expect(counts(workPiece(flat(55, { kind: 'evenly', to: 38, fabric })))).toEqual([38]);
    expect(changes(workPiece(flat(38, { kind: 'evenly', to: 55, fabric })))).toEqual([17]);
  });

  test('more decreases than half the stitches are refused as they are for one row', () => {
    expect(() => spaceEvenly({ from: 55, to: 20, worked: 'flat' })).toThrow(CraftError);
    expect(() => workPiece(flat(55, { kind: 'evenly', to: 20, fabric }))).toThrow(/^Stretch 1: /);
  });

  test('shaping in each repeat is one row: 6 repeats lose a stitch each', () => {
    expect(counts(workPiece(round(60, { kind: 'eachRepeat', repeats: 6, by: -1, fabric })))).toEqual([54]);
  });

  test('gathering by 3, 2 and 1 plain takes 100 to 40 in three rounds', () => {
    expect(counts(workPiece(round(100, { kind: 'gather', to: 40, rounds: 3, fabric })))).toEqual([
      80, 60, 40,
    ]);
  });

  test('counts given row by row are taken as they are', () => {
    expect(changes(workPiece(flat(20, { kind: 'rows', counts: [20, 19, 17, 21], fabric })))).toEqual([
      0, -1, -2, 4,
    ]);
  });

  test('stitches left at an underarm change the next row', () => {
    const rows = workPiece(flat(75, even(2), { kind: 'leave', atStart: 4, atEnd: 4, fabric }, even(2)));
    expect(counts(rows)).toEqual([75, 75, 67, 67]);
    expect(changes(rows)).toEqual([0, 0, -8, 0]);
    expect(rows.map((row) => row.stretch)).toEqual([0, 0, 2, 2]);
  });

  test('stitches added and a taper on the same row make one change', () => {
    const rows = workPiece(
      flat(
        20,
        even(1),
        { kind: 'add', atStart: 3, atEnd: 3, fabric },
        { kind: 'taper', fabric, to: 24, over: 1, perRow: 2, every: 1, before: 0, after: 0 },
      ),
    );
    expect(changes(rows)).toEqual([0, 4]);
  });

  test('a piece may leave stitches before its first row, and several times before one row', () => {
    const rows = workPiece(
      flat(
        30,
        { kind: 'leave', atStart: 5, atEnd: 0, fabric },
        { kind: 'add', atStart: 0, atEnd: 2, fabric },
        even(1),
      ),
    );
    expect(rows[0]).toMatchObject({ count: 27, change: -3 });
  });
});

describe('what cannot be worked', () => {
  test('stitches left at the very end have no row to fall on', () => {
    const leave: Stretch = { kind: 'leave', atStart: 4, atEnd: 4, fabric, label: 'Underarm' };
    expect(() => workPiece(flat(75, even(2), leave))).toThrow(
      'Stretch 2 (Underarm): stitches left or added change the next row, and no row follows.',
    );
    expect(() => workPiece(flat(75, even(2), leave, even(0)))).toThrow('no row follows');
    expect(() => workPiece(flat(75, { ...leave, kind: 'add' }))).toThrow('no row follows');
  });

  test('one stitch has to be left to work on', () => {
    expect(() => workPiece(flat(8, { kind: 'leave', atStart: 4, atEnd: 4, fabric }, even(1)))).toThrow(
      'Leaving 8 of 8 stitches leaves none to work: leave 7 or fewer.',
    );
    expect(counts(workPiece(flat(8, { kind: 'leave', atStart: 4, atEnd: 3, fabric }, even(1))))).toEqual([1]);
    expect(() => workPiece(flat(8, { kind: 'rows', counts: [0], fabric }))).toThrow('1 or more; it is 0');
  });

  test('the stretch is named, by number and label', () => {
    const bad: Stretch = { ...even(1.5), label: 'Border' };
    expect(() => workPiece(flat(10, even(1), bad))).toThrow(
      'Stretch 2 (Border): The rows worked even has to be a whole number; 1.5 lies between 1 and 2.',
    );
  });

  test('a fabric without a gauge is refused', () => {
    expect(() => workPiece(flat(10, even(1, { stitches: 0, rows: 1 })))).toThrow(
      "The fabric's stitch gauge has to be more than 0",
    );
    expect(() => workPiece(flat(10, even(1, { stitches: 1, rows: 1, heights: [1, -1] })))).toThrow(
      'The height of a row',
    );
  });

  test('a stretch without a fabric, and one that is missing, have no gauge to be worked in', () => {
    const bare = { kind: 'even', rows: 1 } as unknown as Stretch;
    const missing = undefined as unknown as Stretch;
    expect(() => workPiece(flat(10, bare))).toThrow(
      "Stretch 1: The fabric's stitch gauge has to be a number",
    );
    expect(() => workPiece(flat(10, even(1), missing))).toThrow(
      "Stretch 2: The fabric's stitch gauge has to be a number; it is missing.",
    );
  });

  test('the last stitches are bound off or held, and nothing else becomes of them', () => {
    expect(counts(workPiece({ ...flat(10, even(1)), ends: 'bound off' }))).toEqual([10]);
    expect(counts(workPiece({ ...flat(10, even(1)), ends: 'held' }))).toEqual([10]);
    expect(() => workPiece({ ...flat(10, even(1)), ends: 'dropped' as 'held' })).toThrow(
      'What becomes of the last stitches has to be "bound off" or "held"; it is "dropped".',
    );
  });

  test('a row shaped evenly has a half or a whole gap at its ends, and no third of one', () => {
    expect(counts(workPiece(flat(55, { kind: 'evenly', to: 48, ends: 'whole', fabric })))).toEqual([48]);
    expect(() => workPiece(flat(55, { kind: 'evenly', to: 48, ends: 'third' as 'half', fabric }))).toThrow(
      'Stretch 1: The share of a gap at the ends has to be "half" or "whole"',
    );
  });

  test('a kind of stretch that does not exist is refused', () => {
    expect(() => workPiece(flat(10, { kind: 'knot', fabric } as unknown as Stretch))).toThrow(
      'No stretch is worked as "knot".',
    );
  });

  test('200 000 rows are worked within a second, and more are refused', () => {
    const started = performance.now();
    const rows = workPiece(flat(10, even(200_000)));
    expect(performance.now() - started).toBeLessThan(10_000);
    expect(rows).toHaveLength(200_000);
    expect(() => workPiece(flat(10, even(200_001)))).toThrow('more than 200000 rows');
    expect(() => workPiece(flat(10, even(150_000), even(150_000)))).toThrow('more than 200000 rows');
  });
});

describe('any piece', () => {
  const gauge = fc.integer({ min: 1, max: 40 }).map((n) => n / 10);
  const anyFabric: fc.Arbitrary<Fabric> = fc.record(
    { stitches: gauge, rows: gauge, heights: fc.array(gauge, { minLength: 1, maxLength: 3 }) },
    { requiredKeys: ['stitches', 'rows'] },
  );
  const few = fc.integer({ min: 0, max: 12 });
  const kind = fc.oneof(
    fc.record({ kind: fc.constant('even' as const), rows: few }),
    fc.record({
      kind: fc.constant('taper' as const),
      to: fc.integer({ min: 1, max: 80 }),
      over: fc.integer({ min: 0, max: 90 }),
      perRow: fc.integer({ min: 1, max: 2 }),
      every: fc.constantFrom(1 as const, 2 as const),
      before: fc.integer({ min: 0, max: 3 }),
      after: fc.integer({ min: 0, max: 3 }),
    }),
    fc.record({ kind: fc.constant('evenly' as const), to: fc.integer({ min: 1, max: 80 }) }),
    fc.record({
      kind: fc.constant('eachRepeat' as const),
      repeats: few,
      by: fc.integer({ min: -3, max: 3 }),
    }),
    fc.record({ kind: fc.constant('gather' as const), to: few, rounds: fc.integer({ min: 1, max: 3 }) }),
    fc.record({ kind: fc.constant('leave' as const), atStart: few, atEnd: few }),
    fc.record({ kind: fc.constant('add' as const), atStart: few, atEnd: few }),
    fc.record({
      kind: fc.constant('rows' as const),
      counts: fc.array(fc.integer({ min: 1, max: 80 }), { maxLength: 6 }),
    }),
  );
  const stretch = fc.tuple(kind, anyFabric).map(([of, fabric]) => ({ ...of, fabric }) as Stretch);
  const piece: fc.Arbitrary<Piece> = fc.record({
    name: fc.constant('Piece'),
    worked: fc.constantFrom('flat' as const, 'round' as const),
    startsOn: fc.constantFrom('RS' as const, 'WS' as const),
    start: fc.integer({ min: 1, max: 80 }),
    stretches: fc.array(stretch, { maxLength: 6 }),
  });

  test('is worked in whole stitches, never below one, row upon row, or refused with a sentence', () => {
    let tried = 0;
    let workedOut = 0;
    fc.assert(
      fc.property(piece, (piece) => {
        tried += 1;
        let rows: Row[];
        try {
          rows = workPiece(piece);
        } catch (error) {
          expect(error).toBeInstanceOf(CraftError);
          expect((error as Error).message).toMatch(/^Stretch \d.*\.$/s);
          return;
        }
        workedOut += 1;
        let before = piece.start;
        let stretch = 0;
        rows.forEach((row, i) => {
          expect(row.number).toBe(i + 1);
          expect(Number.isInteger(row.count) && row.count >= 1).toBe(true);
          expect(row.change).toBe(row.count - before);
          expect(row.width).toBe(row.count / row.fabric.stitches);
          expect(row.height).toBeGreaterThan(0);
          expect(row.stretch).toBeGreaterThanOrEqual(stretch);
          expect(row.fabric).toBe(piece.stretches[row.stretch]?.fabric);
          const right = (i % 2 === 0) === (piece.startsOn === 'RS') ? 'RS' : 'WS';
          expect(row.side).toBe(piece.worked === 'round' ? 'round' : right);
          before = row.count;
          stretch = row.stretch;
        });
      }),
      { numRuns: 4000 },
    );
    // The property is worth nothing if hardly any piece can be worked.
    expect(workedOut).toBeGreaterThan(tried / 10);
  });

  test('ends on the count that its stretches add up to', () => {
    fc.assert(
      fc.property(piece, (piece) => {
        let rows: Row[];
        try {
          rows = workPiece(piece);
        } catch {
          return;
        }
        const stated = piece.stretches.reduce((count, stretch) => {
          if (stretch.kind === 'taper' || stretch.kind === 'evenly') return stretch.to;
          if (stretch.kind === 'leave') return count - stretch.atStart - stretch.atEnd;
          if (stretch.kind === 'add') return count + stretch.atStart + stretch.atEnd;
          if (stretch.kind === 'eachRepeat') return count + stretch.repeats * stretch.by;
          if (stretch.kind === 'rows') return stretch.counts.at(-1) ?? count;
          // How near gathering comes is its own matter: take what the piece has after it.
          if (stretch.kind === 'gather')
            return rows.filter((row) => piece.stretches[row.stretch] === stretch).at(-1)?.count ?? NaN;
          return count;
        }, piece.start);
        expect(rows.at(-1)?.count ?? piece.start).toBe(stated);
      }),
      { numRuns: 4000 },
    );
  });
});
