import type { Piece } from '../craft';
import { readHowWorked } from './read-how-worked';

/*
 * A fabric, a stretch and a piece are not numbers, and a sheet holds only numbers and texts: so they stand in it as
 * texts, each made of the texts of its parts. JSON keeps every digit of a number, so nothing is lost on the way.
 */

/** The plan of a piece, from its text in an answer. The text is what `PIECE(…)` gives. */
export function readPiece(text: string): Piece {
  return JSON.parse(text) as Piece;
}

/** The text of a fabric, from its gauges per cm and, where rows differ in height, the cm of each row of a repeat. */
export function fabricText(stitches: number, rows: number, heights: readonly number[] = []): string {
  return JSON.stringify({ stitches, rows, ...(heights.length > 0 ? { heights } : {}) });
}

/** The text of a stretch: what it is, and the text of its fabric. */
export function stretchText(
  plan: Readonly<Record<string, string | number | readonly number[]>>,
  fabric: string,
): string {
  return `${JSON.stringify(plan).slice(0, -1)},"fabric":${fabric}}`;
}

/** The text of a piece, from how it is worked as its formula says it, and the texts of its stretches. */
export function pieceText(
  o: { worked: string; start: number; ends: string },
  stretches: readonly string[],
): string {
  const head = JSON.stringify({ name: '', ...readHowWorked(o.worked), start: o.start, ends: o.ends });
  return `${head.slice(0, -1)},"stretches":[${stretches.join(',')}]}`;
}
