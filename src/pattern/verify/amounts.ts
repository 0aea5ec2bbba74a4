/** A number for each size as it is printed; null where an en dash stands. One alone is for every size. */
export type Amounts = readonly (number | null)[];

const fractions: Readonly<Record<string, number>> = {
  '½': 1 / 2,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
};

const one = String.raw`(?:[−-]?\d+(?:[.,]\d+)?[½¼¾⅛⅜⅝⅞]?|[½¼¾⅛⅜⅝⅞]|–)`;

/** What a list of numbers by size looks like, as the source of a pattern with no groups in it. */
export const listOfAmounts = String.raw`${one}(?:\s*\(${one}(?:,\s+${one})*\))?`;

const whole = new RegExp(`^${listOfAmounts}$`, 'u');
const each = new RegExp(one, 'gu');

/**
 * The numbers of a list by size, with decimals after either mark, or with eighths; undefined where it is none.
 *
 * @example amountsIn('26 (28.5, –)') // [26, 28.5, null]
 * @example amountsIn('6⅛ (6¼)')      // [6.125, 6.25]
 */
export function amountsIn(text: string): Amounts | undefined {
  const list = text.trim();
  return whole.test(list) ? (list.match(each) ?? []).map(amountOf) : undefined;
}

function amountOf(text: string): number | null {
  if (text === '–') return null;
  const [, sign, digits, fraction] = /^([−-]?)(\d*(?:[.,]\d+)?)([½¼¾⅛⅜⅝⅞]?)$/u.exec(text)!;
  const value = Number((digits || '0').replace(',', '.')) + (fraction ? fractions[fraction]! : 0);
  return sign ? -value : value;
}

/** The value of one size, by its place among so many; undefined where the list is of another length. */
export function amountAt(amounts: Amounts, sizeIndex: number, sizes: number): number | null | undefined {
  if (amounts.length !== 1 && amounts.length !== sizes) return undefined;
  return amounts.length === 1 ? amounts[0] : amounts[sizeIndex];
}
