import { untrack } from 'svelte';
import { allCells, type Notebook } from '../../../notebook';
import type { Overlay } from '../../../pictures';
import { type Workspace, workedPlan } from '../../../workspace';

/**
 * The pieces as they were before the last edit, from when its results have come until the next edit is worked or they
 * are put aside. No clock takes them away: who reads slowly, or by ear, has as long as they like.
 */
export class Before {
  /** The plans of all pieces, as texts, by piece and size: as they were, and as they are. */
  #past: ReadonlyMap<string, string> = $state.raw(new Map());
  #now: ReadonlyMap<string, string> = new Map();
  #of: Notebook | null = null;
  readonly #workspace: Workspace;

  /** Follows a workspace for as long as the component lives in which it is made. */
  constructor(workspace: Workspace) {
    this.#workspace = workspace;
    $effect(() => {
      if (!workspace.calculation.busy && workspace.calculation.worked) untrack(() => this.#refresh());
    });
  }

  #refresh(): void {
    const { notebook } = this.#workspace;
    if (notebook === this.#of) return;
    const same = this.#of !== null && shareCells(this.#of, notebook);
    this.#past = same ? this.#now : new Map();
    const now = new Map<string, string>();
    for (const cell of allCells(notebook)) {
      if (cell.kind !== 'piece') continue;
      for (const { id } of notebook.sizes) {
        const text = this.#workspace.results(cell.id).text(id, cell.id, 'piece');
        if (text !== undefined) now.set(`${cell.id} ${id}`, text);
      }
    }
    this.#now = now;
    this.#of = notebook;
  }

  dismiss(): void {
    this.#past = new Map();
  }

  /** A piece before the last edit, to be drawn over it; nothing where nothing of it has changed. */
  of(piece: string): Overlay | null {
    const sizes = this.#workspace.sizes.flatMap(({ id, label }) => {
      const text = this.#past.get(`${piece} ${id}`);
      const changed = text !== undefined && text !== this.#workspace.results(piece).text(id, piece, 'piece');
      if (!changed) return [];
      const { plan, rows } = workedPlan(text);
      return [{ id, label, plan, rows }];
    });
    return sizes.length === 0 ? null : { id: 'before', label: 'before the change', kind: 'before', sizes };
  }
}

/** Whether one notebook came from the other by an edit: another notebook that is open shares no cell with it. */
function shareCells(before: Notebook, after: Notebook): boolean {
  const cells = new Set(allCells(before));
  return allCells(after).some((cell) => cells.has(cell));
}
