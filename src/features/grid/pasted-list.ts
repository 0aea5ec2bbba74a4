import { bracketed } from '../../format';
import { sizeListAt } from '../../pattern/read';

/** More than any list of sizes. */
const longestList = 400;

/**
 * A size list as patterns print them, as a text for each size; undefined where a text is none, or could be read in two
 * ways. Words before a colon say what the line is, a unit behind the list is that of each of its numbers, and a dash is a
 * gap.
 *
 * @example pastedList('76 (80, –) cm', '.')     // ['76 cm', '80 cm', '']
 * @example pastedList('Bust: 76,5 [80: 84]', ',') // ['76,5', '80', '84']
 * @example pastedList('76 (80,5, 84)', '.')     // undefined
 */
export function pastedList(text: string, decimal: '.' | ','): string[] | undefined {
  if (text.length > longestList) return undefined;
  const sentence = text.replace(/^[^\d:]*:\s*/u, '');
  const list = /[([{]/u.test(sentence) ? sizeListAt(sentence, 0, decimal) : undefined;
  if (!list || list.values.length < 2 || list.units.length > 1) return undefined;
  const behind = sentence.slice(list.to).trim();
  if (!/^\p{L}*\.?$/u.test(behind)) return undefined;
  // Where some commas part numbers and some are within one, which is which is anybody's guess.
  if (decimal === '.' && /\d,\d/u.test(sentence) && /\d,\s/u.test(sentence)) return undefined;
  const unit = list.units[0] ?? behind;
  return list.values.map((value) =>
    value === null ? '' : `${String(value).replace('.', decimal)} ${unit}`.trim(),
  );
}

/**
 * Rows with a value for each size instead of a list for so many sizes; undefined where no row has one. Without its words
 * a list for another number of sizes is no heading.
 *
 * @example withListsSpread([['Bust', '76 (80, 84)'], ['5']], 3, '.') // [['76', '80', '84'], ['5']]
 * @example withListsSpread([['Bust: 76 (80)']], 3, '.')              // [['76 (80)']]
 */
export function withListsSpread(rows: string[][], sizes: number, decimal: '.' | ','): string[][] | undefined {
  const lists = rows.map((row) => listIn(row, decimal));
  if (!lists.some(Boolean)) return undefined;
  return rows.map((row, at) => {
    const list = lists[at];
    return !list ? row : list.length === sizes ? list : [bracketed(list)];
  });
}

/** The list that a row ends with, after nothing but words. */
function listIn(row: readonly string[], decimal: '.' | ','): string[] | undefined {
  const texts = row.filter((text) => text !== '');
  const labels = texts.slice(0, -1);
  return labels.some((text) => /\d/u.test(text)) ? undefined : pastedList(texts.at(-1) ?? '', decimal);
}
