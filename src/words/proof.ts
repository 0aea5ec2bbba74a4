import { workPiece } from '../craft';
import { linesOf } from './lines-of';
import type { PatternDocument } from './pattern-document';
import { recountPiece } from './recount';
import type { PatternSource } from './source';

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
      const { counts, problems, sides, ended } = recountPiece(texts, { sizes: labels, place });
      for (const { line, problem } of problems) {
        where.push({ ...at, key: lines[line]!.key, line: texts[line]!, problem });
      }
      if (problems.length > 0) return;
      for (const { line, row, side } of sides) {
        if (worked[row - 1]?.side === side) continue;
        const problem = `It calls row ${row} ${side}, and in the notebook that row is worked on the other side.`;
        where.push({ ...at, key: lines[line]!.key, line: texts[line]!, problem });
      }
      if (worked[0]?.side === 'WS' && !sides.some(({ row }) => row === 1)) {
        where.push({
          ...at,
          problem:
            'It does not say that row 1 is on the wrong side, and a piece begins on the right side unless it does.',
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
