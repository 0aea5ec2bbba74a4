import { wrap, type Endpoint, type Remote } from 'comlink';
import { changesBetween, type Changes } from '../notebook/changes';
import { allCells, type Cell, type Notebook } from '../notebook/document';
import { inputsOf, outputsOf } from '../notebook/kinds';
import type { Answer, Checked, Place } from './answers';
import { Patience } from './patience';
import { comingBack, didNotStart, gaveUp, tookTooLong } from './sentences';
import type { ServedSheet } from './serve';

/** A thread that serves a sheet: a `Worker`, or what does as much. */
export type SheetThread = Endpoint & { terminate(): void };

/** What the client tells. */
export interface Told {
  answer(answer: Answer): void;
  /** Cells were set aside because their formulas took too long, and a sentence on it. */
  held(cells: readonly string[], sentence: string): void;
  /** The sheet does not start, or has broken down for good. */
  failed?(sentence: string): void;
}

interface Question {
  readonly formula: string;
  readonly place: Place;
  answered(checked: Checked): void;
  dropped(error: Error): void;
}

/** Work under way in a thread beside its updates. */
export interface BesideWork {
  readonly done: Promise<unknown>;
  /** Hears every message of the thread that is not a reply. */
  sign?(data: unknown): void;
  /** The thread was ended before the work was done. */
  ended?(why: 'stopped' | 'took too long'): void;
}

/** What work beside the updates can rely on: what is shown has been worked. */
export interface BesideState {
  readonly sheet: Remote<ServedSheet>;
  readonly notebook: Notebook;
  /** Whether a cell hung, as it is, and is set aside. */
  isHeld(cell: Cell): boolean;
}

/** A lane of a thread for work beside its updates. */
export interface BesideLane {
  /** Where the work comes from: one at a time, those that come first going first. */
  readonly besides: BesideSource[];
  /** Looks again for what is due: a source of work has some now. */
  wake(): void;
  readonly working: boolean;
}

/** Begins the next of its work, if it has any. */
export type BesideSource = (state: BesideState) => BesideWork | undefined;

/** A thread with what it has been told. */
interface Running {
  readonly thread: SheetThread;
  readonly sheet: Remote<ServedSheet>;
  readonly patience: Patience;
  ready: boolean;
  /** The notebook it holds; null where it holds none yet. */
  shown: Notebook | null;
  /** The cells it is told at the moment; null where no one cell is to blame for what happens. */
  told: readonly Cell[] | null;
  /** Cells it has been sent in the midst of other work, and has not said yet that it took up. */
  sent: readonly Cell[] | null;
}

/** Threads that may hang one after another, without an answer between them, before no more are started. */
const mostInARow = 4;

/**
 * The page's end of a sheet in a thread of its own.
 *
 * One update is under way at a time; of the notebooks shown meanwhile only the newest is worked next. A thread that
 * gives no sign of life for two seconds is stopped, and another started in which what was changed last is set aside.
 * Should that not help, or a notebook do it on opening, every formula is set aside and they come back one by one,
 * except those that hang. A cell set aside is tried again when it is changed.
 */
export class SheetClient implements BesideLane {
  readonly #start: () => SheetThread;
  readonly #on: Told;
  readonly #limit: number;
  #running: Running | undefined;
  #newest: Notebook | undefined;
  #busy = false;
  #hangsInARow = 0;
  #questions: Question[] = [];
  #beside: BesideWork | undefined;
  readonly besides: BesideSource[] = [];
  /** Cells that hung, as they were when they did. */
  readonly #hung = new Map<string, Cell>();
  /** Ids of cells whose formulas have yet to come back, in order. */
  #waiting: string[] = [];

  /** @param limit milliseconds without a sign of life */
  constructor(start: () => SheetThread, on: Told, limit = 2000) {
    this.#start = start;
    this.#on = on;
    this.#limit = limit;
    this.#begin();
  }

  /** Has the sheet follow a notebook. */
  show(notebook: Notebook): void {
    this.#newest = notebook;
    this.#next();
  }

