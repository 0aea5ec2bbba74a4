/**
 * The name of one of several alike: the first has it plain, the others with their number.
 *
 * @param at which of them, from 0
 * @example numbered('yarn_area', 0) // 'yarn_area'
 * @example numbered('yarn_area', 1) // 'yarn_area_2'
 */
export function numbered(name: string, at: number): string {
  return at === 0 ? name : `${name}_${at + 1}`;
}
