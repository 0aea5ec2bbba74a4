import { spaceEvenly, type Stretch } from '../../../craft';
import { wordsFor } from '../fabric-words';
import type { WorkedStretch } from '../gathered';
import type { PieceWriter } from '../piece-writer';
import { shapedRow, type ShapedRow } from './shaped-row';
import type { StretchBySize } from './stretch';

/** Shaping spread across one row, or taken out of every repeat of it. */
export function acrossLines(writer: PieceWriter, stretch: StretchBySize): void {
  let rows = stretch.sizes.map((size) => shapedOf(writer, size, stretch));
  // Repeats told stitch by stitch in one size and not in another would read like two ways of working.
  if (rows.some((row) => row?.kind === 'repeats')) {
    rows = stretch.sizes.map(({ stretch: plan }) => repeatsOf(plan));
  }
  if (rows.every((row) => row?.kind === 'even')) {
    writer.even(
      stretch.name,
      stretch.sizes.map(() => 1),
    );
    return;
  }
  shapedRow(writer, stretch.name, stretch, {
    rows,
    counts: stretch.sizes.map(({ counts }) => counts[0] ?? null),
    sides: stretch.sizes.map(({ side }) => side),
  });
}

function repeatsOf(stretch: Stretch): ShapedRow | null {
  if (stretch.kind !== 'eachRepeat') return null;
  const { repeats, by } = stretch;
  return by === 0 ? { kind: 'even' } : { kind: 'repeats', repeats, by };
}

function shapedOf(
  writer: PieceWriter,
  { stretch, from, side }: WorkedStretch,
  { swatch }: StretchBySize,
): ShapedRow | null {
  if (stretch.kind === 'evenly') return spaced(writer, stretch, from);
  if (stretch.kind !== 'eachRepeat') return null;
  const { repeats, by } = stretch;
  if (by === 0) return { kind: 'even' };
  // Repeats that fill the row can be written stitch by stitch; where an edge stands beside them, nobody knows where.
  if (Math.abs(by) === 1 && from % repeats === 0) {
    const each = from / repeats;
    const uses = by < 0 ? 2 : 0;
    const words = wordsFor(writer.craft, swatch?.stitch, side);
    if (each - uses >= (by > 0 ? words.increaseUses : 0)) {
      const gaps = new Array<number>(repeats).fill(each - uses);
      return {
        kind: 'spaced',
        plan: { kind: by < 0 ? 'decrease' : 'increase', gaps, last: 0 },
      };
    }
  }
  return repeatsOf(stretch);
}

function spaced(writer: PieceWriter, stretch: Stretch & { kind: 'evenly' }, from: number): ShapedRow {
  const { kind, plain } = spaceEvenly({
    from,
    to: stretch.to,
    worked: writer.worked,
    ...(stretch.ends !== undefined && { ends: stretch.ends }),
  });
  if (kind === 'none') return { kind: 'even' };
  return { kind: 'spaced', plan: { kind, gaps: plain.slice(0, -1), last: plain.at(-1)! } };
}
