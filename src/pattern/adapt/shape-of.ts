import { taperPlan, type PerSize, type StatedPattern, type StatedPiece, type StatedStretch } from '../read';

/** A stretch as a piece can be made of it, its numbers by size. */
export type Shape = {
  readonly label: string;
  readonly fabric: string;
  /** The count it ends on. */
  readonly ends: PerSize;
  /** The rows it takes. */
  readonly rows: PerSize;
  /** Rows that do not follow the gauge: the row of a bind-off, the one row of an even shaping. */
  readonly fixed: boolean;
} & (
  | { readonly kind: 'even' }
  | {
      readonly kind: 'taper';
      readonly way: 'dec' | 'inc';
      readonly perRow: number;
      readonly every: 1 | 2;
      readonly order: 'longFirst' | 'shortFirst' | 'spread';
      readonly before: PerSize;
      readonly after: PerSize;
    }
  | { readonly kind: 'evenly' }
  | { readonly kind: 'eachRepeat'; readonly repeats: PerSize; readonly by: number }
  | { readonly kind: 'leave' | 'add'; readonly atStart: PerSize; readonly atEnd: PerSize }
);

const sum = (a: PerSize, b: PerSize): PerSize =>
  a.map((value, at) => (value === null || b[at] === null || b[at] === undefined ? null : value + b[at]));

/** The stretches of a piece as a piece cell can hold them, each with the count it ends on in every size. */
export function shapesOf(piece: StatedPiece, craft: StatedPattern['craft']): Shape[] {
  const shapes: Shape[] = [];
  let counts: PerSize = piece.start.count;
  let rows: PerSize = counts.map(() => 0);
  const stretches = [...piece.stretches];
  for (let at = 0; at < stretches.length; at++) {
    const stretch = stretches[at]!;
    if (stretch.kind === 'taper') {
      const found = taperShapes(
        firstSideOf(piece, craft),
        stretch,
        counts,
        rows,
        shapes.at(-1),
        stretches[at + 1],
      );
      if (found.lead) shapes.pop();
      for (const shape of found.shapes) shapes.push(shape);
      if (found.tail) at++;
      counts = shapes.at(-1)!.ends;
      rows = found.rows;
      continue;
    }
    const { label, fabric } = stretch;
    const ends = endsOf(stretch, counts);
    const base = { label, fabric, ends: stretch.says?.count ?? ends };
    const one = counts.map(() => 1);
    const shape: Shape =
      stretch.kind === 'even'
        ? { ...base, kind: 'even', rows: stretch.rows, fixed: stretch.fixed ?? false }
        : stretch.kind === 'evenly'
          ? { ...base, kind: 'evenly', rows: one, fixed: true }
          : stretch.kind === 'eachRepeat'
            ? {
                ...base,
                kind: 'eachRepeat',
                repeats: stretch.repeats,
                by: stretch.by,
                rows: one,
                fixed: true,
              }
            : {
                ...base,
                ends,
                kind: stretch.kind,
                atStart: stretch.atStart,
                atEnd: stretch.atEnd,
                rows: counts.map(() => 0),
                fixed: true,
              };
    const before = shapes.at(-1);
    if (
      shape.kind === 'even' &&
      before?.kind === 'even' &&
      !shape.fixed &&
      !before.fixed &&
      before.fabric === fabric &&
      (before.label === label || before.label === 'First row')
    ) {
      shapes[shapes.length - 1] = { ...shape, ends: shape.ends, rows: sum(before.rows, shape.rows) };
    } else shapes.push(shape);
    counts = shape.ends;
    rows = sum(rows, shape.rows);
  }
  return shapes;
}

function endsOf(stretch: Exclude<StatedStretch, { kind: 'taper' }>, counts: PerSize): PerSize {
  switch (stretch.kind) {
    case 'even':
      return counts;
    case 'evenly':
      return sum(
        counts,
        stretch.change.map((change) => change ?? 0),
      );
    case 'eachRepeat':
      return sum(
        counts,
        stretch.repeats.map((repeats) => stretch.by * (repeats ?? 0)),
      );
    default: {
      const both = sum(stretch.atStart, stretch.atEnd);
      return sum(counts, stretch.kind === 'add' ? both : both.map((many) => (many === null ? null : -many)));
    }
  }
}

type Taper = StatedStretch & { kind: 'taper' };

/**
 * A printed taper as one that has its shaping on the same rows: alone, or with the even rows before and after it in it;
 * else run by run.
 */
