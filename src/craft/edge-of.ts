import { CraftError } from './craft-error';
import { finite, listOf, oneOf, perCm, positive } from './numbers';
import type { EdgeStep, Row, Side } from './types';

/** What an edge is made of. */
export interface EdgeMeasured {
  /** The rows that reach the edge. */
  rows: number;
  /** The stitches left (bound off or held) or added along it. */
  stitches: number;
  /** cm along the edge, as it is worked. */
  length: number;
}

/**
 * An edge of worked rows, or the part of it that some stretches of the piece make: how many rows reach it, how many
 * stitches were left or added along it, and its length along every step.
 *
 * From one shaping to the next, and within a stretch, the edge runs straight: √((stitches / stitch gauge)² + (their rows' height)²). Stitches
 * left or added lie across it, each as wide as it is. Shaping across a row moves no edge.
 *
 * @param rows rows of `workPiece`, worked flat
 * @param side which edge, the right side facing
 * @param from, to the indexes of the first and the last stretch of the part, from 0; all of the piece unless told.
 *   Stitches left or added count where their own stretch is in the part.
 * @throws CraftError for a piece worked in the round, which has no edges, and where no row is in the part
 * @example
 * edgeOf(workPiece(cuff), 'left') // { rows: 2, stitches: 0, length: 2 }, for two rows 1 cm high
 *
 * Source: our own rule; the length of a slope by Pythagoras is common practice.
 */
export function edgeOf(rows: readonly Row[], side: Side, from = 0, to = Infinity): EdgeMeasured {
  oneOf(side, ['left', 'right'], 'The edge');
  listOf(rows, 'The rows of a piece', 1);
  if (rows[0]!.side === 'round') {
    throw new CraftError(
      'no-edge',
      'Work in the round has no edges at its sides: measure a piece worked flat.',
    );
  }
  const isIn = ({ stretch }: { stretch: number }): boolean => stretch >= from && stretch <= to;
  let [count, stitches, length, rise] = [0, 0, 0, 0];
  let stretch: number | undefined;
  const straight = (): void => {
    length += rise;
    rise = 0;
  };
  for (const row of rows) {
    const stepped = (row.steps ?? []).filter((step) => step[side] > 0);
    const along = stepped.filter(isIn).reduce((sum, step) => sum + step[side], 0);
    if (along > 0 || row.stretch !== stretch) straight();
    stretch = row.stretch;
    stitches += along;
    if (along > 0) length += along / perCm(row.fabric.stitches, "The fabric's stitch gauge");
    if (!isIn(row)) continue;
    count++;
    rise += positive(row.height, 'The height of a row');
    const shaped = finite(
      row.edges[side] - stepped.reduce((sum, step) => sum + signed(step, side), 0),
      'What a row changes at its edge',
    );
    if (shaped === 0) continue;
    length += Math.hypot(shaped / perCm(row.fabric.stitches, "The fabric's stitch gauge"), rise);
    rise = 0;
  }
  if (count === 0 && stitches === 0) {
    throw new CraftError(
      'no-rows',
      'This part of the edge has no rows: measure along stretches that have some.',
    );
  }
  straight();
  return { rows: count, stitches, length };
}

function signed(step: EdgeStep, side: Side): number {
  return step.kind === 'add' ? step[side] : -step[side];
}

/**
 * The edge that a part of a piece is shaped at: the one that gains or loses more stitches over its rows, the steps
 * that are its own included; the left one where both change alike.
 *
 * @example shapedSide(workPiece(cuff)) // 'left', as both edges of a cuff are alike
 *
 * Source: our own rule.
 */
export function shapedSide(rows: readonly Row[], from = 0, to = Infinity): Side {
  const moved = { left: 0, right: 0 };
  for (const row of rows) {
    const steps = row.steps ?? [];
    for (const side of ['left', 'right'] as const) {
      if (row.stretch >= from && row.stretch <= to) {
        moved[side] += Math.abs(row.edges[side] - steps.reduce((sum, step) => sum + signed(step, side), 0));
      }
      for (const step of steps) if (step.stretch >= from && step.stretch <= to) moved[side] += step[side];
    }
  }
  return moved.right > moved.left ? 'right' : 'left';
}
