import { joinWithAnd } from '../format';
import type { PatternDocument } from './pattern-document';
import type { Proof } from './proof';

type Written = Pick<PatternDocument, 'parts' | 'sizes' | 'leftOut' | 'terms'>;

/**
 * What is printed under a pattern about its proof: what is proven, what is not, and which pieces of the garment are not
 * in it.
 *
 * @example
 * proofWords({ proven: true }, cardigan)
 * // 'Recounted from this text, row by row, in all sizes; … match the notebook. Not proven: the fit, the schematic and …'
 */
export function proofWords(proof: Proof, written: Written): string {
  const { parts, sizes, leftOut } = written;
  const { pieces } = leftOut;
  if (!parts.some(({ kind }) => kind === 'piece')) {
    const why =
      pieces.length === 0
        ? ''
        : sizes.length === 0
          ? ': no size has all its pieces'
          : `: ${some(pieces)} could not be calculated`;
    return `No piece is written here, so nothing was counted${why}.`;
  }
  const missing =
    pieces.length === 0
      ? ''
      : ` This is not the whole garment: ${some(pieces)} could not be calculated and ${pieces.length > 1 ? 'are' : 'is'} neither written nor counted.`;
  if (!proof.proven) {
    const wrong = [...new Set(proof.where.map(({ piece }) => piece))];
    return `Recount failed: this text does not match the notebook in ${some(wrong)}.${missing}`;
  }
  const all = sizes.length > 1 ? ', in all sizes' : '';
  const gauge = written.terms === 'US' ? 'gauge' : 'tension';
  return `Recounted from this text, row by row${all}; its names, fabrics, materials, ${gauge}, measurements, terms and seams match the notebook. Not proven: ${joinWithAnd(notProven(proof, written))}.${missing}`;
}

/**
 * What a proof says nothing of. No text can prove how a garment fits, nor what a person says in words of their own; a
 * sentence or a row that no reader knows is named.
 *
 * @example notProven({ proven: true }, hat) // ['the fit', 'the schematic', 'the designer’s own words']
 */
export function notProven({ notProven: unread = [] }: Proof, { parts }: Pick<Written, 'parts'>): string[] {
  const own = [...new Set(unread.filter(({ reworded }) => reworded).map(({ part }) => part))];
  const other = unread.filter(({ reworded }) => !reworded).map(({ text }) => `“${shortened(text)}”`);
  const blocks = parts.flatMap((part) => part.blocks);
  // The tables beside it are proven, where they are there.
  const measured = blocks.some(({ key, kind }) => kind === 'table' && key === 'schematic measurements');
  const drawn = blocks.some(({ kind }) => kind === 'picture slot');
  return [
    'the fit',
    ...(drawn ? [measured ? 'the drawing of the schematic' : 'the schematic'] : []),
    `the designer’s own words${own.length > 0 ? ` (in ${some(own)})` : ''}`,
    ...(other.length > 5 ? [...other.slice(0, 5), `${other.length - 5} more lines`] : other),
  ];
}

const longest = 60;
const shortened = (text: string): string => (text.length > longest ? `${text.slice(0, longest)}…` : text);

const some = (names: readonly string[]): string =>
  joinWithAnd(names.length > 5 ? [...names.slice(0, 5), `${names.length - 5} more`] : names);
