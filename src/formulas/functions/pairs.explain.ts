import { CraftError } from '../../craft';
import type { Amount } from '../../explain/amount';

/** What is given in pairs, as pairs: counts and the lengths they were counted over, multiples and what is added. */
export function pairsOf(given: readonly Amount[]): (readonly [Amount, Amount])[] {
  if (given.length === 0 || given.length % 2 === 1) {
    throw new CraftError('pair-broken', 'Values here come in pairs: the last pair is not complete.');
  }
  return Array.from({ length: given.length / 2 }, (_, at) => [given[2 * at]!, given[2 * at + 1]!] as const);
}
