import { linesDrawn } from './lines-drawn';

/** What the keys go to in the grid. */
export const valueCell = '[data-place]:not(:disabled)';
/** A row that is a sentence, on as many lines as it takes. */
const sentence = 'tr.words';

export const cellsIn = (row: Element): HTMLElement[] => [...row.querySelectorAll<HTMLElement>(valueCell)];

/** The row so many further that has places, or the last there is on the way. */
export function rowFrom(row: Element, by: number): Element | undefined {
  const all = [...row.closest('[role="grid"]')!.querySelectorAll('tr')];
  const step = Math.sign(by);
  let found: Element | undefined;
  let left = Math.abs(by);
  for (let at = all.indexOf(row as HTMLTableRowElement) + step; left > 0 && all[at]; at += step) {
    if (!all[at]!.querySelector(valueCell)) continue;
    found = all[at];
    left--;
  }
  return found;
}

/** The line of a sentence above or below a place of it. */
export function adjacentLine(from: HTMLElement, row: Element, by: number): HTMLElement[] | undefined {
  if (!row.matches(sentence) || Math.abs(by) > 1) return undefined;
  const lines = linesDrawn(cellsIn(row));
  return lines[lines.findIndex((line) => line.includes(from)) + by];
}

/** Where a row is come to from above or below. */
export function nearestLine(row: Element | undefined, by: number): HTMLElement[] | undefined {
  if (!row?.matches(sentence)) return row && cellsIn(row);
  return linesDrawn(cellsIn(row)).at(by > 0 ? 0 : -1);
}
