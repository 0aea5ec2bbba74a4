import { gathered } from './gathered';
import { abbreviationsPart } from './parts/abbreviations';
import { cautionsPart } from './parts/cautions';
import { gaugePart } from './parts/gauge';
import { makingUpPart } from './parts/making-up';
import { materialsPart } from './parts/materials';
import { measurementsPart } from './parts/measurements';
import { piecePart } from './parts/piece';
import { workingNotesPart } from './parts/working-notes';
import type { PatternBlock, PatternDocument, PatternPart } from '../pattern-document';
import { Sentences, shown } from './sentence';
import type { PatternSource } from '../source';

/**
 * The written pattern of a notebook, in all sizes at once: materials, gauge, measurements, terms, every piece, and how
 * they are joined.
 *
 * A size in which a piece cannot be worked is left out, and a note says so; a part with nothing in it is left out too.
 */
export function patternOf(source: PatternSource): PatternDocument {
  const { notebook } = source;
  const { craft, terms } = notebook.settings;
  const found = gathered(source);
  const sentences = new Sentences(terms, notebook.wording);
  const pieces = found.pieces.map((piece, at) =>
    piecePart(source, piece, found.pieces[at + 1], found.sizes, sentences),
  );
  const makingUp = makingUpPart(source, found, sentences);
  const instructions = makingUp ? [...pieces, makingUp] : pieces;
  const parts = [
    cautionsPart(source, found, sentences),
    materialsPart(source, found, sentences, instructions),
    gaugePart(source, found, sentences),
    measurementsPart(source, found, sentences),
    ...(pieces.length > 0
      ? [abbreviationsPart(source, sentences, pieces), workingNotesPart(source, found, sentences, pieces)]
      : []),
    ...instructions,
  ].filter((part): part is PatternPart => part !== undefined && !part.blocks.every(isEmpty));
  return {
    title: shown(notebook.title),
    craft,
    terms,
    sizes: found.sizes.map(({ id, label }) => ({ id, label: shown(label) })),
    notes: [...found.notes, ...sentences.notes],
    leftOut: { pieces: found.leftOut.pieces.map(shown), sizes: found.leftOut.sizes.map(shown) },
    parts,
  };
}

function isEmpty(block: PatternBlock): boolean {
  if (block.kind === 'list') return block.items.length === 0;
  if (block.kind === 'table') return block.rows.length === 0;
  return block.kind === 'picture slot';
}
