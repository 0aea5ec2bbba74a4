import { CraftError, edgeOf, lengthOf, type Row, shapedSide, widthAt, whole } from '../../craft';
import { pieceText, readPiece, stretchText } from '../piece-text';
import { chosen, nth } from './choice.evaluate';
import type { TradeFunction } from './trade-function';
import { workedPiece } from './worked-pieces.evaluate';

function rowsOfStretch(piece: string, which: number): Row[] {
  const index = whole(which) - 1;
  const rows = workedPiece(piece).rows.filter((row) => row.stretch === index);
  // A stretch that leaves or adds stitches has no rows; one that is not there has none either.
  if (rows.length === 0)
    nth(readPiece(piece).stretches, index + 1, ['stretch of this piece', 'stretches of this piece']);
  return rows;
}

/** The last row, or the refusal where there is none. */
function lastOf(rows: readonly Row[], refusal: () => CraftError): Row {
  const last = rows.at(-1);
  if (last) return last;
  throw refusal();
}

/** Stretches and pieces, which stand in a sheet as texts, and what is measured on a worked piece. */
export const pieces = {
  EVENROWS: (rows: number, fabric: string) => stretchText({ kind: 'even', rows: whole(rows) }, fabric),
  TAPERROWS: (
    to: number,
    over: number,
    perRow: number,
    every: number,
    before: number,
    after: number,
    order: string,
    fabric: string,
    edge?: string,
  ) =>
    stretchText(
      {
        kind: 'taper',
        to: whole(to),
        over: whole(over),
        perRow: whole(perRow),
        every: whole(every),
        before: whole(before),
        after: whole(after),
        order,
        ...(edge === undefined ? {} : { edge }),
      },
      fabric,
    ),
  EVENLYROW: (to: number, ends: string, fabric: string) =>
    stretchText({ kind: 'evenly', to: whole(to), ends }, fabric),
  REPEATSROW: (repeats: number, by: number, fabric: string) =>
    stretchText({ kind: 'eachRepeat', repeats: whole(repeats), by: whole(by) }, fabric),
  GATHERROUNDS: (to: number, rounds: number, fabric: string) =>
    stretchText({ kind: 'gather', to: whole(to), rounds: whole(rounds) }, fabric),
  LEAVESTITCHES: (atStart: number, atEnd: number, fabric: string) =>
    stretchText({ kind: 'leave', atStart: whole(atStart), atEnd: whole(atEnd) }, fabric),
  ADDSTITCHES: (atStart: number, atEnd: number, fabric: string) =>
    stretchText({ kind: 'add', atStart: whole(atStart), atEnd: whole(atEnd) }, fabric),
  COUNTEDROWS: (fabric: string, ...counts: number[]) =>
    stretchText({ kind: 'rows', counts: counts.map(whole) }, fabric),
  PIECE: (worked: string, start: number, ends: string, ...stretches: string[]) => {
    const text = pieceText({ worked, start: whole(start), ends }, stretches);
    // Worked at once, so that a piece that cannot be worked says so itself and its results only wait for it.
    workedPiece(text);
    return text;
  },
  PIECELENGTH: (piece: string) => workedPiece(piece).length,
  PIECEROWS: (piece: string) => workedPiece(piece).rows.length,
  PIECECOUNT: (piece: string, row: number) =>
    nth(workedPiece(piece).rows, whole(row), ['row of this piece', 'rows of this piece']).count,
  PIECEEND: (piece: string) =>
    lastOf(
      workedPiece(piece).rows,
      () => new CraftError('no-rows', 'The piece has no rows yet: give one of its stretches some.'),
    ).count,
  PIECEWIDTH: (piece: string, at: number) => widthAt(workedPiece(piece).rows, at),
  PIECEAREA: (piece: string) => workedPiece(piece).area,
  PIECESTITCHES: (piece: string) => workedPiece(piece).stitches,
  STRETCHEND: (piece: string, which: number) =>
    lastOf(
      rowsOfStretch(piece, which),
      () =>
        new CraftError(
          'no-rows',
          'Stretch {which} has no row, so it ends on no count: give it rows, or ask for the stretch after it.',
          { which: { stretch: which } },
        ),
    ).count,
  STRETCHROWS: (piece: string, which: number) => rowsOfStretch(piece, which).length,
  STRETCHLENGTH: (piece: string, which: number) => lengthOf(rowsOfStretch(piece, which)),
  EDGELENGTH: (piece: string, side: string, first?: number, last?: number) => {
    const { rows } = workedPiece(piece);
    const there = readPiece(piece).stretches.map((_stretch, at) => at);
    const [from, to] = [first ?? 1, last ?? first ?? there.length].map((which) =>
      nth(there, whole(which), ['stretch of this piece', 'stretches of this piece']),
    ) as [number, number];
    const edge = chosen('EDGELENGTH', side, { left: 'left', right: 'right', shaped: undefined } as const);
    return edgeOf(rows, edge ?? shapedSide(rows, from, to), from, to).length;
  },
} satisfies Record<string, TradeFunction>;
