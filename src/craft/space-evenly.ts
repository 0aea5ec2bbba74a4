import { CraftError } from './craft-error';
import { evenParts } from './even-parts';
import { mostRows, oneOf, stitches } from './numbers';

/**
 * Spreads decreases or increases evenly across one row or round.
 *
 * A decrease works 2 stitches into 1; an increase makes 1 new stitch after a plain one. k = |from − to| shapings are
 * worked. `plain` has k + 1 entries: the plain stitches before each shaping, then those after the last; with the
 * 2 stitches that each decrease uses they are exactly `from`. Where nothing changes it is `[from]`.
 *
 * - In the round the stitches are cut into k segments as even as can be, and a shaping ends each; the last entry is 0.
 * - Flat with `ends: 'half'` (unless told): the same segments with the shaping in the middle of each, so that the two
 *   ends together make about one gap and a seam does not show.
 * - Flat with `ends: 'whole'`: k + 1 gaps that differ by at most one.
 *
 * Counts are stitches. Throws a CraftError when a count is not whole or below 1, and when more shapings are asked
 * than one row has room for: from / 2 decreases, `from` increases.
 *
 * @example
 * spaceEvenly({ from: 30, to: 20, worked: 'round' })
 * // { kind: 'decrease', shapings: 10, plain: [1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 0] }
 * spaceEvenly({ from: 40, to: 44, worked: 'flat', ends: 'whole' })
 * // { kind: 'increase', shapings: 4, plain: [8, 8, 8, 8, 8] }
 *
 * Source: common practice; checked against the published examples in tests/published/spacing-evenly.test.ts.
 */
export function spaceEvenly(o: {
  from: number;
  to: number;
  worked: 'flat' | 'round';
  ends?: 'half' | 'whole';
}): {
  kind: 'decrease' | 'increase' | 'none';
  shapings: number;
  plain: number[];
} {
  const from: number = stitches(o.from, 'The count the row starts from');
  const to: number = stitches(o.to, 'The count the row ends on');
  const worked = oneOf(o.worked, ['flat', 'round'], 'The way of working');
  const ends = oneOf(o.ends ?? 'half', ['half', 'whole'], 'The share of a gap at the ends');
  const shapings = Math.abs(from - to);
  if (shapings === 0) return { kind: 'none', shapings, plain: [from] };

  const kind = to < from ? 'decrease' : 'increase';
  const uses = kind === 'decrease' ? 2 : 0;
  const room = kind === 'decrease' ? Math.floor(from / 2) : from;
  if (shapings > room) throw tooMany(kind, from, to, shapings, room);
  if (shapings > mostRows) {
    throw new CraftError(
      'too-many',
      '{shapings} shapings in one row are more than can be laid out; {mostRows} are the most.',
      { shapings, mostRows },
    );
  }

  if (worked === 'flat' && ends === 'whole') {
    // As many increases as stitches: each follows its own stitch, so the gap of 0 can only stand at the end.
    if (kind === 'increase' && shapings === from) {
      return { kind, shapings, plain: [...Array<number>(from).fill(1), 0] };
    }
    return { kind, shapings, plain: evenParts(from - uses * shapings, shapings + 1) };
  }

  const plain: number[] = [];
  let carried = 0;
  for (const segment of evenParts(from, shapings)) {
    const neighbours = segment - uses;
    const before =
      worked === 'round'
        ? neighbours
        : kind === 'decrease'
          ? Math.floor(neighbours / 2)
          : Math.ceil(neighbours / 2);
    plain.push(carried + before);
    carried = neighbours - before;
  }
  plain.push(carried);
  return { kind, shapings, plain };
}

function tooMany(
  kind: 'decrease' | 'increase',
  from: number,
  to: number,
  wanted: number,
  room: number,
): CraftError {
  const rest = wanted - room;
  const alternative = kind === 'decrease' ? 'work 3 or more together' : 'make 2 or more in one place';
  return new CraftError(
    'no-room',
    'One row of {from, plural, one {# stitch} other {# stitches}} has room for {room, plural, one {# {kind}} other {# {kind}s}}, which {room, plural, one {ends} other {end}} it on {end}; going from {from} to {to} takes {wanted}. Put the other {rest} into another row, or {instead}.',
    {
      from,
      room,
      kind,
      end: kind === 'decrease' ? from - room : from + room,
      to,
      wanted,
      rest,
      instead: alternative,
    },
  );
}
