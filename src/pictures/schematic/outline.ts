import type { EdgeStep, Piece, Row, Side } from '../../craft';

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
  readonly plan: Piece | undefined;
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

/**
 * The outline of worked rows, each as wide and as high as it is.
 *
 * Each row says what it gained or lost at either edge (`RowEdges` in `craft` has the rules). What is shaped across a row
 * moves both edges alike, and so does a change of fabric. In the round there are no edges: a piece lies flat, mirrored
 * about its middle, at half its round.
 *
 * @example
 * // 10 stitches, 4 left at the start of row 3 (a right-side row), 1 stitch to the cm:
 * outlineOf(rows, plan).right // [5, 5, 1]
 *
 * Source: common practice.
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

  rows.forEach((row, i) => {
    edges[i + 1] = edges[i]! + row.height;
    const gauge = row.fabric.stitches;
    if (i > 0) steps.push(...stepsBefore(row, i, left[i - 1]!, right[i - 1]!));
    const byShaping = (side: Side): number =>
      row.edges[side] - (row.steps ?? []).reduce((sum, step) => sum + signed(step, side), 0);
    const [atLeft, atRight] = [byShaping('left') !== 0, byShaping('right') !== 0];
    const before = rows[i - 1]?.count ?? plan?.start ?? row.count;
    const across = row.count - before !== row.edges.left + row.edges.right;
    // A tube lies flat with its shaping at both of its folds.
    const folds = across && round && plan?.stretches[row.stretch]?.kind === 'taper';
    if (folds) shaped.push({ row: i, left: true, right: true, across: false });
    else if (atLeft || atRight || across) shaped.push({ row: i, left: atLeft, right: atRight, across });
    if (!round && i > 0) middle += (row.edges.right - row.edges.left) / (2 * gauge);
    const half = (row.width * drawn) / 2;
    left[i] = middle - half;
    right[i] = middle + half;
  });
  return { rows, plan, edges, left, right, shaped, steps, drawn };
}

/** The stitches left and added before a row, one step after the other from where the edges were. */
function stepsBefore(row: Row, index: number, left: number, right: number): Step[] {
  const at = { left, right };
  const start: Side = row.side === 'WS' ? 'left' : 'right';
  return (row.steps ?? []).flatMap((step) => {
    const order: readonly Side[] = start === 'left' ? ['left', 'right'] : ['right', 'left'];
    return order.flatMap((edge): Step[] => {
      if (step[edge] === 0) return [];
      const from = at[edge];
      const to = from + ((edge === 'left' ? -1 : 1) * signed(step, edge)) / row.fabric.stitches;
      at[edge] = to;
      const end = edge === start ? 'start' : 'end';
      return [{ row: index, stretch: step.stretch, edge, end, kind: step.kind, from, to }];
    });
  });
}

/** Stitches added, or (below 0) left. */
function signed(step: EdgeStep, side: Side): number {
  return step.kind === 'add' ? step[side] : -step[side];
}
