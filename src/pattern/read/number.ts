/** A number as patterns print them, read where it stands. */
export interface PrintedNumber {
  readonly value: number;
  /** The step it is printed in: 1, 0.5, 0.1, 0.125 … */
  readonly step: number;
  /** Where it ends in the text. */
  readonly to: number;
}

const signs: Readonly<Record<string, number>> = {
  '½': 1 / 2,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
};

const fraction = /(?:(\d{1,5})\s*[-‑ ]?\s*)?(?:([½⅓⅔¼¾⅛⅜⅝⅞])|(\d{1,2})\s*[/⁄]\s*(\d{1,2}))/uy;

/**
 * The number that begins at a place: `104`, `41.5`, `41½`, `41 1/2`, and `41,5` where the decimal mark is a comma.
 * Undefined where none does.
 *
 * @example numberAt('41 1/2 (43', 0, '.') // { value: 41.5, step: 0.5, to: 6 }
 */
export function numberAt(text: string, at: number, decimal: '.' | ','): PrintedNumber | undefined {
  if (!/[\d½⅓⅔¼¾⅛⅜⅝⅞.,]/u.test(text[at] ?? '')) return undefined;
  fraction.lastIndex = at;
  const split = fraction.exec(text);
  if (split) {
    const [whole, whole1, sign, over, under] = split;
    const part = sign ? signs[sign]! : Number(over) / Number(under);
    // "3/4 in" is three quarters; "6/8" after a whole number too. 36/38 is two sizes.
    if (part < 1 && (sign || [2, 3, 4, 8, 16].includes(Number(under)))) {
      return { value: Number(whole1 ?? 0) + part, step: finest(part), to: at + whole.length };
    }
  }
  const digits = decimal === ',' ? /\d+(?:[.,]\d{1,3})?/uy : /\d+(?:\.\d{1,3})?|\.\d{1,3}/uy;
  digits.lastIndex = at;
  const plain = digits.exec(text)?.[0];
  if (plain === undefined) return undefined;
  const value = Number(plain.replace(',', '.'));
  const decimals = /[.,](\d+)$/u.exec(plain)?.[1];
  return {
    value,
    step: decimals === undefined ? 1 : /^[05]$/u.test(decimals) ? 0.5 : 10 ** -decimals.length,
    to: at + plain.length,
  };
}

function finest(part: number): number {
  return (
    [1 / 2, 1 / 4, 1 / 8].find((step) => Math.abs(part / step - Math.round(part / step)) < 1e-9) ?? 1 / 3
  );
}
