import { untrack } from 'svelte';
import { SvelteMap, SvelteSet } from 'svelte/reactivity';
import {
  advance,
  apply,
  begin,
  cellById,
  chainOf,
  describe,
  downstream,
  dependenciesOf,
  largestFile,
  redo,
  undo,
  usualSettings,
  withElsewhere,
  writeFile,
  allCells,
  type Cell,
  type Edit,
  type History,
  type Notebook,
  type PieceCell,
  type Section,
  type Settings,
  type Size,
} from '../notebook';
import { storedFormula, type FormulaRead } from '../formulas';
import { Results, type Answer, type Checked, type Move, type CellRef, type WorkTrials } from '../engine';
import type { WhatIfEvents } from '../worker';
import { Complaints } from './complaints.svelte';
import { fetched } from './fetching';
import { CellSignals, type DependencyRole } from './cell-signals.svelte';
import { outdated, type OpenNotebook, type StartState } from './start-state';
import { summaryOf } from './summary';
import { UpdateScheduler } from './update-scheduler.svelte';
import { loadNotebookFile } from '../notebook/lazy';
import { loadCheckedFormula } from '../formulas/lazy';

/** What the desk asks of the sheet: to follow the notebook, and to try a formula without keeping it. */
export interface Follower {
  show(notebook: Notebook): void;
  check(formula: string, place: CellRef): Promise<Checked>;
  /** Works the notebook shown last with some changes, many times over. */
  readonly trials: WorkTrials;
  /** Works the what-ifs that are on, after the notebook itself and after every edit of it; gives what ends it. */
  followWhatIfs(told: WhatIfEvents): Promise<() => void>;
  /** Whether all that was shown has been worked. */
  readonly settled: boolean;
}

/** Where a person is on the leaf. `size` is null where one place stands for all sizes. */
export interface GridPosition extends CellRef {
  readonly size: string | null;
}

type Editing = GridPosition & { what: 'value' | 'formula' | 'label'; begin?: string };

const markedFor = 2600;
/** Values that are drawn when a notebook is opened, each cell's own words counted as eight; and of those, at once. */
const mostDrawn = 6000;
const drawnAtOnce = 500;
/** How many cells more are drawn at a time. */
const drawnNext = 40;

/**
 * The state of the page: the notebook and its history, the results as they arrive, and where the person is.
 * Components show it and send it edits; nothing else changes it.
 */
