import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { poolYarn, yarnFor } from '../../src/craft/yarn';

describe('yarn by area', () => {
  test('a swatch of 100 cm² weighing 10 g: 7500 cm² take 750 g, 825 g with the reserve, 33 balls of 25 g', () => {
    const yarn = yarnFor({
      area: 7500,
      swatch: { area: 100, grams: 10 },
      ball: { grams: 25, metres: 60 },
    });
    expect(yarn).toEqual({ grams: 825, metres: 1980, balls: 33 });
  });

  test('750 g × 1.1 in balls of 25 g are 33 and not 34, for all that 750 × 1.1 / 25 is a little more than 33', () => {
    expect(750 * 1.1).toBeGreaterThan(825);
    const yarn = yarnFor({ area: 750, swatch: { area: 1, grams: 1 }, ball: { grams: 25, metres: 1 } });
    expect(yarn.balls).toBe(33);
  });

  test('99.9 g in balls of 33.3 g are 3, for all that the quotient is a little more than 3', () => {
    expect(99.9 / 33.3).toBeGreaterThan(3);
    const swatch = { area: 1, grams: 1 };
    expect(yarnFor({ area: 99.9, swatch, reserve: 0, ball: { grams: 33.3, metres: 70 } })).toEqual({
      grams: 99.9,
      metres: 210,
      balls: 3,
    });
  });

  test('one gram more is one ball more', () => {
    const yarn = yarnFor({
      area: 826,
      swatch: { area: 1, grams: 1 },
      reserve: 0,
      ball: { grams: 25, metres: 60 },
    });
    expect(yarn.balls).toBe(34);
  });

  test('the reserve is 10 % unless told, and may be none', () => {
    const swatch = { area: 10, grams: 1 };
    expect(yarnFor({ area: 1000, swatch }).grams).toBe(110);
    expect(yarnFor({ area: 1000, swatch, reserve: 0 }).grams).toBe(100);
    expect(yarnFor({ area: 1000, swatch, reserve: 0.25 }).grams).toBe(125);
  });

  test('without a ball there are grams only', () => {
    expect(yarnFor({ area: 100, swatch: { area: 10, grams: 1 } })).toEqual({
      grams: 11,
      metres: null,
      balls: null,
    });
  });

  test('as much again may be kept in reserve, and no more', () => {
    const swatch = { area: 10, grams: 1 };
    expect(yarnFor({ area: 1000, swatch, reserve: 1 }).grams).toBe(200);
    expect(() => yarnFor({ area: 1000, swatch, reserve: 1.01 })).toThrow('more than the yarn itself');
  });

  test('without a swatch there is nothing to weigh the fabric by', () => {
    expect(() => yarnFor({ area: 1000 } as never)).toThrow(
      'The area of the swatch has to be a number; it is missing.',
    );
  });

  test('a reserve of 10 is taken for 10 % typed as a number, and refused', () => {
    expect(() => yarnFor({ area: 100, swatch: { area: 10, grams: 1 }, reserve: 10 })).toThrow('0.1 for 10 %');
  });

  test('the balls hold the yarn, and one ball fewer would not', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 3000 }),
        fc.integer({ min: 1, max: 100 }),
        fc.integer({ min: 0, max: 100 }),
        fc.constantFrom(20, 25, 50, 100, 113, 200),
        (area, grams, reserve, ball) => {
          const yarn = yarnFor({
            area,
            swatch: { area: 100, grams },
            reserve: reserve / 100,
            ball: { grams: ball, metres: 2 * ball },
          });
          // Exactly, in ten thousandths of a gram.
          const needed = BigInt(area) * BigInt(grams) * BigInt(100 + reserve);
          const of = 10_000n * BigInt(ball);
          expect(BigInt(yarn.balls!)).toBe((needed + of - 1n) / of);
          expect(yarn.grams).toBeCloseTo(Number(needed) / 10_000, 6);
          expect(yarn.metres).toBeCloseTo(2 * yarn.grams, 6);
        },
      ),
      { numRuns: 5000 },
    );
  });
});

