import { CraftError } from './craft-error';
import { lengthParam } from './message-parts';
import { cm, finite, times } from './numbers';

/**
 * How deep an armhole has to be.
 *
 * In published charts the armhole depth stops keeping up with the upper arm in the larger sizes, so a sleeve made to
 * the chart would bind. The depth is therefore at least half of what goes round the arm with its ease.
 *
 * @param o.chartDepth the chart's (or one's own) armhole depth, cm
 * @param o.upperArm round the upper arm, cm
 * @param o.ease what the sleeve measures beyond the arm, cm; may be negative
 * @returns the greater of the chart's depth and half the sleeve's width, cm
 * @throws CraftError where a measurement is not more than 0, or the ease leaves nothing of the arm
 * @example
 * armholeDepthFor({ chartDepth: 25.4, upperArm: 47, ease: 8 }) // 27.5: the arm asks for more than the chart
 *
 * Source: our own rule, from comparing depth and upper arm in the Craft Yarn Council's charts.
 */
export function armholeDepthFor({
  chartDepth,
  upperArm,
  ease,
}: {
  chartDepth: number;
  upperArm: number;
  ease: number;
}): number {
  const depth = cm(chartDepth, "The chart's armhole depth");
  const arm = cm(upperArm, 'The upper arm');
  const sleeve = arm + finite(ease, 'The ease at the upper arm');
  if (sleeve <= 0) {
    throw new CraftError(
      'nothing-left',
      'An ease of {ease} on an upper arm of {arm} leaves no sleeve: take more than {least}.',
      { ease: lengthParam(ease), arm: lengthParam(arm), least: lengthParam(-arm) },
    );
  }
  return Math.max(depth, times(cm(sleeve, "The sleeve's width"), 0.5));
}
