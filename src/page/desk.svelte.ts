import { SvelteSet } from 'svelte/reactivity';
import {
  advance,
  apply,
  begin,
  cellById,
  describe,
  downstream,
  readFile,
  readFormula,
  redo,
  storedFormula,
  undo,
  writeFile,
  allCells,
  type Cell,
  type Edit,
  type History,
  type Notebook,
  type PieceCell,
} from '../notebook';
import { Results, type Answer, type Checked, type Move, type Place } from '../sheet';
import { summaryOf } from './summary';

/** What the desk asks of the sheet: to follow the notebook, and to try a formula without keeping it. */
export interface Follower {
  show(notebook: Notebook): void;
  check(formula: string, place: Place): Promise<Checked>;
  /** Whether all that was shown has been worked. */
  readonly settled: boolean;
}

/** Where a person is on the leaf. `size` is null where one place stands for all sizes. */
export interface Spot extends Place {
  readonly size: string | null;
}

class Version {
  number = $state(0);
}

const markedFor = 2600;
const largestFile = 10e6;

/**
 * The state of the page: the notebook and its history, the results as they arrive, and where the person is.
 * Components show it and send it edits; nothing else changes it.
 */
export class Desk {
  #history: History = $state.raw(begin(nothing));
  readonly notebook: Notebook = $derived(this.#history.now);
  readonly undoes = $derived(this.#history.past.at(-1)?.what);
  readonly redoes = $derived(this.#history.future.at(-1)?.what);

  /** Where the focus is, or was last. */
  spot: Spot | null = $state.raw(null);
  /** The place that is being edited, and the text its editor begins with. */
  editing: (Spot & { what: 'value' | 'formula' | 'label'; begin?: string }) | null = $state.raw(null);
  /** What the last thing done led to, in a sentence, for a screen reader and the foot of the page. */
  said = $state('');
  /** A sentence about something that went wrong and is not on any cell. */
  complaint: string | null = $state(null);
  /** Whether the first results have arrived. */
  worked = $state(false);
  busy = $state(false);

  readonly #results = new Results();
  readonly #versions = new Map<string, Version>();
  #moved = new Map<string, Move>();
  #settling: ReturnType<typeof setTimeout> | undefined;
  #watch = false;
  readonly #follower: Follower;

  constructor(notebook: Notebook, follower: (desk: Desk) => Follower) {
    this.#follower = follower(this);
    this.#become(begin(notebook));
  }

  /** Makes an edit. Gives back why not, where it cannot be made; then nothing has changed. */
  do(edit: Edit): string | undefined {
    const applied = apply(this.notebook, edit);
    if ('refused' in applied) return applied.refused;
    this.#become(advance(this.#history, applied.notebook, describe(this.notebook, edit)));
    return undefined;
  }

  undo(): void {
    const what = this.undoes;
    if (!what) return;
    this.#become(undo(this.#history));
    this.said = `Undid ${what}.`;
  }

  redo(): void {
    const what = this.redoes;
    if (!what) return;
    this.#become(redo(this.#history));
    this.said = `Redid ${what}.`;
  }

  /** Puts another notebook on the desk; undo brings back the one that was there. */
  begin(notebook: Notebook): void {
    this.#turnTo(notebook, `beginning ${notebook.title}`);
    this.said = `${notebook.title} is on the desk.`;
  }

  /** Opens a file that a person picked or dropped; what was on the desk stays where the file is refused. */
  async openPicked(file: File): Promise<void> {
    if (file.size > largestFile) {
      this.complaint = `${file.name}: this file is larger than any notebook (${Math.round(file.size / 1e6)} MB), so it was not opened.`;
      return;
    }
    const read = readFile(await file.text());
    if ('problem' in read) {
      this.complaint = `${file.name}: ${read.problem}`;
      return;
    }
    this.#turnTo(read.notebook, `opening ${file.name}`);
    this.said = `Opened ${file.name}.`;
  }

  #turnTo(notebook: Notebook, what: string): void {
    this.editing = null;
    this.spot = null;
    this.complaint = null;
    this.#watch = false;
    this.#become(advance(this.#history, notebook, what));
  }

  file(): string {
    return writeFile(this.notebook);
  }

  /** Puts a formula, as typed, in an input; gives back why not. */
  async enterFormula(cell: string, key: string, typed: string): Promise<string | undefined> {
    const tried = await this.#tried(typed, { cell, key });
    if ('problem' in tried) return tried.problem;
    return this.do({ do: 'enter', cell, key, entry: { formula: tried.formula } });
  }

  /** Puts a formula, as typed, in place of an output's own; nothing typed gives its own back. */
  async takeOver(cell: string, key: string, typed: string): Promise<string | undefined> {
    if (/^\s*=?\s*$/.test(typed)) return this.do({ do: 'take over', cell, key, formula: null });
    const tried = await this.#tried(typed, { cell, key });
    if ('problem' in tried) return tried.problem;
    return this.do({ do: 'take over', cell, key, formula: tried.formula });
  }

  /** What a formula, as typed, would give in a place, without keeping it. */
  async tryFormula(typed: string, place: Place): Promise<Checked> {
    const read = readFormula(typed, this.notebook.settings.decimal);
    if ('problem' in read) return read;
    try {
      return await this.#follower.check(storedFormula(read.tokens), place);
    } catch {
      return { problem: 'This formula took too long to try.' };
    }
  }

  /** A typed formula as it is stored, once it has been read whole and its unit found right. */
  async #tried(typed: string, place: Place): Promise<{ formula: string } | { problem: string }> {
    const read = readFormula(typed, this.notebook.settings.decimal);
    if ('problem' in read) return read;
    const tried = await this.tryFormula(typed, place);
    return 'problem' in tried ? tried : { formula: storedFormula(read.tokens) };
  }

  #become(history: History): void {
    if (history.now !== this.#history.now) this.busy = true;
    this.#history = history;
    this.#follower.show(history.now);
  }

  /** Takes in what the sheet worked out. */
  take(answer: Answer): void {
    const moved = new Map<string, Move>();
    const watching = this.#watch;
    const changed = this.#results.apply(answer, (move) => {
      if (watching) moved.set(spotKey(move), move);
    });
    const touched = new Set(changed.map((place) => place.cell));
    this.#mark(moved, touched);
    for (const cell of touched) this.#version(cell).number++;
    if (moved.size > 0) this.said = summaryOf(this.notebook, [...moved.values()]);
    this.worked = true;
    this.busy = !this.#follower.settled;
    this.#watch = true;
  }

  #mark(moved: Map<string, Move>, touched: Set<string>): void {
    for (const key of this.#moved.keys()) touched.add(key.slice(0, key.indexOf(' ')));
    this.#moved = moved;
    clearTimeout(this.#settling);
    if (moved.size === 0) return;
    this.#settling = setTimeout(() => {
      const settled = new Set([...this.#moved.keys()].map((key) => key.slice(0, key.indexOf(' '))));
      this.#moved = new Map();
      for (const cell of settled) this.#version(cell).number++;
    }, markedFor);
  }

  #version(cell: string): Version {
    let version = this.#versions.get(cell);
    if (!version) this.#versions.set(cell, (version = new Version()));
    return version;
  }

  /** Results of a cell; reading them makes a component follow that cell and no other. */
  results(cell: string): Results {
    void this.#version(cell).number;
    return this.#results;
  }

  /** How a result moved with the last edit, for as long as that is shown. */
  moved(spot: Spot): Move | undefined {
    void this.#version(spot.cell).number;
    return this.#moved.get(spotKey(spot));
  }

  /** The piece to draw: the one in focus, else the first that the cell in focus feeds, else one that tapers. */
  readonly pieceAtHand: PieceCell | undefined = $derived.by(() => {
    const pieces = allCells(this.notebook).filter((cell): cell is PieceCell => cell.kind === 'piece');
    if (this.spot) {
      const reached = [this.spot.cell, ...downstream(this.notebook, this.spot.cell)];
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

  cell(id: string): Cell | undefined {
    return cellById(this.notebook, id);
  }
}

const nothing: Notebook = {
  title: '',
  settings: { length: 'cm', gaugeOver: '10 cm', decimal: '.' },
  sizes: [{ id: 'one', label: 'One size' }],
  sections: [],
};

function spotKey(spot: { cell: string; key: string; size: string | null }): string {
  return `${spot.cell} ${spot.key} ${spot.size ?? ''}`;
}
