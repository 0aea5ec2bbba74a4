import { capital } from '../../format';
import { lengthInWords, unitWord, type PlotTable } from '../charts';
import { isDrawable } from './missing';
import { lengthText } from './size-figures';
import type { SchematicPiece, SchematicSpec } from './types';

/** More lines than anyone reads; the note then says how many rows are left out. */
const most = 400;

/**
 * The rows of a piece in one size as a table, those that follow each other at one count on one line: how many stitches,
 * how wide, and how far the piece has come. In the round both the round and the width it lies flat at.
 *
 * @example
 * silhouetteTable(spec, back, 'm').rows[0] // ['1–48', '83', '59.3', '40.0']
 */
export function silhouetteTable(
  spec: Pick<SchematicSpec, 'unit' | 'decimal'>,
  piece: SchematicPiece,
  sizeId: string,
): PlotTable {
  const size = piece.sizes.find(({ id }) => id === sizeId);
  const rows = size && isDrawable(size) ? size.rows! : [];
  const round = piece.worked === 'round';
  const lines: string[][] = [];
  let length = 0;
  let from = 0;
  let left: number | null = null;
  rows.forEach((row, i) => {
    length += row.height;
    const next = rows[i + 1];
    if (next && next.count === row.count && next.width === row.width) return;
    if (lines.length < most) {
      lines.push([
        from === i ? `${i + 1}` : `${from + 1}–${i + 1}`,
        String(row.count),
        lengthText(row.width, spec),
        ...(round ? [lengthText(row.width / 2, spec)] : []),
        lengthText(length, spec),
      ]);
    } else left ??= from;
    from = i + 1;
  });
  const word = round ? 'round' : 'row';
  return {
    caption: `${piece.name}, size ${size?.label ?? sizeId}: ${word} by ${word}, in ${unitWord(spec.unit)}`,
    headings: [capital(word), 'Stitches', ...(round ? ['Round', 'Laid flat'] : ['Width']), 'Length so far'],
    rows: lines,
    note:
      left === null
        ? null
        : `${capital(word)}s ${left + 1} to ${rows.length} are left out here; the piece is ${lengthInWords(length, spec)} long.`,
  };
}
