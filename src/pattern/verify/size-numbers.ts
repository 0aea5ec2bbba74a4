/** A list by size in which a line does not have as many numbers as there are sizes. */
export interface WrongList {
  readonly problem: string;
}

const number = String.raw`(?:\d+(?:[.,]\d+)?(?:st|nd|rd|th)?|[–—-])`;
const separator = String.raw`\s*[,;:/]\s*`;
const bracket = String.raw`[([]\s*${number}(?:${separator}${number})*\s*[)\]]`;
const list = new RegExp(`(?<![\\d.,])(${number})((?:\\s*${bracket})+)`, 'giu');
const one = new RegExp(number, 'giu');

/**
 * A line as one size reads it: every list of numbers by size becomes that size's number, an en dash where it has none.
 *
 * @param sizeIndex which of the sizes, from 0; @param sizes how many a list has
 * @example forSize('sc 6 (7, 8), sc2tog', 1, 3) // 'sc 7, sc2tog'
 */
export function forSize(line: string, sizeIndex: number, sizes: number): string | WrongList {
  let problem: string | undefined;
  const text = line.replace(list, (whole, first: string, rest: string) => {
    const values = [first, ...(rest.match(one) ?? [])];
    if (values.length === sizes) return values[sizeIndex]!.replace(/[—-]/u, '–');
    problem ??= `“${whole}” has ${values.length} numbers for ${sizes} ${sizes === 1 ? 'size' : 'sizes'}.`;
    return whole;
  });
  return problem === undefined ? text : { problem };
}
