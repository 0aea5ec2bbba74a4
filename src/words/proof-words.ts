import { listed } from '../notebook/listed';
import type { Proof } from './proof';

/**
 * What is printed under a pattern about its proof.
 *
 * @example proofWords({ proven: true }) // 'Counted again from these words alone, row by row, in every size.'
 */
export function proofWords(proof: Proof): string {
  if (proof.proven) return 'Counted again from these words alone, row by row, in every size.';
  const pieces = [...new Set(proof.where.map(({ piece }) => piece))];
  const named = pieces.length > 5 ? [...pieces.slice(0, 5), `${pieces.length - 5} more`] : pieces;
  return `Not proven: counted again from these words, it does not come out in ${listed(named)}.`;
}
