import { CraftError } from './craft-error';
import { stitches, wholeCount } from './numbers';

/** The most stitches and rounds that are searched through; a lace yoke in fine thread stays below both. */
const mostStitches = 2000;
const mostRounds = 40;

/**
 * Draws a count in over a few rounds of "(k plain, 2 together) around", with fewer plain stitches each round.
 *
 * A round of k turns a count into count − ⌊count / (k + 2)⌋; what does not fill a last group stays plain. k falls
 * strictly from round to round, is 0 or more, and every round has at least one decrease. Of all such plans the one
 * that ends nearest to `to`; of equals the one whose falls of k are most alike (greatest less smallest), then the one
 * that starts with the smallest k (and goes on with the smallest). `count` is the count after the round, `off` the last count − `to`.
 *
 * Counts are stitches. Throws a CraftError when a count is not whole, when `to` is not below `from`, when there are
 * more rounds than stitches to lose, and beyond 2000 stitches or 40 rounds.
 *
 * @example
 * gather({ from: 100, to: 40, rounds: 3 })
 * // { steps: [{ plain: 3, count: 80 }, { plain: 2, count: 60 }, { plain: 1, count: 40 }], off: 0 }
 *
 * Source: common practice: 3, 2, 1 takes a count to two fifths; held against a published crown and yoke in
 * tests/published/gathering.test.ts.
 */
export function gather(o: { from: number; to: number; rounds: number }): {
  steps: { plain: number; count: number }[];
  off: number;
} {
  const from: number = stitches(o.from, 'The count to gather from');
  const to: number = stitches(o.to, 'The count to gather to');
  const rounds = wholeCount(o.rounds, 'The number of rounds', 1);
  if (to >= from) {
    throw new CraftError(
      'not-fewer',
      'Gathering takes stitches away, and {to} is not fewer than {from}; gather to {most} or fewer, or increase instead.',
      { to, from, most: from - 1 },
    );
  }
  if (rounds > from - 1) {
    throw new CraftError(
      'too-many',
      'Each round takes at least one stitch away, so {from, plural, one {# stitch} other {# stitches}} can be gathered over {most, plural, one {# round} other {# rounds}} at most, not {rounds}.',
      { from, most: from - 1, rounds },
    );
  }
  if (from > mostStitches || rounds > mostRounds) {
    throw new CraftError(
      'too-large',
      'Gathering is worked out for at most {mostStitches} stitches over at most {mostRounds} rounds, and {from} over {rounds} are asked; gather each section by itself.',
      { mostStitches, mostRounds, from, rounds },
    );
  }

  const ends = nearest(reached(from, rounds), to);
  const bounds = plainBounds(from, rounds, ends);
  const steps: { plain: number; count: number }[] = [];
  let count = from;
  for (const plain of evenestPlan(from, rounds, bounds)) {
    count = afterRound(count, plain);
    steps.push({ plain, count });
  }
  return { steps, off: count - to };
}

function afterRound(count: number, plain: number): number {
  return count - Math.floor(count / (plain + 2));
}

/*
 * The plans are far too many to try one by one. What makes them few: of all ways to a count after so many rounds, the
 * one whose last k is greatest can be followed by whatever can follow the others; and going backwards, the one whose
 * next k is smallest. So one number for each count and round tells what can be reached.
 */

/** A number of plain stitches that no round has. */
const never = mostStitches + 1;

/** Every count that `rounds` rounds can end on, as a list of true and false. */
function reached(from: number, rounds: number): boolean[] {
  let greatestPlain = new Int32Array(from + 1).fill(-1);
  greatestPlain[from] = from - 1;
  for (let round = 0; round < rounds; round++) {
    const next = new Int32Array(from + 1).fill(-1);
    for (let count = 2; count <= from; count++) {
      let group = Math.min(greatestPlain[count]! + 1, count);
      while (group >= 2) {
        const lost = Math.floor(count / group);
        if (group - 2 > next[count - lost]!) next[count - lost] = group - 2;
        // The next smaller group that loses more stitches.
        group = Math.floor(count / (lost + 1));
      }
    }
    greatestPlain = next;
  }
  return Array.from(greatestPlain, (plain) => plain >= 0);
}

