import { joinArmhole } from '../../craft';
import type { PerSize, StatedPattern, StatedPiece } from '../read';
import { isEdge, shapesOf, type Shape } from './shape-of';

/** Which of the wishes a count of stitches follows. */
export type StitchZone = 'body' | 'arm' | 'wrist' | 'other';
/** Which of the wishes a length in rows follows; an edge keeps its own. */
export type RowZone = 'lower' | 'armhole' | 'sleeve' | 'kept';

/** A piece of the pattern with what each of its stretches follows. */
export interface GarmentPart {
  readonly piece: StatedPiece;
  readonly role: 'body' | 'sleeve' | 'other';
  readonly shapes: readonly Shape[];
  readonly rowZones: readonly RowZone[];
  readonly startZone: StitchZone;
  readonly stitchZones: readonly StitchZone[];
  /** The piece whose stitches it goes on with. */
  readonly base: GarmentPart | undefined;
}

/** A sleeve that grows out of the armhole: how its stitches come of the rows and the underarm. */
export interface PickedUp {
  readonly part: GarmentPart;
  readonly pick: number;
  readonly of: number;
  readonly withUnderarm: boolean;
}

export interface Parts {
  readonly all: readonly GarmentPart[];
  /** The piece that the lengths of the body are measured on: the back, else the first of the body. */
  readonly body: GarmentPart | undefined;
  readonly sleeve: GarmentPart | undefined;
  readonly pickedUp: PickedUp | undefined;
}

const bodyWords = /back|front|body|yoke|panel|side|piece|shoulder|hat|skirt|vest/iu;

/** The pieces of a pattern with what each part of them follows: the body, the arm, lengths, or the pattern as it is. */
export function partsOf(pattern: StatedPattern): Parts {
  const all: GarmentPart[] = [];
  for (const piece of pattern.pieces) {
    const role = /sleeve|cuff/iu.test(piece.label)
      ? 'sleeve'
      : bodyWords.test(piece.label)
        ? 'body'
        : 'other';
    const shapes = shapesOf(piece, pattern.craft);
    const base = piece.start.kind === 'from' ? baseOf(all, piece) : undefined;
    const rowZones = rowZonesOf(role, shapes, base);
    all.push({ piece, role, shapes, rowZones, base, ...stitchZonesOf(role, piece, shapes) });
  }
  const bodies = all.filter(
    ({ role, base, piece }) => role === 'body' && !base && piece.start.kind !== 'picked up',
  );
  const body = bodies.find(({ piece }) => /^back\b/iu.test(piece.label)) ?? bodies[0];
  const sleeve = all.find(({ role, base }) => role === 'sleeve' && !base);
  return {
    all,
    body,
    sleeve,
    pickedUp: body && sleeve ? pickedUpOf(body, sleeve, pattern.sizes.length) : undefined,
  };
}

function baseOf(before: readonly GarmentPart[], piece: StatedPiece): GarmentPart | undefined {
  const start = piece.start as { piece?: string | undefined };
  const named = start.piece?.toLowerCase();
  const found = named && before.find(({ piece: { label } }) => label.toLowerCase() === named);
  return found || before.findLast(({ piece: { ends } }) => ends === 'held');
}

function rowZonesOf(
  role: GarmentPart['role'],
  shapes: readonly Shape[],
  base: GarmentPart | undefined,
): RowZone[] {
  let above = base ? base.rowZones.at(-1) === 'armhole' : false;
  return shapes.map((shape): RowZone => {
    if (role === 'other') return 'kept';
    if (role === 'body' && shape.kind === 'leave') above = true;
    if (isEdge(shape) && !shape.fixed) return 'kept';
    if (role === 'sleeve') return 'sleeve';
    return above ? 'armhole' : 'lower';
  });
}

function stitchZonesOf(
  role: GarmentPart['role'],
  piece: StatedPiece,
  shapes: readonly Shape[],
): { startZone: StitchZone; stitchZones: StitchZone[] } {
  if (role !== 'sleeve') {
    const zone = role === 'body' ? 'body' : 'other';
    return { startZone: zone, stitchZones: shapes.map(() => zone) };
  }
  const fromTop = piece.start.kind === 'picked up';
  const [first, last] = fromTop ? (['arm', 'wrist'] as const) : (['wrist', 'arm'] as const);
  const main = shapes.findIndex(({ kind }) => kind === 'taper');
  return {
    startZone: first,
    stitchZones: shapes.map((_shape, at) => (main >= 0 && at >= main ? last : first)),
  };
}

export const addLists = (lists: readonly PerSize[], sizes: number): PerSize =>
  Array.from({ length: sizes }, (_size, at) =>
    lists.reduce<number | null>(
      (all, list) => (all === null || list[at] === null || list[at] === undefined ? null : all + list[at]),
      0,
    ),
  );

/** The rows of a piece in a zone, all of them or only those that follow the gauge. */
export function rowsIn(
  { shapes, rowZones }: GarmentPart,
  zone: RowZone,
  sizes: number,
  elasticOnly = false,
): PerSize {
  return addLists(
    shapes
      .filter((shape, at) => rowZones[at] === zone && !(elasticOnly && shape.fixed))
      .map(({ rows }) => rows),
    sizes,
  );
}

/** The stitches left at one underarm of a piece that has two. */
export function underarmOf({ shapes, piece }: GarmentPart, sizes: number): PerSize {
  const left = shapes.filter((shape): shape is Shape & { kind: 'leave' } => shape.kind === 'leave');
  const sides = /^fronts?\b|(?:left|right) front/iu.test(piece.label) && piece.make === 2 ? 1 : 2;
  return addLists(
    left.flatMap(({ atStart, atEnd }) => [atStart, atEnd]),
    sizes,
  ).map((all) => (all === null ? null : all / sides));
}

function pickedUpOf(body: GarmentPart, sleeve: GarmentPart, sizes: number): PickedUp | undefined {
  const { start } = sleeve.piece;
  if (start.kind !== 'picked up') return undefined;
  const rows = rowsIn(body, 'armhole', sizes);
  const under = underarmOf(body, sizes);
  const gives = (pick: number, of: number, withUnderarm: boolean): boolean =>
    rows.every((sideRows, at) => {
      const count = start.count[at];
      if (sideRows === null || count === null || count === undefined || under[at] === null)
        return count === null;
      if (!Number.isInteger(under[at]) || sideRows === 0) return false;
      const underarm = withUnderarm ? 2 * under[at]! : 0;
      // Too few for half a stitch on a side: nothing would be picked up.
      if (underarm === 0 && 2 * sideRows * pick < of) return false;
      return joinArmhole({ sideRows, pick, of, underarm, seam: 0 }) === count;
    });
  const ratios: (readonly [number, number])[] =
    start.pick && start.of
      ? [[start.pick, start.of]]
      : Array.from({ length: 8 * 12 }, (_one, at) => [1 + (at % 12), 1 + Math.floor(at / 12)] as const);
  for (const [pick, of] of ratios) {
    for (const withUnderarm of [true, false]) {
      if (gives(pick, of, withUnderarm)) return { part: sleeve, pick, of, withUnderarm };
    }
  }
  return undefined;
}
