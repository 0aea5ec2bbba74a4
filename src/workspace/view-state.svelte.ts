import { SvelteMap, SvelteSet } from 'svelte/reactivity';
import { chainOf, type Notebook, type Section } from '../notebook';
import type { OpenDocument } from './document.svelte';

/** Values that are drawn when a notebook is opened, each cell's own words counted as eight; and of those, at once. */
const mostDrawn = 6000;
const drawnAtOnce = 500;
/** How many cells more are drawn at a time. */
const drawnNext = 40;

/** What of the notebook is shown, and how much of it is drawn. */
export class ViewState {
  /** Which view is shown: 'leaf' for the grid, or the name of one of the others. */
  current = $state('leaf');
  /** The cell whose chain alone is shown on the grid. */
  onlyChainOf: string | null = $state(null);
  /** The cells of that chain; null where all cells are shown. */
  readonly shownCells: ReadonlySet<string> | null = $derived.by(() => {
    const of = this.onlyChainOf;
    return of !== null && this.#document.cell(of) ? new Set(chainOf(this.#document.notebook, of)) : null;
  });
  /** Sections whose cells are not shown. */
  readonly folded = new SvelteSet<string>();
  /** How many cells are drawn yet, for the sections of a notebook just opened that are not drawn whole. */
  readonly drawnYet = new SvelteMap<string, number>();
  readonly #expanded = new SvelteSet<string>();
  readonly #document: Pick<OpenDocument, 'notebook' | 'cell'>;

  constructor(document: Pick<OpenDocument, 'notebook' | 'cell'>) {
    this.#document = document;
    this.foldLong(document.notebook);
  }

  /** Whether some of the grid is still to be drawn. */
  get drawing(): boolean {
    return this.current === 'leaf' && this.drawnYet.size > 0;
  }

  /**
   * Sees to it that a notebook can be read at once however long it is: what does not fit on the first screens is drawn
   * after them, and of a very long one the last sections are folded, or all of them.
   */
  foldLong(notebook: Notebook): void {
    this.folded.clear();
    this.drawnYet.clear();
    const values = notebook.sizes.length + 8;
    let drawn = 0;
    for (const { id, cells } of notebook.sections) {
      const before = drawn;
      drawn += cells.length * values;
      if (drawn > mostDrawn) this.folded.add(id);
      else if (drawn > drawnAtOnce)
        this.drawnYet.set(id, Math.max(0, Math.floor((drawnAtOnce - before) / values)));
    }
  }

  /** Has some more cells of a section drawn. */
  drawMore({ id, cells }: Section): void {
    const drawn = (this.drawnYet.get(id) ?? 0) + drawnNext;
    if (drawn >= cells.length) this.drawnYet.delete(id);
    else this.drawnYet.set(id, drawn);
  }

  /** Whether a cell shows all it works out, and how. */
  isExpanded(cell: string): boolean {
    return this.#expanded.has(cell);
  }

  expand(cell: string): void {
    this.#expanded.add(cell);
  }

  toggle(cell: string): void {
    if (!this.#expanded.delete(cell)) this.#expanded.add(cell);
  }
}
