import { wrap, type Endpoint, type Remote } from 'comlink';
import { changesBetween, type Changes } from '../notebook/changes';
import { allCells, type Cell, type Notebook } from '../notebook/document';
import { inputsOf, outputsOf } from '../notebook/kinds';
import type { Answer, Checked, Place } from './answers';
import { Patience } from './patience';
import { comingBack, didNotStart, gaveUp, tookTooLong } from './sentences';
import type { ServedSheet, TrialsSign } from './serve';
import { noTrialResults, type TrialResults, type TrialsAsked, type TrialsWatch } from './trial-results';

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

interface TrialsWaiting {
  readonly number: number;
  readonly asked: TrialsAsked;
  readonly watch: TrialsWatch;
  answered(results: TrialResults): void;
  dropped(error: Error): void;
}

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
  /** Cells it has been sent in the midst of trials, and has not said yet that it took up. */
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
export class SheetClient {
  readonly #start: () => SheetThread;
  readonly #on: Told;
  readonly #limit: number;
  #running: Running | undefined;
  #newest: Notebook | undefined;
  #busy = false;
  #hangsInARow = 0;
  #questions: Question[] = [];
  #trials: TrialsWaiting[] = [];
  #trialsUnderWay: TrialsWaiting | undefined;
  #lastTrials = 0;
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

  /**
   * Works trials of the notebook shown last, once that is worked itself; what is shown meanwhile goes before them, and
   * ends them.
   */
  trials(asked: TrialsAsked, watch: TrialsWatch = {}): Promise<TrialResults> {
    if (!this.#running || watch.signal?.aborted) return Promise.resolve(noTrialResults(asked, 'stopped'));
    return new Promise((answered, dropped) => {
      const trials = { number: ++this.#lastTrials, asked, watch, answered, dropped };
      this.#trials.push(trials);
      watch.signal?.addEventListener('abort', () => this.#stopTrials(trials), { once: true });
      this.#next();
    });
  }

  /** Whether all that was shown has been worked. */
  get settled(): boolean {
    return !this.#busy && this.#waiting.length === 0 && this.#running?.shown === this.#newest;
  }

  /** Ends the thread. */
  stop(): void {
    this.#end('The sheet was closed.', 'stopped');
    for (const { asked, answered } of this.#trials.splice(0)) answered(noTrialResults(asked, 'stopped'));
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
      else if (isTrialsSign(data)) this.#trialsSign(data);
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

  #end(why: string, ended: NonNullable<TrialResults['ended']> = 'took too long'): void {
    this.#running?.patience.end();
    this.#running?.thread.terminate();
    this.#running = undefined;
    this.#busy = false;
    for (const question of this.#questions.splice(0)) question.dropped(new Error(why));
    const underWay = this.#trialsUnderWay;
    this.#trialsUnderWay = undefined;
    underWay?.answered(noTrialResults(underWay.asked, ended));
  }

  /** Whatever is due: the newest notebook, questions about it, formulas to bring back, and at last trials. */
  #next(): void {
    const running = this.#running;
    if (!running?.ready || this.#busy || !this.#newest) return;
    if (running.shown !== this.#newest) this.#follow(running, this.#newest);
    else if (this.#questions.length > 0) this.#ask(running, this.#questions[0]!);
    else if (this.#waiting.length > 0) this.#bringBack(running, this.#newest);
    else this.#beginTrials(running);
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
    // A thread that hangs before it takes this up hangs by a trial.
    running.sent = told;
    running.told = this.#trialsUnderWay ? [] : told;
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
        if (this.#trialsUnderWay) this.#awaitTrials(running);
        take(reply);
        this.#next();
      },
      () => this.#hangs(running),
    );
  }

  /** Trials are under way beside the calls; only one lot at a time. */
  #beginTrials(running: Running): void {
    const trials = this.#trialsUnderWay ? undefined : this.#trials.shift();
    if (!trials) return;
    this.#trialsUnderWay = trials;
    this.#awaitTrials(running);
    (running.sheet.trials(trials.number, trials.asked) as Promise<TrialResults>).then(
      (results) => {
        if (this.#trialsUnderWay !== trials) return;
        this.#trialsUnderWay = undefined;
        if (!this.#busy) running.patience.end();
        trials.answered(results);
        this.#next();
      },
      (error: unknown) => {
        if (this.#trialsUnderWay !== trials) return;
        this.#trialsUnderWay = undefined;
        if (!this.#busy) running.patience.end();
        trials.dropped(error as Error);
        this.#next();
      },
    );
  }

  #awaitTrials(running: Running): void {
    // No cell of the notebook is to blame for a trial.
    running.told = [];
    running.patience.begin();
  }

  #trialsSign({ trials, done }: TrialsSign): void {
    const underWay = this.#trialsUnderWay;
    if (underWay?.number === trials) underWay.watch.progress?.(done, underWay.asked.trials.length);
  }

  #stopTrials(trials: TrialsWaiting): void {
    if (this.#trialsUnderWay === trials) {
      void this.#running?.sheet.stopTrials(trials.number);
      return;
    }
    if (!this.#trials.includes(trials)) return;
    this.#trials = this.#trials.filter((other) => other !== trials);
    trials.answered(noTrialResults(trials.asked, 'stopped'));
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

function isTrialsSign(data: unknown): data is TrialsSign {
  return typeof data === 'object' && data !== null && 'trials' in data && 'done' in data;
}

function hasFormula(cell: Cell): boolean {
  return outputsOf(cell).length > 0 || inputsOf(cell).some(({ entry }) => 'formula' in entry);
}
