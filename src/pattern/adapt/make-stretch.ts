import { type Cell, type Entry, type PieceStretch, f, formula, value } from '../../notebook';
import type { PerSize } from '../read';
import { fabricOf, type Fabric } from './fabrics';
import { leftCells } from './left-stitches';
import type { BothWays, Making } from './making';
import { sizeOfStitches } from './numbers';
import { statedCell } from './adapting';
import type { GarmentPart, RowZone, StitchZone } from './parts';
import type { PieceCells } from './piece-cells';
import type { MadeRows, PieceRows } from './piece-rows';
import type { Shape } from './shape-of';
import { shouldersFollow, shoulderTaper } from './shoulders';

/** What a stretch of a piece is made with. */
export interface StretchOf<Of extends Shape = Shape> {
  readonly making: Making;
  readonly part: GarmentPart;
  readonly cells: PieceCells;
  readonly rows: PieceRows;
  readonly shape: Of;
  /** Its name in formulas. */
  readonly name: string;
  readonly zone: RowZone;
  readonly stitchZone: StitchZone;
  readonly fabric: Fabric;
  /** The count it begins on: a formula of the piece fitted again, and the pattern's numbers. */
  readonly from: string;
  readonly fromPrinted: PerSize;
}

/** A stretch both ways, and the formula of the count that it ends on, fitted again. */
export interface MadeStretch extends BothWays<PieceStretch> {
  readonly to: string;
}

/** What a kind of stretch has of its own, and the count it ends on where that is another. */
interface Own extends BothWays<object> {
  readonly to?: string;
}

type ShapeOf<Kind extends Shape['kind']> = Extract<Shape, { kind: Kind }>;

/** Makes a stretch both ways, with the cells of its numbers. */
export function makeStretch(of: StretchOf): MadeStretch {
  const { shape, name, fabric, from } = of;
  const { printed, mine, to = from } = ownOf(of, shape);
  const base = { kind: shape.kind, name, label: labelOf(of) };
  return {
    printed: { ...base, fabric: fabric.printed, ...printed } as PieceStretch,
    mine: { ...base, fabric: fabric.mine, ...mine } as PieceStretch,
    to,
  };
}

/** A rib that the pattern states no gauge for is worked to another fabric's swatch: its label says what is worked. */
function labelOf({ making, shape: { label, fabric } }: StretchOf): string {
  const rib = /\brib/iu;
  const isSwatched = making.adapting.pattern.gauges.some((gauge) => rib.test(gauge.fabric));
  return rib.test(fabric) && !rib.test(label) && !isSwatched ? `${label} in ${fabric}` : label;
}

function ownOf(of: StretchOf, shape: Shape): Own {
  switch (shape.kind) {
    case 'even':
      return even(of);
    case 'taper':
      return taper({ ...of, shape });
    case 'evenly':
      return evenly(of);
    case 'eachRepeat':
      return eachRepeat({ ...of, shape });
    case 'leave':
    case 'add':
      return ends({ ...of, shape });
  }
}

const message = ({ shape }: StretchOf): string => shape.label.toLowerCase();

const rowsOf = ({ rows, shape, zone, fabric, name }: StretchOf, needed?: string): MadeRows =>
  rows.of(shape, zone, fabric, name, needed);

const none: BothWays<Entry> = { printed: value(0), mine: value(0) };

function even(of: StretchOf): Own {
  const rows = rowsOf(of);
  return { printed: { rows: rows.printed }, mine: { rows: rows.mine } };
}

function taper(of: StretchOf<ShapeOf<'taper'>>): Own {
  const { cells, shape, stitchZone, name, from } = of;
  const { perRow, every, order } = shape;
  const what = `${message(of)}, to`;
  const printed = cells.count(shape.ends, stitchZone, what, `${name}_to`);
  const rule = { ...cells.ruleFor(shape.ends), ...ribRule(of), from: { count: from, perRow } };
  const shoulder = shoulderOf(of);
  if (shoulder) cells.furtherCells(what, printed, shoulder);
  const to = shoulder
    ? shoulder.name
    : shape.fixed
      ? `${from} ${shape.way === 'dec' ? '-' : '+'} STS(${perRow})`
      : cells.fitted(printed, stitchZone, rule, what, `${name}_to`).name;
  const shapings = `ABS(${from} - ${to}) / STS(${perRow})`;
  const rows = rowsOf(of, `${shapings} * ROWS(${every})`);
  const before = plainRows(of, rows, 'before');
  const after = plainRows(of, rows, 'after');
  const own = (side: keyof BothWays<Entry>): object => ({
    to: f(side === 'printed' ? printed.name : to),
    over: rows[side],
    perRow: value(perRow),
    every,
    before: before[side],
    after: after[side],
    order,
  });
  return { printed: own('printed'), mine: own('mine'), to };
}

/** The count of a shoulder, where the taper ends on one: it is as many as the body's, to which it is joined. */
function shoulderOf({ making: { parts, made }, part, shape }: StretchOf): Cell | undefined {
  if (!shouldersFollow(parts) || shape !== shoulderTaper(part, parts)) return undefined;
  return made.find((one) => one.part === parts.body)?.parting?.side;
}

