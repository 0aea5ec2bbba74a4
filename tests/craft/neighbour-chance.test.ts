import { describe, expect, test } from 'vitest';
import { fitCount } from '../../src/craft/fit-count';
import { neighbourChance } from '../../src/craft/neighbour-chance';
import type { Rule } from '../../src/craft/types';

const repeats = [{ multiple: 8, plus: 3 }];

describe('the chance of another count', () => {
  test('a target in the middle of its range and exact has none', () => {
    expect(neighbourChance({ target: 75, u: 0, dof: Infinity, repeats, rule: 'nearest' }).chance).toBe(0);
  });

  test('halfway between two counts it is one half', () => {
    const chance = neighbourChance({ target: 79, u: 0.1, dof: Infinity, repeats, rule: 'nearest' });
    expect(chance.lower).toBeCloseTo(0.5, 12);
    expect(chance.higher).toBeCloseTo(0, 12);
  });

  test('72.8 ± 1.5 fitted to 75 would have been 67 with a chance of 11 %', () => {
    const chance = neighbourChance({ target: 72.8, u: 1.5, dof: Infinity, repeats, rule: 'nearest' });
    // 1.8 below is the edge at 71, 1.2 standard uncertainties away: Φ(−1.2) = 0.1151.
    expect(chance.lower).toBeCloseTo(0.11507, 5);
    expect(chance.chance).toBeCloseTo(chance.lower + chance.higher, 15);
  });

  test('below the least count there is no lower one', () => {
    expect(neighbourChance({ target: 9, u: 5, dof: 4, repeats, rule: 'nearest' }).lower).toBe(0);
    expect(neighbourChance({ target: 9, u: 5, dof: 4, repeats, rule: 'up' }).lower).toBe(0);
  });

  test.each<Rule>(['nearest', 'up', 'down'])(
    'by drawing true targets at random and fitting them %s it comes out alike',
    (rule) => {
      const [target, u] = [77.2, 3];
      const { lower, higher } = neighbourChance({ target, u, dof: Infinity, repeats, rule });
      const { count } = fitCount(target, repeats, rule);
      // An even grid of quantiles stands in for chance, by a normal deviate of two even grids (Box and Muller).
      const n = 400;
      let [fewer, more] = [0, 0];
      for (let i = 0; i < n; i++) {
        for (let j = 0; j < n; j++) {
          const deviate = Math.sqrt(-2 * Math.log((i + 0.5) / n)) * Math.cos((2 * Math.PI * (j + 0.5)) / n);
          const drawn = fitCount(target + u * deviate, repeats, rule).count;
          if (drawn < count) fewer += 1;
          if (drawn > count) more += 1;
        }
      }
      expect(fewer / n ** 2).toBeCloseTo(lower, 2);
      expect(more / n ** 2).toBeCloseTo(higher, 2);
    },
  );
});
