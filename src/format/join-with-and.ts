/**
 * Words one after another as they are said.
 *
 * @example joinWithAnd(['a', 'b', 'c']) // 'a, b and c'
 * @example joinWithAnd([])              // ''
 */
export function joinWithAnd(words: readonly string[]): string {
  if (words.length < 2) return words[0] ?? '';
  return `${words.slice(0, -1).join(', ')} and ${words.at(-1)!}`;
}
