import type { PatternDocument, PatternPart } from './pattern-document';
import { gathered } from './gathered';
import { gaugePart } from './parts/gauge';
import { Sentences, shown, theirs } from './sentence';
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
  for (const { cell } of found.pieces) {
    parts.push({
      key: `piece ${cell.id}`,
      kind: 'piece',
      cell: cell.id,
      heading: shown(cell.label),
      blocks: [sentences.paragraph(`piece ${cell.id} label`, '{label}.', { label: theirs(cell.label) })],
    });
  }
  return {
    title: shown(notebook.title),
    craft,
    terms,
    sizes: found.sizes.map(({ id, label }) => ({ id, label: shown(label) })),
    notes: [...found.notes, ...sentences.notes],
    parts,
  };
}
