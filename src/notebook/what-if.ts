import { message, plainMessage, type Message } from '../craft';
import { allCells, type Cell, type Change, type Notebook, type WhatIf } from './document';
import { entered, given, takenOver } from './edits/values';
import { inputsOf, kindOf, outputsOf } from './kinds';

/** A change that cannot be made in a notebook, and a sentence that says why. */
export interface Refusal {
  readonly change: Change;
  readonly sentence: string;
}

export const changedCellGone = message(
  'gone',
  'The cell this changes is no longer in the notebook: undo its deletion, or take the change out.',
);
const partGone = message('gone', 'What this changes is no longer in its cell: take the change out.');
const sizeGone = message('gone', 'The size this changes is no longer in the notebook: take the change out.');
const workedOut = message('worked-out', 'This is worked out, so it takes a formula and not a value.');

/**
 * A cell with one value or formula of it changed, as if the person had typed it; or why it cannot be.
 *
 * @example changedCell(bust, { cell: 'bust', key: 'value', size: null, value: 96 }, notebook.sizes)
 */
export function changedCell(
  cell: Cell,
  { key, size, value, formula }: Change,
  sizes: Notebook['sizes'],
): Cell | { refused: Message } {
  if (size !== null && !sizes.some(({ id }) => id === size)) return { refused: sizeGone };
  const input = inputsOf(cell).find((candidate) => candidate.key === key);
  if (input) {
    const entry =
      formula === undefined ? given({ sizes }, input, size, value ?? null) : entered(input, { formula });
    return 'refused' in entry ? entry : kindOf(cell).put(cell, key, entry);
  }
  if (!outputsOf(cell).some((output) => output.key === key)) return { refused: partGone };
  return formula === undefined ? { refused: workedOut } : takenOver(cell, key, formula);
}

/**
 * The notebook with changes made in it, as far as they can be. It shares every cell that no change concerns, so that
 * a sheet is told only of the others.
 */
export function withChanges(
  notebook: Notebook,
  changes: readonly Change[],
): { notebook: Notebook; refused: readonly Refusal[] } {
  const refused: Refusal[] = [];
  const before = new Map(allCells(notebook).map((cell) => [cell.id, cell]));
  const after = new Map<string, Cell>();
  for (const change of changes) {
    const cell = after.get(change.cell) ?? before.get(change.cell);
    const next = cell ? changedCell(cell, change, notebook.sizes) : { refused: changedCellGone };
    if ('refused' in next) refused.push({ change, sentence: plainMessage(next.refused) });
    else after.set(change.cell, next);
  }
  if (after.size === 0) return { notebook, refused };
  const sections = notebook.sections.map((section) =>
    section.cells.some(({ id }) => after.has(id))
      ? { ...section, cells: section.cells.map((cell) => after.get(cell.id) ?? cell) }
      : section,
  );
  return { notebook: { ...notebook, sections }, refused };
}

/** The notebook as it would be, were a what-if made in it. Changes that cannot be made are left out. */
export function withWhatIf(notebook: Notebook, whatIf: WhatIf): Notebook {
  return withChanges(notebook, whatIf.changes).notebook;
}
