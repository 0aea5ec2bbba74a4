import { describe, expect, test } from 'vitest';
import { workPiece, type Fabric } from '../../../src/craft';
import {
  everyFor,
  ruledStretches,
  rulings,
  type Area,
  type Ruling,
} from '../../../src/pictures/charts/rulings';
import { edgesOf } from '../../../src/pictures/charts/series';
import type { Which } from '../../../src/pictures/charts/types';
import { moss, rib } from './pieces';

/** A plot of 40 by 30 cm (or stitches) at so many px each. */
function area(px: number): Area {
  const [left, top, bottom] = [10, 5, 5 + 30 * px];
  return {
    left,
    right: left + 40 * px,
    top,
    bottom,
    x: [0, 40],
    y: [0, 30],
    xAt: (along) => left + along * px,
    yAt: (across) => bottom - across * px,
  };
}

function ruled(stretches: [Fabric, number][], px: number, which: Which = 'width', toScale = true) {
  const rows = workPiece({
    name: 'Piece',
    worked: 'flat',
    start: 20,
    stretches: stretches.map(([fabric, count]) => ({ kind: 'even', fabric, rows: count })),
  });
  return rulings({ rows, edges: edgesOf(rows, which) }, which, area(px), toScale);
}

const upright = (lines: Ruling[]) => lines.filter(({ x1, x2 }) => x1 === x2);
const level = (lines: Ruling[], x = 11) =>
  lines.filter(({ x1, x2, y1, y2 }) => y1 === y2 && x1 <= x && x <= x2);
const gap = (indices: number[]) => Math.abs(indices[1]! - indices[0]!);

describe('the ruling of the paper', () => {
  test('a cell is a stitch wide and a row high: at 1.4 stitches and 2 rows to the cm, 20 px to the cm, 14.3 by 10 px', () => {
    const lines = ruled([[moss, 40]], 20);
    expect(gap(upright(lines).map(({ x1 }) => x1))).toBeCloseTo(10, 9);
    expect(gap(level(lines).map(({ y1 }) => y1))).toBeCloseTo(20 / 1.4, 9);
  });

  test('changes with the swatch: twice the stitches to the cm is cells half as wide', () => {
    const before = level(ruled([[moss, 40]], 20));
    const after = level(ruled([[{ ...moss, stitches: 2.8 }, 40]], 20));
    expect(gap(after.map(({ y1 }) => y1)) / gap(before.map(({ y1 }) => y1))).toBeCloseTo(0.5, 9);
  });

  test('is thinned where lines would stand closer than 4 px, both ways alike, so that a cell keeps its proportions', () => {
    const lines = ruled([[moss, 40]], 3);
    const across = gap(level(lines).map(({ y1 }) => y1));
    const along = gap(upright(lines).map(({ x1 }) => x1));
    expect(along).toBeCloseTo(5 * 1.5, 9);
    expect(along).toBeGreaterThanOrEqual(4);
    expect(across / along).toBeCloseTo(moss.rows / moss.stitches, 9);
  });

  test('off scale the two ways are thinned each for itself', () => {
    const lines = ruled([[moss, 40]], 3, 'width', false);
    expect(gap(level(lines).map(({ y1 }) => y1))).toBeCloseTo((2 * 3) / 1.4, 9);
  });

  test('is heavier at every tenth row and stitch', () => {
    const lines = ruled([[moss, 40]], 20);
    const tenths = (all: Ruling[]) => all.filter(({ weight }) => weight === 'tenth');
    expect(tenths(upright(lines)).map(({ x1 }) => (x1 - 10) / 10)).toEqual([10, 20, 30, 40, 50, 60, 70, 80]);
    const counts = tenths(level(lines)).map(({ y1 }) => ((605 - y1) / 20) * 1.4);
    expect(counts.map(Math.round)).toEqual([0, 10, 20, 30, 40]);
  });

  test('goes on beyond the piece to the edge of the paper', () => {
    const lines = ruled([[moss, 4]], 20);
    expect(Math.max(...upright(lines).map(({ x1 }) => x1))).toBeCloseTo(810, 9);
    expect(level(lines).every(({ x2 }) => x2 === 810)).toBe(true);
  });

  test('stands at the rows themselves where they differ in height', () => {
    const lines = ruled([[{ stitches: 1, rows: 1, heights: [0.5, 1.5] }, 4]], 20);
    const rulings = upright(lines).slice(0, 4);
    expect(rulings.map(({ x1 }) => (x1 - 10) / 20)).toEqual([0.5, 2, 2.5, 4]);
  });
});

