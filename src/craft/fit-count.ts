import { CraftError } from './craft-error';
import { numberParam } from './message-parts';
import {
  greatest,
  listOf,
  notNegative,
  oneOf,
  roundDown,
  roundUp,
  same,
  whole,
  wholeCount,
  wholeNumber,
} from './numbers';
import type { Repeat, Rule } from './types';

/** Counts that leave `rest` over a multiple of `every`: a repeat or a parity, as a congruence. */
interface Congruence {
  every: bigint;
  rest: bigint;
  /** As it is named in a sentence. */
  name: string;
}

/**
 * A count that fits a repeat, from the exact number of stitches a width asks for.
 *
 * "A multiple of 8 plus 3" allows 11, 19, 27 and so on: at least one whole repeat. `plus` may be negative or greater
 * than the multiple. Several repeats have to hold at once (lace over rib); so does a parity. They are solved together
 * as congruences, by the Chinese remainder theorem. The same function fits rows to a row repeat.
 *
 * 'nearest' takes the nearer of the two allowed counts round the target, halfway the greater; where there is none
 * below, the one above. 'up' takes the least that is not below the target, 'down' the greatest that is not above.
 *
 * @param target the exact stitches (width × gauge) or rows, 0 or more
 * @param repeats the repeats that all have to hold; none at all allows every whole number from 1
 * @returns the count; the allowed counts `below` (or on) and `above` (or on) the target; `off` = count − target
 * @throws CraftError where a multiple is not a whole number from 1, where two conditions never meet (naming the two),
 *   and where 'down' finds nothing below
 * @example
 * fitCount(77.2, [{ multiple: 8, plus: 3 }], 'nearest')
 * // { count: 75, below: 75, above: 83, off: -2.2 }
 * fitCount(49.5, [], 'nearest', 'even')
 * // { count: 50, below: 48, above: 50, off: 0.5 }
 *
 * Source: common practice; the Chinese remainder theorem for several repeats, held against the problem it is known from
 * in tests/published/classical-problems.test.ts.
 */
export function fitCount(
  target: number,
  repeats: Repeat[],
  rule: Rule,
  parity?: 'odd' | 'even',
): { count: number; below: number | null; above: number; off: number } {
  const wanted = whole(notNegative(target, 'The count to come near'));
  oneOf(rule, ['nearest', 'up', 'down'], 'The rule for fitting');
  const { every, least } = allowedCounts(repeats, parity);

  const below = lastUpTo(roundDown(wanted), least, every);
  const above = firstFrom(roundUp(wanted), least, every);
  const count = chosen(wanted, below, above, rule);
  return { count, below, above, off: count - wanted };
}

function chosen(target: number, below: number | null, above: number, rule: Rule): number {
  if (rule === 'up') return above;
  if (rule === 'down') {
    if (below === null) {
      throw new CraftError(
        'nothing-below',
        'No allowed count is as small as {target}: the least is {above}. Round up or to the nearest, or take a wider piece.',
        { target: numberParam(target), above },
      );
    }
    return below;
  }
  if (below === null) return above;
  const down = target - below;
  const up = above - target;
  return up < down || same(up, down) ? above : below;
}

/** The allowed counts are `least`, `least + every`, `least + 2 every` … */
function allowedCounts(repeats: Repeat[], parity?: 'odd' | 'even'): { every: bigint; least: bigint } {
  listOf(repeats, 'The repeats', 0, 1000);
  const conditions: Congruence[] = [];
  let least = 1n;
  for (const repeat of repeats) {
    const multiple = wholeCount(repeat?.multiple, 'The multiple of a repeat', 1);
    const extra = wholeNumber(repeat?.plus, 'The stitches added to a repeat');
    conditions.push({
      every: BigInt(multiple),
      rest: modulo(BigInt(extra), BigInt(multiple)),
      name:
        extra === 0
          ? `a multiple of ${multiple}`
          : `a multiple of ${multiple} ${extra < 0 ? 'minus' : 'plus'} ${Math.abs(extra)}`,
    });
    const one = BigInt(multiple + extra);
    if (one > least) least = one;
  }
  if (parity !== undefined) {
    oneOf(parity, ['odd', 'even'], 'The parity');
    conditions.push({ every: 2n, rest: parity === 'odd' ? 1n : 0n, name: `an ${parity} count` });
  }

  let all: Congruence = { every: 1n, rest: 0n, name: '' };
  conditions.forEach((condition, index) => {
    const both = met(all, condition);
    if (both === null) throw disagreement(conditions.slice(0, index), condition);
    all = both;
  });
  return { every: all.every, least: least + modulo(all.rest - least, all.every) };
}

/** Both congruences as one, or null where no count satisfies both. */
function met(a: Congruence, b: Congruence): Congruence | null {
  const { divisor, x } = euclid(a.every, b.every);
  const apart = b.rest - a.rest;
  if (apart % divisor !== 0n) return null;
  const every = (a.every / divisor) * b.every;
  const rest = modulo(a.rest + a.every * modulo((apart / divisor) * x, b.every / divisor), every);
  return { every, rest, name: '' };
}

/** The greatest common divisor of a and b, and the x for which a·x is that divisor but for a multiple of b. */
function euclid(a: bigint, b: bigint): { divisor: bigint; x: bigint } {
  let [r0, r1, x0, x1] = [a, b, 1n, 0n];
  while (r1 !== 0n) {
    const q = r0 / r1;
    [r0, r1, x0, x1] = [r1, r0 - q * r1, x1, x0 - q * x1];
  }
  return { divisor: r0, x: x0 };
}

function modulo(a: bigint, m: bigint): bigint {
  return ((a % m) + m) % m;
}

/** Says which two conditions never meet. If every pair met, all of them would: so there is such a pair. */
function disagreement(earlier: Congruence[], last: Congruence): CraftError {
  for (const other of earlier) {
    const { divisor } = euclid(other.every, last.every);
    const [a, b] = [other.rest % divisor, last.rest % divisor];
    if (a === b) continue;
    const over = (rest: bigint) =>
      rest === 0n ? 'always a multiple' : `always ${rest} more than a multiple`;
    return new CraftError(
      'never-meet',
      'No count is both {first} and {second}: the first is {firstRest} of {divisor}, the second {secondRest} of {divisor}. Change the stitches added to one of them by {apart}, or drop one.',
      {
        first: other.name,
        second: last.name,
        firstRest: over(a),
        divisor: Number(divisor),
        secondRest: over(b),
        apart: Number(b > a ? b - a : a - b),
      },
    );
  }
  return new CraftError('never-meet', 'No count is {name} and satisfies the other repeats too.', {
    name: last.name,
  });
}

function firstFrom(from: number, least: bigint, every: bigint): number {
  const start = BigInt(from);
  const count = start <= least ? least : start + modulo(least - start, every);
  return sized(count);
}

function lastUpTo(to: number, least: bigint, every: bigint): number | null {
  const end = BigInt(to);
  return end < least ? null : sized(end - modulo(end - least, every));
}

function sized(count: bigint): number {
  if (count > BigInt(greatest)) {
    throw new CraftError(
      'too-large',
      'The first count that satisfies all the repeats is {count}, beyond anything that can be worked: choose repeats that share more of their stitches.',
      { count: String(count) },
    );
  }
  return Number(count);
}
