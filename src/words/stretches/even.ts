import type { PieceWriter } from '../piece-writer';
import type { StretchBySize } from './stretch';

/** "Work 48 (50, 52) rows even." */
export function evenLines(writer: PieceWriter, stretch: StretchBySize): void {
  const rows = stretch.sizes.map(({ counts }) => counts.length - stretch.done || null);
  writer.even(stretch.name, rows, stretch.done > 0 ? 'more ' : '');
}
