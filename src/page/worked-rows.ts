import { workPiece, type Piece, type Row } from '../craft';
import { readPiece } from '../sheet/piece-text';
import type { Desk } from './desk.svelte';

/** A piece in one size: its plan and its rows, or why it cannot be worked. */
export type WorkedPiece =
  { readonly plan: Piece; readonly rows: readonly Row[] } | { readonly trouble: string | undefined };

const known = new Map<string, WorkedPiece & { plan: Piece }>();

/** The plan in a text and its rows, worked once for as long as the plan is about. */
export function workedText(text: string): WorkedPiece {
  let piece = known.get(text);
  if (!piece) {
    if (known.size > 400) known.clear();
    const plan = readPiece(text);
    known.set(text, (piece = { plan, rows: workPiece(plan) }));
  }
  return piece;
}

/** The plan and the rows of a piece in a size; a component that reads it follows that piece. */
export function workedPiece(desk: Desk, piece: string, size: string): WorkedPiece {
  const results = desk.results(piece);
  const text = results.text(size, piece, 'piece');
  if (text !== undefined) return workedText(text);
  return { trouble: results.trouble(size, piece, 'piece')?.message };
}
