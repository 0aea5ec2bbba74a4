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
import type { Desk } from '../../workspace/workspace.svelte';

type Place = Pick<ClassResult, 'cell' | 'key'>;

const same = (a: Place, b: Place): boolean => a.cell === b.cell && a.key === b.key;

/** A result that can stand on the sheet, with what it is called. */
export interface Choosable extends Place {
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

export function isOnSheet(notebook: Notebook, place: Place): boolean {
  return notebook.classSheet?.results.some((result) => same(result, place)) ?? false;
}

/**
 * The sheet with its results passed through a change, and what is said once it is made; results whose cells are gone
 * fall off it.
 */
function changeResults(
  desk: Desk,
  change: (results: readonly ClassResult[]) => ClassResult[],
  said: string,
): void {
  const kept = onSheet(desk.notebook).map(({ label: _label, ...result }) => result);
  if (setSheet(desk, { ...desk.notebook.classSheet, results: change(kept) })) desk.said = said;
}

/** @returns whether it could be done; where not, the desk says why */
export function setSheet(desk: Desk, sheet: ClassSheet): boolean {
  const empty = sheet.results.length === 0 && sheet.size === undefined;
  const refused = desk.do({ do: 'set class sheet', sheet: empty ? null : sheet });
  desk.complaint = refused ?? null;
  return refused === undefined;
}

export function putOnSheet(desk: Desk, result: ClassResult): void {
  const said = `${labelOf(desk.notebook, result)} is on the class sheet.`;
  changeResults(desk, (results) => [...results, result], said);
}

export function takeOffSheet(desk: Desk, place: Place): void {
  const said = `${labelOf(desk.notebook, place)} is off the class sheet.`;
  changeResults(desk, (results) => results.filter((result) => !same(result, place)), said);
}

export function moveOnSheet(desk: Desk, place: Place, by: -1 | 1): void {
  const results = onSheet(desk.notebook);
  const at = results.findIndex((result) => same(result, place));
  const to = at + by;
  if (at < 0 || to < 0 || to >= results.length) return;
  changeResults(
    desk,
    (kept) => kept.toSpliced(at, 1).toSpliced(to, 0, kept[at]!),
    `${results[at]!.label} is number ${to + 1} of ${results.length} on the class sheet.`,
  );
}

/** How far back the working of a result begins: with its own cell, or so many cells before it. */
export function beginBack(desk: Desk, place: Place, back: number): void {
  const before = back === 0 ? 'its own cell' : back === 1 ? 'the cells before it' : `${back} cells before it`;
  changeResults(
    desk,
    (results) =>
      results.map((result) => (same(result, place) ? { cell: result.cell, key: result.key, back } : result)),
    `The working of ${labelOf(desk.notebook, place)} begins with ${before}.`,
  );
}

function labelOf(notebook: Notebook, place: Place): string {
  const cell = allCells(notebook).find(({ id }) => id === place.cell);
  return (cell && choosableIn(cell).find((one) => same(one, place))?.label) ?? cell?.label ?? 'A result';
}
