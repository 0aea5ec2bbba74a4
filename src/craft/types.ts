/** One reading of a swatch: `count` stitches (or rows) seen over `over` cm. */
export interface Reading {
  count: number;
  over: number;
}

/** Stitches or rows per cm, with the standard uncertainty `u` and its degrees of freedom. */
export interface Gauge {
  perCm: number;
  u: number;
  /** Infinity where the uncertainty does not come from scatter, as with a single reading. */
  dof: number;
}

/** What a garment measures beyond the body: a length in cm or a per cent of the body. Either may be negative. */
export type Ease = { length: number } | { percent: number };

/** "Multiple of 8 plus 3" is `{ multiple: 8, plus: 3 }`. */
export interface Repeat {
  multiple: number;
  plus: number;
}

/** Which allowed count to take where the exact one is not allowed. */
export type Rule = 'nearest' | 'up' | 'down';

/** In what order the longer and the shorter intervals of a taper come. */
export type Order = 'longFirst' | 'shortFirst' | 'spread';

/** An edge of flat work, the right side facing. */
export type Side = 'left' | 'right';

/** A change of count over rows: `perRow` stitches on a shaping row, in intervals of whole multiples of `every`. */
export interface TaperPlan {
  to: number;
  over: number;
  perRow: number;
  every: 1 | 2;
  before: number;
  after: number;
  order?: Order;
  /** Which edge takes the stitch left over where `perRow` is odd, in flat work; found from the rows before unless told. */
  edge?: Side;
}

/** One stretch of an edge along which stitches are picked up. */
export type EdgeStretch =
  | { kind: 'rows'; rows: number; pick: number; of: number }
  | { kind: 'stitches'; count: number }
  | { kind: 'motifs'; motifs: number; each: number }
  | { kind: 'curve'; length: number; stitchesPerCm: number };

/** Stitches and rows per cm; `heights` are the cm of each row of a repeat whose rows differ in height. */
export interface Fabric {
  name?: string;
  stitches: number;
  rows: number;
  heights?: number[];
}

/** A part of a piece worked one way, in one fabric. */
export type Stretch = { label?: string; fabric: Fabric } & (
  | { kind: 'even'; rows: number }
  | ({ kind: 'taper' } & TaperPlan)
  | { kind: 'evenly'; to: number; ends?: 'half' | 'whole' }
  | { kind: 'eachRepeat'; repeats: number; by: number }
  | { kind: 'gather'; to: number; rounds: number }
  | { kind: 'leave'; atStart: number; atEnd: number }
  | { kind: 'add'; atStart: number; atEnd: number }
  | { kind: 'rows'; counts: number[] }
);

/** A piece of a garment: a count to start on, flat or in the round, and its stretches in working order. */
export interface Piece {
  name: string;
  worked: 'flat' | 'round';
  start: number;
  startsOn?: 'RS' | 'WS';
  stretches: Stretch[];
  ends?: 'bound off' | 'held';
}

/** Stitches left (bound off or held) or added at the edges before a row, by the stretch of that index. */
export interface EdgeStep {
  stretch: number;
  kind: 'leave' | 'add';
  left: number;
  right: number;
}

/**
 * One worked row. `stretch` is the index of its stretch in the piece; `change` is against the row before.
 *
 * `edges` is what was gained or lost at either edge, the right side facing, against the row before; what `change` has
 * beyond both was shaped across the row. `steps` says which of it was left or added before the row. In the round, work
 * has no edges: both are 0.
 */
export interface Row {
  number: number;
  side: 'RS' | 'WS' | 'round';
  stretch: number;
  fabric: Fabric;
  count: number;
  change: number;
  edges: Readonly<Record<Side, number>>;
  steps?: readonly EdgeStep[];
  width: number;
  height: number;
}

/** Edges that are sewn or worked together: every side has to have the same count. */
export interface Join {
  name: string;
  sides: { name: string; count: number }[];
  by: 'stitch' | 'row';
}
