import type { DrawnSize } from './series';
import type { Which } from './types';

/** A length of the piece in one fabric, with the ruling of its paper. */
export interface RuledStretch {
  /** Indices of the first row, and after the last. */
  readonly first: number;
  readonly end: number;
  /** Width of a stitch in the units of the axis across. */
  readonly stitch: number;
}

/** A part of the canvas in px, and where the axes put a value on it. */
export interface Area {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly xAt: (along: number) => number;
  readonly yAt: (across: number) => number;
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
}

/** One line of the paper, upright or level, in px. `change`: here the fabric changes. */
export interface Ruling {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
  readonly weight: 'fine' | 'tenth' | 'change';
}

/** The rows of a size, cut where the fabric changes. */
export function ruledStretches({ rows }: Pick<DrawnSize, 'rows'>, which: Which): RuledStretch[] {
  const stretches: RuledStretch[] = [];
  for (let first = 0; first < rows.length; first++) {
    const { fabric } = rows[first]!;
    let end = first + 1;
    while (end < rows.length && sameFabric(rows[end]!.fabric, fabric)) end++;
    stretches.push({ first, end, stitch: which === 'stitches' ? 1 : 1 / fabric.stitches });
    first = end - 1;
  }
  return stretches;
}

function sameFabric(a: DrawnSize['rows'][number]['fabric'], b: typeof a): boolean {
  if (a === b) return true;
  const heights = (fabric: typeof a) => fabric.heights?.join(' ') ?? '';
  return a.stitches === b.stitches && a.rows === b.rows && heights(a) === heights(b);
}

/**
 * Every how many rows or stitches a line is ruled, of 1, 2, 5, 10, 20 …, so that lines stand `least` px apart or more.
 *
 * @example
 * everyFor(3.2, 4)  // 2
 * everyFor(0.09, 4) // 50
 */
export function everyFor(px: number, least: number): number {
  if (!(px > 0) || !Number.isFinite(px)) return Infinity;
  for (let ten = 1; ; ten *= 10) {
    for (const step of [1, 2, 5]) if (step * ten * px >= least * (1 - 1e-9)) return step * ten;
  }
}

/** Every how many a line is heavier: the next 10, 100, 1000 … above the step. */
function heavyFor(every: number): number {
  return 10 ** (Math.floor(Math.log10(every) + 1e-9) + 1);
}

/**
 * The lines of the paper: at whole rows and whole stitches, each fabric's stretch in its own ratio; the first and the
 * last go on to the edges of the paper. Both ways a line stands for the same number of rows as of stitches, so that
 * a cell keeps the proportions of a stitch however much it is thinned out; only on a plot that is not to scale may
 * the two differ. Every tenth row and stitch, counted from the start and from the fold, is heavier.
 */
export function rulings(
  size: Pick<DrawnSize, 'rows' | 'edges'>,
  which: Which,
  area: Area,
  toScale = true,
  least = 4,
): Ruling[] {
  const lines: Ruling[] = [];
  const stretches = ruledStretches(size, which);
  const { edges } = size;

  stretches.forEach(({ first, end, stitch }, i) => {
    const from = edges[first]!;
    const to = edges[end]!;
    const row = (to - from) / (end - first);
    const left = i === 0 ? area.left : Math.max(area.left, area.xAt(from));
    const right = i === stretches.length - 1 ? area.right : Math.min(area.right, area.xAt(to));
    if (right <= left) return;

    const pxRow = area.xAt(from + row) - area.xAt(from);
    const pxStitch = area.yAt(0) - area.yAt(stitch);
    let rowsEvery = everyFor(pxRow, least);
    let stitchesEvery = everyFor(pxStitch, least);
    if (toScale) rowsEvery = stitchesEvery = Math.max(rowsEvery, stitchesEvery);

    // Beyond the piece the paper goes on in rows of the mean height.
    const last = i === stretches.length - 1 ? Math.ceil((area.x[1] - to) / row) + end : end;
    const heavyRow = heavyFor(rowsEvery);
    for (let k = Math.ceil((first + 1) / rowsEvery) * rowsEvery; k <= last; k += rowsEvery) {
      const x = area.xAt(k <= end ? edges[k]! : to + (k - end) * row);
      if (x > right) break;
      const weight = k % heavyRow === 0 ? 'tenth' : 'fine';
      if (x >= left) lines.push({ x1: x, y1: area.top, x2: x, y2: area.bottom, weight });
    }
    const heavyStitch = heavyFor(stitchesEvery);
    const lowest = Math.ceil(area.y[0] / stitch / stitchesEvery - 1e-9) * stitchesEvery;
    for (let k = lowest; k * stitch <= area.y[1] * (1 + 1e-12); k += stitchesEvery) {
      const y = area.yAt(k * stitch);
      lines.push({ x1: left, y1: y, x2: right, y2: y, weight: k % heavyStitch === 0 ? 'tenth' : 'fine' });
    }
    if (i > 0) {
      const x = area.xAt(from);
      lines.push({ x1: x, y1: area.top, x2: x, y2: area.bottom, weight: 'change' });
    }
  });
  return lines;
}
