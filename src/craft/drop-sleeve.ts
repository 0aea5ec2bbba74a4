import { CraftError } from './craft-error';
import { lengthParam } from './message-parts';
import { cm, minus, times } from './numbers';

/**
 * The sleeve length of a dropped shoulder.
 *
 * The body reaches down the arm, so the sleeve only has to cover the rest: from the middle of the back to the wrist,
 * less half the flat width of the back. A wider body means a shorter sleeve.
 *
 * @param o.neckToWrist from the middle of the back neck to the wrist, cm
 * @param o.bodyWidth the flat width of the back, cm
 * @returns the sleeve length, cm
 * @throws CraftError where the body alone reaches to the wrist
 * @example
 * dropSleeveLength({ neckToWrist: 75, bodyWidth: 60 }) // 45
 *
 * Source: common practice.
 */
export function dropSleeveLength({
  neckToWrist,
  bodyWidth,
}: {
  neckToWrist: number;
  bodyWidth: number;
}): number {
  const reach = cm(neckToWrist, 'The length from neck to wrist');
  const half = times(cm(bodyWidth, 'The width of the body'), 0.5);
  const length = minus(reach, half);
  if (length <= 0) {
    throw new CraftError(
      'no-sleeve-left',
      'A body {bodyWidth} wide reaches {half} down each arm, all of the {neckToWrist} from neck to wrist: no sleeve is left. A body narrower than {limit} leaves one.',
      {
        bodyWidth: lengthParam(bodyWidth),
        half: lengthParam(half),
        neckToWrist: lengthParam(neckToWrist),
        limit: lengthParam(2 * neckToWrist),
      },
    );
  }
  return length;
}
