import { CraftError } from './craft-error';
import { numberParam } from './message-parts';
import { formatLength } from './quantity-words';
import { cm, counted, perCm, roundUp, same, stitches, widthOf } from './numbers';
import type { Cm } from './numbers';

/**
 * Whether an opening passes what has to go through it: a head, a hand, a hip.
 *
 * An opening stretches to (count / gauge) × stretch, the stretch read from the swatch.
 *
 * @param o.count stitches round the opening
 * @param o.stitchesPerCm their gauge, relaxed
 * @param o.stretch how many times its width the fabric stretches to (see `stretchOf`), 1 or more
 * @param o.body what has to pass, round, in cm
 * @returns the opening stretched, in cm; whether it passes; the fewest stitches that would; and a sentence
 * @example
 * passes({ count: 60, stitchesPerCm: 1.5, stretch: 1.4, body: 57 })
 * // { opening: 56, holds: false, least: 62, message: 'The opening stretches to 56 cm, short of … 62 stitches …' }
 *
 * Source: common practice.
 */
export function passes(o: { count: number; stitchesPerCm: number; stretch: number; body: number }): {
  opening: number;
  holds: boolean;
  least: number;
  message: string;
} {
  const count = stitches(o.count, 'The stitches of the opening');
  const gauge = perCm(o.stitchesPerCm, "The opening's stitch gauge");
  const stretch = stretchFactor(o.stretch);
  const body = cm(o.body, 'What has to pass the opening');
  const opening: Cm = cm(widthOf(count, gauge) * stretch, 'The opening');
  const holds = opening >= body || same(opening, body);
  const least = stitches(Math.max(1, roundUp((body * gauge) / stretch)), 'The stitches that would pass');
  const message = holds
    ? `The opening stretches to ${formatLength(opening)} and passes ${formatLength(body)}.`
    : `The opening stretches to ${formatLength(opening)}, short of the ${formatLength(body)} that have to pass: ${counted(least, 'stitch', 'stitches')} would do, or a stretchier fabric, or a fastening.`;
  return { opening, holds, least, message };
}

/**
 * How many times its width a swatch stretches to.
 *
 * @param o.relaxed the swatch's width, cm; @param o.stretched its width pulled as far as it goes comfortably, cm
 * @throws CraftError where a width is not more than 0, or where it is pulled narrower than it lies
 * @example
 * stretchOf({ relaxed: 10, stretched: 14 }) // 1.4
 *
 * Source: common practice.
 */
export function stretchOf(o: { relaxed: number; stretched: number }): number {
  const relaxed = cm(o.relaxed, "The swatch's width");
  return stretchFactor(cm(o.stretched, "The stretched swatch's width") / relaxed);
}

function stretchFactor(times: number): number {
  if (!(times >= 1 && times <= 1000)) {
    throw new CraftError(
      'not-a-stretch',
      'A fabric stretches to 1 time its width or more, not to {times} times: measure it relaxed first, then stretched.',
      { times: numberParam(times) },
    );
  }
  return times;
}
