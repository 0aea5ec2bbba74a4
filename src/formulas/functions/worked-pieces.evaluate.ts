import { areaOf, lengthOf, stitchesIn, workPiece, type Row } from '../../craft';
import { readPiece } from '../piece-text';

/** A piece worked row by row, and what formulas ask of it. */
export interface WorkedPiece {
  readonly rows: Row[];
  readonly length: number;
  readonly area: number;
  readonly stitches: number;
}

/** So many rows are kept over all pieces: about 20 MB. */
const mostRowsKept = 200_000;

const kept = new Map<string, WorkedPiece>();
let rowsKept = 0;

/**
 * The piece of a text, worked. The same text always gives the same rows, so they are kept while there is room:
 * a piece has six results, and each of them would otherwise work it again.
 *
 * @throws CraftError where it cannot be worked
 */
export function workedPiece(text: string): WorkedPiece {
  const known = kept.get(text);
  if (known) return known;
  const rows = workPiece(readPiece(text));
  const worked = { rows, length: lengthOf(rows), area: areaOf(rows), stitches: stitchesIn(rows) };
  kept.set(text, worked);
  rowsKept += rows.length + 1;
  for (const [oldest, { rows: gone }] of kept) {
    if (rowsKept <= mostRowsKept) break;
    kept.delete(oldest);
    rowsKept -= gone.length + 1;
  }
  return worked;
}
