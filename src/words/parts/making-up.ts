import { allCells, namesIn, nameTable, readFormula, type CheckCell } from '../../notebook';
import type { Gathered } from '../gathered';
import type { PatternPart, Sentence } from '../pattern-document';
import { shown, theirs, type Sentences } from '../sentence';
import { listed, sizeList, type BySize } from '../size-list';
import type { PatternSource } from '../source';
import { sameName, type Named } from '../../notebook';

/** The joins that the notebook checks, as seams to make; undefined where it checks none. */
export function makingUpPart(
  source: PatternSource,
  found: Gathered,
  sentences: Sentences,
): PatternPart | undefined {
  const table = nameTable(source.notebook);
  const lines = allCells(source.notebook).flatMap((cell) =>
    cell.kind === 'check' ? joinLine(source, found, sentences, table, cell) : [],
  );
  if (lines.length === 0) return undefined;
  return {
    key: 'making up',
    kind: 'making up',
    heading: 'Making up',
    blocks: [{ kind: 'list', key: 'making up list', items: lines }],
  };
}

function joinLine(
  source: PatternSource,
  found: Gathered,
  sentences: Sentences,
  table: ReadonlyMap<string, Named>,
  cell: CheckCell,
): Sentence[] {
  const sides = sidesOf(cell.condition, table);
  if (!sides) return [];
  const pieces = new Set(
    found.pieces
      .filter((piece) => sides.some((side) => side?.cell === piece.cell.id))
      .map((piece) => piece.cell.id),
  );
  const known = sides.filter((side) => side !== undefined);
  const first = known[0];
  // A count compared with itself on its way through one piece is no seam.
  if (!first || sides.some((side) => side?.key === 'start') || isWithin(source, sides, pieces)) return [];
  const counts: BySize<number> = found.sizes.map(
    ({ id }) => source.number(id, first.cell, first.key) ?? null,
  );
  const unit = /rows$/u.test(first.key) ? 'row' : 'st';
  const fails = found.sizes.filter(({ id }) => source.truth(id, cell.id, 'holds') === false);
  const one = counts.every((count) => count === null || count === 1);
  const line = sentences.paragraph(
    `join ${cell.id}`,
    unit === 'row'
      ? '{join}: join row to row, {count} on each side.'
      : '{join}: join stitch to stitch, {count} on each side.',
    { join: theirs(cell.label), count: `${sizeList(counts)} ${one ? unit : `${unit}s`}` },
  );
  if (fails.length === 0) return [line];
  sentences.notes.push({
    text: `${shown(cell.label)} does not match in ${fails.length > 1 ? 'sizes' : 'size'} ${listed(fails.map(({ label }) => shown(label)))}: ${cell.message}`,
    about: { cell: cell.id },
  });
  return [line];
}

/** The sides of `JOINS(a; b)`, each the name it is, or undefined where it is more than a name. */
function sidesOf(condition: string, table: ReadonlyMap<string, Named>): (Named | undefined)[] | undefined {
  const inside = /^\s*=?\s*JOINS\s*\((.*)\)\s*$/isu.exec(condition)?.[1];
  if (inside === undefined || 'problem' in readFormula(condition)) return undefined;
  const sides: string[] = [''];
  let depth = 0;
  for (const mark of inside) {
    if (mark === '(') depth++;
    if (mark === ')') depth--;
    if (mark === ';' && depth === 0) sides.push('');
    else sides[sides.length - 1] += mark;
  }
  return sides.map((side) => {
    const names = namesIn(side);
    return names.length === 1 && sameName(names[0]!) === sameName(side.trim())
      ? table.get(sameName(names[0]!))
      : undefined;
  });
}

/** Whether all sides stand in one piece, or in one piece and a count it was worked to. */
function isWithin(
  source: PatternSource,
  sides: readonly (Named | undefined)[],
  pieces: ReadonlySet<string>,
): boolean {
  if (pieces.size > 1) return false;
  const [only] = pieces;
  if (only === undefined) return true;
  const own = allCells(source.notebook).find(({ id }) => id === only);
  const text = JSON.stringify(own);
  return sides.every(
    (side) =>
      side === undefined ||
      side.cell === only ||
      new RegExp(String.raw`(?<![\p{L}\p{N}_])${side.name}(?![\p{L}\p{N}_])`, 'iu').test(text),
  );
}
