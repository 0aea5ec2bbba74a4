import { CraftError, workPiece, type Piece, type Row } from '../../craft';
import { allCells, nameTable, type Named, type PieceCell, type Size, type Swatch } from '../../notebook';
import { sameName } from '../../formulas';
import type { PatternSource } from '../source';

/** A garment as it is meant: the pieces and sizes of a notebook that can be worked, with their rows. */
export interface Garment {
  readonly source: PatternSource;
  readonly sizes: readonly Size[];
  readonly pieces: readonly MeantPiece[];
  /** The swatches they are worked to, in the order of the notebook. */
  readonly swatches: readonly Swatch[];
  readonly names: ReadonlyMap<string, Named>;
}

export interface MeantPiece {
  readonly cell: PieceCell;
  /** In the order of the sizes. */
  readonly worked: readonly WorkedPiece[];
}

export interface WorkedPiece {
  readonly plan: Piece;
  readonly rows: readonly Row[];
}

/** More rows than are followed by hand. */
const mostRows = 5000;

function workedIn(source: PatternSource, size: string, cell: string): WorkedPiece | undefined {
  const plan = source.plan(size, cell);
  if ('problem' in plan) return undefined;
  try {
    const rows = workPiece(plan);
    return rows.length > 0 && rows.length <= mostRows ? { plan, rows } : undefined;
  } catch (error) {
    if (error instanceof CraftError) return undefined;
    throw error;
  }
}

/** The garment of a notebook: pieces that can be worked in a size, and sizes in which all of those can be. */
export function garmentOf(source: PatternSource): Garment {
  const { notebook } = source;
  const cells = allCells(notebook);
  const tried = cells
    .filter((cell): cell is PieceCell => cell.kind === 'piece' && cell.aside === undefined)
    .map((cell) => ({ cell, worked: notebook.sizes.map(({ id }) => workedIn(source, id, cell.id)) }))
    .filter(({ worked }) => worked.some((one) => one !== undefined));
  const sizeIndices = notebook.sizes.flatMap((_size, sizeIndex) =>
    tried.every(({ worked }) => worked[sizeIndex] !== undefined) ? [sizeIndex] : [],
  );
  const pieces =
    sizeIndices.length === 0
      ? []
      : tried.map(({ cell, worked }) => ({
          cell,
          worked: sizeIndices.map((sizeIndex) => worked[sizeIndex]!),
        }));
  const swatches = cells.filter((cell): cell is Swatch => cell.kind === 'swatch');
  return {
    source,
    sizes: sizeIndices.map((sizeIndex) => notebook.sizes[sizeIndex]!),
    pieces,
    swatches: swatches.filter((swatch) =>
      pieces.some(({ cell }) =>
        cell.stretches.some(({ fabric }) => sameName(fabric) === sameName(swatch.name)),
      ),
    ),
    names: nameTable(notebook),
  };
}

/** The swatch of a name; undefined where there is none. */
export function swatchOf({ source: { notebook } }: Garment, name: string): Swatch | undefined {
  return allCells(notebook).find(
    (cell): cell is Swatch => cell.kind === 'swatch' && sameName(cell.name) === sameName(name),
  );
}

/** What a cell comes to in each size; null where it comes to nothing. */
export function resultsOf({ source, sizes }: Garment, cell: string, key: string): (number | null)[] {
  return sizes.map(({ id }) => source.number(id, cell, key) ?? null);
}
