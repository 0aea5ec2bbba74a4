import { drawnSize } from './missing';
import type { SchematicPiece, SchematicSpec } from './types';

/**
 * So many times as long as it is wide a piece picked up along an edge is a strip, and not a sleeve; any other is
 * narrow, and a strip if it is also so much longer than the pieces that are not.
 */
const strip = { pickedUp: 3, narrow: 6, longer: 1.25 };

/**
 * The strips among the pieces: bands and borders that lie along the foot, and those so long and narrow beside the others, a belt or
 * a tie, that to scale they would leave the others no room. They are drawn below, shortened where they have to be.
 *
 * @returns their ids
 */
export function stripsOf(spec: SchematicSpec): Set<string> {
  const sides = spec.pieces.map((piece) => ({ piece, ...sidesOf(spec, piece) }));
  const lies = (one: (typeof sides)[number]): boolean =>
    one.piece.lies === 'along' && one.long >= strip.pickedUp * one.short;
  const narrow = (one: (typeof sides)[number]): boolean => one.long > strip.narrow * one.short;
  const longest = Math.max(0, ...sides.filter((one) => !lies(one) && !narrow(one)).map(({ long }) => long));
  return new Set(
    sides
      .filter((one) => lies(one) || (longest > 0 && narrow(one) && one.long > strip.longer * longest))
      .map(({ piece }) => piece.id),
  );
}

/** The longer and the shorter side of a piece as it is drawn, in cm; 0 where it is not. */
function sidesOf(spec: SchematicSpec, piece: SchematicPiece): { long: number; short: number } {
  const rows = drawnSize(spec, piece)?.rows ?? [];
  const flat = piece.worked === 'round' ? 0.5 : 1;
  const width = rows.reduce((most, row) => Math.max(most, row.width * flat), 0);
  const height = rows.reduce((sum, row) => sum + row.height, 0);
  return { long: Math.max(width, height), short: Math.min(width, height) };
}
