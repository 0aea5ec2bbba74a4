import type { Cell, Edit, Notebook, Settings, Size } from '../notebook';
import type { Results } from '../engine';
import { Announcements } from './announcements.svelte';
import { Calculation, type Follower } from './calculation.svelte';
import { CellSignals } from './cell-signals.svelte';
import { Complaints } from './complaints.svelte';
import { OpenDocument } from './document.svelte';
import { FormulaEntry } from './formula-entry';
import { Selection } from './selection.svelte';
import type { OpenNotebook, StartState } from './start-state';
import { ViewState } from './view-state.svelte';

/**
 * The state of the page, in parts: the document, its results, where the person is, and what is shown. Components read it
 * and send it edits. What nearly every component reads is here; the rest is asked of its part.
 */
export class Workspace {
  readonly #announcements = new Announcements();
  /** Sentences about what went wrong and is not on any cell; each stays until it is closed. */
  readonly complaints = new Complaints();
  readonly document: OpenDocument;
  readonly calculation: Calculation;
  readonly selection: Selection;
  readonly view: ViewState;
  readonly formulas: FormulaEntry;

  /**
   * @param follower called once, before the parts of the workspace are there: it may use them from the first time on that
   *   a notebook is shown to what it returns
   */
  constructor(
    notebook: Notebook,
    follower: (workspace: Workspace) => Follower,
    id: string = crypto.randomUUID(),
  ) {
    const signals = new CellSignals();
    const announcements = this.#announcements;
    this.document = new OpenDocument(notebook, id, announcements, this.complaints, {
      left: () => {
        this.selection.clear();
        this.view.onlyChainOf = null;
        this.calculation.pauseSummaries();
      },
      opened: (next) => this.view.foldLong(next),
      changed: (next, cellsAdded) => {
        // What a new cell comes with has not changed: that it was added is all there is to say.
        if (cellsAdded) this.calculation.pauseSummaries();
        this.calculation.show(next);
      },
    });
    this.calculation = new Calculation(notebook, signals, announcements, follower(this));
    this.selection = new Selection(this.document, signals);
    this.view = new ViewState(this.document);
    this.formulas = new FormulaEntry(this);
    this.calculation.show(notebook);
  }

  get notebook(): Notebook {
    return this.document.notebook;
  }

  get settings(): Settings {
    return this.document.settings;
  }

  get sizes(): readonly Size[] {
    return this.document.sizes;
  }

  cell(id: string): Cell | undefined {
    return this.document.cell(id);
  }

  /** Makes an edit; returns why not, where it cannot be made. See `OpenDocument.do`. */
  do(edit: Edit, start?: OpenNotebook | StartState): string | undefined {
    return this.document.do(edit, start);
  }

  /** All results as they are now, for what reads many at a time and knows itself when to read again. */
  get allResults(): Results {
    return this.calculation.results;
  }

  /** Results of a cell; reading them makes a component follow that cell and no other. */
  results(cell: string): Results {
    return this.calculation.of(cell);
  }

  /** What the last action led to, in a sentence, for a screen reader and the foot of the page. */
  get announcement(): string {
    return this.#announcements.newest;
  }

  set announcement(sentence: string) {
    this.#announcements.announce(sentence);
  }

  /** Why the last attempt failed, in a sentence: it joins the other complaints. Null ends those of earlier attempts. */
  get complaint(): string | null {
    return this.complaints.newest;
  }

  set complaint(sentence: string | null) {
    this.complaints.ofAttempt(sentence);
  }
}
