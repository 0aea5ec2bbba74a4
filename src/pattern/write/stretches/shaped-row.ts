import { byShape } from '../by-shape';
import { wordsFor, type FabricWords } from '../fabric-words';
import { at, stitchCount, type PieceWriter } from '../piece-writer';
import { sizeList, type BySize } from '../size-list';
import { shapeOf, spacingPhrase, type RowPlan } from '../spacing-phrase';
import type { StretchBySize } from './stretch';

/** What happens on one row in one size. */
export type ShapedRow =
  | { readonly kind: 'spaced'; readonly plan: RowPlan }
  | { readonly kind: 'repeats'; readonly repeats: number; readonly by: number }
  | { readonly kind: 'evenly'; readonly change: number }
  | { readonly kind: 'even' };

/** One row in all sizes; null in a size that has no such row. */
export interface ShapedRows {
  readonly rows: BySize<ShapedRow>;
  readonly counts: BySize<number>;
  readonly sides: BySize<'RS' | 'WS' | 'round'>;
}

function wayOf(row: ShapedRow): 'dec' | 'inc' | undefined {
  if (row.kind === 'spaced') return row.plan.kind === 'decrease' ? 'dec' : 'inc';
  if (row.kind === 'repeats') return row.by < 0 ? 'dec' : 'inc';
  if (row.kind === 'evenly') return row.change < 0 ? 'dec' : 'inc';
  return undefined;
}

function stitchWord(counts: BySize<number>): string {
  return counts.every((count) => count === null || count === 1) ? 'st' : 'sts';
}

/** What a group of sizes that agree in shape works on the row. */
function working(writer: PieceWriter, rows: BySize<ShapedRow>, words: FabricWords): string {
  const some = rows.find((row) => row !== null)!;
  switch (some.kind) {
    case 'spaced': {
      const plans = rows.map((row) => (row?.kind === 'spaced' ? row.plan : null));
      return spacingPhrase(plans, words, writer.worked);
    }
    case 'repeats': {
      const by = rows.map((row) => (row?.kind === 'repeats' ? Math.abs(row.by) : null));
      const repeats = rows.map((row) => (row?.kind === 'repeats' ? row.repeats : null));
      const one = repeats.every((count) => count === null || count === 1);
      const where = one ? 'in the repeat' : `in each of the ${sizeList(repeats)} repeats`;
      return `${wayOf(some)!} ${sizeList(by)} ${stitchWord(by)} ${where}`;
    }
    case 'evenly': {
      const change = rows.map((row) => (row?.kind === 'evenly' ? Math.abs(row.change) : null));
      return `${wayOf(some)!} ${sizeList(change)} ${stitchWord(change)} evenly ${writer.worked === 'round' ? 'around' : 'across'}`;
    }
    case 'even':
      return 'work even';
  }
}

function shape(row: ShapedRow, words: FabricWords): string {
  if (row.kind === 'spaced') return shapeOf(row.plan, words);
  return `${row.kind} ${wayOf(row) ?? ''}`;
}

/**
 * A row with shaping on it: one line where its sizes agree in shape, else a line for each shape.
 *
 * "Next row (RS): *sc 6, sc2tog; rep from * 3 more times, sc 5 [33 sts]."
 */
export function shapedRow(
  writer: PieceWriter,
  key: string,
  stretch: StretchBySize,
  { rows, counts, sides }: ShapedRows,
): void {
  const wordsAt = (sizeIndex: number): FabricWords =>
    wordsFor(writer.craft, stretch.swatch?.stitch, sides[sizeIndex] ?? undefined);
  const shapes = rows.map((row, sizeIndex) => {
    if (row === null) return null;
    const words = wordsAt(sizeIndex);
    return `${shape(row, words)} ${row.kind === 'spaced' ? words.basic : ''}`;
  });
  const groups = byShape(shapes);
  const wordsOf = (sizeIndices: readonly number[]): FabricWords =>
    wordsAt(sizeIndices.find((sizeIndex) => rows[sizeIndex] !== null) ?? sizeIndices[0]!);
  const count = stitchCount(counts);
  const next = writer.next(sides);
  writer.byGroups(
    key,
    groups,
    () =>
      writer.line(key, '{next}: {work} [{count}].', {
        next,
        work: working(writer, rows, wordsOf(rows.map((_row, sizeIndex) => sizeIndex))),
        count,
      }),
    () =>
      writer.line(key, '{next}: {shaping} as follows for your size [{count}].', {
        next,
        shaping: changeWords(writer, rows),
        count,
      }),
    (sizeIndices) => working(writer, at(rows, sizeIndices), wordsOf(sizeIndices)),
  );
}

/** "dec evenly across", or "shape" where some sizes lose and others gain. */
function changeWords(writer: PieceWriter, rows: BySize<ShapedRow>): string {
  const ways = new Set(rows.map((row) => row && wayOf(row)).filter((way) => way));
  const [way] = ways;
  if (ways.size !== 1 || rows.some((row) => row?.kind === 'even')) return 'work';
  return `${way!} evenly ${writer.worked === 'round' ? 'around' : 'across'}`;
}
