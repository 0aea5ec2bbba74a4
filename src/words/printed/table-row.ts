import { bracketed } from '../../notebook/bracketed';
import type { LogicalLine } from './lines';

/**
 * A row of a pasted table as a line of print: its cells parted by tabs, bars or two and more spaces. The first cell is
 * the label, and at least two numbers follow, or names of sizes. Other lines are given back as they are.
 *
 * @example rowAsLine of 'Bust (cm)\t90\t98\t106' has the text 'Bust (cm): 90 (98, 106)'
 */
export function rowAsLine(line: LogicalLine): LogicalLine {
  const bare = line.text.trim().replace(/^\|/u, '').replace(/\|$/u, '');
  const cells = bare.split(/\s*\|\s*|\t+|\s{2,}/u).map((cell) => cell.trim());
  if (cells.length < 2) return line;
  const [label, ...values] = cells as [string, ...string[]];
  if (/^[-:\s]*$/u.test(cells.join(''))) return { ...line, text: '' };
  const number = /^(?:\d[\d.,/\s]*[½⅓⅔¼¾⅛⅜⅝⅞]?|[½⅓⅔¼¾⅛⅜⅝⅞]|[-–—−])\s*(?:cm|in|["″”])?$/u;
  const numbers = values.every((value) => number.test(value));
  const names = /^sizes?\b/iu.test(label) && values.every((value) => value.length <= 12);
  if (!numbers && !names) return line;
  // One size has one number; a hint beside a label is no table.
  if (cells.length < 3 && !/\t|\||\s{3,}/u.test(bare)) return line;
  const unit = values.map((value) => /(?:cm|in|["″”])$/u.exec(value)?.[0]).find(Boolean) ?? '';
  const clean = names ? values : values.map((value) => value.replace(/\s*(?:cm|in|["″”])$/u, ''));
  const end = line.text.length;
  return {
    ...line,
    text: `${label.replace(/:$/u, '')}: ${bracketed(clean)}${unit === '' ? '' : ` ${unit}`}`,
    place: () => line.place(line.text.length - line.text.trimStart().length, end),
  };
}
