import type { Piece } from '../craft';
import type { PatternSource } from '../pattern';
import type { WorkingSource } from '../analysis/explain';
import type { Desk } from './workspace.svelte';
import { workedPiece } from './worked-rows';

/** The notebook on the desk, as words are made from it. What reads a result of it follows that cell. */
export function wordsSource(desk: Desk): PatternSource & WorkingSource {
  return {
    notebook: desk.notebook,
    number: (size, cell, key) => desk.results(cell).number(size, cell, key),
    text: (size, cell, key) => desk.results(cell).text(size, cell, key),
    truth: (size, cell, key) => desk.results(cell).truth(size, cell, key),
    trouble: (size, cell, key) => desk.results(cell).trouble(size, cell, key)?.message,
    unit: (cell, key) => desk.results(cell).unit(cell, key),
    plan(size, cell): Piece | { readonly trouble: string } {
      const worked = workedPiece(desk, cell, size);
      if ('plan' in worked) return worked.plan;
      return { trouble: worked.trouble ?? 'This piece is not worked yet.' };
    },
  };
}

/** The size at hand: the one in focus, else the one in the middle. */
export function sizeAtHand(desk: Desk): string {
  const { sizes, spot } = desk;
  if (spot?.size && sizes.some(({ id }) => id === spot.size)) return spot.size;
  return sizes[Math.floor((sizes.length - 1) / 2)]!.id;
}