export class Workspace {
  #history: History = $state.raw(begin(nothing));
  readonly notebook: Notebook = $derived(this.#history.now);
  // Every place on the leaf follows these two. Derived from the notebook they would have all of them look again at
  // each edit of any cell; as states that are set to what they were, they tell nobody.
  #settings: Settings = $state.raw(nothing.settings);
  #sizes: readonly Size[] = $state.raw(nothing.sizes);
  readonly undoes = $derived(this.#history.past.at(-1)?.what);
  readonly redoes = $derived(this.#history.future.at(-1)?.what);

  /** Where the focus is, or was last. */
  position: GridPosition | null = $state.raw(null);
  /** The cell the focus is in, or was in last. */
  readonly here: string | null = $derived(this.position?.cell ?? null);
  /** What of the notebook is shown: 'leaf', or the name of one of the views. */
  view = $state('leaf');
  /** The cell whose chain alone is shown on the leaf. */
  onlyChainOf: string | null = $state(null);
  /** The cells of that chain; null where all cells are shown. */
  readonly shownCells: ReadonlySet<string> | null = $derived.by(() => {
    const of = this.onlyChainOf;
    return of !== null && this.cell(of) ? new Set(chainOf(this.notebook, of)) : null;
  });
  #editing: Editing | null = $state.raw(null);
  readonly #signals = new CellSignals();
  /** What the last thing done led to, in a sentence, for a screen reader and the foot of the page. */
  #announcement = $state('');
  #summedUp = '';
  get announcement(): string {
    return this.#announcement;
  }
  /** The same sentence once more is told once more: to a screen reader only what differs is new. */
  set announcement(sentence: string) {
    const again = sentence !== '' && sentence === untrack(() => this.#announcement);
    this.#announcement = again ? `${sentence}\u00a0` : sentence;
  }
  /** Sentences about what went wrong and is not on any cell; each stays until it is closed. */
  readonly complaints = new Complaints();
  /** What could not be done, in a sentence: it joins the others. Nothing takes out what earlier attempts left there. */
  get complaint(): string | null {
    return this.complaints.newest;
  }
  set complaint(sentence: string | null) {
    this.complaints.ofAttempt(sentence);
  }
  /** Whether the notebook here has work that is not saved; for whoever saves it to say. */
  isUnsaved: () => boolean = () => false;
  /** What the person asked for and is asked about first, since what is here is not saved. */
  leaving: { readonly title: string; goOn(): void } | null = $state.raw(null);
  /** Which notebook this is among those that are kept. */
  id: string = $state('');
  /** Why nothing can be changed here, in a sentence, where it only is to be looked at. */
  readOnly: string | null = $state(null);
  /** The history of the notebook on the desk while another is looked at. */
  #suspended: History | null = null;
  /** Whether every size has been worked once. */
  worked = $state(false);
  #working = $state(false);
  /** The value that a what-if is being made of, and the what-if it is to go in, if not a new one. */
  whatIfAsked: (GridPosition & { readonly whatIf?: string }) | null = $state.raw(null);

  readonly #results = new Results();
  readonly #updates = new UpdateScheduler(this.#signals);
  #moved = new Map<string, Move>();
  #settling: ReturnType<typeof setTimeout> | undefined;
  #watch = false;
  readonly #follower: Follower;
  /** How many files were picked. */
  #picked = 0;

  /** Whether results are still being worked, or shown. */
  get busy(): boolean {
    return this.#working || this.#updates.behind;
  }

  /** Whether some of the leaf is still to be drawn. */
  get drawing(): boolean {
    return this.view === 'leaf' && this.drawnYet.size > 0;
  }

  get settings(): Settings {
    return this.#settings;
  }

  get sizes(): readonly Size[] {
    return this.#sizes;
  }

  /** The place that is being edited, and the text its editor begins with. */
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

  constructor(
    notebook: Notebook,
    follower: (workspace: Workspace) => Follower,
    id: string = crypto.randomUUID(),
  ) {
    this.id = id;
    this.#foldMuch(notebook);
    this.#follower = follower(this);
    this.#setHistory(begin(notebook));
  }

  /** The cell that is about to be deleted, once the person has said yes. */
  removing: string | null = $state(null);
  /** The cell that is being dragged. */
  dragging: string | null = $state(null);
  /** Sections whose cells are not shown. */
  readonly folded = new SvelteSet<string>();
  /** How many cells are drawn yet of sections of a notebook just opened, where those are not all. */
  readonly drawnYet = new SvelteMap<string, number>();

  /** Deletes a cell that nothing uses; asks first where something does. */
  askToRemove(cell: string): void {
    if ((dependenciesOf(this.notebook).dependents.get(cell)?.size ?? 0) === 0) {
      this.remove(cell);
      return;
    }
    this.#opened.add(cell);
    this.removing = cell;
  }

  remove(cell: string): void {
    const label = this.cell(cell)?.label;
    this.removing = null;
    if (this.do({ do: 'remove cell', cell }) === undefined)
      this.announcement = `Deleted ${label}. Undo brings it back.`;
  }

  /** What an edit that is prepared from here on is for: taken before whatever it waits for. */
  get startState(): StartState {
    return { ...this.open, notebook: this.notebook };
  }

  /** Which notebook is open. */
  get open(): OpenNotebook {
    return { id: this.id, title: this.notebook.title, previewed: this.#suspended !== null };
  }

  /** Whether the notebook is open that was then. */
  isStillOpen({ id, previewed: looked }: OpenNotebook): boolean {
    return id === this.id && looked === (this.#suspended !== null);
  }

  /**
   * Makes an edit. Gives back why not, where it cannot be made; then nothing has changed.
   *
   * @param start what it was prepared for, where that took time: it is made where what it touches is as it was then,
   *   and in no other notebook; of a notebook alone (`desk.open`) only the latter
   */
  do(edit: Edit, start?: OpenNotebook | StartState): string | undefined {
    if (start && !this.isStillOpen(start)) return this.refuseFor(start);
    const meanwhile =
      start && 'notebook' in start ? outdated(edit, start.notebook, this.notebook) : undefined;
    if (meanwhile !== undefined) return meanwhile;
    if (this.readOnly !== null) return (this.announcement = this.readOnly);
    const applied = apply(this.notebook, edit);
    if ('refused' in applied) return applied.refused;
    // What a new cell comes with has not changed: that it was added is all there is to say.
    if (allCells(applied.notebook).length > allCells(this.notebook).length) this.#watch = false;
    this.#setHistory(advance(this.#history, applied.notebook, describe(this.notebook, edit)));
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
    return (this.complaint = `${typed} was not entered: it was for ${title}, which is no longer open. Open it and try again.`);
  }

  undo(): void {
    const what = this.undoes;
    if (!what || this.readOnly !== null) return;
    this.#setHistory(undo(this.#history));
    this.announcement = `Undid ${what}.`;
  }

  redo(): void {
    const what = this.redoes;
    if (!what || this.readOnly !== null) return;
    this.#setHistory(redo(this.#history));
    this.announcement = `Redid ${what}.`;
  }

  /**
   * Puts another notebook on the desk, a new one or (with its id) one that is kept; its history begins there. Where what
   * is here is not saved, the person is asked first, and false comes back; `sure` asks nothing.
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
    this.#foldMuch(notebook);
    this.#setHistory(begin(notebook));
    this.announcement = `${notebook.title} is on the desk.`;
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

  /** Shows another notebook, to be looked at and not changed; the one on the desk stays as it is. */
  preview(notebook: Notebook): void {
    this.#leave();
    this.#suspended ??= this.#history;
    this.#foldMuch(notebook);
    this.#setHistory(begin(notebook));
  }

  /** The notebook that is on the desk while another is looked at. */
  get previewedFrom(): Notebook | null {
    return this.#suspended?.now ?? null;
  }

  /** Goes back to the notebook on the desk, and to its history. */
  exitPreview(): void {
    const suspended = this.#suspended;
    if (!suspended) return;
    this.#leave();
    this.#suspended = null;
    this.#setHistory(suspended);
  }

  /** Opens a file that a person picked or dropped; what was on the desk stays kept, and stays where the file is refused. */
  async openPicked(file: File): Promise<void> {
    if (file.size > largestFile) {
      this.complaints.add(
        `${file.name}: this file is larger than any notebook (${Math.round(file.size / 1e6)} MB), so it was not opened.`,
      );
      return;
    }
    const { open } = this;
    const picked = ++this.#picked;
    const { readFile } = await loadNotebookFile();
    const text = await file.text();
    // Of several files the one picked last is wanted.
    if (picked !== this.#picked) return;
    if (!this.isStillOpen(open)) {
      this.complaint = `${file.name} was not opened, since you opened another notebook meanwhile. Pick it again.`;
      return;
    }
    const read = readFile(text);
    if ('problem' in read) {
      this.complaints.add(`${file.name}: ${read.problem}`);
      return;
    }
    if (this.begin(read.notebook)) this.announcement = `Opened ${file.name}.`;
  }

  /**
   * Sees to it that a notebook can be read at once however large it is: what does not fit on the first screens is drawn
   * after them, and of a very large one the last sections are folded, or all of them.
   */
  #foldMuch(notebook: Notebook): void {
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

  /** Leaves whatever was being done in the notebook on the desk, for another one. */
  #leave(): void {
    this.editing = null;
    this.position = null;
    this.onlyChainOf = null;
    this.complaint = null;
    this.#watch = false;
  }

  file(): string {
    return writeFile(this.notebook);
  }

  /** Puts a formula, as typed, in an input; gives back why not. */
  enterFormula(cell: string, key: string, typed: string): Promise<string | undefined> {
    return this.#doTyped(typed, { cell, key }, (formula) => ({ do: 'enter', cell, key, entry: { formula } }));
  }

  /** Puts a formula, as typed, in place of an output's own; nothing typed gives its own back. */
  async takeOver(cell: string, key: string, typed: string): Promise<string | undefined> {
    if (/^\s*=?\s*$/.test(typed)) return this.do({ do: 'take over', cell, key, formula: null });
    return this.#doTyped(typed, { cell, key }, (formula) => ({ do: 'take over', cell, key, formula }));
  }

  async #doTyped(
    typed: string,
    place: CellRef,
    edit: (formula: string) => Edit,
  ): Promise<string | undefined> {
    const start = this.startState;
    for (;;) {
      const checkedIn = this.notebook;
      const tried = await this.readTyped(typed, place);
      if (!this.isStillOpen(start)) return this.refuseFor(start, typed);
      // Names and units are right for the notebook they were looked up in.
      if (this.notebook !== checkedIn) continue;
      return 'problem' in tried ? tried.problem : this.do(edit(tried.formula), start);
    }
  }

  /** What a formula, as typed, would give in a place, without keeping it. */
  async tryFormula(typed: string, place: CellRef): Promise<Checked<string>> {
    const read = await this.#readFormula(typed);
    if ('problem' in read) return read;
    try {
      const checked = await this.#follower.check(storedFormula(read.tokens), place);
      if (!('problem' in checked)) return checked;
      return { problem: this.allResults.messageFor(checked.problem, place.cell) };
    } catch (error) {
      return { problem: error instanceof Error ? error.message : String(error) };
    }
  }

  /** Works the notebook with some changes, many times over, without making them. */
  readonly trials: WorkTrials = (...asked) => this.#follower.trials(...asked);

  followWhatIfs(told: WhatIfEvents): Promise<() => void> {
    return this.#follower.followWhatIfs(told);
  }

  /** A typed formula as it is stored, once it has been read whole and its unit found right. */
  async readTyped(typed: string, place: CellRef): Promise<{ formula: string } | { problem: string }> {
    const read = await this.#readFormula(typed);
    if ('problem' in read) return read;
    const tried = await this.tryFormula(typed, place);
    return 'problem' in tried ? tried : { formula: storedFormula(read.tokens) };
  }

  /** The functions that formulas may use are fetched with the first formula that is typed. */
  async #readFormula(typed: string): Promise<FormulaRead> {
    try {
      const { readCheckedFormula } = await fetched(loadCheckedFormula);
      return readCheckedFormula(typed, this.notebook.settings.decimal);
    } catch {
      const problem =
        'The part of the page that checks formulas did not load. Enter it again; if that does not help, reload the page: your notebook stays.';
      return { problem, start: 0, end: typed.length };
    }
  }

  #setHistory(history: History): void {
    if (history.now !== this.#history.now) this.#working = true;
    this.#history = history;
    this.#summedUp = '';
    this.#settings = history.now.settings;
    this.#sizes = history.now.sizes;
    // Outside any derivation, since one that makes the source it reads would never follow it.
    for (const { id } of allCells(history.now)) this.#signals.at(id);
    this.#follower.show(history.now);
  }

  /** Takes in what the sheet worked out. */
  applyAnswer(answer: Answer): void {
    const moved = new Map<string, Move>();
    const watching = this.#watch;
    const changed = this.#results.apply(answer, (move) => {
      if (watching) moved.set(positionKey(move), move);
    });
    const touched = new Set(changed.map((place) => place.cell));
    this.#mark(moved, touched);
    this.#updates.schedule(touched);
    if (watching) this.#sumUp(moved.size > 0 ? [...moved.values()] : this.#withNumbers(changed));
    this.#working = !this.#follower.settled;
    // On opening, one size arrives before the others: what comes with them has not changed either.
    this.worked ||= !this.#working;
    this.#watch ||= !this.#working;
  }

  /** Tells what an edit changed, once, even if it is worked out in parts. */
  #sumUp(changed: readonly { cell: string }[]): void {
    const sentence = summaryOf(this.notebook, changed);
    if (sentence && sentence !== this.#summedUp) this.announcement = this.#summedUp = sentence;
  }

  /** Where nothing moved, there may be numbers now where there were none. */
  #withNumbers(places: readonly CellRef[]): readonly CellRef[] {
    return places.filter(({ cell, key }) =>
      this.sizes.some(({ id }) => this.#results.number(id, cell, key) !== undefined),
    );
  }

  #mark(moved: Map<string, Move>, touched: Set<string>): void {
    for (const key of this.#moved.keys()) touched.add(key.slice(0, key.indexOf(' ')));
    this.#moved = moved;
    clearTimeout(this.#settling);
    if (moved.size === 0) return;
    this.#settling = setTimeout(() => {
      const settled = new Set([...this.#moved.keys()].map((key) => key.slice(0, key.indexOf(' '))));
      this.#moved = new Map();
      this.#updates.schedule(settled);
    }, markedFor);
  }

  /** The cells that are far out of sight, whose results can wait until those in sight are painted. */
  get outOfSight(): Set<string> {
    return this.#updates.outOfSight;
  }

  /** All results as they stand, for what looks at many at a time and knows itself when to look again. */
  get allResults(): Results {
    return this.#results;
  }

  /** Results of a cell; reading them makes a component follow that cell and no other. */
  results(cell: string): Results {
    void this.#signals.at(cell).results;
    return this.#results;
  }

  /** How a result moved with the last edit, for as long as that is shown. */
  moved(position: GridPosition): Move | undefined {
    void this.#signals.at(position.cell).results;
    return this.#moved.get(positionKey(position));
  }

  /** The piece to draw: the one in focus, else the first that the cell in focus feeds, else one that tapers. */
  readonly pieceAtHand: PieceCell | undefined = $derived.by(() => {
    const pieces = allCells(this.notebook).filter((cell): cell is PieceCell => cell.kind === 'piece');
    if (this.position) {
      const reached = [this.position.cell, ...downstream(this.notebook, this.position.cell)];
      for (const id of reached) {
        const piece = pieces.find((candidate) => candidate.id === id);
        if (piece) return piece;
      }
    }
    return pieces.findLast(({ stretches }) => stretches.some(({ kind }) => kind === 'taper')) ?? pieces[0];
  });

  readonly #opened = new SvelteSet<string>();

  /** Whether a cell shows all it works out, and how. */
  isOpen(cell: string): boolean {
    return this.#opened.has(cell);
  }

  toggle(cell: string): void {
    if (!this.#opened.delete(cell)) this.#opened.add(cell);
  }

  /** How a cell stands to the one in focus; reading it makes a component follow that cell and no other. */
  dependencyRole(cell: string): DependencyRole | undefined {
    return this.#signals.at(cell).role;
  }

  /** Looks how the cells stand to the one in focus. The leaf asks for it, whose cells show it. */
  updateDependencyRoles(): void {
    const now = new Map<string, DependencyRole>();
    if (this.here !== null) {
      const { dependents, precedents } = dependenciesOf(this.notebook);
      for (const cell of dependents.get(this.here) ?? []) now.set(cell, 'fed');
      for (const cell of precedents.get(this.here) ?? []) now.set(cell, 'feeds');
      now.set(this.here, 'here');
    }
    this.#signals.setRoles(now);
  }

  #fabricsBefore: readonly (readonly [name: string, label: string])[] = [];

  /** The names and labels of the swatches; the same list for as long as they are the same. */
  readonly fabrics = $derived.by(() => {
    const before = this.#fabricsBefore;
    const now = allCells(this.notebook)
      .filter((cell) => cell.kind === 'swatch')
      .map((swatch) => [swatch.name, swatch.label] as const);
    const same =
      now.length === before.length &&
      now.every(([name, label], at) => before[at]![0] === name && before[at]![1] === label);
    return same ? before : (this.#fabricsBefore = now);
  });

  cell(id: string): Cell | undefined {
    return cellById(this.notebook, id);
  }
}

const nothing: Notebook = {
  title: '',
  settings: usualSettings,
  sizes: [{ id: 'one', label: 'One size' }],
  sections: [],
};

function positionKey(position: { cell: string; key: string; size: string | null }): string {
  return `${position.cell} ${position.key} ${position.size ?? ''}`;
}
