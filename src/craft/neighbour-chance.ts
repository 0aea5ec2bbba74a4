import { fitCount } from './fit-count';
import { notNegative } from './numbers';
import { chanceAbove } from './student-t';
import type { Repeat, Rule } from './types';

/**
 * The chance that the true gauge would have chosen another allowed count than the one that was fitted.
 *
 * The exact target is only as sure as the gauge. Its spread is Student's t about the target; what lies beyond the
 * values that lead to the same count is the chance of another, fewer or more.
 *
 * @param o.target the exact stitches; @param o.u its standard uncertainty; @param o.dof that one's freedom
 * @param o.repeats, o.rule, o.parity as they were given to `fitCount`
 * @returns the chances, from 0 to 1, of a lower and of a higher count, and their sum
 * @throws CraftError as `fitCount` does
 * @example
 * neighbourChance({ target: 72.8, u: 1.5, dof: Infinity, repeats: [{ multiple: 8, plus: 3 }], rule: 'nearest' })
 * // { lower: 0.115, higher: 0.000, chance: 0.115 }: fitted to 75, one in nine that 67 was nearer
 *
 * Source: JCGM 100:2008 (GUM), annex G, for the distribution.
 */
export function neighbourChance(o: {
  target: number;
  u: number;
  dof: number;
  repeats: Repeat[];
  rule: Rule;
  parity?: 'odd' | 'even';
}): { lower: number; higher: number; chance: number } {
  const u = notNegative(o.u, 'The uncertainty of the target');
  const { count } = fitCount(o.target, o.repeats, o.rule, o.parity);
  const { below } = fitCount(count - 1, o.repeats, 'nearest', o.parity);
  const { above } = fitCount(count + 1, o.repeats, 'nearest', o.parity);
  // The targets from `from` to `to` all lead to this count.
  const from = {
    nearest: below === null ? -Infinity : (below + count) / 2,
    up: below ?? -Infinity,
    down: count,
  };
  const to = { nearest: (count + above) / 2, up: count, down: above };

  const lower = beyond(o.target - from[o.rule], u, o.dof);
  const higher = beyond(to[o.rule] - o.target, u, o.dof);
  return { lower, higher, chance: lower + higher };
}

/** The chance of being out by more than `distance` to one side. */
function beyond(distance: number, u: number, dof: number): number {
  if (distance === Infinity) return 0;
  if (u === 0) return 0;
  return chanceAbove(distance / u, dof);
}
