import { workPiece, type Piece, type Row } from '../craft';
import { readPiece } from '../formulas';
import type { Workspace } from './workspace.svelte';

/** The plan of a piece in one size, and its rows. */
export interface WorkedPlan {
  readonly plan: Piece;
  readonly rows: readonly Row[];
}

/** A piece in one size, or why it cannot be worked. */
export type WorkedPiece = WorkedPlan | { readonly error: string | undefined };

/** So many rows are kept over all pieces: about 10 MB, and more than nine sizes of 10 000 rows. */
const mostRowsKept = 100_000;

const kept = new Map<string, WorkedPlan>();
let rowsKept = 0;

/** A plan and its rows, from its text, worked once for as long as it is asked for. */
export function workedPlan(text: string): WorkedPlan {
  const known = kept.get(text);
  if (known) {
    // What is asked for again goes last of those that go.
    kept.delete(text);
    kept.set(text, known);
    return known;
  }
  const plan = readPiece(text);
  const piece = { plan, rows: workPiece(plan) };
  kept.set(text, piece);
  rowsKept += piece.rows.length + 1;
  for (const [oldest, { rows }] of kept) {
    if (rowsKept <= mostRowsKept || oldest === text) break;
    kept.delete(oldest);
    rowsKept -= rows.length + 1;
  }
  return piece;
}

/** The plan and the rows of a piece in a size; a component that reads it follows that piece. */
export function workedPiece(workspace: Workspace, piece: string, size: string): WorkedPiece {
  const results = workspace.results(piece);
  const text = results.text(size, piece, 'piece');
  if (text !== undefined) return workedPlan(text);
  return { error: results.error(size, piece, 'piece')?.message };
}
