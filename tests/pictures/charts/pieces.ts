import { workPiece, type Piece, type Row } from '../../../src/craft';
import type { PlotSpec, WorkedSize } from '../../../src/pictures/charts/types';

/*
 * Invented pieces to draw. Moss stitch at 14 stitches and 20 rows to 10 cm; rib at 20 stitches and 25 rows.
 */
export const moss = { name: 'moss stitch', stitches: 1.4, rows: 2 };
export const rib = { name: 'rib', stitches: 2, rows: 2.5 };

/** A sleeve in the round: `from` stitches down to `to` over `over` rounds, gathered, and 10 rounds of rib. */
export function sleeve(from: number, to: number, over: number): Piece {
  return {
    name: 'Sleeve',
    worked: 'round',
    start: from,
    stretches: [
      { kind: 'taper', label: 'taper', fabric: moss, to, over, perRow: 2, every: 1, before: 0, after: 0 },
      { kind: 'evenly', label: 'gather', fabric: moss, to: to - 6 },
      { kind: 'even', label: 'cuff', fabric: rib, rows: 10 },
    ],
  };
}

/** Rows of moss stitch with these counts, flat, starting on the first count unless told. */
export function rowsOf(counts: number[], start = counts[0]!): Row[] {
  return workPiece({
    name: 'Piece',
    worked: 'flat',
    start,
    stretches: [{ kind: 'rows', fabric: moss, counts }],
  });
}

export function sizeOf(id: string, rows: Row[] | null, problem?: string): WorkedSize {
  return { id, label: id.toUpperCase(), rows, problem };
}

export function specOf(sizes: WorkedSize[], more: Partial<PlotSpec> = {}): PlotSpec {
  return {
    which: 'stitches',
    name: 'Sleeve',
    sizes,
    unit: 'cm',
    decimal: '.',
    highlighted: null,
    theme: 'light',
    ...more,
  };
}