/** The counts nearest to `to`, which may be one on either side. */
function nearest(counts: boolean[], to: number): number[] {
  for (let off = 0; ; off++) {
    const found = [to - off, to + off].filter((count) => counts[count]);
    if (found.length > 0) return found;
  }
}

/** For a round and each count before it, the smallest and the greatest k from which an end can still be reached. */
interface Bounds {
  least: Int32Array;
  most: Int32Array;
}

/** The bounds of every round, first round first, and after them which counts are ends (least −1). */
function plainBounds(from: number, rounds: number, ends: number[]): Bounds[] {
  const last = { least: new Int32Array(from + 1).fill(never), most: new Int32Array(from + 1).fill(-1) };
  for (const end of ends) last.least[end] = -1;
  const bounds: Bounds[] = [last];
  for (let round = 0; round < rounds; round++) {
    const after = bounds[0]!.least;
    const least = new Int32Array(from + 1).fill(never);
    const most = new Int32Array(from + 1).fill(-1);
    for (let count = 2; count <= from; count++) {
      let group = count;
      while (group >= 2) {
        const lost = Math.floor(count / group);
        const smaller = Math.floor(count / (lost + 1));
        // Groups of more than `smaller` up to `group` all lose as many; k has to exceed the next round's.
        const k = Math.max(smaller - 1, 0, after[count - lost]! + 1);
        if (k <= group - 2) {
          least[count] = Math.min(least[count]!, k);
          most[count] = Math.max(most[count]!, group - 2);
        }
        group = smaller;
      }
    }
    bounds.unshift({ least, most });
  }
  return bounds;
}

/** The k of each round: the falls most alike, then the smallest first k, then the smallest of the later ones. */
function evenestPlan(from: number, rounds: number, bounds: Bounds[]): number[] {
  if (rounds === 1) return [bounds[0]!.least[from]!];
  // Whatever works with one spread works with a greater: so the spread is doubled, then halved in on.
  let above = 1;
  while (!planWithin(above - 1, from, rounds, bounds, 'any')) above *= 2;
  let below = Math.floor(above / 2);
  while (above - below > 1) {
    const between = Math.floor((above + below) / 2);
    if (planWithin(between - 1, from, rounds, bounds, 'any')) above = between;
    else below = between;
  }
  return planWithin(above - 1, from, rounds, bounds, 'smallest')!;
}

/** A plan whose falls differ by no more than `spread`: any, or the one with the smallest k, first k first. */
function planWithin(
  spread: number,
  from: number,
  rounds: number,
  bounds: Bounds[],
  which: 'any' | 'smallest',
): number[] | undefined {
  let best: number[] | undefined;
  const mostFirst = () => best?.[0] ?? bounds[0]!.most[from]!;
  for (let fall = 1; fall * (rounds - 1) <= mostFirst(); fall++) {
    const plan = smallestPlan(from, rounds, bounds, fall, fall + spread, mostFirst());
    if (plan && which === 'any') return plan;
    if (plan && (!best || isBefore(plan, best))) best = plan;
  }
  return best;
}

/** The smallest plan, first k first, whose falls all lie within the two bounds. */
function smallestPlan(
  from: number,
  rounds: number,
  bounds: Bounds[],
  leastFall: number,
  mostFall: number,
  mostFirst: number,
): number[] | undefined {
  const plan: number[] = [];
  const failed = new Set<number>();
  const goOn = (round: number, count: number, lowest: number, highest: number): boolean => {
    const { least, most } = bounds[round]!;
    if (round === rounds) return least[count] === -1;
    const roomBelow = leastFall * (rounds - 1 - round);
    const top = Math.min(highest, most[count]!);
    for (let k = Math.max(lowest, least[count]!, roomBelow); k <= top; k++) {
      const after = afterRound(count, k);
      const key = (round * (never + 1) + k) * (never + 1) + after;
      if (failed.has(key)) continue;
      plan[round] = k;
      if (goOn(round + 1, after, k - mostFall, k - leastFall)) return true;
      failed.add(key);
    }
    return false;
  };
  return goOn(0, from, 0, mostFirst) ? plan : undefined;
}

function isBefore(a: number[], b: number[]): boolean {
  const differs = a.findIndex((k, round) => k !== b[round]);
  return differs >= 0 && a[differs]! < b[differs]!;
}
