import { joinWithAnd } from '../../../format';
import { allCells, upstream, type CheckCell, type Named, tableOf } from '../../../notebook';
import { sameName } from '../../../formulas';
import type { Gathered } from '../gathered';
import type { PatternPart, Sentence } from '../../pattern-document';
import { startOf } from '../piece-start';
import { shown, theirs, type Sentences } from '../sentence';
import { counted, sizeList, type BySize } from '../size-list';
import type { PatternSource } from '../../source';
import { argumentsOf, argumentTokens } from '../work-out';

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
    blocks: [
      {
        kind: 'list',
        key: 'making up list',
        items: [...lines, ...heldLines(source, found, sentences), last],
      },
    ],
  };
}

/**
 * Stitches that wait on a holder between two sides, and that no piece goes on with: left as they are they would run.
 * Common practice: they are bound off, or worked into the edging of the neck.
 */
function heldLines(source: PatternSource, { pieces, sizes }: Gathered, sentences: Sentences): Sentence[] {
  if (source.notebook.settings.craft !== 'knitting') return [];
  return pieces.flatMap((piece) => {
    const start = startOf(source, piece);
    if (start.kind !== 'stitches' || !start.isSide || !start.held) return [];
    const counts = piece.sizes.map(
      ({ plan }, sizeIndex) =>
        (source.number(sizes[sizeIndex]!.id, start.piece, 'end') ?? 0) - 2 * plan.start,
    );
    if (counts.some((count) => count <= 0)) return [];
    return [
      sentences.paragraph(
        `held ${piece.cell.id}`,
        '{piece}: bind off the {count} in the middle, or work them into an edging.',
        { piece: theirs(start.of), count: counted(counts, 'st') },
      ),
    ];
  });
}

function joinLine(
  source: PatternSource,
  found: Gathered,
  sentences: Sentences,
  table: ReadonlyMap<string, Named>,
  cell: CheckCell,
): Sentence[] {
  const sides = sidesOf(cell.condition, table);
  // A count that is compared on its way through one piece is no seam.
  if (!sides || piecesOf(source, found, sides).size < 2) return [];
  const counts: BySize<number> = found.sizes.map(
    ({ id }) => wholeOf(argumentsOf(source, id, cell.condition, joins) ?? []) ?? null,
  );
  // Where its piece is in no size, there is nothing to join.
  if (counts.every((count) => count === null)) return [];
  const fails = found.sizes.filter(({ id }) => source.truth(id, cell.id, 'holds') === false);
  if (fails.length > 0) {
    sentences.notes.push({
      text: `${shown(cell.label)}: in ${fails.length > 1 ? 'sizes' : 'size'} ${joinWithAnd(fails.map(({ label }) => shown(label)))} the sides do not match. ${cell.message}`,
      about: { cell: cell.id },
    });
  }
  // What is worked on the stitches of another piece is joined to it already.
  const grown = found.pieces.find((piece) =>
    sides.some(
      ({ names: [only], worked }) => !worked && only?.cell === piece.cell.id && only.key === 'start',
    ),
  );
  if (grown && startOf(source, grown).kind !== 'new') return [];
  const unit = sides.some(({ names }) => names.some(({ key }) => /rows$/u.test(key))) ? 'row' : 'st';
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

/** One side of a join: the names in it, and whether it is more than one name by itself. */
interface Side {
  readonly names: readonly Named[];
  readonly worked: boolean;
}

const joins = 'JOINS';

/** The sides of `JOINS(a; b)`; a side may be a sum of stretches. */
function sidesOf(condition: string, table: ReadonlyMap<string, Named>): Side[] | undefined {
  return argumentTokens(condition, joins)?.map((tokens) => ({
    names: tokens.flatMap(({ kind, text }) => {
      const named = kind === 'name' ? table.get(sameName(text)) : undefined;
      return named ? [named] : [];
    }),
    worked: tokens.length > 1,
  }));
}

/** The first of the sides that comes to a whole count. */
function wholeOf(sides: readonly (number | undefined)[]): number | undefined {
  return sides
    .map((side) =>
      side !== undefined && Math.abs(side - Math.round(side)) < 1e-9 ? Math.round(side) : undefined,
    )
    .find((side) => side !== undefined);
}

/** The written pieces that the sides of a join come from, by their ids: a count may be worked out from a piece. */
function piecesOf({ notebook }: PatternSource, { pieces }: Gathered, sides: readonly Side[]): Set<string> {
  const written = new Set(pieces.map(({ cell }) => cell.id));
  const from = sides.flatMap(({ names }) =>
    names.flatMap(({ cell }) => (written.has(cell) ? [cell] : upstream(notebook, cell))),
  );
  return new Set(from.filter((cell) => written.has(cell)));
}
