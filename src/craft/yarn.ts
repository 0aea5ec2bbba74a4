import { CraftError } from './craft-error';
import { message, type Message } from './message';
import { numberParam } from './message-parts';
import { cm, finite, grams, listOf, notNegative, roundUp, whole } from './numbers';

/** A ball or skein: what it weighs and how long its yarn is. */
interface Ball {
  grams: number;
  metres: number;
}

/**
 * The yarn that an area of fabric takes, by the weight of a swatch of that fabric.
 *
 * grams = area × swatch grams / swatch area × (1 + reserve). With a ball's weight and length also the metres, and the
 * balls rounded up to whole ones. Where a garment has several fabrics in one yarn, pool their grams with `poolYarn`
 * before balls are bought: each fabric rounded up by itself would be too many.
 *
 * An estimate: hands differ, and so do balls.
 *
 * @param o.area cm² of fabric
 * @param o.swatch cm² and grams of a swatch of it
 * @param o.reserve what is added, as a fraction: 0.1 (10 %) unless told, 1 at most
 * @param o.ball grams and metres of one ball, where it is known
 * @returns grams with the reserve; metres and balls, or null where no ball is given
 * @throws CraftError where an area or a weight is no such thing
 * @example
 * yarnFor({ area: 7500, swatch: { area: 100, grams: 10 }, ball: { grams: 25, metres: 60 } })
 * // { grams: 825, metres: 1980, balls: 33 }
 *
 * Source: common practice.
 */
export function yarnFor(o: {
  area: number;
  swatch: { area: number; grams: number };
  reserve?: number;
  ball?: Ball;
}): { grams: number; metres: number | null; balls: number | null } {
  const area = notNegative(o.area, 'The area');
  const swatchArea: number = cm(o.swatch?.area, 'The area of the swatch');
  const swatchGrams: number = grams(o.swatch?.grams, 'The weight of the swatch');
  const reserve = notNegative(o.reserve ?? 0.1, 'The reserve');
  if (reserve > 1) {
    throw new CraftError(
      'too-large',
      'The reserve is {reserve}, more than the yarn itself: write it as a fraction, {such} for 10 %.',
      { reserve: numberParam(reserve), such: 0.1 },
    );
  }
  const needed = weighed((area / swatchArea) * swatchGrams * (1 + reserve));
  if (!o.ball) return { grams: needed, metres: null, balls: null };
  return { grams: needed, ...inBalls(needed, checkedBall(o.ball, 'the ball')) };
}

/**
 * The yarn of a whole garment: the grams of each yarn added up over its fabrics, and only then rounded up to balls.
 *
 * @param amounts grams of a yarn (with the reserve already in them) and its ball, one entry for each fabric
 * @returns one entry for each yarn, in the order in which they first come: grams, metres and whole balls
 * @throws CraftError where a weight is no such thing, and where one yarn is given with two different balls
 * @example
 * poolYarn([
 *   { yarn: 'blue', grams: 130, ball: { grams: 50, metres: 100 } },
 *   { yarn: 'blue', grams: 20, ball: { grams: 50, metres: 100 } },
 * ])
 * // [{ yarn: 'blue', grams: 150, metres: 300, balls: 3 }], where rounding each up would buy 4
 *
 * Source: common practice.
 */
export function poolYarn(
  amounts: { yarn: string; grams: number; ball: Ball }[],
): { yarn: string; grams: number; metres: number; balls: number }[] {
  const pools = new Map<string, { grams: number; ball: Ball }>();
  for (const amount of listOf(amounts, 'The amounts of yarn')) {
    const name = String(amount?.yarn ?? '');
    const yarn = name === '' ? 'the yarn' : name;
    const needed = notNegative(amount?.grams, `The weight of ${yarn}`);
    const ball = checkedBall(amount?.ball, `a ball of ${yarn}`);
    const pool = pools.get(name);
    if (!pool) {
      pools.set(name, { grams: needed, ball });
    } else if (pool.ball.grams !== ball.grams || pool.ball.metres !== ball.metres) {
      throw new CraftError(
        'two-balls',
        'A ball of {yarn} is given as {one} and as {other}: give both the same, or two yarns two names.',
        { yarn, one: ballParam(pool.ball), other: ballParam(ball) },
      );
    } else {
      pool.grams += needed;
    }
  }
  return [...pools].map(([yarn, pool]) => {
    const needed = weighed(pool.grams);
    return { yarn, grams: needed, ...inBalls(needed, pool.ball) };
  });
}

function weighed(needed: number): number {
  return whole(finite(needed, 'The weight of the yarn'));
}

function checkedBall(ball: Ball | undefined, which: string): Ball {
  return {
    grams: grams(ball?.grams as number, `The weight of ${which}`),
    metres: cm(ball?.metres as number, `The length of ${which}`),
  };
}

function ballParam(ball: Ball): Message {
  return message('ball', '{grams} g with {metres} m', {
    grams: numberParam(ball.grams),
    metres: numberParam(ball.metres),
  });
}

function inBalls(needed: number, ball: Ball): { metres: number; balls: number } {
  const balls = finite(needed / ball.grams, 'The number of balls');
  return { metres: whole(finite(balls * ball.metres, 'The length of the yarn')), balls: roundUp(balls) };
}
