/**
 * Where a key goes along the places of a picture: the arrows by one, Page Up and Page Down by ten, Home and End to the
 * ends, and none beyond them. Undefined for any other key, and where there is no place.
 *
 * @example moveByKey('PageDown', 4, { last: 9 }) // 9
 */
export function moveByKey(
  key: string,
  from: number,
  { first = 0, last }: { first?: number; last: number },
): number | undefined {
  const to: Readonly<Record<string, number>> = {
    ArrowRight: from + 1,
    ArrowLeft: from - 1,
    PageDown: from + 10,
    PageUp: from - 10,
    Home: first,
    End: last,
  };
  if (last < first || !Object.hasOwn(to, key)) return undefined;
  return Math.min(Math.max(to[key]!, first), last);
}
