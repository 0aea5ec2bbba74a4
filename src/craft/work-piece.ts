import { CraftError } from './craft-error';
import type { Param } from './message';
import { messageOf, numberParam } from './message-parts';
import { gather } from './gather';
import { listOf, oneOf, perCm, positive, rows, stitches, wholeCount, widthOf } from './numbers';
import { RowEdges } from './row-edges';
import type { PerCm, Stitches } from './numbers';
import { shapeEachRepeat } from './shape-each-repeat';
import { spaceEvenly } from './space-evenly';
import { taperFrom } from './taper';
import type { Fabric, Piece, Row, Stretch } from './types';

/** Far more than a garment has; a piece this long is still worked while one waits. */
const mostRowsOfAPiece = 200_000;

/**
 * A piece of a garment, row by row: the one list from which plots, schematic, areas, yarn and words all come.
 *
 * The piece starts with a count and goes through its stretches in order:
 * - `even`: rows without shaping;
 * - `taper`: see `taper`; its first row is on whichever side the piece has come to;
 * - `evenly`: one row, shaped evenly across to the count `to`;
 * - `eachRepeat`: one row, `by` stitches more (or fewer) in each repeat;
 * - `gather`: rows of "(so many plain, 2 together) around";
 * - `leave`, `add`: stitches bound off or held, or cast on, at the start or the end of the next row; they have no row
 *   of their own, so the change falls on the next row worked;
 * - `rows`: the count after each row, as a list.
 *
 * Each row says what it gained or lost at either edge (`RowEdges` has the rules), from which `edgeOf` measures an edge.
 *
 * A row's width is its count over its fabric's stitch gauge; in the round that is the circumference. Its height is
 * 1 / the fabric's row gauge, or its own where the fabric gives `heights`, cycled from the stretch's first row.
 * Flat, row 1 is on the right side unless told and sides alternate; in the round every row is a round.
 *
 * @throws CraftError where a count falls below one stitch, where a stretch cannot be worked (saying which), where
 *   `leave` or `add` has no row after it, and beyond 200 000 rows
 * @example
 * workPiece({
 *   name: 'Cuff', worked: 'flat', start: 28,
 *   stretches: [{ kind: 'even', rows: 2, fabric: { stitches: 1.4, rows: 1 } }],
 * })
 * // [{ number: 1, side: 'RS', stretch: 0, count: 28, change: 0, edges: { left: 0, right: 0 }, width: 20, height: 1, fabric },
 * //  { number: 2, side: 'WS', … }]
 *
 * Source: common practice.
 */
export function workPiece(piece: Piece): Row[] {
  const worked = oneOf(piece.worked, ['flat', 'round'], 'How a piece is worked');
  const startsOn = oneOf(piece.startsOn ?? 'RS', ['RS', 'WS'], 'The side of the first row');
  if (piece.ends !== undefined) oneOf(piece.ends, ['bound off', 'held'], 'What becomes of the last stitches');
  listOf(piece.stretches, 'The stretches of a piece');

  const sideOf = (number: number): Row['side'] => {
    if (worked === 'round') return 'round';
    return (number % 2 === 1) === (startsOn === 'RS') ? 'RS' : 'WS';
  };
  const done: Row[] = [];
  const edges = new RowEdges();
  let count = stitches(piece.start, 'The count a piece starts with');
  let lastWorked: Stitches = count;
  let waiting: Param | null = null;

  piece.stretches.forEach((stretch, index) => {
    const label = stretchName(stretch, index);
    try {
      const fabric = fabricOf(stretch?.fabric);
      if (stretch.kind === 'leave' || stretch.kind === 'add') {
        count = leftOrAdded(count, stretch);
        edges.step(stretch, index, sideOf(done.length + 1));
        waiting = label;
        return;
      }
      if (stretch.kind === 'taper' && stretch.edge !== undefined)
        oneOf(stretch.edge, ['left', 'right'], 'The edge of a taper');
      const counts = countsOf(stretch, count, sideOf(done.length + 1));
      if (done.length + counts.length > mostRowsOfAPiece) throw tooManyRows();
      counts.forEach((after, i) => {
        const number = done.length + 1;
        const side = sideOf(number);
        done.push({
          number,
          side,
          stretch: index,
          fabric: stretch.fabric,
          count: after,
          change: after - lastWorked,
          ...edges.row(stretch, after - (counts[i - 1] ?? count), side),
          width: widthOf(after, fabric.stitches),
          height: fabric.heights[i % fabric.heights.length] as number,
        });
        lastWorked = after;
        waiting = null;
      });
      count = counts.at(-1) ?? count;
    } catch (error) {
      // A person with eight stretches in front of them has to be told which one it is.
      throw error instanceof CraftError
        ? new CraftError(error.code, 'Stretch {label}: {why}', { label, why: messageOf(error) })
        : error;
    }
  });

  if (waiting !== null) {
    throw new CraftError(
      'nothing-after',
      'Stretch {waiting}: stitches left or added change the next row, and no row follows. Add rows after it, or let what is left at the end be bound off or held.',
      { waiting },
    );
  }
  return done;
}

