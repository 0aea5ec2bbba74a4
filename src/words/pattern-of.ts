import type { PatternDocument, PatternPart } from './pattern-document';
import { gathered } from './gathered';
import { gaugePart } from './parts/gauge';
import { piecePart } from './parts/piece';
import { Sentences, shown } from './sentence';
import type { PatternSource } from './source';

/**
 * The written pattern of a notebook, in all sizes at once.
 *
 * A size in which something cannot be worked is left out, and a note says so.
 */
export function patternOf(source: PatternSource): PatternDocument {
  const { notebook } = source;
  const { craft, terms } = notebook.settings;
  const found = gathered(source);
  const sentences = new Sentences(terms, notebook.wording);
  const parts: PatternPart[] = [];
  parts.push(gaugePart(source, found, sentences));
  for (const piece of found.pieces) parts.push(piecePart(source, piece, found.sizes, sentences));
  return {
    title: shown(notebook.title),
    craft,
    terms,
    sizes: found.sizes.map(({ id, label }) => ({ id, label: shown(label) })),
    notes: [...found.notes, ...sentences.notes],
    parts,
  };
}
