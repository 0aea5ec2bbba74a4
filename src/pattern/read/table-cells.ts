import { bracketed } from '../../format';

const number = /^(?:\d[\d.,/\s]*[½⅓⅔¼¾⅛⅜⅝⅞]?|[½⅓⅔¼¾⅛⅜⅝⅞]|[-–—−])\s*(?:cm|in|["″”])?$/u;
const unitOf = /\s*(cm|in|["″”])$/u;

/** The cells of a row of a pasted table, parted by bars, or else by tabs or two and more spaces. */
export function cellsOf(row: string): string[] {
  const bare = row.trim().replace(/^\|/u, '').replace(/\|$/u, '');
  return bare.split(bare.includes('|') ? '|' : /\t+|\s{2,}/u).map((cell) => cell.trim());
}

/** Whether a cell is one number, with or without a unit, or the dash that stands for none. */
export const isNumber = (cell: string): boolean => number.test(cell);

/** Whether a row is only the line that parts the head of a table from its rows. */
export const isRule = (cells: readonly string[]): boolean => /^[-:\s]*$/u.test(cells.join(''));

/**
 * Numbers by size as a line of print, their unit after them.
 *
 * @example listText('Bust (cm)', ['90', '98', '106']) // 'Bust (cm): 90 (98, 106)'
 */
export function listText(label: string, values: readonly string[]): string {
  const unit = values.map((value) => unitOf.exec(value)?.[1]).find(Boolean);
  const clean = values.map((value) => value.replace(unitOf, ''));
  return `${label.replace(/:$/u, '')}: ${bracketed(clean)}${unit ? ` ${unit}` : ''}`;
}
