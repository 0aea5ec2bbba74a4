import { type Cell, type PieceCell, formula, piece } from '../../notebook';
import { numbered } from '../../format';
import type { PerSize } from '../read';
import { pickedUpAlongArmhole } from './along-armhole';
import { makeStretch, type MadeStretch } from './make-stretch';
import type { BothWays, MadePart, Making } from './making';
import type { GarmentPart, RowZone } from './parts';
import { PieceCells } from './piece-cells';
import { PieceRows } from './piece-rows';
import { shouldersFollow } from './shoulders';
import { firstSideOf } from './shape-of';
import { shortName } from './cell-collector';

/** Makes a piece both ways, with the cells of its numbers. */
export function makePart(making: Making, part: GarmentPart): MadePart {
  const { sections, collector } = making.adapting;
  const { label, worked, ends, make } = part.piece;
  const cells = new PieceCells(making, part);
  const start = startOf(making, part, cells);
  // Said, since the count of a pattern's piece is a number and tells nothing of an edge.
  const startsOn =
    firstSideOf(part.piece, making.adapting.pattern.craft) === 'WS' ? { startsOn: 'WS' as const } : {};
  const begins = startFormula(making, part, start.mine);
  const stretches = stretchesOf(making, part, cells, begins.count);
  const asPrinted = piece(
    `${label}, as printed`,
    worked,
    start.printed.name,
    stretches.map((one) => one.printed),
    { name: `${cells.short}_printed`, ends, ...startsOn },
  );
  const printed = collector.put(sections.printedPieces, { ...asPrinted, aside: true }) as PieceCell;
  const mine = collector.put(
    sections.pieces,
    piece(
      label,
      worked,
      begins.formula,
      stretches.map((one) => one.mine),
      {
        name: `${cells.short}_again`,
        ends,
        ...startsOn,
        ...(make > 1 ? { note: makeNote(making, part) } : {}),
      },
    ),
  ) as PieceCell;
  const parting = partingOf(making, part, cells, mine);
  return {
    part,
    printed,
    mine,
    start: start.mine,
    stretches: stretches.map(({ mine: { name }, zone, rows }) => ({ name, zone, rows })),
    ...(parting ? { parting } : {}),
  };
}

/**
 * How many are made; where a piece is shaped at one edge, the second is its mirror image: common practice calls that
 * reversing the shaping.
 */
function makeNote({ made, parts }: Making, part: GarmentPart): string {
  const {
    piece: { make },
    shapes,
    base,
  } = part;
  const ends = shapes.filter(({ kind }) => kind === 'leave' || kind === 'add').length;
  const atOneEdge = shapes.some((shape) => shape.kind === 'taper' && shape.perRow === 1) || ends % 2 === 1;
  // What is picked up at the armhole and worked flat is joined to nothing but itself, so no join tells of its seam.
  if (part === parts.pickedUp?.part && part.piece.worked === 'flat')
    return `Make ${make}. Sew the seam of each from the underarm to the cuff, after the side seams.`;
  if (make !== 2 || !atOneEdge) return `Make ${make}.`;
  return made.some((one) => one.part === base && one.parting)
    ? 'Make 2: work the second on the last stitches, reversing the shaping.'
    : 'Make 2, reversing the shaping of the second.';
}

function startOf(making: Making, part: GarmentPart, cells: PieceCells): BothWays<Cell> {
  const { count, kind } = part.piece.start;
  const zone = part.startZone;
  const what = kind === 'new' ? 'start' : kind === 'from' ? 'stitches gone on with' : 'stitches picked up';
  const printed = cells.count(count, zone, what, 'start');
  const mine =
    pickedUpAlongArmhole(making, part, printed, what) ??
    cells.fitted(printed, zone, cells.ruleFor(count), what, 'start');
  return { printed, mine };
}

function stretchesOf(
  making: Making,
  part: GarmentPart,
  cells: PieceCells,
  start: string,
): (MadeStretch & { zone: RowZone; rows: boolean })[] {
  const rows = new PieceRows(making, part, cells);
  const used = new Set<string>();
  let from = start;
  let fromPrinted: PerSize = part.piece.start.count;
  return part.shapes.map((shape, at) => {
    const zone = part.rowZones[at]!;
    const made = makeStretch({
      making,
      part,
      cells,
      rows,
      shape,
      name: freeName(used, shortName(shape.label).slice(0, 20).replace(/_+$/u, '') || 'part'),
      zone,
      stitchZone: part.stitchZones[at]!,
      fabric: making.fabrics.for(shape.fabric),
      from,
      fromPrinted,
    });
    from = made.to;
    fromPrinted = shape.ends;
    return { ...made, zone, rows: shape.kind !== 'leave' && shape.kind !== 'add' };
  });
}

/**
 * Stitches that are gone on with are told by the piece they were left on, so that the words can name it.
 *
 * @returns the formula of the piece's start, and the name of the cell that has the count
 */
function startFormula({ made }: Making, part: GarmentPart, start: Cell): { formula: string; count: string } {
  const base = made.find((one) => one.part === part.base);
  const parting = base?.parting;
  const side = base?.part.piece.parted?.side;
  const same = side && part.piece.start.count.every((count, size) => count === side[size]);
  if (!base || !parting || !same) return { formula: start.name, count: start.name };
  return {
    formula: `(${base.mine.name}_end - ${parting.middle.name}) / 2`,
    count: parting.side.name,
  };
}

/** Where the last row is parted for a neck: the stitches of each side, and those between them. */
function partingOf(
  making: Making,
  part: GarmentPart,
  cells: PieceCells,
  mine: PieceCell,
): MadePart['parting'] {
  const { sections, collector } = making.adapting;
  const { parted } = part.piece;
  if (!parted) return undefined;
  const zone = part.startZone;
  const [ofSide, ofMiddle] = ['each side of the last row', 'middle of the last row'];
  const printedSide = cells.count(parted.side, zone, ofSide, 'side');
  const printedMiddle = cells.count(parted.middle, zone, ofMiddle, 'middle');
  // The body's whole repeats make it wider by leaps; a neck that took them up would grow and shrink from size to size,
  // so the shoulders do.
  const target = shouldersFollow(making.parts)
    ? `(${mine.name}_end - ${printedMiddle.name} * ${cells.across(zone)}) / 2`
    : undefined;
  const side = cells.fitted(printedSide, zone, { multiple: 1, plus: 0 }, ofSide, 'side', target);
  const middle = collector.put(
    sections.again,
    formula(cells.labelled(ofMiddle), `${mine.name}_end - 2 * ${side.name}`, {
      name: `${cells.short}_middle_sts`,
    }),
  );
  cells.furtherCells(ofMiddle, printedMiddle, middle);
  return { side, middle };
}

function freeName(used: Set<string>, wished: string): string {
  for (let at = 0; ; at++) {
    const name = numbered(wished, at);
    if (used.has(name)) continue;
    used.add(name);
    return name;
  }
}
