import { joinWithAnd } from '../../../format';
import { allCells } from '../../../notebook';
import type { Gathered } from '../gathered';
import type { PatternPart, Sentence } from '../../pattern-document';
import { shown, type Sentences } from '../sentence';
import type { PatternSource } from '../../source';

/** The cautions that concern this pattern. */
export function cautionsPart(
  source: PatternSource,
  found: Gathered,
  sentences: Sentences,
): PatternPart | undefined {
  const { notebook } = source;
  const cells = allCells(notebook);
  const items: Sentence[] = [];
  const caution = (key: string, text: string, slots: Record<string, { theirs: string }> = {}): void => {
    items.push(sentences.make('caution', `caution ${key}`, text, slots));
  };
  const young = found.sizes.filter(({ chart }) => chart?.name === 'child' || chart?.name === 'baby');
  const hasNotions = cells.some(({ kind }) => kind === 'notions');
  if (young.length > 0 && hasNotions) {
    caution(
      'children',
      'Children’s sizes ({sizes}): cords, ties, buttons and glued-on parts can strangle or choke. Keep them off, or follow the safety rules for children’s clothing where the garment is worn or sold; many countries restrict cords at neck and hem.',
      { sizes: { theirs: joinWithAnd(young.map(({ label }) => shown(label))) } },
    );
  }
  // Who wears a size that follows no chart is not known.
  if (hasNotions && young.length === 0 && found.sizes.some(({ chart }) => !chart)) {
    caution(
      'for a child',
      'Worked for a baby or a small child: cords, ties, buttons and glued-on parts can strangle or choke. Keep them off, or follow the safety rules for children’s clothing where the garment is worn or sold.',
    );
  }
  if (cells.some(({ kind }) => kind === 'yarn')) {
    caution(
      'amounts',
      'Amounts of yarn are estimates with a reserve, and sizes are worked from charts and swatches: try on, or measure a garment that fits, before cutting or joining.',
    );
  }
  if (found.sizes.some(({ chart }) => chart)) {
    caution(
      'charts',
      'Charts are averages of some bodies: where an upper arm, a bust or a length differs, the person’s own measurement wins.',
    );
  }
  if (items.length === 0) return undefined;
  return { key: 'cautions', kind: 'cautions', heading: 'Before you begin', blocks: items };
}