  /**
   * What a formula would be, were it put in a place of the notebook shown last.
   *
   * @throws Error where the sheet does not work, or is stopped meanwhile
   */
  check(formula: string, place: Place): Promise<Checked> {
    if (!this.#running) return Promise.reject(new Error('The sheet is not working.'));
    return new Promise((answered, dropped) => {
      this.#questions.push({ formula, place, answered, dropped });
      this.#next();
    });
  }

  wake(): void {
    this.#next();
  }

  get working(): boolean {
    return this.#running !== undefined;
  }

  /** Whether all that was shown has been worked. */
  get settled(): boolean {
    return !this.#busy && this.#waiting.length === 0 && this.#running?.shown === this.#newest;
  }

  /** Ends the thread. */
  stop(): void {
    this.#end('The sheet was closed.', 'stopped');
  }

  #begin(): void {
    const thread = this.#start();
    const running: Running = {
      thread,
      sheet: wrap<ServedSheet>(thread),
      patience: new Patience(this.#limit, () => this.#hangs(running)),
      ready: false,
      shown: null,
      told: null,
      sent: null,
    };
    this.#running = running;
    thread.addEventListener('message', (event) => {
      running.patience.sign();
      const { data } = event as MessageEvent<unknown>;
      if (data === 'updating') running.told = running.sent;
      else this.#beside?.sign?.(data);
      if (data !== 'ready') return;
      running.ready = true;
      this.#next();
    });
    thread.addEventListener('error', () => {
      if (this.#running !== running || running.ready) return;
      this.#end(didNotStart);
      this.#on.failed?.(didNotStart);
    });
    thread.start?.();
  }

  #end(why: string, ended: 'stopped' | 'took too long' = 'took too long'): void {
    this.#running?.patience.end();
    this.#running?.thread.terminate();
    this.#running = undefined;
    this.#busy = false;
    for (const question of this.#questions.splice(0)) question.dropped(new Error(why));
    const beside = this.#beside;
    this.#beside = undefined;
    beside?.ended?.(ended);
  }

  /** Whatever is due: the newest notebook, questions about it, formulas to bring back, and at last what goes on beside. */
  #next(): void {
    const running = this.#running;
    if (!running?.ready || this.#busy || !this.#newest) return;
    if (running.shown !== this.#newest) this.#follow(running, this.#newest);
    else if (this.#questions.length > 0) this.#ask(running, this.#questions[0]!);
    else if (this.#waiting.length > 0) this.#bringBack(running, this.#newest);
    else this.#workBeside(running, this.#newest);
  }

  #follow(running: Running, newest: Notebook): void {
    // On opening the first size is worked before the others, so that there is something to read.
    const opens = !running.shown && newest.sizes.length > 1;
    const notebook = opens ? { ...newest, sizes: newest.sizes.slice(0, 1) } : newest;
    const changes = changesBetween(running.shown, notebook);
    if (running.shown) {
      const put = new Set(changes.put.map((cell) => cell.id));
      this.#waiting = this.#waiting.filter((id) => !put.has(id));
    }
    this.#work(running, changes, running.shown && changes.put.length > 0 ? changes.put : null);
    running.shown = notebook;
  }

  #bringBack(running: Running, notebook: Notebook): void {
    const id = this.#waiting.shift();
    const cell = allCells(notebook).find((candidate) => candidate.id === id);
    if (cell) this.#work(running, { put: [cell], drop: [] }, [cell]);
    else this.#next();
  }

  #work(running: Running, changes: Changes, told: readonly Cell[] | null): void {
    const waiting = new Set(this.#waiting);
    const hold = changes.put.filter((cell) => waiting.has(cell.id) || this.#hung.get(cell.id) === cell);
    // A thread that hangs before it takes this up hangs by what goes on beside.
    running.sent = told;
    running.told = this.#beside ? [] : told;
    this.#call(
      running,
      () =>
        running.sheet.update(
          changes,
          hold.map((cell) => cell.id),
        ),
      (answer) => {
        this.#hangsInARow = 0;
        this.#on.answer(answer);
      },
    );
  }

  #ask(running: Running, question: Question): void {
    running.told = [];
    this.#call(
      running,
      () => running.sheet.check(question.formula, question.place) as Promise<Checked>,
      (checked) => {
        this.#questions = this.#questions.filter((other) => other !== question);
        question.answered(checked);
      },
    );
  }

  /** One call at a time; what a thread that was stopped meanwhile still has to say is not listened to. */
  #call<Reply>(running: Running, call: () => Promise<Reply>, take: (reply: Reply) => void): void {
    this.#busy = true;
    running.patience.begin();
    call().then(
      (reply) => {
        if (this.#running !== running) return;
        running.patience.end();
        this.#busy = false;
        if (this.#beside) this.#awaitBeside(running);
        take(reply);
        this.#next();
      },
      () => this.#hangs(running),
    );
  }

  #workBeside(running: Running, notebook: Notebook): void {
    if (this.#beside) return;
    const state = {
      sheet: running.sheet,
      notebook,
      isHeld: (cell: Cell) => this.#hung.get(cell.id) === cell,
    };
    for (const source of this.besides) {
      const work = source(state);
      if (!work) continue;
      this.#beside = work;
      this.#awaitBeside(running);
      const done = (): void => {
        if (this.#beside !== work) return;
        this.#beside = undefined;
        if (!this.#busy) running.patience.end();
        this.#next();
      };
      work.done.then(done, done);
      return;
    }
  }

  #awaitBeside(running: Running): void {
    // No cell of the notebook is to blame for it.
    running.told = [];
    running.patience.begin();
  }

  /** A thread that gave no sign of life, or broke down. */
  #hangs(running: Running): void {
    if (this.#running !== running) return;
    const { told } = running;
    this.#end('The sheet took too long and was stopped.');
    if (++this.#hangsInARow > mostInARow) {
      this.#on.failed?.(gaveUp);
      return;
    }
    if (told === null) {
      const cells = this.#newest ? allCells(this.#newest) : [];
      this.#waiting = cells
        .filter((cell) => hasFormula(cell) && this.#hung.get(cell.id) !== cell)
        .map((cell) => cell.id);
      this.#on.held([...this.#waiting], comingBack);
    } else if (told.length > 0) {
      for (const cell of told) this.#hung.set(cell.id, cell);
      this.#on.held(
        told.map((cell) => cell.id),
        tookTooLong(told.map((cell) => cell.label)),
      );
    }
    this.#begin();
  }
}

function hasFormula(cell: Cell): boolean {
  return outputsOf(cell).length > 0 || inputsOf(cell).some(({ entry }) => 'formula' in entry);
}
