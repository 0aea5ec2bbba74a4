import { CraftError } from '../../craft';

/**
 * Arguments that come in pairs, as pairs.
 *
 * @param what the two of a pair, as the sentence names them
 * @throws CraftError where the last pair is broken
 * @example pairs('GAUGE', 'a count and the length it was counted over', [14, 10, 29, 20]) // [[14, 10], [29, 20]]
 */
export function pairs(
  name: string,
  what: string,
  values: readonly number[],
): (readonly [first: number, second: number])[] {
  if (values.length % 2 === 1) {
    throw new CraftError('pair-broken', '{name} takes {what}, in pairs: the last pair is not complete.', {
      name,
      what,
    });
  }
  return Array.from({ length: values.length / 2 }, (_, at) => [values[2 * at]!, values[2 * at + 1]!]);
}

/** The readings of a swatch, from counts and the lengths they were counted over. */
export function readingsOf(name: string, values: readonly number[]): { count: number; over: number }[] {
  return pairs(name, 'a count and the length it was counted over', values).map(([count, over]) => ({
    count,
    over,
  }));
}
