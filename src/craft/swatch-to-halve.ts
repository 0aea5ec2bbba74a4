import { CraftError } from './craft-error';
import { numberParam } from './message-parts';
import { listOf, positive } from './numbers';
import { combineUncertainty, type UncertaintyPart } from './uncertainty';
import type { Gauge, Reading } from './types';

/** What makes a result's give or take half of what it is. */
export type Halving =
  /** Each reading `times` as long: `count` stitches over `over` cm in all. */
  | { readonly by: 'length'; readonly times: number; readonly count: number; readonly over: number }
  /** `readings` in all, each as long as those there are. */
  | { readonly by: 'readings'; readonly readings: number }
  /** No swatch of this fabric is large enough: `left` stays even if its gauge were known exactly. */
  | { readonly by: 'nothing'; readonly left: number };

/** More readings than anybody takes, and longer ones. */
const mostReadings = 1000;
const mostTimes = 1e9;

/**
 * How much more swatch halves the give or take of a result.
 *
 * Where the gauge is as sure as a reading can be read, longer readings make it surer, in proportion. Where readings
 * scatter, more of them do: u falls with the root of their number, and Student's factor falls as well, which for two
 * readings (12.7) is most of it. The scatter itself is taken to stay what it is.
 *
 * @param o.gauge the gauge that is to be surer, as `gaugeOf` gives it; @param o.readings what it was read from
 * @param o.part its part in the result's u, and @param o.others the parts of the other sources
 * @returns what to read instead; `count` in stitches (or rows), `over` in cm, `left` in the result's unit
 * @throws CraftError where there is no reading, or a part is none
 * @example
 * // One reading of 14 stitches over 10 cm, and nothing else in doubt: read twice as many.
 * swatchToHalve({ gauge: { perCm: 1.4, u: 0.0289, dof: Infinity }, readings: [{ count: 14, over: 10 }],
 *   part: { u: 2.15, dof: Infinity }, others: [] }) // { by: 'length', times: 2, count: 28, over: 20 }
 *
 * Source: JCGM 100:2008 (GUM), 4.2.3 for the mean of several readings, 4.3.7 for one, G.4 for the factor.
 */
export function swatchToHalve(o: {
  gauge: Gauge;
  readings: readonly Reading[];
  part: UncertaintyPart;
  others: readonly UncertaintyPart[];
}): Halving {
  listOf([...o.readings], 'The readings of the swatch', 1);
  if (!(o.part?.u > 0)) {
    throw new CraftError(
      'no-part',
      'The gauge has to have a part in the doubt to be halved; its part is {u}.',
      { u: numberParam(o.part?.u) },
    );
  }
  const over = o.readings.reduce((sum, reading) => sum + positive(reading.over, 'The length'), 0);
  const whole = combineUncertainty([o.part, ...o.others]).expanded;
  const left = combineUncertainty([...o.others]).expanded;
  if (left >= whole / 2) return { by: 'nothing', left };

  const withPart = (part: UncertaintyPart): number => combineUncertainty([part, ...o.others]).expanded;
  if (o.gauge.dof === Infinity) {
    const longer = (times: number): Halving => ({
      by: 'length',
      times,
      count: o.gauge.perCm * over * times,
      over: over * times,
    });
    const rest = Math.hypot(...o.others.map(({ u }) => u));
    if (o.others.every(({ dof }) => dof === Infinity)) {
      // The factor stays what it is, so the whole u is to be half: (part / times)² + rest² = (part² + rest²) / 4.
      return longer((2 * o.part.u) / Math.sqrt((o.part.u - rest) * (o.part.u + rest) - 2 * rest ** 2));
    }
    let [short, long] = [1, 2];
    const isHalf = (times: number): boolean => withPart({ ...o.part, u: o.part.u / times }) <= whole / 2;
    while (!isHalf(long) && long < mostTimes) [short, long] = [long, 2 * long];
    for (let step = 0; step < 50; step++) {
      const middle = (short + long) / 2;
      if (isHalf(middle)) long = middle;
      else short = middle;
    }
    return longer(long);
  }
  const now = o.readings.length;
  for (let readings = now + 1; readings <= mostReadings; readings++) {
    const part = { u: o.part.u * Math.sqrt(now / readings), dof: readings - 1 };
    if (withPart(part) <= whole / 2) return { by: 'readings', readings };
  }
  return { by: 'nothing', left };
}
