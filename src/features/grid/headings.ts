import { sameName } from '../../formulas';
import type { Size } from '../../notebook';

/** What is pasted, without the words round it. */
export interface Table {
  readonly rows: readonly (readonly string[])[];
  /** The size each column names in its heading; undefined over a column that names none of the notebook's. */
  readonly sizes?: readonly (Size | undefined)[];
}

/**
 * A table without its headings: a first line that says what the columns are, and first columns that say what the lines
 * are. Left in, they would push every number to the next size or the next line. Where a heading names one of the sizes,
 * the columns are meant for the sizes that are named.
 *
 * @example
 * withoutHeadings([['', 'S', 'M'], ['Bust', '84', '94']], sizes)
 * // { rows: [['84', '94']], sizes: [S, M] }
 * withoutHeadings([['84', '94']], sizes) // { rows: [['84', '94']] }
 */
export function withoutHeadings(rows: readonly (readonly string[])[], sizes: readonly Size[]): Table {
  const sizeCalled = (text: string): Size | undefined =>
    text === '' ? undefined : sizes.find(({ label }) => sameName(label) === sameName(text));
  const [first = [], ...others] = rows;
  // A size may be called by a number: only a line of nothing but sizes is then a heading.
  const nameSizes =
    first.length > 1 && first.every((text, at) => sizeCalled(text) ?? (at === 0 && !isNumber(text)));
  const headed =
    others.some((row) => row.some(isNumber)) &&
    first.some((text) => text !== '') &&
    (nameSizes || !first.some(isNumber));
  const body = headed ? others : rows;

  const wide = widest(body);
  let labels = 0;
  while (labels < wide - 1 && saysWhatLinesAre(body, labels)) labels += 1;
  const named = headed ? first.slice(labels).map(sizeCalled) : [];
  return {
    rows: body.map((row) => row.slice(labels)),
    ...(named.some(Boolean) ? { sizes: named } : {}),
  };
}

/** The most texts of a row. One by one, since a text can hold more rows than a call takes arguments. */
export function widest(rows: readonly (readonly string[])[]): number {
  return rows.reduce((most, { length }) => Math.max(most, length), 0);
}

function saysWhatLinesAre(rows: readonly (readonly string[])[], column: number): boolean {
  return (
    rows.some((row) => row[column]) &&
    !rows.some((row) => isNumber(row[column] ?? '')) &&
    rows.some((row) => row.slice(column + 1).some(isNumber))
  );
}

/** Whether a text begins as a number does: "84 cm", "½" and ".5", and neither "Size 4" nor "2X". */
function isNumber(text: string): boolean {
  return /^[-−–+]?\s*[.,]?[\d½⅓⅔¼¾⅛⅜⅝⅞]/u.test(text) && !/^\d+X/i.test(text);
}
