import type { Notebook, Size } from '../document';
import { mostSizes, type Applied } from './edit';

/** A size more, before the one that stands at that place. */
export function sizeAdded(notebook: Notebook, at: number, size: Size): Applied {
  if (notebook.sizes.length >= mostSizes) return { refused: `A notebook has at most ${mostSizes} sizes.` };
  if (notebook.sizes.some((other) => other.id === size.id))
    return { refused: 'That size is in the notebook already.' };
  return { notebook: { ...notebook, sizes: notebook.sizes.toSpliced(at, 0, size) } };
}

/** These sizes instead of those there are. What was given for a size that goes stays, under its id. */
export function sizesTaken(notebook: Notebook, sizes: readonly Size[]): Applied {
  if (sizes.length === 0) return { refused: 'A notebook keeps at least one size.' };
  if (sizes.length > mostSizes) return { refused: `A notebook has at most ${mostSizes} sizes.` };
  if (new Set(sizes.map((size) => size.id)).size !== sizes.length) {
    return { refused: 'Two of these sizes are the same one.' };
  }
  return { notebook: { ...notebook, sizes } };
}
