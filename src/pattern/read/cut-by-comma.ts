/**
 * The number round a place that a comma stands within, as printed: "1,040" may be a thousand and forty, and "98,106" two
 * numbers. Undefined where no comma does. Within brackets commas part the sizes, so there only a thousand shows.
 *
 * @example cutByComma('Cast on 1,040 sts.', 8, 9) // '1,040'
 * @example cutByComma('Cast on 98 (106,114) sts.', 8, 20) // undefined
 */
export function cutByComma(text: string, from: number, to: number): string | undefined {
  const before = /(?:\d+,)+$/u.exec(text.slice(0, from))?.[0] ?? '';
  const after = /^(?:,\d+)+/u.exec(text.slice(to))?.[0] ?? '';
  if (before !== '' || after !== '') return `${before}${text.slice(from, to)}${after}`;
  return /(?<![\d.])\d,\d{3}(?!\d)/u.exec(text.slice(from, to))?.[0];
}
