import {
  allCells,
  cellById,
  inputsOf,
  outputsOf,
  type Cell,
  type ClassResult,
  type ClassSheet,
  type Notebook,
} from '../../notebook';
import type { Desk } from '../desk.svelte';

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
  return worked.map(({ key, label, unit }) => ({
    cell: cell.id,
    key,
    label:
      unit === 'piece'
        ? `${cell.label}, stretch by stretch`
        : label === cell.label
          ? label
          : `${cell.label}, ${label.toLowerCase()}`,
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

/** The sheet with its results passed through a change; results whose cells are gone fall off it. */
function changeResults(desk: Desk, change: (results: readonly ClassResult[]) => ClassResult[]): void {
  const kept = onSheet(desk.notebook).map(({ label: _label, ...result }) => result);
  setSheet(desk, { ...desk.notebook.classSheet, results: change(kept) });
}

export function setSheet(desk: Desk, sheet: ClassSheet): void {
  const empty = sheet.results.length === 0 && sheet.size === undefined;
  desk.complaint = desk.do({ do: 'set class sheet', sheet: empty ? null : sheet }) ?? null;
}

export function putOnSheet(desk: Desk, result: ClassResult): void {
  changeResults(desk, (results) => [...results, result]);
  desk.said = `${labelOf(desk.notebook, result)} is on the class sheet.`;
}

export function takeOffSheet(desk: Desk, place: Place): void {
  const label = labelOf(desk.notebook, place);
  changeResults(desk, (results) => results.filter((result) => !same(result, place)));
  desk.said = `${label} is off the class sheet.`;
}

export function moveOnSheet(desk: Desk, place: Place, by: -1 | 1): void {
  changeResults(desk, (results) => {
    const at = results.findIndex((result) => same(result, place));
    const to = at + by;
    if (at < 0 || to < 0 || to >= results.length) return [...results];
    return results.toSpliced(at, 1).toSpliced(to, 0, results[at]!);
  });
}

/** How far back the working of a result begins. */
export function beginBack(desk: Desk, place: Place, back: number): void {
  changeResults(desk, (results) =>
    results.map((result) => (same(result, place) ? { cell: result.cell, key: result.key, back } : result)),
  );
}

function labelOf(notebook: Notebook, place: Place): string {
  const cell = allCells(notebook).find(({ id }) => id === place.cell);
  return (cell && choosableIn(cell).find((one) => same(one, place))?.label) ?? cell?.label ?? 'A result';
}
