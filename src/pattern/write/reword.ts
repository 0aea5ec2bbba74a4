import type { Edit } from '../../notebook';
import type { PatternBlock, PatternDocument, Sentence } from '../pattern-document';
import { wrongTemplate } from './sentence';

/** Every sentence of a document. */
export function sentencesOf(document: Pick<PatternDocument, 'parts'>): Sentence[] {
  const of = (block: PatternBlock): Sentence[] => {
    if (block.kind === 'list') return [...block.items];
    return block.kind === 'line' || block.kind === 'paragraph' || block.kind === 'caution' ? [block] : [];
  };
  return document.parts.flatMap(({ blocks }) => blocks.flatMap(of));
}

/**
 * The edit that puts a sentence in a person's words, or why it cannot be. `null` gives the notebook's own back.
 *
 * @example reword(document, 'piece back lower', 'Knit straight for {rows}.')
 * // { do: 'reword', key: 'piece back lower', wording: { template: 'Knit straight for {rows}.', terms: 'US' } }
 */
export function reword(
  document: PatternDocument,
  key: string,
  template: string | null,
): Edit | { readonly refused: string } {
  const sentence = sentencesOf(document).find((one) => one.key === key);
  if (!sentence) return { refused: 'That sentence is no longer in the pattern.' };
  const text = template?.trim() ?? null;
  // Words that are the notebook's own are no wording: they follow its terms and its numbers as before.
  if (text === null || text === (sentence.own ?? sentence.template)) {
    return { do: 'reword', key, wording: null };
  }
  const wrong = wrongTemplate(text, Object.keys(sentence.slots));
  return wrong === undefined
    ? { do: 'reword', key, wording: { template: text, terms: document.terms } }
    : { refused: wrong };
}
