import { CraftError } from '../../craft';
import {
  allCells,
  inputsOf,
  namesIn,
  sameName,
  stitches,
  type Cell,
  type PickUpCell,
  type PieceCell,
} from '../../notebook';
import { workFormula } from '../working/expression';
import { syntaxOf } from '../working/syntax';
import { Work } from '../working/work';
import type { Garment } from './garment';

/** Where the first stitches of a piece come from, as its formula has it. */
export type Beginning =
  | { readonly from: 'new' }
  | { readonly from: 'edge'; readonly pickUp: PickUpCell }
  | { readonly from: 'armhole'; readonly formula: string }
  | { readonly from: 'piece'; readonly piece: PieceCell; readonly part: boolean };

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
      return other && named[0].key === 'end' ? { from: 'piece', piece: other, part: true } : { from: 'new' };
    }
    if (sameName(text) !== sameName(namesIn(text)[0]!)) break;
    if (other && /^(?:end|.*\.last)$/u.test(named[0].key))
      return { from: 'piece', piece: other, part: false };
    if (first.kind === 'pickUp' && named[0].key === 'total') return { from: 'edge', pickUp: first };
    if (first.kind === 'formula') formula = first.formula;
    else {
      const entry = inputsOf(first).find(({ key }) => key === named[0]!.key)?.entry;
      formula = entry && 'formula' in entry && first.kind !== 'fit' ? entry.formula : '';
    }
  }
  return { from: 'new' };
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
        if (!named || value === undefined) throw new CraftError('unknown', `There is no ${name}.`);
        return { amount: { value, unit: stitches }, of: { ...named, label: name } };
      });
      return typeof value === 'number' ? value : undefined;
    } catch (error) {
      if (error instanceof CraftError) return undefined;
      throw error;
    }
  });
}
