import type { Notebook, Wording } from '../document';
import { longestWording, mostWordings, type Applied } from './edit';

/** The notebook with a sentence of its pattern in a person's words, or in its own again. */
export function reworded(notebook: Notebook, key: string, wording: Wording | null): Applied {
  const { wording: before = {}, ...rest } = notebook;
  const others = Object.fromEntries(Object.entries(before).filter(([other]) => other !== key));
  if (!wording) {
    return { notebook: Object.keys(others).length > 0 ? { ...rest, wording: others } : rest };
  }
  const template = wording.template.trim();
  if (template === '') {
    return { refused: 'A sentence cannot be empty: write one, or go back to the notebook’s own.' };
  }
  if (template.length > longestWording) {
    return { refused: `A sentence has at most ${longestWording} characters: make it shorter.` };
  }
  if (key === '' || key.length > 300) return { refused: 'That sentence is no longer in the pattern.' };
  if (Object.keys(others).length >= mostWordings) {
    return { refused: `At most ${mostWordings} sentences can have words of your own.` };
  }
  return {
    notebook: { ...rest, wording: { ...others, [key]: { template, terms: wording.terms } } },
  };
}
