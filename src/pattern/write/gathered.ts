import { CraftError, workPiece, type Piece, type Row, type Stretch } from '../../craft';
import { allCells, type PieceCell, type Size, type Swatch } from '../../notebook';
import { uncapital } from '../../format';
import type { LeftOut, PatternNote } from '../pattern-document';
import type { PatternSource } from '../source';

/** A piece in one size. */
export interface WorkedPlan {
  readonly plan: Piece;
  readonly rows: readonly Row[];
}

/** A piece in every size that is written. */
export interface GatheredPiece {
  readonly cell: PieceCell;
  /** In the order of `Gathered.sizes`. */
  readonly sizes: readonly WorkedPlan[];
}

/** What a pattern can be written for: the sizes that work out, and the pieces in them. */
export interface Gathered {
  readonly sizes: readonly Size[];
  readonly pieces: readonly GatheredPiece[];
  readonly notes: readonly PatternNote[];
  readonly leftOut: LeftOut;
}

/** More than any piece that is followed by hand; beyond it a line could not be read. */
const longestPiece = 5000;

function workedPlan(source: PatternSource, size: string, cell: string): WorkedPlan | { problem: string } {
  const plan = source.plan(size, cell);
  if ('problem' in plan) return plan;
  try {
    const rows = workPiece(plan);
    if (rows.length === 0) return { problem: 'It has no rows yet: give it a stretch that has some.' };
    if (rows.length > longestPiece) {
      return { problem: `It has ${rows.length} rows, more than the ${longestPiece} that are written out.` };
    }
    return { plan, rows };
  } catch (error) {
    if (error instanceof CraftError) return { problem: error.message };
    throw error;
  }
}

/**
 * The pieces of a notebook in the sizes that work out. A size in which a piece cannot be worked is left out whole, for
 * a garment without its sleeve is no garment; a piece that works in no size is left out instead. Both are noted.
 */
export function gathered(source: PatternSource): Gathered {
  const { notebook } = source;
  const notes: PatternNote[] = [];
  const cells = allCells(notebook).filter(
    (cell): cell is PieceCell => cell.kind === 'piece' && cell.aside === undefined,
  );
  const all = cells.map((cell) => ({
    cell,
    sizes: notebook.sizes.map((size) => workedPlan(source, size.id, cell.id)),
  }));
  const some = all.filter(({ cell, sizes }) => {
    const [first] = sizes;
    if (sizes.some((one) => 'plan' in one)) return true;
    const why = first && 'problem' in first ? ` ${first.problem}` : '';
    notes.push({
      text: `${cell.label} is left out: it ${notebook.sizes.length > 1 ? 'works out in no size' : 'does not work out'}.${why}`,
      about: { cell: cell.id },
    });
    return false;
  });
  const written = notebook.sizes.filter((size, at) => {
    const broken = some.find(({ sizes }) => 'problem' in sizes[at]!);
    if (!broken) return true;
    const { problem } = broken.sizes[at] as { problem: string };
    notes.push({
      text: `Size ${size.label} is left out: in ${broken.cell.label}, ${uncapital(problem)}`,
      about: { cell: broken.cell.id },
    });
    return false;
  });
  const labels = written.map(({ label }) => label);
  const twice = labels.find((label, at) => labels.indexOf(label) !== at);
  if (twice !== undefined) {
    notes.push({
      text: `Several sizes are labelled ${twice}: give each a label of its own, or nobody can tell which line is theirs.`,
    });
  }
  const pieces = written.length === 0 ? [] : some;
  const kept = notebook.sizes.flatMap((size, at) => (written.includes(size) ? [at] : []));
  return {
    sizes: written,
    pieces: pieces.map(({ cell, sizes }) => ({ cell, sizes: kept.map((at) => sizes[at] as WorkedPlan) })),
    notes,
    leftOut: {
      pieces: cells.filter((cell) => !pieces.some((piece) => piece.cell === cell)).map(({ label }) => label),
      sizes: notebook.sizes.filter((size) => !written.includes(size)).map(({ label }) => label),
    },
  };
}

/** One stretch of a piece in one size, with the count it starts on. */
export interface WorkedStretch {
  readonly stretch: Stretch;
  /** The count of the row before, with what was left or added since. */
  readonly from: number;
  readonly counts: readonly number[];
  /** The side of its first row, or of the row that follows where it has none. */
  readonly side: Row['side'];
}

/** The stretches of a piece in one size. */
export function workedStretches({ plan, rows }: WorkedPlan): WorkedStretch[] {
  let count = plan.start;
  let done = 0;
  const sideAt = (at: number): Row['side'] =>
    plan.worked === 'round' ? 'round' : (at % 2 === 0) === ((plan.startsOn ?? 'RS') === 'RS') ? 'RS' : 'WS';
  return plan.stretches.map((stretch, index) => {
    const counts = rows.filter((row) => row.stretch === index).map((row) => row.count);
    const worked = { stretch, from: count, counts, side: sideAt(done) };
    if (stretch.kind === 'leave') count -= stretch.atStart + stretch.atEnd;
    if (stretch.kind === 'add') count += stretch.atStart + stretch.atEnd;
    count = counts.at(-1) ?? count;
    done += counts.length;
    return worked;
  });
}

/** The swatch that a stretch is worked to, by the name it calls it. */
export function swatchNamed(source: PatternSource, name: string): Swatch | undefined {
  return allCells(source.notebook).find(
    (cell): cell is Swatch => cell.kind === 'swatch' && cell.name.toLowerCase() === name.toLowerCase(),
  );
}
