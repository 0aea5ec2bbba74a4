import type { Row } from '../../craft';
import { edgesOf, type Corner } from './series';
import type { PlotSpec } from './types';

/** A taper among worked rows: the indices of its first and last row, and the counts it goes from and to. */
export interface WorkedTaper {
  readonly first: number;
  readonly last: number;
  readonly from: number;
  readonly to: number;
  /** Stitches more (or, negative, fewer) on each shaping row. */
  readonly step: number;
  /** The indices of the rows that are shaped. */
  readonly shaped: readonly number[];
}

/**
 * The tapers among the rows of a piece: its stretches of that kind or, where the stretches are not given, those in
 * which every shaping row changes the count by the same, the first row apart.
 *
 * Stitches left or added before a stretch fall on its first row. A first row that changes by something other than
 * the taper's step is taken for that, and the taper starts on the count after it.
 */
export function tapersIn(rows: readonly Row[], stretches?: PlotSpec['stretches']): WorkedTaper[] {
  const tapers: WorkedTaper[] = [];
  for (let first = 0; first < rows.length; first++) {
    const { stretch } = rows[first]!;
    let last = first;
    while (rows[last + 1]?.stretch === stretch) last++;
    const kind = stretches?.[stretch]?.kind;
    const taper =
      kind === undefined || kind === 'taper' ? taperOver(rows, first, last, kind === 'taper') : null;
    if (taper && (kind === 'taper' || evenSteps(rows, taper))) tapers.push(taper);
    first = last;
  }
  return tapers;
}

function taperOver(rows: readonly Row[], first: number, last: number, isStated: boolean): WorkedTaper | null {
  const shaped: number[] = [];
  for (let i = first + 1; i <= last; i++) if (rows[i]!.change !== 0) shaped.push(i);
  const start = rows[first]!;
  const later = shaped[0];
  if (later === undefined && (start.change === 0 || !isStated)) return null;
  const step = later === undefined ? start.change : rows[later]!.change;
  const startIsShaped = start.change === step;
  if (startIsShaped) shaped.unshift(first);
  const from = startIsShaped ? start.count - start.change : start.count;
  return { first, last, from, to: rows[last]!.count, step, shaped };
}

function evenSteps(rows: readonly Row[], { shaped, step }: WorkedTaper): boolean {
  return shaped.every((i) => rows[i]!.change === step);
}

/**
 * How many stitches wider (or, negative, narrower) than the straight line each row of a taper is, at the row's end.
 *
 * The straight line goes from the count before the taper's first row to the count after its last, evenly by length:
 * the seam that the steps stand for. (Our own definition; the plain rows before and after the shaping belong to it.)
 *
 * @example
 * // from 10 to 8 over 4 rows of one height, both stitches on row 4
 * offsOf(rows, taper) // [0.5, 1, 1.5, 0]
 */
export function offsOf(rows: readonly Row[], taper: WorkedTaper): Float64Array {
  const part = rows.slice(taper.first, taper.last + 1);
  const edges = edgesOf(part, 'taper');
  const all = edges[part.length]!;
  return Float64Array.from(part, (row, i) => {
    return row.count - (taper.from + ((taper.to - taper.from) * edges[i + 1]!) / all);
  });
}

/** The two ends of the straight line, in cm along and across. */
export function straightLine(
  rows: readonly Row[],
  edges: Float64Array,
  taper: WorkedTaper,
): [Corner, Corner] {
  const gauge = rows[taper.first]!.fabric.stitches;
  return [
    { x: edges[taper.first]!, y: taper.from / gauge },
    { x: edges[taper.last + 1]!, y: taper.to / gauge },
  ];
}
