import { bracketed } from '../../format';
import type { LogicalLine } from './lines';
import { cellsOf, isNumber, isRule, listText } from './table-cells';

/**
 * A row of a pasted table as a line of print: its cells parted by tabs, bars or two and more spaces. The first cell is
 * the label, and at least two numbers follow, or names of sizes. Other lines are given back as they are.
 *
 * @example rowAsLine of 'Bust (cm)\t90\t98\t106' has the text 'Bust (cm): 90 (98, 106)'
 */
export function rowAsLine(line: LogicalLine): LogicalLine {
  const cells = cellsOf(line.text);
  if (cells.length < 2) return line;
  const [label, ...values] = cells as [string, ...string[]];
  if (isRule(cells)) return { ...line, text: '' };
  const numbers = values.every(isNumber);
  const names = /^sizes?\b/iu.test(label) && values.every((value) => value.length <= 12);
  if (!numbers && !names) return line;
  // One size has one number; a hint beside a label is no table.
  if (cells.length < 3 && !/\t|\||\s{3,}/u.test(line.text.trim())) return line;
  const end = line.text.length;
  return {
    ...line,
    text: names ? `${label.replace(/:$/u, '')}: ${bracketed(values)}` : listText(label, values),
    range: () => line.range(line.text.length - line.text.trimStart().length, end),
  };
}
