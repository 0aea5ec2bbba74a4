import { flushSync, tick } from 'svelte';
import type { CellRef } from '../engine';
import type { Workspace } from '../workspace';

/**
 * Puts the focus on a place of the grid, if it is drawn: on its first value, or on its cell's label. Where only a chain
 * is shown and the place is not in it, all is shown again. `more` is as in `returnTo`.
 */
export function goTo(workspace: Workspace, ref: CellRef, more = ''): void {
  if (workspace.view.shownCells && !workspace.view.shownCells.has(ref.cell))
    flushSync(() => (workspace.view.onlyChainOf = null));
  if (workspace.view.drawnYet.size > 0) flushSync(() => workspace.view.drawnYet.clear());
  workspace.selection.position = { ...ref, size: null };
  const target =
    document.querySelector<HTMLElement>(at(ref) + more) ?? document.querySelector<HTMLElement>(at(ref.cell));
  target?.scrollIntoView({ block: 'center' });
  target?.focus();
}

/**
 * After an editor has closed: the focus returns to the place it stood for, unless the person has gone on to another.
 * `more` tells that place from others of the same value, as an attribute selector.
 */
export async function returnTo(ref: CellRef, more = ''): Promise<void> {
  await tick();
  const active = document.activeElement;
  if (active && active !== document.body && active.isConnected) return;
  // It stands where the editor stood: to look whether it has to be scrolled to would only cost a layout.
  const state =
    document.querySelector<HTMLElement>(at(ref) + more) ?? document.querySelector<HTMLElement>(at(ref));
  state?.focus({ preventScroll: true });
}

function at(target: CellRef | string): string {
  if (typeof target === 'string') return `[data-place][data-cell="${CSS.escape(target)}"]`;
  return `[data-place][data-cell="${CSS.escape(target.cell)}"][data-key="${CSS.escape(target.key)}"]`;
}
