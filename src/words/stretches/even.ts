import type { PieceWriter } from '../piece-writer';
import { counted, type BySize } from '../size-list';
import type { StretchBySize } from './stretch';

/** "Work 48 (50, 52) rows even." */
export function evenLines(writer: PieceWriter, stretch: StretchBySize): void {
  const rows = stretch.sizes.map(({ counts }) => counts.length - stretch.done || null);
  evenLine(writer, stretch.name, rows, stretch.done > 0 ? 'more ' : '');
}

/** Nothing where no size has such rows. */
export function evenLine(writer: PieceWriter, key: string, rows: BySize<number>, more = ''): void {
  if (rows.every((count) => count === null)) return;
  writer.line(key, 'Work {rows} even.', { rows: counted(rows, `${more}${writer.row}`) });
}
