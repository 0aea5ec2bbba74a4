import type { Settings, Size } from './document';
import { writeLength } from '../format';

/**
 * By how much fronts, closed, are wider or narrower than the back, in each size where they do not meet it.
 *
 * @param beyond the cm by which they are wider in a size, less than 0 where they are narrower; undefined where it is not
 *   known
 * @example
 * frontsMessage([{ id: 'm', label: 'M' }, { id: 'l', label: 'L' }], settings, (size) => (size === 'l' ? 3.1 : 0))
 * // ['In L the fronts, closed, are 3.1 cm wider than the back.']
 */
export function frontsMessage(
  sizes: readonly Size[],
  { length, decimal }: Settings,
  beyond: (size: string) => number | undefined,
): string[] {
  return sizes.flatMap(({ id, label }) => {
    const cm = beyond(id);
    if (cm === undefined || Math.abs(cm) <= 1e-9) return [];
    const where = sizes.length > 1 ? `In ${label} the` : 'The';
    const much = `${writeLength(Math.abs(cm), { unit: length, decimal })}\u00a0${length}`;
    return [`${where} fronts, closed, are ${much} ${cm > 0 ? 'wider' : 'narrower'} than the back.`];
  });
}
