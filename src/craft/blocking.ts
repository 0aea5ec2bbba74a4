import { cm, perCm } from './numbers';

/**
 * What a length has to measure while it is on the hook or the needles, to be right once it is blocked.
 *
 * Counts come from the blocked gauge; the same rows are shorter or longer before blocking, by the ratio of the two.
 *
 * @param o.length the length wanted after blocking, cm
 * @param o.asWorked rows per cm before blocking; @param o.blocked rows per cm after
 *   (stitches per cm for a width)
 * @returns the length to measure while working, cm
 * @throws CraftError where one of them is not more than 0
 * @example
 * measureWhileWorking({ length: 40, asWorked: 1.25, blocked: 1.2 }) // 38.4: blocking adds 1.6 cm
 *
 * Source: common practice.
 */
export function measureWhileWorking(o: { length: number; asWorked: number; blocked: number }): number {
  const length = cm(o.length, 'The length after blocking');
  return (length * perCm(o.blocked, 'The blocked gauge')) / perCm(o.asWorked, 'The gauge as worked');
}
