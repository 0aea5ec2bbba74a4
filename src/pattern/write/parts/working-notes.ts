import type { Gathered } from '../gathered';
import { chains } from '../fabric-words';
import { linesOf } from '../lines-of';
import type { PatternPart, Sentence } from '../../pattern-document';
import type { Sentences } from '../sentence';
import type { PatternSource } from '../../source';
import { swatchesUsed } from './gauge';

/** How the instructions are to be read. */
export function workingNotesPart(
  source: PatternSource,
  found: Gathered,
  sentences: Sentences,
  pieces: readonly PatternPart[],
): PatternPart {
  const instructions = pieces.flatMap(linesOf).map(({ text }) => text);
  const { craft } = source.notebook.settings;
  const items: Sentence[] = [];
  const note = (key: string, text: string, slots: Record<string, string> = {}): void => {
    items.push(sentences.paragraph(`notes ${key}`, text, slots));
  };
  if (found.sizes.length > 1) {
    note(
      'sizes',
      'Where numbers differ by size, they stand in the order of the sizes, all but the first in brackets; one number is for all sizes, and an en dash means not in that size.',
    );
  }
  note('counts', 'Numbers in square brackets are the stitches at the end of the row or round.');
  note('even', 'To work even is to work in the stitch of the fabric, with neither increases nor decreases.');
  const says = (word: string): boolean =>
    instructions.some((text) => new RegExp(String.raw`\b${word}\b`, 'iu').test(text));
  if (says('dec')) note('dec', 'Dec: work 2 sts together, so that the pattern of the fabric goes on.');
  if (says('inc')) {
    note(
      'inc',
      craft === 'crochet'
        ? 'Inc: work 2 sts in 1, so that the pattern of the fabric goes on.'
        : 'Inc: make 1 st, so that the pattern of the fabric goes on.',
    );
  }
  if (says('pick up') || says('along the edge') || says('round the armhole')) {
    note('edges', 'Before picking up along an edge, join the seams that it runs across.');
  }
  if (craft === 'crochet') {
    const stitches = [...new Set(swatchesUsed(source, found).map(({ stitch }) => stitch ?? 'sc'))];
    for (const stitch of stitches) {
      const chain = chains[stitch];
      if (!chain) continue;
      note(
        `turning ${stitch}`,
        chain.counts
          ? 'Rows of {stitch} begin with ch {turning}, which counts as the first {stitch}.'
          : 'Rows of {stitch} begin with ch {turning}, which does not count as a st.',
        { stitch, turning: String(chain.turning) },
      );
    }
  }
  return {
    key: 'notes',
    kind: 'notes',
    heading: 'Notes',
    blocks: [{ kind: 'list', key: 'notes list', items }],
  };
}
