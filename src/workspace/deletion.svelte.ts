import { dependenciesOf } from '../notebook';
import type { Announcements } from './announcements.svelte';
import type { OpenDocument } from './document.svelte';
import type { ViewState } from './view-state.svelte';

/** Deletes cells, and asks first where others use them. */
export class Deletion {
  /** The cell that is deleted once the person has said yes. */
  pending: string | null = $state(null);
  readonly #document: OpenDocument;
  readonly #view: Pick<ViewState, 'expand'>;
  readonly #announcements: Announcements;

  constructor(document: OpenDocument, view: Pick<ViewState, 'expand'>, announcements: Announcements) {
    this.#document = document;
    this.#view = view;
    this.#announcements = announcements;
  }

  /** Deletes a cell that nothing uses; where something does, expands it, since the question is asked there. */
  ask(cell: string): void {
    if ((dependenciesOf(this.#document.notebook).dependents.get(cell)?.size ?? 0) === 0) {
      this.confirm(cell);
      return;
    }
    this.#view.expand(cell);
    this.pending = cell;
  }

  confirm(cell: string): void {
    const label = this.#document.cell(cell)?.label;
    this.pending = null;
    if (this.#document.do({ do: 'remove cell', cell }) === undefined)
      this.#announcements.announce(`Deleted ${label}. Undo brings it back.`);
  }
}
