import type { Stretch } from '../../craft';
import { isolated } from './markup';
import type { PlannedSize, SchematicPiece } from './types';

/** Where a measurement is taken in one size; rows by their index. */
export type MeasurePosition =
  | { readonly on: 'start' | 'end' }
  | { readonly on: 'across'; readonly row: number }
  /** `tier` 0 is nearest to the piece. */
  | { readonly on: 'side'; readonly from: number; readonly to: number; readonly tier: number }
  | { readonly on: 'step'; readonly stretch: number; readonly end: 'start' | 'end' | 'both' };

/** One measurement of a piece, in all sizes. */
export interface Measure {
  readonly piece: string;
  readonly label: string;
  /** 'round' is a width in the round: the circumference, drawn at half. */
  readonly of: 'width' | 'round' | 'length';
  /** cm in each size, null where the size has none. */
  readonly values: readonly (number | null)[];
  readonly at: readonly (MeasurePosition | null)[];
}

/** The rows of one size, by the stretches they are worked in. */
interface ByStretch {
  readonly size: PlannedSize;
  readonly edges: readonly number[];
  readonly runs: ReadonlyMap<number, readonly [first: number, last: number]>;
}

/**
 * What the trade writes at a schematic: the width where the piece starts and ends and wherever it differs from stretch
 * to stretch; the stitches left or added at an edge; the length of each part, from where stitches were left to the
 * end (the depth of an armhole), and in all. A part is a stretch; a single shaped row goes with the stretch it leads
 * to, gathering with what it gathers.
 *
 * Every number is read off the worked rows of its size.
 *
 * @example
 * measuresOf(back).map(({ label, values }) => [label, values[0]])
 * // [['Width at the start', 54.3], ['Width at the end', 35.7], ['Hem to underarm', 35], …]
 */
export function measuresOf(piece: SchematicPiece): Measure[] {
  const sizes = piece.sizes.map(byStretch);
  const stretches = longestPlan(piece);
  if (sizes.every((size) => size === null)) return [];
  return [
    ...widths(piece, sizes, stretches),
    ...steps(piece, sizes, stretches),
    ...lengths(piece, sizes, stretches),
  ];
}

/** The stretches of the piece: the same in every size, though a size that cannot be worked has no plan. */
function longestPlan(piece: SchematicPiece): readonly (Stretch | undefined)[] {
  const plan = piece.sizes.find((size) => size.plan)?.plan;
  if (plan) return plan.stretches;
  const most = Math.max(0, ...piece.sizes.map((size) => size.rows?.at(-1)?.stretch ?? -1)) + 1;
  return Array.from({ length: most }, () => undefined);
}

function byStretch(size: PlannedSize): ByStretch | null {
  const { rows } = size;
  if (!rows || rows.length === 0) return null;
  const edges = [0];
  const runs = new Map<number, [number, number]>();
  rows.forEach((row, i) => {
    edges.push(edges[i]! + row.height);
    const run = runs.get(row.stretch);
    if (run) run[1] = i;
    else runs.set(row.stretch, [i, i]);
  });
  return { size, edges, runs };
}

type Sizes = readonly (ByStretch | null)[];

function widths(piece: SchematicPiece, sizes: Sizes, stretches: readonly (Stretch | undefined)[]): Measure[] {
  const rowAt = (find: (size: ByStretch) => number | undefined): (number | null)[] =>
    sizes.map((size) => (size ? (find(size) ?? null) : null));
  const found: { name: string; rows: (number | null)[] }[] = [
    { name: '', rows: rowAt(() => 0) },
    // Of shaped rows that follow each other directly, a crown's, only the last is a width to measure.
    ...stretches.flatMap((stretch, at) =>
      isSingle(stretch) && isSingle(stretches[at + 1])
        ? []
        : [{ name: nameOf(piece, at), rows: rowAt(({ runs }) => runs.get(at)?.[1]) }],
    ),
  ].filter(({ rows }) => rows.some((row) => row !== null));
  const widthOf = (rows: (number | null)[]) =>
    rows.map((row, i) => (row === null ? null : sizes[i]!.size.rows![row]!.width));

  // Stretches that follow each other at one width are measured once.
  const groups: { name: string; rows: (number | null)[]; values: (number | null)[] }[] = [];
  for (const { name, rows } of found) {
    const values = widthOf(rows);
    const last = groups.at(-1);
    const alike = last?.values.every((value, i) => {
      return value === null || values[i] === null || Math.abs(value - values[i]!) < 1e-9;
    });
    if (!last || !alike) groups.push({ name, rows: [...rows], values: [...values] });
    else {
      rows.forEach((row, i) => {
        last.rows[i] = row ?? last.rows[i]!;
        last.values[i] = values[i] ?? last.values[i]!;
      });
    }
  }
  // The last row is the end, whichever stretch it is in: one without rows in a size does not end it there.
  const lastGroup = groups.at(-1)!;
  sizes.forEach((size, i) => {
    if (!size) return;
    lastGroup.rows[i] = size.size.rows!.length - 1;
    lastGroup.values[i] = size.size.rows!.at(-1)!.width;
  });
  const round = piece.worked === 'round';
  const word = round ? 'Round' : 'Width';
  return groups.map(({ name, rows, values }, at): Measure => {
    const first = at === 0;
    const last = at === groups.length - 1;
    return {
      piece: piece.id,
      label:
        first && last
          ? word
          : first
            ? `${word} at the start`
            : last
              ? `${word} at the end`
              : `${word} after ${name}`,
      of: round ? 'round' : 'width',
      values,
      at: rows.map((row) => {
        if (row === null) return null;
        return first ? { on: 'start' } : last ? { on: 'end' } : { on: 'across', row };
      }),
    };
  });
}

