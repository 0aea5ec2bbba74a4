import { listed } from '../notebook/listed';
import type { PatternDocument } from './pattern-document';
import type { Proof } from './proof';

/**
 * What is printed under a pattern about its proof, and about the pieces of the garment that are not in it.
 *
 * @example proofWords({ proven: true }, cardigan) // 'Counted again from these words alone, row by row, in every size.'
 */
export function proofWords(
  proof: Proof,
  { parts, sizes, leftOut }: Pick<PatternDocument, 'parts' | 'sizes' | 'leftOut'>,
): string {
  const { pieces } = leftOut;
  if (!parts.some(({ kind }) => kind === 'piece')) {
    const why =
      pieces.length === 0
        ? ''
        : sizes.length === 0
          ? ': there is no size in which every piece can be worked'
          : `: ${some(pieces)} cannot be worked`;
    return `No piece is written here, so nothing was counted${why}.`;
  }
  const missing =
    pieces.length === 0
      ? ''
      : ` This is not the whole garment: ${some(pieces)} cannot be worked and ${pieces.length > 1 ? 'are' : 'is'} neither written nor counted.`;
  if (!proof.proven) {
    const wrong = [...new Set(proof.where.map(({ piece }) => piece))];
    return `Not proven: counted again from these words, it does not come out in ${some(wrong)}.${missing}`;
  }
  return missing === ''
    ? 'Counted again from these words alone, row by row, in every size.'
    : `What stands here was counted again from these words alone, row by row, in every size.${missing}`;
}

const some = (pieces: readonly string[]): string =>
  listed(pieces.length > 5 ? [...pieces.slice(0, 5), `${pieces.length - 5} more`] : pieces);
