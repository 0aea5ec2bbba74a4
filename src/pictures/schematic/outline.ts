import type { Piece, Row, Stretch } from '../../craft/types';

/** What is shaped on a row: at its left or right edge, seen from the right side, or across it. */
export interface Shaped {
  /** Index of the row. */
  readonly row: number;
  readonly left: boolean;
  readonly right: boolean;
  readonly across: boolean;
}

/** Stitches left or added at one edge before a row. */
export interface Step {
  /** Index of the first row without, or with, them. */
  readonly row: number;
  /** Index of the stretch that leaves or adds them. */
  readonly stretch: number;
  readonly edge: 'left' | 'right';
  /** Whether that edge is where the row starts, or where it ends. */
  readonly end: 'start' | 'end';
  readonly kind: 'leave' | 'add';
  /** Where the edge was, and where these stitches alone put it: the row may be shaped across besides. */
  readonly from: number;
  readonly to: number;
}

/** Where a piece has its edges, in cm: the right side facing, x from the middle of the first row, y from its start. */
export interface Outline {
  readonly rows: readonly Row[];
  /** Where each row begins, and where the last ends. */
  readonly edges: Float64Array;
  readonly left: Float64Array;
  readonly right: Float64Array;
  readonly shaped: readonly Shaped[];
  /** In the round there are none: the work has no edges. */
  readonly steps: readonly Step[];
  /** How wide it is drawn, 1 flat or ½ in the round: a tube lies flat at half its round. */
  readonly drawn: 1 | 0.5;
}

type Edge = 'left' | 'right';
const otherEdge = { left: 'right', right: 'left' } as const;

/**
 * The outline of worked rows, each as wide and as high as it is.
 *
 * The plan decides at which edge a row grows or shrinks. Seen from the right side, a right-side row is worked from the
 * right edge to the left, a wrong-side row from the left to the right (right-handed work).
 *
 * - Stitches left or added at the start or the end of the row are taken from that edge.
 * - A taper takes half of each step from either edge; a stitch that is left over, or a taper by one stitch, comes from
 *   one edge alone. That is the edge where the row before it was shaped at one side, as an underarm's curve goes on;
 *   after plain rows it is the other edge, as a neck lies opposite the armhole; with neither before it, the left edge.
 * - All other shaping is spread across the row, so both edges move alike; so they do where only the fabric changes.
 * - In the round there are no edges: a piece lies flat, mirrored about its middle, at half its round.
 *
 * Without a plan all changes are taken from both edges alike.
 *
 * @example
 * // 10 stitches, 4 left at the start of row 3 (a right-side row), 1 stitch to the cm:
 * outlineOf(rows, plan).right // [5, 5, 1]
 *
 * Source: common practice; the rule for a taper by one stitch is our own.
 */
export function outlineOf(rows: readonly Row[], plan?: Piece): Outline {
  const before = known.get(rows);
  if (before && before.plan === plan) return before.outline;
  const outline = outlineOfRows(rows, plan);
  known.set(rows, { plan, outline });
  return outline;
}

/** Rows are never changed, and a drawing asks for their outline at every scale it tries. */
const known = new WeakMap<readonly Row[], { plan: Piece | undefined; outline: Outline }>();

function outlineOfRows(rows: readonly Row[], plan: Piece | undefined): Outline {
  const count = rows.length;
  const edges = new Float64Array(count + 1);
  const left = new Float64Array(count);
  const right = new Float64Array(count);
  const shaped: Shaped[] = [];
  const steps: Step[] = [];
  const round = rows[0]?.side === 'round';
  const drawn = round ? 0.5 : 1;
  let middle = 0;
  /** The edge shaped last at one side alone, and whether plain rows came since. */
  let oneSided: Edge | null = null;
  let plainSince = false;

  rows.forEach((row, i) => {
    edges[i + 1] = edges[i]! + row.height;
    const before = rows[i - 1];
    const waiting = plan ? leftBefore(plan.stretches, before?.stretch ?? -1, row.stretch) : [];
    const start: Edge = row.side === 'WS' ? 'left' : 'right';
    const gone = { left: 0, right: 0 };
    for (const { stretch, at } of waiting) {
      for (const end of ['start', 'end'] as const) {
        const count = end === 'start' ? stretch.atStart : stretch.atEnd;
        const edge = end === 'start' ? start : otherEdge[start];
        const inwards = (edge === 'left' ? 1 : -1) * (stretch.kind === 'leave' ? count : -count);
        if (count > 0 && i > 0 && !round) {
          const already = gone[edge] * (edge === 'left' ? 1 : -1);
          const from = (edge === 'left' ? left : right)[i - 1]! + already / row.fabric.stitches;
          const to = from + inwards / row.fabric.stitches;
          steps.push({ row: i, stretch: at, edge, end, kind: stretch.kind, from, to });
        }
        gone[edge] += stretch.kind === 'leave' ? count : -count;
      }
    }
    if (gone.left !== gone.right) {
      oneSided = Math.abs(gone.left) > Math.abs(gone.right) ? 'left' : 'right';
      plainSince = false;
    }
    const from = before?.count ?? plan?.start ?? row.count;
    const own = row.count - (from - gone.left - gone.right);
    if (own !== 0 && plan?.stretches[row.stretch]?.kind === 'taper') {
      const step = Math.trunc(own / 2);
      const odd = own - 2 * step;
      const edge: Edge = odd === 0 ? 'left' : edgeOfOne(oneSided, plainSince);
      gone.left -= step;
      gone.right -= step;
      if (odd !== 0) {
        gone[edge] -= odd;
        oneSided = edge;
        plainSince = false;
      }
      shaped.push({
        row: i,
        left: step !== 0 || (odd !== 0 && edge === 'left'),
        right: step !== 0 || (odd !== 0 && edge === 'right'),
        across: false,
      });
    } else if (own !== 0) {
      shaped.push({ row: i, left: false, right: false, across: true });
    } else if (plan?.stretches[row.stretch]?.kind !== 'taper') {
      plainSince = true;
    }
    if (!round && i > 0) middle += (gone.left - gone.right) / (2 * row.fabric.stitches);
    const half = (row.width * drawn) / 2;
    left[i] = middle - half;
    right[i] = middle + half;
  });
  return { rows, edges, left, right, shaped, steps, drawn };
}

function edgeOfOne(oneSided: Edge | null, plainSince: boolean): Edge {
  if (oneSided === null) return 'left';
  return plainSince ? otherEdge[oneSided] : oneSided;
}

/** The stitches left and added between the stretch of one row and that of the next: they have no row of their own. */
function leftBefore(
  stretches: readonly Stretch[],
  after: number,
  upTo: number,
): { stretch: Stretch & { kind: 'leave' | 'add' }; at: number }[] {
  const found: { stretch: Stretch & { kind: 'leave' | 'add' }; at: number }[] = [];
  for (let at = after + 1; at < upTo; at++) {
    const stretch = stretches[at]!;
    if (stretch.kind === 'leave' || stretch.kind === 'add') found.push({ stretch, at });
  }
  return found;
}
