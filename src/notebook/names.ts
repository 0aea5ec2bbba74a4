import { allCells, type Cell, type Notebook } from './document';
import { sameName } from '../formulas';
import { inputsOf, kinds, outputsOf } from './kinds';
import { numbered } from '../format';
import { memoizePerCell } from './memoize-per-cell';

/** What a name stands for: one input or output of a cell. */
export interface Named {
  readonly name: string;
  readonly cell: string;
  readonly key: string;
  readonly label: string;
}

/** Every name that a cell brings into the notebook. Notes bring none. */
export const namesOf = memoizePerCell<readonly Named[]>((cell) =>
  [...inputsOf(cell), ...outputsOf(cell)].map((part) => ({
    name: part.name,
    cell: cell.id,
    key: part.key,
    label: part.label === cell.label ? cell.label : `${cell.label}: ${part.label.toLowerCase()}`,
  })),
);

/** All names of a notebook, by the form in which names are compared. */
export function nameTable(notebook: Notebook): Map<string, Named> {
  const table = new Map<string, Named>();
  for (const cell of allCells(notebook)) {
    for (const named of namesOf(cell)) {
      if (!table.has(sameName(named.name))) table.set(sameName(named.name), named);
    }
  }
  return table;
}

/** Why a cell, as it would be, cannot stand in the notebook under its name; undefined where it can. */
export function wrongName(notebook: Notebook, cell: Cell): string | undefined {
  const { name } = cell;
  if (!/^[\p{L}_][\p{L}\p{M}\p{N}_]*$/u.test(name)) {
    return `"${name}" cannot be a name: a name begins with a letter and goes on with letters, digits and _, as in finished_bust.`;
  }
  if (name.length > 64) return 'A name has at most 64 characters.';
  const clash = clashOf(notebook, cell);
  if (!clash) return undefined;
  if (clash.by) return `The name ${clash.name} is taken by "${clash.by}"; choose another.`;
  return `The name ${clash.name} would stand twice in this cell; choose another for one of them.`;
}

/**
 * The name that a cell would bring into the notebook a second time, its own or one of its parts', and what has it; it
 * stands twice in the cell itself where nothing has.
 */
export function clashOf(
  notebook: Notebook,
  cell: Cell,
): { readonly name: string; readonly by?: string } | undefined {
  const others = new Map<string, Named>();
  for (const other of allCells(notebook)) {
    if (other.id === cell.id) continue;
    for (const named of namesOf(other)) others.set(sameName(named.name), named);
  }
  const own = new Set<string>();
  for (const { name } of namesOf(cell)) {
    const key = sameName(name);
    const taken = others.get(key);
    if (taken) return { name, by: taken.label };
    if (own.has(key)) return { name };
    own.add(key);
  }
  return undefined;
}

/**
 * A name made of a label, as formulas can use it.
 *
 * @example nameFrom('Finished bust') // 'finished_bust'
 * @example nameFrom('2nd sleeve') // '_2nd_sleeve'
 */
export function nameFrom(label: string): string {
  const joined = label
    .normalize('NFC')
    .toLowerCase()
    .replace(/[^\p{L}\p{M}\p{N}]+/gu, '_')
    .replace(/^_+|_+$/g, '')
    .slice(0, 48);
  return /^[\p{L}]/u.test(joined) ? joined : `_${joined}`;
}

/**
 * The cell under a name that is free: the wished one; with its kind after it, where that is taken by something of another
 * kind, as `back_stitches` of a piece "Back" is by a count "Back stitches"; with a number among those of its own kind.
 *
 * @example withFreeName(withBackStitches, pieceCalledBack).name // 'back_piece'
 */
export function withFreeName(notebook: Notebook, cell: Cell): Cell {
  const wish = sameName(cell.name);
  const alike = allCells(notebook).some(
    ({ id, kind, name }) => id !== cell.id && kind === cell.kind && sameName(name) === wish,
  );
  const apart = alike ? [] : [`${cell.name}_${nameFrom(kinds[cell.kind].label)}`];
  for (let at = 0; ; at++) {
    const name = [cell.name, ...apart][at] ?? numbered(cell.name, at - apart.length);
    const named = { ...cell, name };
    if (wrongName(notebook, named) === undefined || at >= 10_000) return named;
  }
}
