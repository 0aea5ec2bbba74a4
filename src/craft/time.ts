import { finite, positive, wholeCount } from './numbers';

/**
 * The hours of work in a number of stitches, at a pace timed by the person who works them.
 *
 * @param o.stitches stitches in all, worked or picked up
 * @param o.perMinute stitches worked in a minute, over a stretch that was timed with its pauses
 * @returns hours
 * @throws CraftError where the count is not whole or the pace not more than 0
 * @example
 * timeFor({ stitches: 27000, perMinute: 15 }) // { hours: 30 }
 *
 * Source: common practice.
 */
export function timeFor(o: { stitches: number; perMinute: number }): { hours: number } {
  const count = wholeCount(o.stitches, 'The number of stitches');
  const perMinute = positive(o.perMinute, 'The number of stitches a minute');
  return { hours: finite(count / perMinute / 60, 'The number of hours') };
}
