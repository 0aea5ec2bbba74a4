import {
  advance,
  allCells,
  apply,
  begin,
  cellById,
  describe,
  redo,
  undo,
  withElsewhere,
  writeFile,
  type Cell,
  type Edit,
  type History,
  type Notebook,
  type Settings,
  type Size,
} from '../notebook';
import type { Announcements } from './announcements.svelte';
import type { Complaints } from './complaints.svelte';
import { outdated, type OpenNotebook, type StartState } from './start-state';

/** What follows from a change of the document in the rest of the workspace. */
export interface DocumentEvents {
  /** The notebook is about to make way for another: whatever was being done in it ends. */
  left(): void;
  /** A notebook is about to be shown from its beginning. */
  opened(notebook: Notebook): void;
  /** Another notebook is shown, or another state of this one. */
  changed(notebook: Notebook, cellsAdded: boolean): void;
}

/** The notebook that is open, and its history. All edits are made here; nothing else changes a notebook. */
export class OpenDocument {
  #history: History;
  readonly notebook: Notebook = $derived.by(() => this.#history.now);
  // Every value on the grid follows these two. Derived from the notebook, they would have all of them run again at each
  // edit of any cell; as states that are set to what they were, they notify nobody.
  #settings: Settings;
  #sizes: readonly Size[];
  readonly undoes: string | undefined = $derived.by(() => this.#history.past.at(-1)?.what);
  readonly redoes: string | undefined = $derived.by(() => this.#history.future.at(-1)?.what);
  /** The history of the open notebook while another is previewed. */
  #suspended: History | null = null;

  /** Which of the saved notebooks this is. */
  id: string;
  /** Why nothing can be changed here, in a sentence, where the notebook is only to be read. */
  readOnly: string | null = $state(null);
  /** Whether the notebook has changes that are not saved; set by whoever saves it. */
  isUnsaved: () => boolean = () => false;
  /** The notebook that a person wants to open, until they agree to leave unsaved changes. */
  leaving: { readonly title: string; goOn(): void } | null = $state.raw(null);

  readonly #announcements: Announcements;
  readonly #complaints: Complaints;
  readonly #events: DocumentEvents;

  constructor(
    notebook: Notebook,
    id: string,
    announcements: Announcements,
    complaints: Complaints,
    events: DocumentEvents,
  ) {
    this.#history = $state.raw(begin(notebook));
    this.#settings = $state.raw(notebook.settings);
    this.#sizes = $state.raw(notebook.sizes);
    this.id = $state(id);
    this.#announcements = announcements;
    this.#complaints = complaints;
    this.#events = events;
  }

  get settings(): Settings {
    return this.#settings;
  }

  get sizes(): readonly Size[] {
    return this.#sizes;
  }

  cell(id: string): Cell | undefined {
    return cellById(this.notebook, id);
  }

  #swatchesBefore: readonly (readonly [name: string, label: string])[] = [];

  /** The names and labels of the swatches; the same list for as long as they are the same. */
  readonly swatches = $derived.by(() => {
    const before = this.#swatchesBefore;
    const now = allCells(this.notebook)
      .filter((cell) => cell.kind === 'swatch')
      .map((swatch) => [swatch.name, swatch.label] as const);
    const same =
      now.length === before.length &&
      now.every(([name, label], at) => before[at]![0] === name && before[at]![1] === label);
    return same ? before : (this.#swatchesBefore = now);
  });

  /** Which notebook is open. */
  get open(): OpenNotebook {
    return { id: this.id, title: this.notebook.title, previewed: this.#suspended !== null };
  }

  /** What an edit that is prepared from here on is for: read it before the first `await`. */
  get startState(): StartState {
    return { ...this.open, notebook: this.notebook };
  }

  /** Whether the notebook that was open then is open still. */
  isStillOpen({ id, previewed }: OpenNotebook): boolean {
    return id === this.id && previewed === (this.#suspended !== null);
  }

  /**
   * Makes an edit. Returns why not, where it cannot be made; then nothing has changed.
   *
   * @param start what it was prepared for, where that took time. A start state refuses the edit where what it touches
   *   has changed since, and in another notebook; `open` alone refuses it only in another notebook.
   */
  do(edit: Edit, start?: OpenNotebook | StartState): string | undefined {
    if (start && !this.isStillOpen(start)) return this.refuseFor(start);
    const meanwhile =
      start && 'notebook' in start ? outdated(edit, start.notebook, this.notebook) : undefined;
    if (meanwhile !== undefined) return meanwhile;
    if (this.readOnly !== null) {
      this.#announcements.announce(this.readOnly);
      return this.readOnly;
    }
    const applied = apply(this.notebook, edit);
    if ('refused' in applied) return applied.refused;
    const cellsAdded = allCells(applied.notebook).length > allCells(this.notebook).length;
    this.#setHistory(advance(this.#history, applied.notebook, describe(this.notebook, edit)), cellsAdded);
    return undefined;
  }

  /**
   * Why nothing is done that was begun in a notebook that is not open any more. It is shown, since whatever it was
   * begun in has gone with the notebook.
   *
   * @param what what was typed
   */
  refuseFor({ title }: OpenNotebook, what?: string): string {
    const typed = what === undefined ? 'Your last change' : `"${what.trim().slice(0, 200)}"`;
    const refused = `${typed} was not entered: it was for ${title}, which is no longer open. Open it and try again.`;
    this.#complaints.ofAttempt(refused);
    return refused;
  }

  undo(): void {
    const what = this.undoes;
    if (!what || this.readOnly !== null) return;
    this.#setHistory(undo(this.#history));
    this.#announcements.announce(`Undone: ${what}.`);
  }

  redo(): void {
    const what = this.redoes;
    if (!what || this.readOnly !== null) return;
    this.#setHistory(redo(this.#history));
    this.#announcements.announce(`Redone: ${what}.`);
  }

  /**
   * Opens another notebook, a new one or (with its id) a saved one; its history begins there. Where this one has unsaved
   * changes, the person is asked first and the result is false; `sure` does not ask.
   */
  begin(notebook: Notebook, id: string = crypto.randomUUID(), sure = false): boolean {
    if (!sure && this.isUnsaved()) {
      this.leaving = { title: notebook.title, goOn: () => void this.begin(notebook, id, true) };
      return false;
    }
    this.leaving = null;
    this.#leave();
    this.#suspended = null;
    this.id = id;
    this.#events.opened(notebook);
    this.#setHistory(begin(notebook));
    this.#announcements.announce(`Opened ${notebook.title}.`);
    return true;
  }

  /** Exchanges the whole notebook as one edit, which undo takes back. */
  exchange(notebook: Notebook, what: string): void {
    this.#leave();
    this.#setHistory(advance(this.#history, notebook, what));
  }

  /** Shows what was done to the notebook elsewhere: undo takes that back as one step, and then what was done here. */
  follow(notebook: Notebook): void {
    if (this.#suspended) this.#suspended = withElsewhere(this.#suspended, notebook);
    else this.#setHistory(withElsewhere(this.#history, notebook));
  }

  /** Shows another notebook, to be read and not changed; the open one stays as it is. */
  preview(notebook: Notebook): void {
    this.#leave();
    this.#suspended ??= this.#history;
    this.#events.opened(notebook);
    this.#setHistory(begin(notebook));
  }

  /** The open notebook while another is previewed. */
  get previewedFrom(): Notebook | null {
    return this.#suspended?.now ?? null;
  }

  /** Goes back to the open notebook, and to its history. */
  exitPreview(): void {
    const suspended = this.#suspended;
    if (!suspended) return;
    this.#leave();
    this.#suspended = null;
    this.#setHistory(suspended);
  }

  /** The notebook as the text of a file. */
  file(): string {
    return writeFile(this.notebook);
  }

  #leave(): void {
    this.#complaints.ofAttempt(null);
    this.#events.left();
  }

  #setHistory(history: History, cellsAdded = false): void {
    this.#history = history;
    this.#settings = history.now.settings;
    this.#sizes = history.now.sizes;
    this.#events.changed(history.now, cellsAdded);
  }
}
