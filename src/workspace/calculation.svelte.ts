import { allCells, type Notebook } from '../notebook';
import { Results, type Answer, type CellRef, type Checked, type Move, type WorkTrials } from '../engine';
import type { WhatIfEvents } from '../worker';
import type { Announcements } from './announcements.svelte';
import type { CellSignals } from './cell-signals.svelte';
import type { GridPosition } from './selection.svelte';
import { UpdateScheduler } from './update-scheduler.svelte';

/** The engine as the workspace needs it: it follows the notebook, and tries a formula without keeping it. */
export interface Follower {
  show(notebook: Notebook): void;
  check(formula: string, at: CellRef): Promise<Checked>;
  /** Works the notebook shown last with some changes, many times over. */
  readonly trials: WorkTrials;
  /** Works the what-ifs that are on, after the notebook itself and after every edit of it; returns what ends it. */
  followWhatIfs(events: WhatIfEvents): Promise<() => void>;
  /** Whether all that was shown has been worked. */
  readonly settled: boolean;
}

/** How long a result is marked as moved, in milliseconds. */
const markedFor = 2600;

/** The results of the notebook: has it worked after every change, takes in the answers, and marks what moved. */
export class Calculation {
  /** All results as they are now, for what reads many at a time and knows itself when to read again. */
  readonly results = new Results();
  /** Whether every size has been worked once. */
  worked = $state(false);
  #working = $state(true);
  #notebook: Notebook;
  #moved = new Map<string, Move>();
  #settling: ReturnType<typeof setTimeout> | undefined;
  /** Whether what moves is marked and announced. */
  #watching = false;
  #summary = '';
  readonly #signals: CellSignals;
  readonly #updates: UpdateScheduler;
  readonly #announcements: Announcements;
  readonly #follower: Follower;

  /** Nothing is worked before the first `show`. */
  constructor(notebook: Notebook, signals: CellSignals, announcements: Announcements, follower: Follower) {
    this.#notebook = notebook;
    this.#signals = signals;
    this.#updates = new UpdateScheduler(signals);
    this.#announcements = announcements;
    this.#follower = follower;
  }

  /** Whether results are still being worked, or shown. */
  get busy(): boolean {
    return this.#working || this.#updates.behind;
  }

  /** The cells that are far out of sight, whose results can wait until those in sight are painted. */
  get outOfSight(): Set<string> {
    return this.#updates.outOfSight;
  }

  /** Results of a cell; reading them makes a component follow that cell and no other. */
  of(cell: string): Results {
    void this.#signals.at(cell).results;
    return this.results;
  }

  /** How a result moved with the last edit, for as long as that is shown. */
  moved(position: GridPosition): Move | undefined {
    void this.#signals.at(position.cell).results;
    return this.#moved.get(positionKey(position));
  }

  /** Has a notebook worked. */
  show(notebook: Notebook): void {
    if (notebook !== this.#notebook) this.#working = true;
    this.#notebook = notebook;
    this.#summary = '';
    // Outside any derivation, since one that makes the source it reads would never follow it.
    for (const { id } of allCells(notebook)) this.#signals.at(id);
    this.#follower.show(notebook);
  }

  /** Announces and marks nothing until the notebook has been worked whole: what is new has not changed. */
  pauseSummaries(): void {
    this.#watching = false;
  }

  /** Takes in what the engine worked out. */
  applyAnswer(answer: Answer): void {
    const moved = new Map<string, Move>();
    const watching = this.#watching;
    const changed = this.results.apply(answer, (move) => {
      if (watching) moved.set(positionKey(move), move);
    });
    const touched = new Set(changed.map(({ cell }) => cell));
    this.#mark(moved, touched);
    this.#updates.schedule(touched);
    if (watching) this.#summarize(moved.size > 0 ? [...moved.values()] : this.#withNumbers(changed));
    this.#working = !this.#follower.settled;
    // On opening, one size arrives before the others: what comes with them has not changed either.
    this.worked ||= !this.#working;
    this.#watching ||= !this.#working;
  }

  /** What an edit changed, in a sentence; set once the words are fetched, which is before the first results. */
  summaryOf: (notebook: Notebook, changed: readonly { cell: string }[]) => string = () => '';

  /** Announces what an edit changed, once, even if it is worked out in parts. */
  #summarize(changed: readonly { cell: string }[]): void {
    const sentence = this.summaryOf(this.#notebook, changed);
    if (sentence && sentence !== this.#summary) this.#announcements.announce((this.#summary = sentence));
  }

  /** Where nothing moved, there may be numbers now where there were none. */
  #withNumbers(changed: readonly CellRef[]): readonly CellRef[] {
    return changed.filter(({ cell, key }) =>
      this.#notebook.sizes.some(({ id }) => this.results.number(id, cell, key) !== undefined),
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

  /** What a stored formula would give in a cell, without keeping it. Rejects where the engine cannot be reached. */
  async check(formula: string, at: CellRef): Promise<Checked<string>> {
    const checked = await this.#follower.check(formula, at);
    if (!('problem' in checked)) return checked;
    return { problem: this.results.messageFor(checked.problem, at.cell) };
  }

  /** Works the notebook with some changes, many times over, without making them. */
  readonly trials: WorkTrials = (...given) => this.#follower.trials(...given);

  followWhatIfs(events: WhatIfEvents): Promise<() => void> {
    return this.#follower.followWhatIfs(events);
  }
}

function positionKey({ cell, key, size }: GridPosition): string {
  return `${cell} ${key} ${size ?? ''}`;
}
