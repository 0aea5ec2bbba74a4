import {
  allCells,
  called,
  cellById,
  inputsOf,
  outputsOf,
  type Cell,
  type ClassResult,
  type ClassSheet,
  type Notebook,
} from '../../notebook';
import type { Workspace } from '../../workspace';

type ResultRef = Pick<ClassResult, 'cell' | 'key'>;

const same = (a: ResultRef, b: ResultRef): boolean => a.cell === b.cell && a.key === b.key;

/** A result that can stand on the sheet, with what it is called. */
export interface Choosable extends ResultRef {
  readonly label: string;
}

/** What a cell works out, as a list to choose from: its own result first. A fabric is none. */
export function choosableIn(cell: Cell): Choosable[] {
  const worked = [
    ...outputsOf(cell).filter(({ unit }) => unit !== 'fabric'),
    ...inputsOf(cell).filter(({ entry }) => 'formula' in entry),
  ];
  return worked.map((part) => ({
    cell: cell.id,
    key: part.key,
    label: part.unit === 'piece' ? `${cell.label}, stretch by stretch` : called(cell, part),
  }));
}

/** What stands on the sheet and is still in the notebook, in its order. */
export function onSheet(notebook: Notebook): (ClassResult & Choosable)[] {
  return (notebook.classSheet?.results ?? []).flatMap((result) => {
    const cell = cellById(notebook, result.cell);
    const choosable = cell && choosableIn(cell).find((one) => same(one, result));
    return choosable ? [{ ...result, label: choosable.label }] : [];
  });
}

export function isOnSheet(notebook: Notebook, ref: ResultRef): boolean {
  return notebook.classSheet?.results.some((result) => same(result, ref)) ?? false;
}

/**
 * The sheet with its results passed through a change, and what is said once it is made; results whose cells are gone
 * fall off it.
 */
function changeResults(
  workspace: Workspace,
  change: (results: readonly ClassResult[]) => ClassResult[],
  message: string,
): void {
  const kept = onSheet(workspace.notebook).map(({ label: _label, ...result }) => result);
  if (setSheet(workspace, { ...workspace.notebook.classSheet, results: change(kept) }))
    workspace.announcement = message;
}

/** @returns whether it could be done; where not, the workspace says why */
export function setSheet(workspace: Workspace, sheet: ClassSheet): boolean {
  const empty = sheet.results.length === 0 && sheet.size === undefined;
  const refused = workspace.do({ do: 'set class sheet', sheet: empty ? null : sheet });
  workspace.complaint = refused ?? null;
  return refused === undefined;
}

export function putOnSheet(workspace: Workspace, result: ClassResult): void {
  const message = `${labelOf(workspace.notebook, result)} is on the class sheet.`;
  changeResults(workspace, (results) => [...results, result], message);
}

export function removeFromSheet(workspace: Workspace, ref: ResultRef): void {
  const message = `${labelOf(workspace.notebook, ref)} is off the class sheet.`;
  changeResults(workspace, (results) => results.filter((result) => !same(result, ref)), message);
}

export function moveOnSheet(workspace: Workspace, ref: ResultRef, by: -1 | 1): void {
  const results = onSheet(workspace.notebook);
  const at = results.findIndex((result) => same(result, ref));
  const to = at + by;
  if (at < 0 || to < 0 || to >= results.length) return;
  changeResults(
    workspace,
    (kept) => kept.toSpliced(at, 1).toSpliced(to, 0, kept[at]!),
    `${results[at]!.label} is number ${to + 1} of ${results.length} on the class sheet.`,
  );
}

/** How far back the working of a result begins: with its own cell, or so many cells before it. */
export function beginBack(workspace: Workspace, ref: ResultRef, back: number): void {
  const before = back === 0 ? 'its own cell' : back === 1 ? 'the cells before it' : `${back} cells before it`;
  changeResults(
    workspace,
    (results) =>
      results.map((result) => (same(result, ref) ? { cell: result.cell, key: result.key, back } : result)),
    `The working of ${labelOf(workspace.notebook, ref)} begins with ${before}.`,
  );
}

function labelOf(notebook: Notebook, ref: ResultRef): string {
  const cell = allCells(notebook).find(({ id }) => id === ref.cell);
  return (cell && choosableIn(cell).find((one) => same(one, ref))?.label) ?? cell?.label ?? 'A result';
}
