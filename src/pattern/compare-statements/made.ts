import { CraftError } from '../../craft';
import {
  allCells,
  cellById,
  outputsOf,
  upstream,
  type AsMadeCell,
  type EaseCell,
  type Entry,
  type Named,
} from '../../notebook';
import { namesIn, plain, sameName, type Unit } from '../../formulas';
import { workFormula, syntaxOf, Work } from '../../explain';
import type { Garment, WorkedPiece } from './garment';

/** Formulas that go through more other formulas are not followed. */
const mostLinks = 8;

/** The measurements as made that come to something in a size that is written. */
export function asMadeCells({ source, sizes }: Garment): AsMadeCell[] {
  return allCells(source.notebook).filter(
    (cell): cell is AsMadeCell =>
      cell.kind === 'as made' && sizes.some(({ id }) => source.number(id, cell.id, 'made') !== undefined),
  );
}

/** Whether the wish of a measurement as made is this finished measurement, or goes out from it. */
export function isMadeOf(
  { source: { notebook }, names }: Garment,
  made: AsMadeCell,
  ease: EaseCell,
): boolean {
  const wished = 'formula' in made.wish ? namesIn(made.wish.formula) : [];
  const cell = wished.length === 1 ? names.get(sameName(wished[0]!))?.cell : undefined;
  if (cell === undefined || cell === made.id) return false;
  return [cell, ...upstream(notebook, cell)].includes(ease.id);
}

/**
 * What a measurement comes to as made, in each size: the widths of its parts added up, each so many times, less what
 * overlaps and seams take. Widths and counts of pieces are taken from their rows, not from what the notebook works out
 * of them.
 *
 * @returns cm, in the order of the sizes; null where the notebook works out none
 */
export function madeOf(garment: Garment, cell: AsMadeCell): (number | null)[] {
  const { source, sizes } = garment;
  return sizes.map(({ id }, sizeIndex) => {
    if (source.number(id, cell.id, 'made') === undefined) return null;
    const worth = (entry: Entry, key: string): number =>
      entryAt(garment, sizeIndex, entry) ?? source.number(id, cell.id, key) ?? NaN;
    const parts = cell.of.map(
      ({ width, times }, at) => worth(times, `of.${at}.times`) * worth(width, `of.${at}.width`),
    );
    const taken = cell.closes === 'edge to edge' ? 0 : worth(cell.less, 'less');
    return parts.reduce((sum, part) => sum + part, -taken);
  });
}

/** What a formula comes to in the size at a place; undefined where it is no formula, or cannot be followed. */
function entryAt(garment: Garment, sizeIndex: number, entry: Entry): number | undefined {
  return 'formula' in entry ? valueThrough(garment, sizeIndex, entry.formula, mostLinks) : undefined;
}

function valueThrough(
  garment: Garment,
  sizeIndex: number,
  formula: string,
  links: number,
): number | undefined {
  const read = syntaxOf(formula.trim().replace(/^=\s*/u, ''));
  if ('problem' in read) return undefined;
  const { source, names } = garment;
  try {
    const { value } = workFormula(read.tree, new Work(source.notebook.settings), (name) => {
      const named = names.get(sameName(name));
      const value = named && namedAt(garment, sizeIndex, named, links);
      if (!named || value === undefined) throw new CraftError('unknown', 'There is no {name}.', { name });
      return { amount: { value, unit: unitOf(garment, named) }, of: { ...named, label: name } };
    });
    return typeof value === 'number' ? value : undefined;
  } catch (error) {
    if (error instanceof CraftError) return undefined;
    throw error;
  }
}

/** What a name stands for: a number of a piece by its rows, a formula by what it names, and else the notebook's number. */
function namedAt(
  garment: Garment,
  sizeIndex: number,
  { cell, key }: Named,
  links: number,
): number | undefined {
  const { source, sizes, pieces } = garment;
  const piece = pieces.find((one) => one.cell.id === cell);
  const stretches = piece?.cell.stretches.map(({ name }) => name) ?? [];
  const counted = piece && ofRows(piece.worked[sizeIndex]!, stretches, key);
  if (counted !== undefined) return counted;
  const named = cellById(source.notebook, cell);
  const through =
    named?.kind === 'formula' && links > 0
      ? valueThrough(garment, sizeIndex, named.formula, links - 1)
      : undefined;
  return through ?? source.number(sizes[sizeIndex]!.id, cell, key);
}

/** A number of a piece or of one of its stretches, from its rows; undefined where it is none of them. */
function ofRows({ plan, rows }: WorkedPiece, stretches: readonly string[], key: string): number | undefined {
  const tall = (of: WorkedPiece['rows']): number => of.reduce((sum, { height }) => sum + height, 0);
  switch (key) {
    case 'start':
      return plan.start;
    case 'end':
      return rows.at(-1)!.count;
    case 'rows':
      return rows.length;
    case 'length':
      return tall(rows);
    case 'start_width':
      return rows[0]!.width;
    case 'end_width':
      return rows.at(-1)!.width;
  }
  const at = stretches.findIndex((name) => key.startsWith(`${name}.`));
  const own = rows.filter(({ stretch }) => stretch === at);
  if (at < 0 || own.length === 0) return undefined;
  switch (key.slice(stretches[at]!.length + 1)) {
    case 'last':
      return own.at(-1)!.count;
    case 'worked_rows':
      return own.length;
    case 'length':
      return tall(own);
    default:
      return undefined;
  }
}

function unitOf({ source: { notebook } }: Garment, { cell, key }: Named): Unit {
  const named = cellById(notebook, cell);
  const unit = named && outputsOf(named).find((output) => output.key === key)?.unit;
  return unit === undefined || unit === 'any' ? plain : unit;
}
