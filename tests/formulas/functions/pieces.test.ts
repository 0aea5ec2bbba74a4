import { describe, expect, test } from 'vitest';
import type { Stretch } from '../../../src/craft';
import { area, length, rows, stitches } from '../../../src/formulas/units';
import { fabricText, readPiece } from '../../../src/formulas/piece-text';
import { formula, swatch } from '../../engine/notebook-of';
import { valueOf } from '../../engine/worked';
import { refuses, works } from './cases';

const sleeve = formula('sleeve', 'PIECE("flat"; STS(30); "bound off"; EVENROWS(ROWS(48); body))');
/** 20 stitches for 4 rows, 4 left, 16 for 2 rows, and then 8 by 2 rows of shaping in 4. */
const shaped = formula(
  'shaped',
  'PIECE("flat"; STS(20); "held"; EVENROWS(ROWS(4); body); LEAVESTITCHES(STS(2); STS(2); body); EVENROWS(ROWS(2); body); TAPERROWS(STS(12); ROWS(4); STS(2); 1; ROWS(0); ROWS(0); "longFirst"; body))',
);

describe('what is measured on a worked piece', () => {
  works(
    [
      // 48 rows at 1.2 to the cm.
      ['PIECELENGTH(sleeve)', length, 40],
      ['PIECEROWS(sleeve)', rows, 48],
      ['PIECEEND(sleeve)', stitches, 30],
      ['PIECEWIDTH(sleeve; CM(0)) * body_sts', stitches, 30],
      ['PIECEWIDTH(sleeve; PIECELENGTH(sleeve)) * body_sts', stitches, 30],
      ['PIECEAREA(sleeve)', area, (30 / 1.4) * 40],
      ['PIECESTITCHES(sleeve)', stitches, 1440],
      ['PIECECOUNT(shaped; ROWS(4))', stitches, 20],
      ['PIECECOUNT(shaped; ROWS(5))', stitches, 16],
      // The taper shapes its 2nd row and its 4th.
      ['PIECECOUNT(shaped; ROWS(8))', stitches, 14],
      ['PIECEEND(shaped)', stitches, 12],
      ['STRETCHEND(shaped; 1)', stitches, 20],
      ['STRETCHEND(shaped; 3)', stitches, 16],
      ['STRETCHROWS(shaped; 4)', rows, 4],
      ['STRETCHROWS(shaped; 2)', rows, 0],
      ['STRETCHLENGTH(shaped; 3)', length, 2 / 1.2],
      // 4 rows up, 2 stitches across, 2 rows up, and twice 1 stitch in over 2 rows.
      ['EDGELENGTH(shaped; "left")', length, 6 / 1.2 + 2 / 1.4 + 2 * Math.hypot(1 / 1.4, 2 / 1.2)],
      ['EDGELENGTH(shaped; "right"; 2; 3)', length, 2 / 1.4 + 2 / 1.2],
      ['EDGELENGTH(shaped; "shaped"; 4)', length, 2 * Math.hypot(1 / 1.4, 2 / 1.2)],
      // Rows of 2 cm and of half a cm in turn: 2 + 0.5 + 2.
      [
        'PIECELENGTH(PIECE("flat"; STS(30); "held"; EVENROWS(ROWS(3); FABRIC(body_sts; body_rows; CM(2); CM(0.5)))))',
        length,
        4.5,
      ],
    ],
    sleeve,
    shaped,
  );
});