describe('yarn pooled over fabrics', () => {
  const ball = { grams: 50, metres: 100 };

  test('130 g and 20 g of one yarn are 3 balls of 50 g, where each by itself would be 3 and 1', () => {
    expect(
      poolYarn([
        { yarn: 'blue', grams: 130, ball },
        { yarn: 'blue', grams: 20, ball },
      ]),
    ).toEqual([{ yarn: 'blue', grams: 150, metres: 300, balls: 3 }]);
  });

  test('two yarns stay apart, in the order in which they come', () => {
    const pooled = poolYarn([
      { yarn: 'red', grams: 10, ball },
      { yarn: 'blue', grams: 60, ball },
      { yarn: 'red', grams: 45, ball },
    ]);
    expect(pooled.map(({ yarn, grams, balls }) => [yarn, grams, balls])).toEqual([
      ['red', 55, 2],
      ['blue', 60, 2],
    ]);
  });

  test('ten times 10.1 g are 101 g, for all that the sum is a little off', () => {
    const pooled = poolYarn(
      Array.from({ length: 10 }, () => ({ yarn: 'x', grams: 10.1, ball: { grams: 1, metres: 2 } })),
    );
    expect(pooled).toEqual([{ yarn: 'x', grams: 101, metres: 202, balls: 101 }]);
  });

  test('one yarn in two sizes of ball is refused', () => {
    expect(() =>
      poolYarn([
        { yarn: 'blue', grams: 130, ball },
        { yarn: 'blue', grams: 20, ball: { grams: 100, metres: 200 } },
      ]),
    ).toThrow('A ball of blue is given as 50 g with 100 m and as 100 g with 200 m');
  });

  test('balls that differ in their weight alone, or in their length alone, are two balls', () => {
    const poolWith = (other: typeof ball) => () =>
      poolYarn([
        { yarn: 'blue', grams: 130, ball },
        { yarn: 'blue', grams: 20, ball: other },
      ]);
    expect(poolWith({ grams: 50, metres: 110 })).toThrow('as 50 g with 100 m and as 50 g with 110 m');
    expect(poolWith({ grams: 60, metres: 100 })).toThrow('as 50 g with 100 m and as 60 g with 100 m');
    expect(poolWith({ ...ball })).not.toThrow();
  });

  test('a yarn without a name is the yarn, and what is missing of it is said', () => {
    const unnamed = { grams: 10, ball } as never;
    expect(poolYarn([unnamed])).toEqual([{ yarn: '', grams: 10, metres: 20, balls: 1 }]);
    expect(() => poolYarn([undefined as never])).toThrow('The weight of the yarn has to be a number');
    expect(() => poolYarn([{ yarn: 'blue', grams: 10 } as never])).toThrow(
      'The weight of a ball of blue has to be a number; it is missing.',
    );
  });

  test('nothing pooled is nothing', () => {
    expect(poolYarn([])).toEqual([]);
  });

  test('a yarn may have any name', () => {
    expect(poolYarn([{ yarn: '__proto__', grams: 1, ball }])[0]!.yarn).toBe('__proto__');
  });

  test('pooled balls hold the sum, and never are more than those of each fabric rounded up by itself', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 900 }), { minLength: 1, maxLength: 8 }), (weights) => {
        const [pooled] = poolYarn(weights.map((grams) => ({ yarn: 'one', grams, ball })));
        const total = weights.reduce((sum, grams) => sum + grams, 0);
        const apart = weights.reduce((sum, grams) => sum + Math.ceil(grams / 50), 0);
        expect(pooled).toEqual({
          yarn: 'one',
          grams: total,
          metres: 2 * total,
          balls: Math.ceil(total / 50),
        });
        expect(pooled!.balls).toBeLessThanOrEqual(apart);
      }),
      { numRuns: 3000 },
    );
  });
});
