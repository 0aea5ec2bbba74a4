import { spaceEvenly } from '../../../craft';
import type { PieceWriter } from '../piece-writer';
import { turned } from './gather';
import { shapedRow, type ShapedRow } from './shaped-row';
import type { StretchBySize } from './stretch';

/** Rows whose counts were given one by one: each shaped evenly, rows without a change together. */
export function countedLines(writer: PieceWriter, stretch: StretchBySize): void {
  const most = Math.max(...stretch.sizes.map(({ counts }) => counts.length));
  const changes = stretch.sizes.map(({ from, counts }) =>
    counts.map((count, row) => count - (row === 0 ? from : counts[row - 1]!)),
  );
  for (let row = stretch.done; row < most;) {
    let plain = row;
    while (plain < most && changes.every((list) => (list[plain] ?? 0) === 0)) plain++;
    if (plain > row) {
      writer.even(
        `${stretch.name} ${row + 1}`,
        changes.map((list) => Math.min(plain, list.length) - row || null).map((n) => (n && n > 0 ? n : null)),
      );
      row = plain;
      continue;
    }
    shapedRow(writer, `${stretch.name} ${row + 1}`, stretch, {
      rows: stretch.sizes.map(({ from, counts }, sizeIndex): ShapedRow | null => {
        const change = changes[sizeIndex]![row];
        if (change === undefined) return null;
        if (change === 0) return { kind: 'even' };
        return changed(writer, row === 0 ? from : counts[row - 1]!, counts[row]!);
      }),
      counts: stretch.sizes.map(({ counts }) => counts[row] ?? null),
      sides: stretch.sizes.map(({ side }) => turned(side, row)),
    });
    row++;
  }
}

/** A change of count as a row that can be worked; as a bare number where one row has no room for it. */
function changed(writer: PieceWriter, from: number, to: number): ShapedRow {
  const many = Math.abs(from - to);
  const room = to < from ? Math.floor(from / 2) : from;
  if (many > room) return { kind: 'evenly', change: to - from };
  const { kind, plain } = spaceEvenly({ from, to, worked: writer.worked });
  if (kind === 'none') return { kind: 'even' };
  return { kind: 'spaced', plan: { kind, gaps: plain.slice(0, -1), last: plain.at(-1)! } };
}
