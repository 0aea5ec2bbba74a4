/**
 * The version that a file's text says it is of, read from its first lines; undefined where they say none.
 *
 * @example fileVersionOf('{"format":"easewright notebook","version":1,"notebook":{}}') // 1
 */
export function fileVersionOf(text: string): number | undefined {
  const found = /"version"\s*:\s*(\d+)/u.exec(text.slice(0, 200));
  return found ? Number(found[1]) : undefined;
}
