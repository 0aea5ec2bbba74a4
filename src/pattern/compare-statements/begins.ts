import { CraftError } from '../../craft';
import { allCells, inputsOf, type Cell, type PickUpCell, type PieceCell } from '../../notebook';
import { namesIn, sameName, stitches } from '../../formulas';
import { workFormula, syntaxOf, Work } from '../../explain';
import type { Garment, MeantPiece } from './garment';

/** Where the first stitches of a piece come from, as its formula has it. */
export type Beginning =
  | { readonly from: 'new' }
  | { readonly from: 'edge'; readonly pickUp: PickUpCell }
  | { readonly from: 'armhole'; readonly formula: string }
  | { readonly from: 'piece'; readonly piece: PieceCell; readonly part: boolean; readonly half: boolean };

/** A chain of formulas that only pass a number on is not longer. */
const longestChain = 8;

/** Where the first stitches of a piece come from: the formula of its count is followed to what it names. */
export function beginningOf({ source: { notebook }, names }: Garment, cell: PieceCell): Beginning {
  const cells = new Map<string, Cell>(allCells(notebook).map((one) => [one.id, one]));
  let formula = 'formula' in cell.start ? cell.start.formula : '';
  for (let step = 0; step < longestChain && formula !== ''; step++) {
    const text = formula.trim().replace(/^=\s*/u, '');
    if (/^JOINARMHOLE\s*\(/iu.test(text)) return { from: 'armhole', formula: text };
    const named = namesIn(text).map((name) => names.get(sameName(name)));
    const first = named[0] && cells.get(named[0].cell);
    if (!named[0] || !first) break;
    const other = first.kind === 'piece' && first.id !== cell.id ? first : undefined;
    if (named.length > 1) {
      return other && named[0].key === 'end'
        ? { from: 'piece', piece: other, part: true, half: isHalf(text) }
        : { from: 'new' };
    }
    if (sameName(text) !== sameName(namesIn(text)[0]!)) break;
    if (other && /^(?:end|.*\.last)$/u.test(named[0].key))
      return { from: 'piece', piece: other, part: false, half: false };
    if (first.kind === 'pickUp' && named[0].key === 'total') return { from: 'edge', pickUp: first };
    if (first.kind === 'formula') formula = first.formula;
    else {
      const entry = inputsOf(first).find(({ key }) => key === named[0]!.key)?.entry;
      formula = entry && 'formula' in entry && first.kind !== 'fit' ? entry.formula : '';
    }
  }
  return { from: 'new' };
}

/** Whether a formula is half of what one count leaves of another: the stitches of one of two like sides. */
function isHalf(formula: string): boolean {
  const read = syntaxOf(formula);
  if ('problem' in read || read.tree.is !== 'two' || read.tree.operator !== '/') return false;
  const { left, right } = read.tree;
  const isRest =
    left.is === 'two' && left.operator === '-' && left.left.is === 'name' && left.right.is === 'name';
  return isRest && right.is === 'number' && right.value === 2;
}

/**
 * The stitches between the two sides that a piece is worked on, one after the other, where it goes on with stitches that
 * another piece holds.
 *
 * @returns in the order of the sizes; undefined where it is no such side, or nothing lies between them in some size
 */
export function middleOf(garment: Garment, { cell, worked }: MeantPiece): number[] | undefined {
  const begins = beginningOf(garment, cell);
  if (begins.from !== 'piece' || !begins.half || begins.piece.ends !== 'held') return undefined;
  const other = garment.pieces.find(({ cell: { id } }) => id === begins.piece.id);
  if (!other) return undefined;
  const middle = worked.map(
    ({ plan }, sizeIndex) => other.worked[sizeIndex]!.rows.at(-1)!.count - 2 * plan.start,
  );
  return middle.every((many) => many > 0) ? middle : undefined;
}

/** What is given to a function that is all of a formula, worked in a size; undefined where it cannot be. */
export function givenTo(
  { source, names }: Garment,
  size: string,
  formula: string,
  called: string,
): (number | undefined)[] | undefined {
  const read = syntaxOf(formula.trim().replace(/^=\s*/u, ''));
  if ('problem' in read || read.tree.is !== 'call' || read.tree.name.toUpperCase() !== called)
    return undefined;
  return read.tree.given.map((part) => {
    try {
      const { value } = workFormula(part, new Work(source.notebook.settings), (name) => {
        const named = names.get(sameName(name));
        const value = named && source.number(size, named.cell, named.key);
        if (!named || value === undefined) throw new CraftError('unknown', 'There is no {name}.', { name });
        return { amount: { value, unit: stitches }, of: { ...named, label: name } };
      });
      return typeof value === 'number' ? value : undefined;
    } catch (error) {
      if (error instanceof CraftError) return undefined;
      throw error;
    }
  });
}