describe('a piece of several fabrics', () => {
  const lines = ruled(
    [
      [rib, 20],
      [moss, 40],
    ],
    20,
  );
  const change = 10 + 8 * 20;

  test('is ruled in each, with a line where one ends: 20 rows of rib at 2.5 to the cm are 8 cm', () => {
    const changes = lines.filter(({ weight }) => weight === 'change');
    expect(changes).toHaveLength(1);
    expect(changes[0]!.x1).toBeCloseTo(change, 9);
    expect(gap(level(lines, 11).map(({ y1 }) => y1))).toBeCloseTo(10, 9);
    expect(gap(level(lines, change + 5).map(({ y1 }) => y1))).toBeCloseTo(20 / 1.4, 9);
  });

  test('has its rows counted through: the tenth lines after the rib are rows 30, 40 and so on', () => {
    const after = upright(lines).filter(({ x1, weight }) => weight === 'tenth' && x1 > change + 1);
    expect(after.slice(0, 2).map(({ x1 }) => Math.round(x1 - change))).toEqual([100, 200]);
  });

  test('by stitches a stitch is the same everywhere and each row has its fabric’s ratio: 0.8 of a stitch in rib, 0.7 in moss', () => {
    const byStitches = ruled(
      [
        [rib, 20],
        [moss, 20],
      ],
      10,
      'stitches',
    );
    const indices = upright(byStitches)
      .filter(({ weight }) => weight !== 'change')
      .map(({ x1 }) => x1);
    expect(gap(indices)).toBeCloseTo(8, 9);
    expect(gap(indices.slice(-2))).toBeCloseTo(7, 9);
    expect(gap(level(byStitches).map(({ y1 }) => y1))).toBeCloseTo(10, 9);
  });

  test('two stretches of one fabric are one sheet of paper, whether or not they share the object', () => {
    const rows = workPiece({
      name: 'Piece',
      worked: 'flat',
      start: 20,
      stretches: [
        { kind: 'even', fabric: moss, rows: 3 },
        { kind: 'even', fabric: { ...moss }, rows: 3 },
        { kind: 'even', fabric: rib, rows: 2 },
      ],
    });
    expect(ruledStretches({ rows }, 'stitches')).toEqual([
      { first: 0, end: 6, stitch: 1 },
      { first: 6, end: 8, stitch: 1 },
    ]);
  });
});

test('lines are ruled every 1, 2, 5, 10, 20 … as room allows', () => {
  expect([5, 3.2, 1, 0.5, 0.3, 0.09, 0.004].map((px) => everyFor(px, 4))).toEqual([
    1, 2, 5, 10, 20, 50, 1000,
  ]);
});

test('100 000 rows, 500 m, on 800 px: lines still stand 4 px apart or more', () => {
  const rows = workPiece({
    name: 'Streamer',
    worked: 'flat',
    start: 20,
    stretches: [{ kind: 'even', fabric: moss, rows: 100_000 }],
  });
  const wide: Area = { ...area(20), x: [0, 50_000], xAt: (along) => 10 + along * (800 / 50_000) };
  const indices = upright(rulings({ rows, edges: edgesOf(rows, 'width') }, 'width', wide, false)).map(
    ({ x1 }) => x1,
  );
  expect(indices).toHaveLength(200);
  expect(gap(indices)).toBeCloseTo(4, 9);
});
