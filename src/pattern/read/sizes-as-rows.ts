import { bracketed } from '../../format';
import type { LogicalLine } from './lines';
import { measureOf } from './measure-in';
import { sizesIn } from './sizes-in';
import { cellsOf, isNumber, isRule, listText } from './table-cells';
import type { ImportDiagnostic } from './types';

/** Counts are no measurements, whatever else their head names. */
const counts = /\b(?:sts?|stitch(?:es)?|rows?|rounds?|rnds?)\b/iu;

interface Table {
  /** The heads of its columns, without that of the sizes. */
  readonly heads: readonly string[];
  readonly rows: readonly {
    readonly at: number;
    readonly size: string;
    readonly values: readonly string[];
  }[];
  readonly end: number;
}

/**
 * Tables with a size to a row and a measurement to a column, turned: the line of their head names the sizes, lines of
 * no length after it give each measurement in all of them, and the rows are marked as read. What the head of a column
 * names is read as it would be before a list; a column whose cells are not each one number is doubted.
 *
 * @example the lines of 'Size | Bust (cm)', 'S | 90' and 'M | 98' are 'Sizes: S (M)', 'Bust (cm): 90 (98)' and two blank
 */
export function sizesAsRows(
  lines: readonly LogicalLine[],
  diagnostic: (diagnostic: ImportDiagnostic) => void,
): LogicalLine[] {
  const named = lines.map((line) => sizesIn(line)).find((sizes) => sizes !== undefined);
  const turned: LogicalLine[] = [];
  for (let at = 0; at < lines.length;) {
    const table = tableAt(lines, at);
    if (table) {
      turned.push(...asLines(lines, at, table, named, diagnostic));
      at = table.end;
    } else turned.push(lines[at++]!);
  }
  return turned;
}

function tableAt(lines: readonly LogicalLine[], at: number): Table | undefined {
  const line = lines[at]!;
  const head = cellsOf(line.text);
  // A line of print is no head: its cells are told apart by more than one space.
  if (line.lines !== 1 || (head.length === 1 && !/[\t|]/u.test(line.text)) || head.some(isNumber))
    return undefined;
  const rows: Table['rows'][number][] = [];
  let end = at + 1;
  let heads: string[] | undefined;
  for (; end < lines.length; end++) {
    const cells = cellsOf(lines[end]!.text);
    if (end === at + 1 && cells.length > 1 && isRule(cells)) continue;
    const [size = '', ...values] = cells;
    // The corner over the sizes may be empty, and is then no cell.
    heads ??=
      values.length === head.length ? head : /^(?:sizes?\b.*)?$/iu.test(head[0]!) ? head.slice(1) : [];
    const name = size !== '' && size.length <= 14 && size.split(/\s+/u).length <= 3;
    if (!name || lines[end]!.lines !== 1 || values.length !== heads.length || !values.some(isNumber)) break;
    rows.push({ at: end, size, values });
  }
  const measured = heads?.some((label) => measureOf(label) !== 'other' && !counts.test(label));
  const names = new Set(rows.map(({ size }) => size));
  if (!heads?.length || rows.length === 0 || names.size < rows.length || !measured) return undefined;
  return heads.every((label) => /\p{L}/u.test(label)) ? { heads, rows, end } : undefined;
}

function asLines(
  lines: readonly LogicalLine[],
  at: number,
  { heads, rows, end }: Table,
  named: readonly string[] | undefined,
  diagnostic: (diagnostic: ImportDiagnostic) => void,
): LogicalLine[] {
  const line = lines[at]!;
  const sizes = rows.map(({ size }) => size);
  // Rows in another order than the pattern's own, or of some of its sizes, still say which size they are of.
  const order = named && sizes.every((size) => named.includes(size)) ? named : sizes;
  const inOrder = order.map((size) => rows.find((row) => row.size === size));
  const measures = heads.flatMap((label, column): LogicalLine[] => {
    const from = line.text.indexOf(label);
    const range = line.range(from, from + label.length);
    const values = inOrder.map((row) => row?.values[column] ?? '–');
    if (values.every(isNumber) && !counts.test(label))
      return [{ text: listText(label, values), line: line.line, lines: 0, range: () => range }];
    diagnostic({
      range,
      kind: 'unread',
      message: `The column "${label}" is kept as it stands: ${
        counts.test(label)
          ? 'counts belong to the instructions of a piece'
          : 'give each of its sizes one number, or a dash'
      }.`,
    });
    return [];
  });
  const read = new Set(rows.map((row) => row.at));
  return [
    { ...line, text: `Sizes: ${bracketed(order)}` },
    ...measures,
    ...lines.slice(at + 1, end).map((one, index) => ({
      ...one,
      text: '',
      ...(read.has(at + 1 + index) ? { as: 'a size, and its measurements' } : {}),
    })),
  ];
}
