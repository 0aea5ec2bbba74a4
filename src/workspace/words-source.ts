import type { Piece } from '../craft';
import type { PatternSource } from '../pattern';
import type { WorkingSource } from '../explain';
import type { Workspace } from './workspace.svelte';
import { workedPiece } from './worked-rows';

/** The open notebook, as words are made from it. What reads a result of it follows that cell. */
export function wordsSource(workspace: Workspace): PatternSource & WorkingSource {
  return {
    notebook: workspace.notebook,
    number: (size, cell, key) => workspace.results(cell).number(size, cell, key),
    text: (size, cell, key) => workspace.results(cell).text(size, cell, key),
    truth: (size, cell, key) => workspace.results(cell).truth(size, cell, key),
    errorAt: (size, cell, key) => workspace.results(cell).error(size, cell, key)?.message,
    unit: (cell, key) => workspace.results(cell).unit(cell, key),
    plan(size, cell): Piece | { readonly problem: string } {
      const worked = workedPiece(workspace, cell, size);
      if ('plan' in worked) return worked.plan;
      return { problem: worked.error ?? 'This piece is not worked yet.' };
    },
  };
}

/** The size at hand: the one in focus, else the one in the middle. */
export function sizeAtHand(workspace: Workspace): string {
  const { sizes, selection } = workspace;
  const { position } = selection;
  if (position?.size && sizes.some(({ id }) => id === position.size)) return position.size;
  return sizes[Math.floor((sizes.length - 1) / 2)]!.id;
}