/** A stretch that is one shaped row. */
function isSingle(stretch: Stretch | undefined): boolean {
  return stretch?.kind === 'evenly' || stretch?.kind === 'eachRepeat';
}

function steps(piece: SchematicPiece, sizes: Sizes, stretches: readonly (Stretch | undefined)[]): Measure[] {
  return stretches.flatMap((stretch, at): Measure[] => {
    if (stretch?.kind !== 'leave' && stretch?.kind !== 'add') return [];
    const found = sizes.map((size) => {
      const plan = size?.size.plan?.stretches[at];
      const row = size?.size.rows!.findIndex((worked) => worked.stretch > at) ?? -1;
      if ((plan?.kind !== 'leave' && plan?.kind !== 'add') || row < 0) return null;
      const gauge = size!.size.rows![row]!.fabric.stitches;
      return { start: plan.atStart / gauge, end: plan.atEnd / gauge };
    });
    const round = piece.worked === 'round';
    const measure = (label: string, end: 'start' | 'end' | 'both'): Measure => ({
      piece: piece.id,
      label,
      of: 'width',
      values: found.map((size) => (size ? size[end === 'both' ? 'start' : end] : null)),
      at: found.map((size) => (size && !round ? { on: 'step', stretch: at, end } : null)),
    });
    const name = nameOf(piece, at);
    if (found.every((size) => !size || size.start === size.end)) {
      return found.some((size) => size && size.start > 0) ? [measure(`${name}, each edge`, 'both')] : [];
    }
    return (['start', 'end'] as const)
      .filter((end) => found.some((size) => size && size[end] > 0))
      .map((end) => measure(`${name}, at the ${end} of the row`, end));
  });
}

function lengths(
  piece: SchematicPiece,
  sizes: Sizes,
  stretches: readonly (Stretch | undefined)[],
): Measure[] {
  const kindOf = (at: number): Stretch['kind'] | undefined => stretches[at]?.kind;
  const single = (at: number): boolean => isSingle(stretches[at]);
  const parts: number[][] = [];
  let open = true;
  stretches.forEach((_stretch, at) => {
    if (kindOf(at) === 'leave' || kindOf(at) === 'add') {
      open = true;
      return;
    }
    if (!sizes.some((size) => size?.runs.has(at))) return;
    const part = parts.at(-1);
    const before = part?.at(-1);
    const joined =
      part !== undefined &&
      !open &&
      (kindOf(at) === 'gather' ||
        (before !== undefined && part.every(single) && sameFabric(sizes, before, at)));
    if (joined) part.push(at);
    else parts.push([at]);
    open = false;
  });

  const lengthOf = (of: string, first: number, last: number, tier: number): Measure => {
    const at = sizes.map((size): MeasurePosition | null => {
      const runs = [...(size?.runs ?? [])].filter(([stretch]) => stretch >= first && stretch <= last);
      if (runs.length === 0) return null;
      return { on: 'side', from: runs[0]![1][0], to: runs.at(-1)![1][1], tier };
    });
    return {
      piece: piece.id,
      label: of,
      of: 'length',
      values: at.map((position, i) =>
        position?.on === 'side' ? sizes[i]!.edges[position.to + 1]! - sizes[i]!.edges[position.from]! : null,
      ),
      at,
    };
  };
  if (parts.length < 2) return [lengthOf('Length', 0, stretches.length, 0)];

  const each = parts.map((part) => lengthOf(partName(piece, part, sizes), part[0]!, part.at(-1)!, 0));
  const fromSteps = stretches.flatMap((stretch, at) => {
    if (stretch?.kind !== 'leave' && stretch?.kind !== 'add') return [];
    if (parts.filter((part) => part[0]! > at).length < 2) return [];
    return [lengthOf(`From ${nameOf(piece, at)} to the end`, at, stretches.length, 1)];
  });
  // Two depths that end together stand beside each other.
  const depths = fromSteps.map((depth, i) => withTier(depth, 1 + i));
  const tiers = 1 + depths.length;
  return [...each, ...depths, lengthOf('Length in all', 0, stretches.length, tiers)];
}

function withTier(measure: Measure, tier: number): Measure {
  return {
    ...measure,
    at: measure.at.map((position) => (position?.on === 'side' ? { ...position, tier } : position)),
  };
}

function sameFabric(sizes: Sizes, a: number, b: number): boolean {
  return sizes.every((size) => {
    const of = (at: number) => {
      const run = size?.runs.get(at);
      return run ? size!.size.rows![run[0]]!.fabric : undefined;
    };
    const [one, other] = [of(a), of(b)];
    return !one || !other || (one.stitches === other.stitches && one.rows === other.rows);
  });
}

/** A part is called after its longest stretch; where none is more than half of it, after its first and its last. */
function partName(piece: SchematicPiece, part: readonly number[], sizes: Sizes): string {
  const rowsIn = (at: number): number =>
    sizes.reduce((sum, size) => {
      const run = size?.runs.get(at);
      return sum + (run ? run[1] - run[0] + 1 : 0);
    }, 0);
  const longest = [...part].sort((a, b) => rowsIn(b) - rowsIn(a))[0]!;
  const all = part.reduce((sum, at) => sum + rowsIn(at), 0);
  if (rowsIn(longest) * 2 > all || part.length === 1) return nameOf(piece, longest);
  return `${nameOf(piece, part[0]!)} … ${nameOf(piece, part.at(-1)!)}`;
}

/** A stretch as the person called it. */
export function nameOf(piece: SchematicPiece, at: number): string {
  const label = piece.sizes.find((size) => size.plan?.stretches[at]?.label)?.plan?.stretches[at]?.label;
  return label ? isolated(label) : `stretch ${at + 1}`;
}