describe('the text of a piece is its plan, with every digit of its gauges', () => {
  const body = swatch('body', 14.1, 16.7);
  const fabric = { stitches: 14.1 / 10, rows: 16.7 / 10 };
  // So that a stretch that only leaves or adds stitches has a row after it.
  const [last, lastRow] = ['EVENROWS(ROWS(1); body)', { kind: 'even', rows: 1, fabric }] as const;

  test.each<[string, Stretch]>([
    ['EVENROWS(ROWS(6); body)', { kind: 'even', rows: 6, fabric }],
    [
      'TAPERROWS(STS(29); ROWS(24); STS(1); 1; ROWS(0); ROWS(0); "spread"; body; "right")',
      {
        ...{ kind: 'taper', to: 29, over: 24, perRow: 1, every: 1, before: 0, after: 0, order: 'spread' },
        ...{ edge: 'right', fabric },
      },
    ],
    [
      'TAPERROWS(STS(30); ROWS(24); STS(2); 1; ROWS(1); ROWS(2); "spread"; body)',
      { kind: 'taper', to: 30, over: 24, perRow: 2, every: 1, before: 1, after: 2, order: 'spread', fabric },
    ],
    ['EVENLYROW(STS(44); "half"; body)', { kind: 'evenly', to: 44, ends: 'half', fabric }],
    ['EVENLYROW(STS(36); "whole"; body)', { kind: 'evenly', to: 36, ends: 'whole', fabric }],
    ['REPEATSROW(5; STS(-1); body)', { kind: 'eachRepeat', repeats: 5, by: -1, fabric }],
    ['GATHERROUNDS(STS(16); ROWS(3); body)', { kind: 'gather', to: 16, rounds: 3, fabric }],
    ['LEAVESTITCHES(STS(4); STS(0); body)', { kind: 'leave', atStart: 4, atEnd: 0, fabric }],
    ['ADDSTITCHES(STS(0); STS(6); body)', { kind: 'add', atStart: 0, atEnd: 6, fabric }],
    ['COUNTEDROWS(body; STS(40); STS(38); STS(35))', { kind: 'rows', counts: [40, 38, 35], fabric }],
    [
      'EVENROWS(ROWS(4); FABRIC(body_sts; body_rows; CM(1.7); CM(1 / 3)))',
      { kind: 'even', rows: 4, fabric: { ...fabric, heights: [1.7, 1 / 3] } },
    ],
  ])('%s', async (text, stretch) => {
    const piece = await valueOf(`PIECE("round"; STS(40); "held"; ${text}; ${last})`, body);
    expect(readPiece(piece as string)).toEqual({
      name: '',
      worked: 'round',
      start: 40,
      ends: 'held',
      stretches: [stretch, lastRow],
    });
  });

  test('a flat piece that begins on the wrong side', async () => {
    const piece = await valueOf(`PIECE("flat from WS"; STS(40); "held"; ${last})`, body);
    expect(readPiece(piece as string)).toMatchObject({ worked: 'flat', startsOn: 'WS' });
  });

  test('JSON brings a number back to its last bit', () => {
    const awkward = [1.4 / 3, 0.1 + 0.2, 1e-7, 5e-324, 123456789.12345679];
    for (const number of awkward) {
      const read = JSON.parse(fabricText(number, number, [number])) as { rows: number; heights: number[] };
      expect([read.rows, ...read.heights]).toEqual([number, number]);
    }
  });
});

describe('a piece that cannot be worked, or has no such part', () => {
  const start = 'PIECE("flat"; STS(10); "held"; ';
  refuses(
    [
      [
        'PIECE("sideways"; STS(10); "held"; EVENROWS(ROWS(2); body))',
        'How a piece is worked has to be "flat" or "round"',
      ],
      [`${start}EVENROWS(ROWS(2.5); body))`, 'Stretch 1: The rows worked even has to be a whole number'],
      [`${start}TAPERROWS(STS(20); ROWS(2); STS(2); 1; ROWS(0); ROWS(0); "longFirst"; body))`, 'Stretch 1'],
      [`${start}EVENLYROW(STS(2); "half"; body))`, 'Stretch 1: One row of 10 stitches has room for 5'],
      [`${start}EVENLYROW(STS(12); "thirds"; body))`, 'it is "thirds"'],
      [`${start}REPEATSROW(11; STS(1); body))`, 'do not fit on 10 stitches'],
      [`${start}GATHERROUNDS(STS(12); ROWS(1); body))`, 'increase instead'],
      [`${start}LEAVESTITCHES(STS(5); STS(5); body); EVENROWS(ROWS(1); body))`, 'leave 9 or fewer'],
      [`${start}ADDSTITCHES(STS(5); STS(5); body))`, 'no row follows'],
      [`${start}COUNTEDROWS(body; STS(9); STS(8.5)))`, 'The count of a row has to be a whole number'],
      ['PIECEWIDTH(sleeve; CM(99))', 'it has no width at 99 cm'],
      [`PIECEEND(${start}EVENROWS(ROWS(0); body)))`, 'The piece has no rows yet'],
      [
        'PIECECOUNT(sleeve; ROWS(49))',
        'There are 48 rows of this piece, counted from 1: there is no number 49',
      ],
      ['PIECECOUNT(sleeve; ROWS(0))', 'there is no number 0'],
      ['STRETCHEND(shaped; 2)', 'Stretch 2 has no row'],
      ['STRETCHEND(shaped; 5)', 'There are 4 stretches of this piece'],
      ['STRETCHROWS(sleeve; 2)', 'There is 1 stretch of this piece'],
      ['EDGELENGTH(sleeve; "top")', 'EDGELENGTH takes "left", "right" or "shaped"'],
      ['EDGELENGTH(sleeve; "left"; 3)', 'There is 1 stretch of this piece'],
      ['EDGELENGTH(PIECE("round"; STS(30); "held"; EVENROWS(ROWS(3); body)); "left")', 'has no edges'],
      ['STRETCHLENGTH(sleeve; 0)', 'there is no number 0'],
    ],
    sleeve,
    shaped,
  );
});
