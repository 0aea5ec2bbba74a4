import { allCells, dependenciesOf, type Notebook } from '../../../notebook';
import type { Workspace } from '../../../workspace';
import { goTo } from '../../../ui';

/** The cells one step away: those that feed a cell, or those it feeds, in the order of the notebook. */
export function oneStep(notebook: Notebook, cell: string, way: 'precedents' | 'dependents'): string[] {
  const near = dependenciesOf(notebook)[way].get(cell);
  if (!near || near.size === 0) return [];
  return allCells(notebook).flatMap(({ id }) => (near.has(id) ? [id] : []));
}

/**
 * Walks along what feeds what by keyboard: Alt+Left goes to what feeds the cell in focus, Alt+Right to what it feeds.
 * Where there are several, it goes back to the one it came from, else to the first; with Shift as well it goes
 * on to the next, or the one before, of those it could have gone to.
 */
export class Walk {
  readonly #workspace: Workspace;
  /** The cell the last step was taken from, the cell it led to, and which way it went. */
  #last: { from: string; to: string; way: 'precedents' | 'dependents' } | null = null;

  constructor(workspace: Workspace) {
    this.#workspace = workspace;
  }

  /** Takes a key; gives whether it was one of these. */
  key(event: KeyboardEvent): boolean {
    if (!event.altKey || event.ctrlKey || event.metaKey) return false;
    if (event.key !== 'ArrowLeft' && event.key !== 'ArrowRight') return false;
    const forward = event.key === 'ArrowRight';
    if (event.shiftKey) this.#suspended(forward ? 1 : -1);
    else this.#step(forward ? 'dependents' : 'precedents');
    return true;
  }

  #step(way: 'precedents' | 'dependents'): void {
    const from = this.#workspace.selection.here;
    if (from === null) return;
    const near = oneStep(this.#workspace.notebook, from, way);
    const back = this.#last?.to === from && near.includes(this.#last.from) ? this.#last.from : undefined;
    const to = back ?? near[0];
    if (to === undefined) {
      const label = this.#workspace.cell(from)?.label ?? 'This cell';
      this.#workspace.announcement =
        way === 'dependents' ? `${label} feeds nothing.` : `Nothing feeds ${label}.`;
      return;
    }
    this.#last = { from, to, way };
    goTo(this.#workspace, { cell: to, key: '' });
  }

  #suspended(by: 1 | -1): void {
    const last = this.#last;
    if (!last || last.to !== this.#workspace.selection.here) return;
    const near = oneStep(this.#workspace.notebook, last.from, last.way);
    const to = near[(near.indexOf(last.to) + by + near.length) % near.length];
    if (to === undefined || to === last.to) return;
    this.#last = { ...last, to };
    goTo(this.#workspace, { cell: to, key: '' });
  }
}
