import type { LogicalLine } from './lines';

/**
 * The names of the sizes, where a line lists them: "Sizes: XS (S, M, L)", "Size 1 (2, 3)". Undefined where it does not.
 *
 * @example sizesIn({ text: 'Sizes: XS (S, M, L)' }) // ['XS', 'S', 'M', 'L']
 */
export function sizesIn({ text }: Pick<LogicalLine, 'text'>): string[] | undefined {
  const [, list = ''] =
    /^[\s*_#|]*(?:to fit\s+)?sizes?(?:\s+(?:available|given|names?))?\s*[:=.–—-]*\s+(\S.*)$/iu.exec(text) ??
    [];
  if (list === '' || /\b(?:cm|mm|inch|inches|needles?|hooks?|bust|chest)\b|["″]/iu.test(list))
    return undefined;
  const names = list
    .replace(/\.\s*$/u, '')
    .split(/[()[\]{},;/|]+|\s+[-–—]\s+|\s{2,}/u)
    .map((name) => name.trim())
    .filter((name) => name !== '');
  const short = names.every((name) => name.length <= 14 && name.split(/\s+/u).length <= 3);
  // A single name is one where a colon leads to it: "Size: M".
  const many = names.length > 1 || /^one size$/iu.test(names[0] ?? '') || /sizes?\s*:/iu.test(text);
  return short && many && new Set(names).size === names.length ? names : undefined;
}
