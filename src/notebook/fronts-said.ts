import type { Settings, Size } from './document';
import { writeLength } from './quantities';

/**
 * By how much fronts overlap or leave a gap, in each size where they do not meet.
 *
 * @param overlap the cm by which they overlap in a size, less than 0 where they leave a gap; undefined where it is not known
 * @example
 * frontsSaid([{ id: 'm', label: 'M' }, { id: 'l', label: 'L' }], settings, (size) => (size === 'l' ? 3.1 : 0))
 * // ['In L the fronts overlap by 3.1 cm.']
 */
export function frontsSaid(
  sizes: readonly Size[],
  { length, decimal }: Settings,
  overlap: (size: string) => number | undefined,
): string[] {
  return sizes.flatMap(({ id, label }) => {
    const cm = overlap(id);
    if (cm === undefined || Math.abs(cm) <= 1e-9) return [];
    const where = sizes.length > 1 ? `In ${label} the` : 'The';
    const how = cm > 0 ? 'overlap by' : 'leave a gap of';
    return [`${where} fronts ${how} ${writeLength(Math.abs(cm), { unit: length, decimal })}\u00a0${length}.`];
  });
}
