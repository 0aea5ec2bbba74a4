/**
 * A text for each size as patterns write them, smallest first: the first, and the rest in brackets.
 *
 * @example bracketed(['S', 'M', 'L']) // 'S (M, L)'
 * @example bracketed(['S'])           // 'S'
 */
export function bracketed([first = '', ...rest]: readonly string[]): string {
  return rest.length === 0 ? first : `${first} (${rest.join(', ')})`;
}

/**
 * The same for what the sizes have: one alone where all agree.
 *
 * @example bySize(['34', '36', '–']) // '34 (36, –)'
 * @example bySize(['34', '34'])      // '34'
 */
export function bySize(texts: readonly string[]): string {
  return bracketed(texts.every((text) => text === texts[0]) ? texts.slice(0, 1) : texts);
}