/**
 * The repeat of the rib that a taper ends on, where the pattern keeps it in every size: k2, p2 rib over 46 (50, 54)
 * stitches is worked over a multiple of 4 plus 2. Only where the stitches that it begins on are even, as those picked up
 * along both sides of an armhole are, so that taking 2 in a row can come to it.
 */
function ribRule({ making, part, shape }: StretchOf): { multiple: number; plus: number } | undefined {
  if (part.piece.multiple || part !== making.parts.pickedUp?.part) return undefined;
  const after = part.shapes.slice(part.shapes.indexOf(shape) + 1);
  const next = after.find(({ fabric }) => fabric !== shape.fabric);
  const [, knit, purl] = /\bk ?(\d+),? *p ?(\d+)\b.*\brib/iu.exec(next?.fabric ?? '') ?? [];
  if (after.some(({ kind }) => kind !== 'even') || knit === undefined || purl === undefined) return undefined;
  const multiple = Number(knit) + Number(purl);
  const counts = shape.ends.flatMap((count) => (count === null ? [] : [count]));
  const plus = (counts[0] ?? 0) % multiple;
  const keeps = counts.every((count) => count >= multiple + plus && count % multiple === plus);
  return keeps && multiple % 2 === 0 && plus % 2 === 0 ? { multiple, plus } : undefined;
}

/** The plain rows of a taper: fitted again, the same share of its rows. */
function plainRows(
  { cells, shape, zone, name }: StretchOf<ShapeOf<'taper'>>,
  { cells: over }: MadeRows,
  called: 'before' | 'after',
): BothWays<Entry> {
  const values = shape[called];
  if (!over || values.every((many) => !many)) return none;
  const what = `${shape.label.toLowerCase()}, plain rows ${called}`;
  const printed = cells.rows(values, zone, what, `${name}_${called}`);
  const share = `ROUND(${printed.name} * ${over.mine.name} / ${over.printed.name})`;
  return {
    printed: f(printed.name),
    mine: f(`IF(${over.printed.name} > ROWS(0); ${share}; ROWS(0))`),
  };
}

function evenly(of: StretchOf): Own {
  const { cells, shape, stitchZone, name } = of;
  rowsOf(of);
  const what = `${message(of)}, to`;
  const printed = cells.count(shape.ends, stitchZone, what, `${name}_to`);
  const mine = cells.fitted(printed, stitchZone, cells.ruleFor(shape.ends), what, `${name}_to`);
  return {
    printed: { to: f(printed.name), ends: 'half' },
    mine: { to: f(mine.name), ends: 'half' },
    to: mine.name,
  };
}

function eachRepeat(of: StretchOf<ShapeOf<'eachRepeat'>>): Own {
  const { making, part, cells, shape, stitchZone, name, from, fromPrinted } = of;
  const { adapting, fabrics, scales } = making;
  rowsOf(of);
  const what = `${message(of)}, repeats`;
  const printed = statedCell(adapting, {
    values: shape.repeats,
    unit: 'number',
    size: sizeOfStitches[stitchZone],
    label: cells.labelled(what),
    name: `printed_${cells.short}_${name}_repeats`,
  });
  const rule = part.piece.multiple;
  const fills = (plus: number, multiple: number): boolean =>
    shape.repeats.every((many, size) => many === null || many * multiple + plus === fromPrinted[size]);
  const mine = adapting.collector.put(
    adapting.sections.again,
    formula(
      cells.labelled(what),
      rule && fills(rule.plus, rule.multiple)
        ? `(${from} - STS(${rule.plus})) / STS(${rule.multiple})`
        : `ROUND(${printed.name} * ${scales.across(stitchZone, fabricOf(part, fabrics))})`,
      { name: `${cells.short}_${name}_repeats_again` },
    ),
  );
  cells.furtherCells(what, printed, mine);
  const by = value(shape.by);
  return {
    printed: { repeats: f(printed.name), by },
    mine: { repeats: f(mine.name), by },
    to: `(${from} ${shape.by < 0 ? '-' : '+'} STS(${Math.abs(shape.by)}) * ${mine.name})`,
  };
}

function ends(of: StretchOf<ShapeOf<'leave' | 'add'>>): Own {
  const { making, part, cells, shape, stitchZone, from } = of;
  const atEnd = (values: PerSize): BothWays<Entry> & { count?: string } => {
    if (values.every((many) => !many)) return none;
    const { printed, mine } = leftCells(making, part, shape, values, stitchZone);
    cells.furtherCells(`${message(of)}, stitches at one end`, printed, mine);
    return { printed: f(printed.name), mine: f(mine.name), count: mine.name };
  };
  const [start, end] = [atEnd(shape.atStart), atEnd(shape.atEnd)];
  const sign = shape.kind === 'leave' ? '-' : '+';
  const change = [start, end].map(({ count }) => (count === undefined ? '' : ` ${sign} ${count}`)).join('');
  return {
    printed: { atStart: start.printed, atEnd: end.printed },
    mine: { atStart: start.mine, atEnd: end.mine },
    to: `(${from}${change})`,
  };
}