function taperShapes(
  firstSide: 'RS' | 'WS' | 'round',
  stretch: Taper,
  counts: PerSize,
  rows: PerSize,
  before: Shape | undefined,
  after: StatedStretch | undefined,
): { shapes: Shape[]; lead: boolean; tail: boolean; rows: PerSize } {
  const step = stretch.way === 'dec' ? -stretch.perRow : stretch.perRow;
  const ends =
    stretch.says?.count ??
    counts.map((count, size) => (count === null ? null : count + step * (stretch.shaped[size]?.length ?? 0)));
  const even = (
    shape: { kind: string; fabric: string; rows?: PerSize; fixed?: boolean } | undefined,
  ): PerSize | undefined =>
    shape?.kind === 'even' &&
    !shape.fixed &&
    shape.fabric === stretch.fabric &&
    shape.rows?.every((many) => many !== null)
      ? shape.rows
      : undefined;
  const lead = even(before);
  const tail = even(after as never);
  for (const [withLead, withTail] of [
    [false, false],
    [false, true],
    [true, false],
    [true, true],
  ] as const) {
    if ((withLead && !lead) || (withTail && !tail)) continue;
    const extra = (size: number): number => (withLead ? lead![size]! : 0);
    const over = stretch.over.map((many, size) =>
      many === null ? null : many + extra(size) + (withTail ? tail![size]! : 0),
    );
    const first = rows.map((many, size) => (many ?? 0) - extra(size));
    const known = counts.flatMap((count, size) =>
      count === null || over[size] === null || over[size] === undefined
        ? []
        : [
            {
              from: count,
              shaped: (stretch.shaped[size] ?? []).map((row) => row + extra(size)),
              over: over[size],
              startsOn: sideOf(firstSide, first[size]!),
            },
          ],
    );
    const plan = taperPlan(known, stretch.perRow, stretch.way);
    if (!plan || known.length < counts.length) continue;
    const { every, order } = plan;
    const shape: Shape = {
      kind: 'taper',
      label: stretch.label,
      fabric: stretch.fabric,
      way: stretch.way,
      perRow: stretch.perRow,
      every,
      order,
      before: plan.before,
      after: plan.after,
      ends,
      rows: over,
      fixed: false,
    };
    return {
      shapes: [shape],
      lead: withLead,
      tail: withTail,
      rows: first.map((many, size) => many + (over[size] ?? 0)),
    };
  }
  return { shapes: runByRun(stretch, counts, ends), lead: false, tail: false, rows: sum(rows, stretch.over) };
}

/**
 * The side of a piece's first row. In knitting stitches are picked up with the right side facing, so that the first row,
 * which comes back over them, is a wrong-side row; in crochet the pick-up is row 1 itself.
 */
export function firstSideOf(
  { worked, start }: Pick<StatedPiece, 'worked' | 'start'>,
  craft: StatedPattern['craft'],
): 'RS' | 'WS' | 'round' {
  if (worked === 'round') return 'round';
  return craft === 'knitting' && start.kind === 'picked up' ? 'WS' : 'RS';
}

function sideOf(first: 'RS' | 'WS' | 'round', rowsBefore: number): 'RS' | 'WS' | 'round' {
  if (first === 'round' || rowsBefore % 2 === 0) return first;
  return first === 'RS' ? 'WS' : 'RS';
}

/** Runs of equal intervals, a taper to each; a size that has fewer runs has no rows in the others. */
function runByRun(stretch: Taper, counts: PerSize, ends: PerSize): Shape[] {
  const step = stretch.way === 'dec' ? -stretch.perRow : stretch.perRow;
  const runs = stretch.shaped.map((shaped) => {
    const found: { every: number; times: number }[] = [];
    (shaped ?? []).forEach((row, at) => {
      const every = row - (at === 0 ? 0 : shaped![at - 1]!);
      const last = found.at(-1);
      if (last?.every === every) last.times++;
      else found.push({ every, times: 1 });
    });
    return found;
  });
  const most = Math.max(1, ...runs.map(({ length }) => length));
  let now = counts;
  return Array.from({ length: most }, (_run, at): Shape => {
    now = now.map((count, size) => (count === null ? null : count + step * (runs[size]?.[at]?.times ?? 0)));
    const last = at === most - 1;
    const zero = counts.map(() => 0);
    const over = runs.map((list, size) => {
      const worked = (list[at]?.every ?? 0) * (list[at]?.times ?? 0);
      const done = list.reduce((many, { every, times }) => many + every * times, 0);
      return last ? worked + (stretch.over[size] ?? 0) - done : worked;
    });
    const tail = runs.map((list, size) => over[size]! - (list[at]?.every ?? 0) * (list[at]?.times ?? 0));
    return {
      kind: 'taper',
      label: most > 1 ? `${stretch.label}, ${at + 1}` : stretch.label,
      fabric: stretch.fabric,
      way: stretch.way,
      perRow: stretch.perRow,
      every: 1,
      order: 'longFirst',
      before: zero,
      after: last ? tail : zero,
      ends: last ? ends : now,
      rows: over,
      // A single shaped row is worked as one, whatever the gauge.
      fixed: over.every((many) => many === 1),
    };
  });
}

/** Whether a stretch is an edge that keeps its length: a rib, a cuff, a band. */
export function isEdge({ label, fabric }: Pick<Shape, 'label' | 'fabric'>): boolean {
  return /\brib|cuff|band|border|\bhem\b(?! to)|welt/iu.test(
    `${fabric} ${fabric === '' ? label : /rib/iu.test(label) ? label : ''}`,
  );
}
