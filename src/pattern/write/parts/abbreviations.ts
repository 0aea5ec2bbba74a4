import { abbreviationsIn } from '../abbreviations';
import type { PatternBlock, PatternPart } from '../../pattern-document';
import type { Sentences } from '../sentence';
import type { PatternSource } from '../../source';

/** Whose terms the pattern uses, and what its abbreviations stand for. */
export function abbreviationsPart(
  source: PatternSource,
  sentences: Sentences,
  pieces: readonly PatternPart[],
): PatternPart {
  const { craft, terms } = source.notebook.settings;
  const texts = pieces.flatMap(({ blocks }) => blocks.flatMap(textsOf));
  const rows = abbreviationsIn(texts, craft, terms).map(([short, long]) => [short, long]);
  return {
    key: 'abbreviations',
    kind: 'abbreviations',
    heading: 'Terms and abbreviations',
    blocks: [
      sentences.paragraph(
        'terms',
        terms === 'US' ? 'This pattern uses US terms.' : 'This pattern uses UK terms.',
      ),
      ...(rows.length > 0
        ? [
            {
              kind: 'table' as const,
              key: 'abbreviations table',
              caption: 'Abbreviations',
              head: ['Short', 'Stands for'],
              rows,
              words: true as const,
            },
          ]
        : []),
    ],
  };
}

function textsOf(block: PatternBlock): string[] {
  switch (block.kind) {
    case 'line':
      return [block.text];
    case 'list':
      return block.items.flatMap(textsOf);
    default:
      return [];
  }
}
