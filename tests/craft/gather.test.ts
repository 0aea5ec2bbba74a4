import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { gather } from '../../src/craft/gather';
import { withoutHanging } from '../without-hanging';

const plan = (from: number, to: number, rounds: number) =>
  gather({ from, to, rounds }).steps.map((step) => step.plain);

test('3, 2, 1 takes 100 to two fifths: 80, 60, 40', () => {
  expect(gather({ from: 100, to: 40, rounds: 3 })).toEqual({
    steps: [
      { plain: 3, count: 80 },
      { plain: 2, count: 60 },
      { plain: 1, count: 40 },
    ],
    off: 0,
  });
});

test('a single round of 2 together halves the count', () => {
  expect(gather({ from: 64, to: 32, rounds: 1 })).toEqual({ steps: [{ plain: 0, count: 32 }], off: 0 });
});

test('stitches that do not fill a last group stay plain: 64 with 3 plain loses 12', () => {
  expect(gather({ from: 64, to: 52, rounds: 1 })).toEqual({ steps: [{ plain: 3, count: 52 }], off: 0 });
});

test('one round cannot take 60 below 30, and the plan says by how much it misses', () => {
  expect(gather({ from: 60, to: 10, rounds: 1 })).toEqual({ steps: [{ plain: 0, count: 30 }], off: 20 });
});

test('many rounds take away at least a stitch each: 20 over 3 rounds cannot stay above 17', () => {
  expect(gather({ from: 20, to: 19, rounds: 3 }).off).toBe(-2);
});

test('of plans that end alike the smallest first k is taken: 12 loses 2 with 3 plain and with 4', () => {
  expect(plan(12, 10, 1)).toEqual([3]);
});

test('gathering to as many or more is refused, and so are more rounds than stitches to lose', () => {
  expect(() => gather({ from: 40, to: 40, rounds: 2 })).toThrow('40 is not fewer than 40; gather to 39');
  expect(() => gather({ from: 40, to: 50, rounds: 2 })).toThrow('increase instead');
  expect(() => gather({ from: 6, to: 1, rounds: 6 })).toThrow('over 5 rounds at most, not 6');
  expect(plan(6, 1, 5)).toEqual([4, 3, 2, 1, 0]);
});

describe('against every plan there is', () => {
  interface Found {
    ks: number[];
    end: number;
  }
  function everyPlan(from: number, rounds: number): Found[] {
    const found: Found[] = [];
    const goOn = (count: number, ks: number[]) => {
      if (ks.length === rounds) {
        found.push({ ks, end: count });
        return;
      }
      for (let k = 0; k < (ks.at(-1) ?? from); k++) {
        const lost = Math.floor(count / (k + 2));
        if (lost >= 1) goOn(count - lost, [...ks, k]);
      }
    };
    goOn(from, []);
    return found;
  }
  const smallest = (values: number[]) => values.reduce((least, value) => Math.min(least, value), Infinity);
  /** What the three rules say of a plan, by trying every one there is. */
  function best(from: number, to: number, rounds: number, all = everyPlan(from, rounds)): number[] {
    const off = smallest(all.map(({ end }) => Math.abs(end - to)));
    const near = all.filter(({ end }) => Math.abs(end - to) === off).map(({ ks }) => ks);
    const spread = smallest(near.map(spreadOf));
    const even = near.filter((ks) => spreadOf(ks) === spread);
    return even.reduce((first, ks) => (comesBefore(ks, first) ? ks : first));
  }
  function comesBefore(a: number[], b: number[]): boolean {
    const differs = a.findIndex((k, i) => k !== b[i]);
    return differs >= 0 && a[differs]! < b[differs]!;
  }
  function spreadOf(ks: number[]): number {
    const falls = ks.slice(1).map((k, i) => ks[i]! - k);
    return falls.length === 0 ? 0 : Math.max(...falls) - Math.min(...falls);
  }

  test('the nearest end, then the most even falls of k, then the smallest first k, then the smallest later ones', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 22 }),
        fc.integer({ min: 1, max: 21 }),
        fc.integer({ min: 1, max: 5 }),
        (from, to, rounds) => {
          fc.pre(to < from && rounds < from);
          expect(plan(from, to, rounds)).toEqual(best(from, to, rounds));
        },
      ),
      { numRuns: 2000 },
    );
  });

  test('so too with 120 stitches over 3 rounds', () => {
    const all = everyPlan(120, 3);
    for (const to of [20, 31, 48, 57, 66, 75, 90, 101, 117]) {
      expect(plan(120, to, 3)).toEqual(best(120, to, 3, all));
    }
  });
});

test('whatever the counts, k falls strictly, every round decreases, and the counts follow from k', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 2, max: 250 }),
      fc.integer({ min: 1, max: 249 }),
      fc.integer({ min: 1, max: 12 }),
      (from, to, rounds) => {
        fc.pre(to < from && rounds < from);
        const { steps, off } = gather({ from, to, rounds });
        expect(steps).toHaveLength(rounds);
        const ks = steps.map((step) => step.plain);
        expect(ks.every((k, i) => k >= 0 && k < (ks[i - 1] ?? Infinity))).toBe(true);
        const counts = [from];
        for (const k of ks) counts.push(counts.at(-1)! - Math.floor(counts.at(-1)! / (k + 2)));
        expect(steps.map((step) => step.count)).toEqual(counts.slice(1));
        expect(counts.every((count, i) => i === 0 || count < counts[i - 1]!)).toBe(true);
        expect(off).toBe(counts.at(-1)! - to);
      },
    ),
    { numRuns: 2000 },
  );
});

test('2000 stitches and 40 rounds are the most that is searched through', () => {
  expect(plan(2000, 1999, 1)).toEqual([999]);
  expect(plan(41, 1, 40)).toEqual(Array.from({ length: 40 }, (_, round) => 39 - round));
  expect(() => gather({ from: 2001, to: 2000, rounds: 1 })).toThrow('at most 2000 stitches');
  expect(() => gather({ from: 50, to: 1, rounds: 41 })).toThrow('at most 40 rounds');
});

test('the greatest gathering that is worked out takes less than a second', () => {
  for (const [to, rounds] of [
    [666, 4],
    [373, 3],
    [803, 40],
    [1, 40],
    [1999, 2],
  ] as const) {
    withoutHanging(() => gather({ from: 2000, to, rounds }));
  }
  expect(() => gather({ from: 2001, to: 1000, rounds: 3 })).toThrow('at most 2000 stitches');
  expect(() => gather({ from: 2000, to: 1000, rounds: 41 })).toThrow('at most 40 rounds');
});