/** The counts after each row of a stretch that starts on `from`. */
function countsOf(
  stretch: Exclude<Stretch, { kind: 'leave' | 'add' }>,
  from: Stitches,
  firstSide: Row['side'],
): Stitches[] {
  switch (stretch.kind) {
    case 'even': {
      const over = rows(stretch.rows, 'The rows worked even');
      if (over > mostRowsOfAPiece) throw tooManyRows();
      return Array.from<Stitches>({ length: over }).fill(from);
    }
    case 'taper':
      return taperFrom({ ...stretch, from }, firstSide).counts as Stitches[];
    case 'evenly': {
      const to = stitches(stretch.to, 'The count after shaping evenly');
      const worked = firstSide === 'round' ? 'round' : 'flat';
      spaceEvenly({ from, to, worked, ...(stretch.ends !== undefined && { ends: stretch.ends }) });
      return [to];
    }
    case 'eachRepeat':
      return [
        stitches(shapeEachRepeat({ count: from, repeats: stretch.repeats, by: stretch.by }), 'The count'),
      ];
    case 'gather':
      return gather({ from, to: stretch.to, rounds: stretch.rounds }).steps.map((step) =>
        stitches(step.count, 'The count after a gathering row'),
      );
    case 'rows':
      return listOf(stretch.counts, 'The counts of the rows').map((count) =>
        stitches(count, 'The count of a row'),
      );
    default:
      throw new CraftError('not-a-stretch', 'No stretch is worked as {kind}.', {
        kind: numberParam((stretch as { kind: unknown }).kind),
      });
  }
}

function leftOrAdded(from: Stitches, stretch: Stretch & { kind: 'leave' | 'add' }): Stitches {
  const both =
    wholeCount(stretch.atStart, 'The stitches at the start of the row') +
    wholeCount(stretch.atEnd, 'The stitches at the end of the row');
  if (stretch.kind === 'add') return stitches(from + both, 'The count with the stitches added');
  if (both >= from) {
    throw new CraftError(
      'nothing-left',
      'Leaving {both} of {from, plural, one {# stitch} other {# stitches}} leaves none to work: leave {most} or fewer.',
      { both, from, most: from - 1 },
    );
  }
  return (from - both) as Stitches;
}

function fabricOf(fabric: Fabric): { stitches: PerCm; heights: readonly number[] } {
  const gauge = perCm(fabric?.stitches, "The fabric's stitch gauge");
  const rowGauge = perCm(fabric?.rows, "The fabric's row gauge");
  if (fabric.heights === undefined) return { stitches: gauge, heights: [1 / rowGauge] };
  const heights = listOf(fabric.heights, 'The heights of the rows of a repeat', 1);
  heights.forEach((height) => positive(height, 'The height of a row'));
  return { stitches: gauge, heights };
}

function stretchName(stretch: Stretch, index: number): Param {
  return { stretch: index + 1, ...(stretch?.label ? { label: stretch.label } : {}) };
}

function tooManyRows(): CraftError {
  return new CraftError(
    'too-many',
    'A piece of more than {mostRowsOfAPiece} rows is too long to work out: shorten it.',
    { mostRowsOfAPiece },
  );
}
