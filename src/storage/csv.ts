/** A cell of a table: a text that a person wrote, or a number as it is shown. */
export type TableCell = string | { readonly shown: string };

/**
 * A table as comma-separated values (RFC 4180). Where decimals are written with a comma, the separator is a semicolon,
 * as spreadsheets in those countries expect (common practice).
 */
export function csvOf(rows: readonly (readonly TableCell[])[], decimal: '.' | ','): string {
  const separator = decimal === ',' ? ';' : ',';
  return rows
    .map((row) => `${row.map((cell) => quoted(plain(cell), separator)).join(separator)}\r\n`)
    .join('');
}

/** A table as other programs take it from the clipboard: with tabs between, and as a table. */
export function clipboardOf(rows: readonly (readonly TableCell[])[]): { text: string; html: string } {
  const texts = rows.map((row) => row.map(plain));
  return {
    text: texts.map((row) => row.map((text) => text.replace(/[\t\r\n]+/g, ' ')).join('\t')).join('\n'),
    html: `<table>${texts
      .map((row) => `<tr>${row.map((text) => `<td>${escaped(text)}</td>`).join('')}</tr>`)
      .join('')}</table>`,
  };
}

const aNumber = /^-?\d+([.,]\d+)?$/;

/**
 * A text that no spreadsheet takes for a formula. One that begins with = + - @, a tab or a new line (or with their wide
 * forms, or after spaces or apostrophes, which some programs drop) gets an apostrophe before it: the sign by which
 * spreadsheets tell that what follows is text. A text that is a plain number throughout stays one, negative or not.
 *
 * @example inert('=1+1') // "'=1+1"
 * @example inert('-5.2') // "-5.2"
 */
export function inert(text: string): string {
  return !aNumber.test(text) && /^['\s]*[=+\-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20\u2212]/.test(text)
    ? `'${text}`
    : text;
}

function plain(cell: TableCell): string {
  if (typeof cell === 'string') return inert(cell);
  // Other programs read a number only where its minus is the hyphen of a keyboard.
  return inert(cell.shown.replace('−', '-'));
}

function quoted(text: string, separator: string): string {
  return text.includes(separator) || /["\t\r\n]|^\s|\s$/.test(text)
    ? `"${text.replaceAll('"', '""')}"`
    : text;
}

function escaped(text: string): string {
  return text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}
