import type { PerSize } from '../read';
import type { GarmentPart, Parts } from './parts';
import type { Shape } from './shape-of';

const alike = (a: PerSize, b: PerSize): boolean => a.every((value, at) => value === b[at]);

/** Whether a piece ends on as many stitches as a shoulder of the body, in every size. */
function endsOnShoulder({ shapes, piece }: GarmentPart, { body }: Parts): boolean {
  const side = body?.piece.parted?.side;
  return side !== undefined && alike(shapes.at(-1)?.ends ?? piece.start.count, side);
}

/** The taper by which a piece comes to the count of the body's shoulder; only rows worked even may follow it. */
export function shoulderTaper(part: GarmentPart, parts: Parts): Shape | undefined {
  if (part === parts.body || !endsOnShoulder(part, parts)) return undefined;
  const last = part.shapes.findLast(({ kind }) => kind !== 'even');
  return last?.kind === 'taper' && last.perRow === 1 && !last.fixed ? last : undefined;
}

/**
 * Whether the shoulders of a pattern can take up what whole repeats make of its body: the last row of the body is parted
 * for a neck, and each piece that is joined there comes to its count by a taper, after the body.
 */
export function shouldersFollow(parts: Parts): boolean {
  const { body, all } = parts;
  if (!body?.piece.parted) return false;
  const joined = all.filter((part) => part !== body && endsOnShoulder(part, parts));
  return joined.every(
    (part) => all.indexOf(part) > all.indexOf(body) && shoulderTaper(part, parts) !== undefined,
  );
}
