import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chartPoint, charts } from '../../src/craft/charts';
import { fitCount } from '../../src/craft/fit-count';
import { fitTogether, type HalfToFit } from '../../src/craft/fit-together';

const back: HalfToFit = { times: 1, multiple: 8, plus: 3 };
const fronts: HalfToFit = { times: 2, multiple: 8, plus: 3 };
const gauge = 1.4;
const bands = 2 * 4 * gauge;

/** What the nine sizes of the women's chart ask for, with 20 cm of ease, in stitches. */
const women = charts.woman.sizes.map((size) => (chartPoint('woman', size, 'bust') + 20) * gauge);

function round(cm: number): number {
  return Number(cm.toFixed(1));
}

describe('the nine sizes of the women’s chart, 14 stitches to 10 cm, 8 + 3, two bands of 4 cm', () => {
  const fits = women.map((target) => fitTogether({ target, fixed: bands, halves: [back, fronts] }));

  test('are −2.4 to +2.7 cm off, where back and front fitted apart are −4.3 to +5.2 cm off', () => {
    const off = fits.map((fit) => fit.off / gauge);
    expect([round(Math.min(...off)), round(Math.max(...off))]).toEqual([-2.4, 2.7]);

    const apart = women.map((target) => {
      const backAlone = fitCount(target / 2, [back], 'nearest').count;
      const front = fitCount((target - backAlone - bands) / 2, [fronts], 'nearest').count;
      return (backAlone + 2 * front + bands - target) / gauge;
    });
    expect([round(Math.min(...apart)), round(Math.max(...apart))]).toEqual([-4.3, 5.2]);
  });

  test('grow by 5.7 or 11.4 cm from size to size, and neither back nor front shrinks', () => {
    const steps = fits.slice(1).map((fit, at) => round((fit.total - fits[at]!.total) / gauge));
    expect(new Set(steps)).toEqual(new Set([5.7, 11.4]));
    for (const half of [0, 1] as const) {
      const counts = fits.map((fit) => fit.counts[half]);
      expect(counts).toEqual([...counts].sort((a, b) => a - b));
    }
  });

  test('come within 1.5 cm where up to 4 edge stitches may be added', () => {
    const halves = [
      { ...back, extra: 4 },
      { ...fronts, extra: 4 },
    ] as const;
    for (const target of women) {
      const fit = fitTogether({ target, fixed: bands, halves });
      expect(Math.abs(fit.off / gauge)).toBeLessThan(1.5);
      expect((fit.counts[0] - fit.extra[0]) % 8).toBe(3);
      expect((fit.counts[1] - fit.extra[1]) % 8).toBe(3);
      expect([0, 2, 4]).toContain(fit.extra[0]);
    }
  });
});

const half = fc
  .record({
    times: fc.integer({ min: 1, max: 3 }),
    multiple: fc.integer({ min: 1, max: 24 }),
    plus: fc.integer({ min: -6, max: 12 }),
    extra: fc.integer({ min: 0, max: 8 }),
  })
  .map((one): HalfToFit => ({ ...one, extra: Math.min(one.extra, one.multiple - 1) }));
const wanted = fc.record({
  target: fc.integer({ min: 10, max: 6000 }).map((tenths) => tenths / 10),
  fixed: fc.integer({ min: 0, max: 300 }).map((tenths) => tenths / 10),
  halves: fc.tuple(half, half),
});

/** Every count that a half may have, up to a width, by going through whole numbers. */
function allowed({ times, multiple, plus, extra = 0 }: HalfToFit, widest: number) {
  const widths: { count: number; extra: number; width: number }[] = [];
  for (let count = 1; count * times <= widest || widths.length < 2; count++) {
    for (let more = 0; more <= extra; more += 2) {
      const repeats = (count - more - plus) / multiple;
      if (!Number.isInteger(repeats) || repeats < 1 || count - more < 1) continue;
      widths.push({ count, extra: more, width: count * times });
      break;
    }
  }
  return widths;
}

function widestStep(widths: readonly { width: number }[]): number {
  return Math.max(...widths.slice(1).map(({ width }, at) => width - widths[at]!.width));
}

const near = (a: number, b: number) => Math.abs(a - b) < 1e-6;

