import { listed } from '../../notebook/listed';
import {
  allCells,
  namesIn,
  readFormula,
  sameName,
  upstream,
  type CheckCell,
  type Named,
} from '../../notebook';
import type { Gathered } from '../gathered';
import type { PatternPart, Sentence } from '../pattern-document';
import { startOf } from '../piece-start';
import { shown, theirs, type Sentences } from '../sentence';
import { sizeList, type BySize } from '../size-list';
import { tableOf } from '../name-table';
import type { PatternSource } from '../source';

/** The joins that the notebook checks, as seams to make; undefined where it checks none. */
export function makingUpPart(
  source: PatternSource,
  found: Gathered,
  sentences: Sentences,
): PatternPart | undefined {
  const table = tableOf(source.notebook);
  const lines = allCells(source.notebook).flatMap((cell) =>
    cell.kind === 'check' ? joinLine(source, found, sentences, table, cell) : [],
  );
  if (found.pieces.length === 0) return undefined;
  const last = sentences.paragraph('finish', 'Weave in the ends, and block to the finished measurements.');
  return {
    key: 'making up',
    kind: 'making up',
    heading: 'Making up',
    blocks: [{ kind: 'list', key: 'making up list', items: [...lines, last] }],
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
  const first = sides.find(({ named }) => named)?.named;
  // A count that is compared on its way through one piece is no seam.
  if (!first || piecesOf(source, sides).size < 2) return [];
  const counts: BySize<number> = found.sizes.map(
    ({ id }) => source.number(id, first.cell, first.key) ?? null,
  );
  // Where its piece is in no size, there is nothing to join.
  if (counts.every((count) => count === null)) return [];
  const fails = found.sizes.filter(({ id }) => source.truth(id, cell.id, 'holds') === false);
  if (fails.length > 0) {
    sentences.notes.push({
      text: `${shown(cell.label)}: in ${fails.length > 1 ? 'sizes' : 'size'} ${listed(fails.map(({ label }) => shown(label)))} the sides do not match. ${cell.message}`,
      about: { cell: cell.id },
    });
  }
  // What is worked on the stitches of another piece is joined to it already.
  const grown = found.pieces.find((piece) =>
    sides.some(({ named }) => named?.cell === piece.cell.id && named.key === 'start'),
  );
  if (grown && startOf(source, grown).kind !== 'new') return [];
  const unit = /rows$/u.test(first.key) ? 'row' : 'st';
  const one = counts.every((count) => count === null || count === 1);
  const line = sentences.paragraph(
    `join ${cell.id}`,
    unit === 'row'
      ? '{join}: join row to row, {count} on each side.'
      : '{join}: join stitch to stitch, {count} on each side.',
    { join: theirs(cell.label), count: `${sizeList(counts)} ${one ? unit : `${unit}s`}` },
  );
  return [line];
}

/** One side of a join: what it stands for, where it is a name and no more, and the cells it is worked out from. */
interface Side {
  readonly named: Named | undefined;
  readonly cells: readonly string[];
}

/** The sides of `JOINS(a; b)`. */
function sidesOf(condition: string, table: ReadonlyMap<string, Named>): Side[] | undefined {
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
    const names = namesIn(side).map((name) => table.get(sameName(name)));
    const only = sameName(side.trim());
    return {
      named: names.find((one) => one && sameName(one.name) === only),
      cells: names.flatMap((one) => (one ? [one.cell] : [])),
    };
  });
}

/** The pieces that the sides of a join come from, by their ids: a count may be worked out from a piece. */
function piecesOf(source: PatternSource, sides: readonly Side[]): Set<string> {
  const { notebook } = source;
  const pieces = new Set(allCells(notebook).flatMap(({ id, kind }) => (kind === 'piece' ? [id] : [])));
  const from = sides.flatMap(({ cells }) =>
    cells.flatMap((cell) => (pieces.has(cell) ? [cell] : upstream(notebook, cell))),
  );
  return new Set(from.filter((cell) => pieces.has(cell)));
}
