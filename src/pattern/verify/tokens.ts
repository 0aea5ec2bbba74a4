/** A word, number or mark of an instruction, in small letters. */
export type Token = string;

/** Longer than any line that is followed; what is longer is not read. */
export const longestLine = 6000;

const pattern =
  /[a-z]+\d+tog(?:tbl)?|sk2po?\b|[kp]\d*tbl|m1[lrp]{0,2}|[kp]f(?:&|and)?b|\d+(?:st|nd|rd|th)\b|\d+|[a-z]+|\*+|[()[\]{},;.:–]|\S/gu;

/**
 * The words of a line. `k6` is two of them and `k2tog` is one.
 *
 * @example tokensOf('*K4, k2tog') // ['*', 'k', '4', ',', 'k2tog']
 */
export function tokensOf(line: string): Token[] {
  const plain = line
    .toLowerCase()
    .replace(/[\u2066-\u2069\u200e\u200f]/gu, '')
    .replace(/[—−]/gu, '–')
    .replace(/×/gu, ' x ')
    .replace(/’/gu, "'");
  return (plain.match(pattern) ?? []).map((token) => (token.startsWith('*') ? '*' : token));
}