describe('against every pair there is', () => {
  test('nearest: no pair whose halves are as near as a step has a nearer total', () => {
    fc.assert(
      fc.property(wanted, ({ target, fixed, halves }) => {
        const [first, second] = halves.map((one) => allowed(one, target + 200)) as [
          ReturnType<typeof allowed>,
          ReturnType<typeof allowed>,
        ];
        const widest = Math.max(widestStep(first), widestStep(second));
        const pairs = first.flatMap((one) =>
          second.map((other) => {
            const apart = one.width - other.width - fixed;
            const total = one.width + other.width + fixed;
            return { one, other, total, off: total - target, apart };
          }),
        );
        const inReach = pairs.filter(({ apart }) => Math.abs(apart) <= widest + 1e-9);
        const fit = fitTogether({ target, fixed, halves });
        const found = pairs.find(
          ({ one, other }) => one.count === fit.counts[0] && other.count === fit.counts[1],
        )!;
        expect(near(found.total, fit.total) && near(found.off, fit.off) && near(found.apart, fit.apart)).toBe(
          true,
        );
        expect(fit.extra).toEqual([found.one.extra, found.other.extra]);
        if (!inReach.some(({ total }) => total <= target)) return;
        const least = Math.min(...inReach.map(({ off }) => Math.abs(off)));
        expect(Math.abs(fit.off)).toBeCloseTo(least, 6);
        const same = inReach.filter(({ total }) => near(total, fit.total));
        const mostAlike = Math.min(...same.map(({ apart }) => Math.abs(apart)));
        expect(Math.abs(fit.apart)).toBeCloseTo(mostAlike, 6);
      }),
      { numRuns: 200 },
    );
  });

  test('growing: the nearest of the pairs that half a growing width meets', () => {
    fc.assert(
      fc.property(wanted, ({ target, fixed, halves }) => {
        const [first, second] = halves.map((one) => allowed(one, target + 200)) as [
          ReturnType<typeof allowed>,
          ReturnType<typeof allowed>,
        ];
        const middles = (widths: typeof first, more: number) =>
          widths.slice(1).map(({ width }, at) => more + (width + widths[at]!.width) / 2);
        const steps = [
          ...middles(first, 0).map((at) => ({ at, of: 0 })),
          ...middles(second, fixed).map((at) => ({ at, of: 1 })),
        ].sort((a, b) => (near(a.at, b.at) ? a.of - b.of : a.at - b.at));
        const at = [0, 0];
        const met = [[...at]];
        for (const { of } of steps) {
          at[of]!++;
          met.push([...at]);
        }
        const totals = met.map(([one, other]) => first[one!]!.width + second[other!]!.width + fixed);
        const least = Math.min(...totals.map((total) => Math.abs(total - target)));
        const fit = fitTogether({ target, fixed, halves, rule: 'growing' });
        expect(Math.abs(fit.off)).toBeCloseTo(least, 6);
        expect(
          met.some(
            ([one, other]) => first[one!]!.count === fit.counts[0] && second[other!]!.count === fit.counts[1],
          ),
        ).toBe(true);
      }),
      { numRuns: 200 },
    );
  });
});

describe('as the target grows', () => {
  const grown = fc.record({
    from: wanted,
    by: fc.integer({ min: 0, max: 500 }).map((tenths) => tenths / 10),
  });

  test('growing: neither half ever shrinks', () => {
    fc.assert(
      fc.property(grown, ({ from, by }) => {
        const small = fitTogether({ ...from, rule: 'growing' });
        const large = fitTogether({ ...from, target: from.target + by, rule: 'growing' });
        expect(large.counts[0]).toBeGreaterThanOrEqual(small.counts[0]);
        expect(large.counts[1]).toBeGreaterThanOrEqual(small.counts[1]);
      }),
    );
  });

  test('nearest: the total never shrinks, where both halves have one repeat', () => {
    fc.assert(
      fc.property(grown, half, ({ from, by }, one) => {
        const halves = [
          { ...one, times: 1, extra: 0 },
          { ...one, times: 2, extra: 0 },
        ] as const;
        const small = fitTogether({ ...from, halves });
        const large = fitTogether({ ...from, halves, target: from.target + by });
        expect(large.total).toBeGreaterThanOrEqual(small.total - 1e-9);
      }),
    );
  });

  test('nearest: neither half shrinks where the total grows by two steps or more', () => {
    fc.assert(
      fc.property(grown, half, ({ from, by }, one) => {
        const halves = [
          { ...one, times: 1, extra: 0 },
          { ...one, times: 2, extra: 0 },
        ] as const;
        const small = fitTogether({ ...from, halves });
        const large = fitTogether({ ...from, halves, target: from.target + by });
        if (large.total - small.total < 2 * one.multiple - 1e-9) return;
        expect(large.counts[0]).toBeGreaterThanOrEqual(small.counts[0]);
        expect(large.counts[1]).toBeGreaterThanOrEqual(small.counts[1]);
      }),
    );
  });

  test('nearest: a back can give a repeat back when the fronts take one', () => {
    const halves = [back, fronts] as const;
    const fits = (rule: 'nearest' | 'growing') =>
      [124, 126].map((target) => fitTogether({ target, fixed: 0, halves, rule }).counts);
    expect(fits('nearest')).toEqual([
      [67, 27],
      [59, 35],
    ]);
    expect(fits('growing')).toEqual([
      [59, 35],
      [59, 35],
    ]);
  });
});

describe('what cannot be shared out', () => {
  test('is told with what would do', () => {
    const fit = (change: Partial<HalfToFit>) =>
      fitTogether({ target: 140, fixed: 0, halves: [{ ...back, ...change }, fronts] });
    expect(() => fit({ multiple: 0 })).toThrow('The multiple of a repeat has to be 1 or more');
    expect(() => fit({ multiple: 5000 })).toThrow('1000 is the most');
    expect(() => fit({ times: 0 })).toThrow('The number of pieces has to be 1 or more');
    expect(() => fit({ extra: 8 })).toThrow('allow 7 or fewer');
  });

  test('a repeat wider than its half still has one: the other half is the least it can be', () => {
    const fit = fitTogether({ target: 140, fixed: 0, halves: [{ ...back, multiple: 500 }, fronts] });
    expect(fit.counts).toEqual([503, 11]);
  });
});
