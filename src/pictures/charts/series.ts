import type { Row } from '../../craft';
import { sizeStyle, type SizeStyle } from './palette';
import type { PlotSpec, Which, WorkedSize } from './types';

export interface Corner {
  readonly x: number;
  readonly y: number;
}

/** A size that can be drawn: its rows are there, and `edges[k]` is how far along the piece its first k rows reach. */
export interface DrawnSize {
  readonly id: string;
  readonly label: string;
  /** Its place among all sizes, drawn or not. */
  readonly sizeIndex: number;
  readonly style: SizeStyle;
  readonly rows: readonly Row[];
  readonly edges: Float64Array;
  readonly plan: WorkedSize['plan'];
}

/**
 * How far along the piece the first k rows reach, for k from 0 to all of them.
 *
 * Widths and tapers are measured in cm. A plot of stitches has no cm: there a stitch is one unit across, and a row is
 * as high as its fabric makes it *in stitch widths* (height × stitch gauge), so that every stretch keeps its own
 * ratio of stitch to row although a stitch is everywhere the same size on the screen.
 *
 * @example
 * // 2 rows of 0.5 cm at 1.4 stitches to the cm
 * edgesOf(rows, 'width')    // [0, 0.5, 1]
 * edgesOf(rows, 'stitches') // [0, 0.7, 1.4]
 */
export function edgesOf(rows: readonly Row[], which: Which): Float64Array {
  const edges = new Float64Array(rows.length + 1);
  rows.forEach((row, i) => {
    const along = which === 'stitches' ? row.height * row.fabric.stitches : row.height;
    edges[i + 1] = edges[i]! + along;
  });
  return edges;
}

/** What the plot shows of a row: its count, or its width in cm. */
export function acrossOf(row: Row, which: Which): number {
  return which === 'stitches' ? row.count : row.width;
}

/**
 * The corners of the line of a size. A count holds for the whole of its row and then jumps, so the line is a stair:
 * two corners for each run of rows that are equally wide, none for the rows between.
 */
export function cornersOf(rows: readonly Row[], edges: Float64Array, which: Which): Corner[] {
  const corners: Corner[] = [];
  for (let i = 0; i < rows.length; i++) {
    const y = acrossOf(rows[i]!, which);
    let end = i;
    while (end + 1 < rows.length && acrossOf(rows[end + 1]!, which) === y) end++;
    corners.push({ x: edges[i]!, y }, { x: edges[end + 1]!, y });
    i = end;
  }
  return corners;
}

/**
 * At most about `most` of the corners, without losing what can be seen: of every group of neighbours the first, the
 * lowest, the highest and the last stay, in their order. A shorter line comes back as it is.
 */
export function thinned(corners: readonly Corner[], most = 1600): readonly Corner[] {
  if (corners.length <= most) return corners;
  const size = Math.ceil(corners.length / Math.max(1, Math.floor(most / 4)));
  const kept: Corner[] = [];
  for (let start = 0; start < corners.length; start += size) {
    const end = Math.min(start + size, corners.length) - 1;
    let lowest = start;
    let highest = start;
    for (let i = start; i <= end; i++) {
      if (corners[i]!.y < corners[lowest]!.y) lowest = i;
      if (corners[i]!.y > corners[highest]!.y) highest = i;
    }
    const stay = [...new Set([start, lowest, highest, end])].sort((a, b) => a - b);
    for (const i of stay) kept.push(corners[i]!);
  }
  return kept;
}

/** Whether a size has anything to draw. */
export function isWorked(size: WorkedSize): size is WorkedSize & { readonly rows: readonly Row[] } {
  return size.rows !== null && size.rows.length > 0;
}

/** The size a taper shows alone: the highlighted one, where it is worked and not all are asked for. */
export function aloneIn(spec: PlotSpec): (WorkedSize & { readonly rows: readonly Row[] }) | null {
  if (spec.which !== 'taper' || spec.all) return null;
  const size = spec.sizes.find(({ id }) => id === spec.highlighted);
  return size && isWorked(size) ? size : null;
}

/** The sizes a plot draws: all that are worked, or in a taper the highlighted one alone. */
export function drawnSizes(spec: PlotSpec): DrawnSize[] {
  const drawn: DrawnSize[] = [];
  const alone = aloneIn(spec);
  spec.sizes.forEach((size, sizeIndex) => {
    if (!isWorked(size) || (alone && size.id !== spec.highlighted)) return;
    const { id, label, rows, plan } = size;
    const edges = edgesOf(rows, spec.which);
    drawn.push({ id, label, sizeIndex, style: sizeStyle(sizeIndex, spec.theme), rows, edges, plan });
  });
  return drawn;
}

/** The size in whose fabrics the paper is ruled: the highlighted one, or else the first that is drawn. */
export function ruledSize(drawn: readonly DrawnSize[], highlighted: string | null): DrawnSize | null {
  return drawn.find((size) => size.id === highlighted) ?? drawn[0] ?? null;
}

/** The index of the row at a place along the piece; the first or the last where the place is beyond them. */
export function rowAt(edges: Float64Array, x: number): number {
  let low = 0;
  let high = edges.length - 2;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (x < edges[middle + 1]!) high = middle;
    else low = middle + 1;
  }
  return low;
}
