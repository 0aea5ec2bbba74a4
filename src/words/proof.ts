import { workPiece } from '../craft';
import { allCells } from '../notebook';
import { linesOf } from './lines-of';
import type { PatternDocument } from './pattern-document';
import { startOf } from './piece-start';
import { recountPiece } from './recount';
import { shown } from './sentence';
import type { PatternSource } from './source';
import { toldOtherwise, type Meant } from './told-otherwise';

/** Whether a pattern recounts to its rows, and where not. */
export type Proof =
  { readonly proven: true } | { readonly proven: false; readonly where: readonly Unproven[] };

export interface Unproven {
  /** The cell of the piece. */
  readonly cell: string;
  readonly piece: string;
  readonly size: string;
  /** The key of the sentence; undefined where the rows as a whole differ. */
  readonly key?: string;
  /** The line as printed. */
  readonly line?: string;
  readonly problem: string;
}

/**
 * Counts the text of every piece again in every size, by a reader that knows nothing but the text, and compares with
 * the rows worked from the notebook.
 */
export function prove(document: PatternDocument, source: PatternSource): Proof {
  const where: Unproven[] = [];
  const labels = document.sizes.map(({ label }) => label);
  for (const part of document.parts) {
    const { cell } = part;
    if (part.kind !== 'piece' || cell === undefined) continue;
    const lines = linesOf(part);
    const texts = lines.map(({ text }) => text);
    document.sizes.forEach(({ id, label }, place) => {
      const at = { cell, piece: part.heading, size: label };
      const plan = source.plan(id, cell);
      if ('trouble' in plan) {
        where.push({ ...at, problem: plan.trouble });
        return;
      }
      const worked = workPiece(plan);
      const rows = worked.map((row) => row.count);
      const { counts, problems, says, ended } = recountPiece(texts, { sizes: labels, place });
      for (const { line, problem } of problems) {
        where.push({ ...at, key: lines[line]!.key, line: texts[line]!, problem });
      }
      if (problems.length > 0) return;
      const otherwise = toldOtherwise(says, plan, worked, meantOf(source, cell, id));
      for (const { line, problem } of otherwise) {
        where.push({
          ...at,
          ...(line === undefined ? {} : { key: lines[line]!.key, line: texts[line]! }),
          problem,
        });
      }
      if (!ended) where.push({ ...at, problem: 'It does not say what becomes of the last stitches.' });
      const row = rows.findIndex((count, number) => counts[number] !== count);
      if (row >= 0) {
        where.push({
          ...at,
          problem: `Row ${row + 1} has ${rows[row]} stitches in the notebook and ${counts[row] ?? 'no'} in the text.`,
        });
      } else if (rows.length !== counts.length) {
        where.push({
          ...at,
          problem: `The piece has ${rows.length} rows in the notebook and ${counts.length} in the text.`,
        });
      }
    });
  }
  return where.length === 0 ? { proven: true } : { proven: false, where };
}

/** What a piece is meant to be in a size, beside its plan. */
function meantOf(source: PatternSource, id: string, size: string): Meant {
  const cell = allCells(source.notebook).find((one) => one.id === id);
  if (cell?.kind !== 'piece') return { labels: [], edge: undefined };
  const labels = cell.stretches.map(({ label }) => label);
  const start = startOf(source, { cell });
  if (start.kind !== 'edge') return { labels, edge: undefined };
  const { id: pickUp, edge } = start.pickUp;
  return {
    labels,
    edge: edge.map(({ name, label }) => ({
      label: shown(label),
      stitches: source.number(size, pickUp, `${name}.share`) ?? 0,
    })),
  };
}
