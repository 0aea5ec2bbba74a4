import { describe, expect, test } from 'vitest';
import { workPiece, type Piece, type Stretch } from '../../../src/craft';
import type { Cell, PieceStretch } from '../../../src/notebook';
import type { JoinEdge } from '../../../src/notebook/joins';
import { schematicSvg } from '../../../src/pictures/schematic';
import { outlineOf } from '../../../src/pictures/schematic/outline';
import { sidesOf } from '../../../src/pictures/schematic/sides-of';
import { cardigan } from '../../../src/starters/cardigan';
import { check, even as evenRows, f, piece, value } from '../../../src/notebook/cell-builders';
import { notebookOf, swatch } from '../../engine/notebook-of';
import { specOf } from './spec-of';

const fabric = { stitches: 1, rows: 1 };
const even = (rows: number): Stretch => ({ kind: 'even', rows, fabric });
const leave = (label: string, atStart: number, atEnd: number): Stretch => ({
  ...{ kind: 'leave', label, atStart, atEnd, fabric },
});
const neck = (to: number, edge?: 'left' | 'right'): Stretch => ({
  ...{ kind: 'taper', label: 'Neck', to, over: 4, perRow: 1, every: 1, before: 0, after: 0, fabric },
  ...(edge && { edge }),
});
const sides = (side: 'stepped' | 'other', ...stretches: Stretch[]) => {
  const plan: Piece = { name: '', worked: 'flat', start: 20, stretches };
  const outline = outlineOf(workPiece(plan), plan);
  return sidesOf(outline, { piece: 'front', edge: 'side', side }, 0, 1);
};

describe('the row ends a join is of', () => {
  test('a back with two underarms has both side seams', () => {
    expect(sides('stepped', even(2), leave('Underarms', 2, 2), even(2))).toEqual(['left', 'right']);
  });

  test('a front bound off at its underarm and at its neck has its side seam at the underarm', () => {
    const front = [even(2), leave('Underarm', 2, 0), even(2), leave('Neck', 0, 3), neck(12)];
    expect(sides('stepped', ...front)).toEqual(['right']);
    expect(sides('other', ...front)).toEqual(['left']);
  });

  test('a front without an underarm has its side seam opposite its neck', () => {
    expect(sides('stepped', even(2), neck(16, 'right'))).toEqual(['left']);
    expect(sides('stepped', even(2), leave('Neck', 0, 3), even(2))).toEqual(['right']);
  });
});

describe('the letter of a neckband', () => {
  const at = (edge: Omit<JoinEdge, 'piece' | 'edge'>, stretches: Stretch[], from: number, to: number) => {
    const plan: Piece = { name: '', worked: 'flat', start: 20, stretches };
    return sidesOf(outlineOf(workPiece(plan), plan), { piece: 'front', edge: 'side', ...edge }, from, to);
  };

  test.each(['left', 'right'] as const)('stands on the %s edge where the neck is shaped there', (edge) => {
    // Both underarms are left, so that only the neck itself says which edge it is.
    const front = [even(2), leave('Underarms', 2, 2), even(2), neck(12, edge)];
    expect(at({ side: 'other', stretch: 3 }, front, 4, 7)).toEqual([edge]);
    // The rows below the neck have no edge of their own, and are told from the underarms alone.
    expect(at({ side: 'other', stretch: 2 }, front, 2, 3)).toEqual(['left', 'right']);
  });

  test('stands on the neck edge of each front of the cardigan, along every stretch of it', async () => {
    const notebook = cardigan();
    const spec = await specOf(notebook);
    const band = spec.joins.find(({ id }) => id === 'neckband-sts')!;
    const along = band.edges.filter(({ piece }) => piece === 'right-front');
    expect(along.map(({ stretch }) => stretch)).toEqual([4, 6, 7]);
    for (const side of ['left', 'right'] as const) {
      for (const { rows, plan } of spec.pieces.find(({ id }) => id === `${side}-front`)!.sizes) {
        for (const edge of along) {
          const own = rows!.flatMap((row, index) => (row.stretch === edge.stretch ? [index] : []));
          expect(sidesOf(outlineOf(rows!, plan), edge, own[0]!, own.at(-1)!)).toEqual([side]);
        }
      }
    }
  });
});

const front = (label: string): Cell =>
  piece(label, 'flat', 'STS(20)', [
    evenRows('Hem to neck', 'wool', 'ROWS(20)', 'main'),
    {
      ...{ kind: 'taper', name: 'neck', label: 'Neck to shoulder', fabric: 'wool', to: f('STS(12)') },
      ...{
        over: f('ROWS(16)'),
        perRow: value(1),
        every: 1,
        before: value(0),
        after: value(0),
        order: 'spread',
      },
    } as PieceStretch,
  ]);

test('two straight fronts are drawn with their necks to the middle, and a side seam’s letter on one edge of each', async () => {
  const notebook = notebookOf([
    swatch('wool', 14, 16),
    piece('Back', 'flat', 'STS(40)', [evenRows('Body', 'wool', 'ROWS(36)', 'main')]),
    front('Left front'),
    front('Right front'),
    check('Side seam', 'JOINS(left_front_main_worked_rows; right_front_main_worked_rows)', 'No.'),
  ]);
  const spec = await specOf(notebook);
  const lean = ['left-front', 'right-front'].map((id) => {
    const { rows, plan } = spec.pieces.find((one) => one.id === id)!.sizes[0]!;
    const { left, right } = outlineOf(rows!, plan);
    return [left.at(-1)! - left[0]!, right.at(-1)! - right[0]!].map((cm) => Math.round(cm * 1.4) + 0);
  });
  expect(lean).toEqual([
    [8, 0],
    [0, -8],
  ]);
  const marks = [...schematicSvg(spec).matchAll(/class="mark-text"/g)];
  expect(marks).toHaveLength(2);
});
