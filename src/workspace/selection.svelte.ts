import { untrack } from 'svelte';
import { allCells, dependenciesOf, downstream, type PieceCell } from '../notebook';
import type { CellRef } from '../engine';
import type { CellSignals, DependencyRole } from './cell-signals.svelte';
import type { OpenDocument } from './document.svelte';

/** Where a person is on the grid. `size` is null where one value holds for all sizes. */
export interface GridPosition extends CellRef {
  readonly size: string | null;
}

/** The value, formula or label that is being edited, and the text that its editor begins with. */
export type Editing = GridPosition & { what: 'value' | 'formula' | 'label'; begin?: string };

/** Where the person is in the notebook, and what they are doing there. */
export class Selection {
  /** Where the focus is, or was last. */
  position: GridPosition | null = $state.raw(null);
  /** The cell the focus is in, or was in last. */
  readonly here: string | null = $derived(this.position?.cell ?? null);
  #editing: Editing | null = $state.raw(null);
  /** The cell that is deleted once the person has said yes. */
  pendingDeletion: string | null = $state(null);
  /** The cell that is being dragged. */
  dragging: string | null = $state(null);
  /** The value that a what-if is being made of, and the what-if it is to go in, if not a new one. */
  whatIfDraft: (GridPosition & { readonly whatIf?: string }) | null = $state.raw(null);

  readonly #document: Pick<OpenDocument, 'notebook'>;
  readonly #signals: CellSignals;

  constructor(document: Pick<OpenDocument, 'notebook'>, signals: CellSignals) {
    this.#document = document;
    this.#signals = signals;
  }

  get editing(): Editing | null {
    return this.#editing;
  }

  set editing(editing: Editing | null) {
    const before = untrack(() => this.#editing);
    this.#editing = editing;
    for (const cell of new Set([before?.cell, editing?.cell])) {
      if (cell !== undefined) this.#signals.at(cell).edited++;
    }
  }

  /** What is being edited in a cell; reading it makes a component follow that cell and no other. */
  editingIn(cell: string): Editing | null {
    void this.#signals.at(cell).edited;
    const editing = untrack(() => this.#editing);
    return editing?.cell === cell ? editing : null;
  }

  /** Leaves what is focused and edited. */
  clear(): void {
    this.editing = null;
    this.position = null;
  }

  /** How a cell relates to the one in focus; reading it makes a component follow that cell and no other. */
  dependencyRole(cell: string): DependencyRole | undefined {
    return this.#signals.at(cell).role;
  }

  /** Finds how the cells relate to the one in focus. Called by the grid, whose cells show it. */
  updateDependencyRoles(): void {
    const now = new Map<string, DependencyRole>();
    if (this.here !== null) {
      const { dependents, precedents } = dependenciesOf(this.#document.notebook);
      for (const cell of dependents.get(this.here) ?? []) now.set(cell, 'fed');
      for (const cell of precedents.get(this.here) ?? []) now.set(cell, 'feeds');
      now.set(this.here, 'here');
    }
    this.#signals.setRoles(now);
  }

  /** The piece to draw: the one in focus, else the first that the cell in focus feeds, else one that tapers. */
  readonly pieceAtHand: PieceCell | undefined = $derived.by(() => {
    const { notebook } = this.#document;
    const pieces = allCells(notebook).filter((cell): cell is PieceCell => cell.kind === 'piece');
    if (this.position) {
      const reached = [this.position.cell, ...downstream(notebook, this.position.cell)];
      for (const id of reached) {
        const piece = pieces.find((candidate) => candidate.id === id);
        if (piece) return piece;
      }
    }
    return pieces.findLast(({ stretches }) => stretches.some(({ kind }) => kind === 'taper')) ?? pieces[0];
  });
}
