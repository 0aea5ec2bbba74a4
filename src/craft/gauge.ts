import { listOf, minus, perCm, positive, times } from './numbers';
import type { Cm, Stitches } from './numbers';
import type { Gauge, Reading } from './types';

/** Standard uncertainty of a count read to within half a stitch either way: a rectangle of half-width 0.5. */
const ofOneReading = 0.5 / Math.sqrt(3);

/**
 * The gauge a swatch gives, and how sure it is.
 *
 * Each reading is a number of stitches counted over a length. The gauge is all the stitches over all the length,
 * so a long reading weighs more than a short one. Stitch gauge and row gauge are two calls.
 *
 * One reading is counted to within half a stitch either way, any value in between as likely: u = 0.5/√3 stitches
 * over its length, with endless degrees of freedom. Of several readings the scatter shows how sure they are, with
 * one degree of freedom fewer than readings; where they agree better than a stitch can be read, the reading itself
 * sets u. The larger of the two counts and not both, since the scatter already holds the reading.
 *
 * @param readings stitches (or rows) and the cm they were counted over; half stitches may be read
 * @returns stitches (or rows) per cm, its standard uncertainty u, and the degrees of freedom of u
 * @throws CraftError where there is no reading, or a count or length is not a number more than 0
 * @example
 * gaugeOf([{ count: 14, over: 10 }])
 * // { perCm: 1.4, u: 0.0289, dof: Infinity }
 * gaugeOf([{ count: 14, over: 10 }, { count: 15, over: 10 }])
 * // { perCm: 1.45, u: 0.05, dof: 1 }
 *
 * Source: JCGM 100:2008 (GUM), 4.2 for the scatter, 4.3.7 for the rectangle, 4.3.10 for not counting both.
 */
export function gaugeOf(readings: Reading[]): Gauge {
  listOf(readings, 'The readings of the swatch', 1);
  const n = readings.length;
  let counted = 0 as Stitches;
  let over = 0 as Cm;
  for (const reading of readings) {
    counted = (counted + positive(reading?.count, 'A count of the swatch')) as Stitches;
    over = (over + positive(reading?.over, 'The length a swatch is counted over')) as Cm;
  }
  const gauge = perCm(counted / over, 'The gauge');

  const byReading = (Math.sqrt(n) * ofOneReading) / over;
  if (n === 1) return { perCm: gauge, u: byReading, dof: Infinity };

  const squares = readings.reduce((sum, reading) => {
    const expected = times(gauge, reading.over);
    return sum + minus(reading.count as typeof expected, expected) ** 2;
  }, 0);
  const byScatter = Math.sqrt((n / (n - 1)) * squares) / over;
  return byScatter >= byReading
    ? { perCm: gauge, u: byScatter, dof: n - 1 }
    : { perCm: gauge, u: byReading, dof: Infinity };
}
