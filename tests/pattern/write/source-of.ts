import { changesBetween, type Notebook } from '../../../src/notebook';
import { Results } from '../../../src/engine';
import { readPiece } from '../../../src/formulas/piece-text';
import { WorkedSheet } from '../../../src/engine/sheet';
import type { PatternSource } from '../../../src/pattern';

/** What a pattern is written from, with the notebook worked in a sheet. */
export async function sourceOf(notebook: Notebook): Promise<PatternSource> {
  const results = new Results();
  results.apply(await new WorkedSheet().update(changesBetween(null, notebook)));
  return {
    notebook,
    number: (size, cell, key) => results.number(size, cell, key),
    truth: (size, cell, key) => results.truth(size, cell, key),
    errorAt: (size, cell, key) => results.error(size, cell, key)?.message,
    plan: (size, cell) => {
      const text = results.text(size, cell, 'piece');
      if (text !== undefined) return readPiece(text);
      return { problem: results.error(size, cell, 'piece')?.message ?? 'It is not worked out yet.' };
    },
  };
}
