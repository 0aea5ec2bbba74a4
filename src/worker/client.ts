import {
  changesBetween,
  type Changes,
  allCells,
  type Cell,
  type Notebook,
  inputsOf,
  outputsOf,
} from '../notebook';
import {
  type Answer,
  type Checked,
  type CellRef,
  brokeDown,
  comingBack,
  didNotStart,
  notWorking,
  tookTooLong,
  tookTooLongToTry,
} from '../engine';
import type { BackgroundQueue, JobSource, BackgroundJob, EndedBecause } from './background-queue';
import { Running, type SheetThread } from './thread';

/** Starts a thread that serves a sheet. */
export const startThread = (): SheetThread =>
  new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });

/** What the client tells. */
export interface SheetEvents {
  answer(answer: Answer): void;
  /** Cells are left out because their formulas take too long, and a sentence on it. */
  quarantined(cells: readonly string[], sentence: string): void;
  /** All formulas are left out and come back one by one, since one of them takes too long: which, is yet to be found. */
  comingBack?(sentence: string): void;
  /** The thread does not start, or broke down again and again; it is tried again with the next notebook shown. */
  failed?(sentence: string): void;
  /** Whoever takes an answer failed at it. */
  threw?(error: unknown): void;
}

interface Question {
  readonly formula: string;
  readonly ref: CellRef;
  answered(checked: Checked): void;
  dropped(error: Error): void;
}

/** A thread that does the same work beside one that has gone silent, without what that one may hang on. */
interface Standby {
  readonly running: Running;
  /** The cells that are left out; null where every formula is. */
  readonly without: readonly Cell[] | null;
  /** What was silent before and has said nothing since is beyond doubt once this one is done. */
  verdict?: ReturnType<typeof setTimeout>;
}

/** Threads that may break down one after another before no more are started. */
const mostFaults = 3;

/**
 * The page's end of a sheet in a thread of its own.
 *
 * One update is under way at a time; of the notebooks shown meanwhile only the newest is worked next.
 *
 * A thread that beats no more may hang on a formula, or may not get to run: no clock of the page tells which. So a
 * second thread, the standby, is started and given the whole notebook without what the first was told last. On a busy
 * machine both are slow alike, and the first, which is ahead, beats again: the standby is ended and nobody hears of it.
 * Where the standby has loaded, built and calculated everything while the first has not come to its next cell, that
 * cell hangs: the standby takes over, and what was changed last is left out until it is changed again. Should the
 * standby go silent too, or the notebook have hung on opening, a standby without any formula is the measure, and the
 * formulas come back one by one.
 *
 * A thread that breaks down is no slow one: another is started with nothing left out.
 */
export class SheetClient implements BackgroundQueue {
  readonly #start: () => SheetThread;
  readonly #on: SheetEvents;
  readonly #limit: number;
  #running: Running | undefined;
  #newest: Notebook | undefined;
  #busy = false;
  #closed = false;
  #standby: Standby | undefined;
  /** Threads that broke down since everything was last worked. */
  #faults = 0;
  #questions: Question[] = [];
  #pending: Question | undefined;
  #background: BackgroundJob | undefined;
  readonly jobs: JobSource[] = [];
  /** Cells that hung, as they were when they did. */
  readonly #hung = new Map<string, Cell>();
  /** Ids of cells whose formulas have yet to come back, in order. */
  #waiting: string[] = [];

  /** @param limit milliseconds without a beat before a standby is started */
  constructor(start: () => SheetThread, on: SheetEvents, limit = 2000) {
    this.#start = start;
    this.#on = on;
    this.#limit = limit;
    this.#running = this.#begin();
  }

  /** Has the sheet follow a notebook. */
  show(notebook: Notebook): void {
    this.#newest = notebook;
    if (!this.#running && !this.#closed) {
      this.#faults = 0;
      this.#running = this.#begin();
    }
    this.#next();
  }

  /**
   * What a formula would be, were it put in a place of the notebook shown last.
   *
   * @throws Error with a sentence, where the formula takes too long or the sheet does not work
   */
  check(formula: string, ref: CellRef): Promise<Checked> {
    if (!this.#running) return Promise.reject(new Error(notWorking));
    return new Promise((answered, dropped) => {
      this.#questions.push({ formula, ref, answered, dropped });
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
    this.#closed = true;
    this.#end('stopped');
    this.#dropQuestions(notWorking);
  }

  #begin(): Running {
    return new Running(this.#start(), this.#limit, {
      message: (running, data) => this.#hear(running, data),
      silent: (running) => this.#silent(running),
      broke: (running, message) => this.#broke(running, message),
    });
  }

  #hear(running: Running, data: unknown): void {
    if (running === this.#running) {
      if (this.#standby) {
        this.#dismissStandby();
        if (this.#busy || this.#background) running.watchdog.begin();
      }
      if (data === 'updating') running.updating = running.sent;
      else this.#background?.sign?.(data);
    }
    if (data !== 'ready') return;
    if (running === this.#running) this.#next();
    else if (running === this.#standby?.running) this.#workStandby(this.#standby);
  }

  /** Ends the thread; what it was asked meanwhile gets no answer of it. */
  #end(why: EndedBecause, sentence = notWorking): void {
    this.#dismissStandby();
    this.#running?.end();
    this.#running = undefined;
    this.#busy = false;
    const question = this.#pending;
    if (question) {
      this.#answered(question);
      question.dropped(new Error(sentence));
    }
    const job = this.#background;
    this.#background = undefined;
    job?.ended?.(why);
  }

  #dropQuestions(sentence: string): void {
    for (const question of this.#questions.splice(0)) question.dropped(new Error(sentence));
  }

  /** Whatever is due: the newest notebook, questions about it, formulas to bring back, and at last what goes on beside. */
  #next(): void {
    const running = this.#running;
    if (!running?.ready || this.#busy || !this.#newest) return;
    if (running.shown !== this.#newest) this.#follow(running, this.#newest);
    else if (this.#questions.length > 0) this.#ask(running, this.#questions[0]!);
    else if (this.#waiting.length > 0) this.#bringBack(running, this.#newest);
    else this.#workInBackground(running, this.#newest);
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

  #work(running: Running, changes: Changes, updating: readonly Cell[] | null): void {
    const waiting = new Set(this.#waiting);
    const hold = changes.put.filter((cell) => waiting.has(cell.id) || this.#hung.get(cell.id) === cell);
    // A thread that hangs before it takes this up hangs by what goes on beside.
    running.sent = updating;
    running.updating = this.#background ? [] : updating;
    this.#call(
      running,
      () =>
        running.sheet.update(
          changes,
          hold.map((cell) => cell.id),
          [...waiting],
        ),
      (answer) => {
        if (this.settled) this.#faults = 0;
        this.#on.answer(answer);
      },
    );
  }

  #ask(running: Running, question: Question): void {
    running.updating = [];
    this.#pending = question;
    this.#call(
      running,
      () =>
        (running.sheet.check(question.formula, question.ref) as Promise<Checked>).then(
          (checked) => () => question.answered(checked),
          // It only reads: the thread is as it was.
          (error: unknown) => () => question.dropped(new Error(brokeDown(messageOf(error)))),
        ),
      (answer) => {
        this.#answered(question);
        answer();
      },
    );
  }

  #answered(question: Question): void {
    this.#pending = undefined;
    this.#questions = this.#questions.filter((other) => other !== question);
  }

  /** One call at a time; what a thread that was stopped meanwhile still has to say is not listened to. */
  #call<Reply>(running: Running, call: () => Promise<Reply>, accept: (reply: Reply) => void): void {
    this.#busy = true;
    running.watchdog.begin();
    call().then(
      (reply) => {
        if (this.#running !== running) return;
        running.watchdog.end();
        this.#busy = false;
        if (this.#background) this.#awaitBackground(running);
        this.#hand(() => accept(reply));
      },
      (error: unknown) => this.#broke(running, messageOf(error)),
    );
  }

  #workInBackground(running: Running, notebook: Notebook): void {
    if (this.#background) return;
    const state = {
      sheet: running.sheet,
      notebook,
      isQuarantined: (cell: Cell) => this.#hung.get(cell.id) === cell,
    };
    for (const source of this.jobs) {
      const work = source(state);
      if (!work) continue;
      this.#background = work;
      this.#awaitBackground(running);
      const done = (): void => {
        if (this.#background !== work) return;
        this.#background = undefined;
        if (!this.#busy) running.watchdog.end();
        this.#next();
      };
      work.done.then(done, done);
      return;
    }
  }

  #awaitBackground(running: Running): void {
    // No cell of the notebook is to blame for it.
    running.updating = [];
    running.watchdog.begin();
  }

  /** A thread has not beaten for a while. */
  #silent(running: Running): void {
    const standby = this.#standby;
    if (running === this.#running) {
      // On opening, every formula is told at once: none of them is the one to leave out.
      this.#standBy(running.updating);
    } else if (running === standby?.running && standby.without !== null) {
      this.#dismissStandby();
      this.#standBy(null);
    }
  }

  #standBy(without: readonly Cell[] | null): void {
    this.#standby = { running: this.#begin(), without };
  }

  #dismissStandby(): void {
    const standby = this.#standby;
    this.#standby = undefined;
    clearTimeout(standby?.verdict);
    standby?.running.end();
  }

  #workStandby(standby: Standby): void {
    const { running, without } = standby;
    const notebook = this.#newest!;
    const cells = allCells(notebook);
    const later = new Set(without === null ? this.#formulasOf(notebook) : this.#waiting);
    const left = new Set(without?.map((cell) => cell.id));
    const hold = cells.filter(
      (cell) => left.has(cell.id) || later.has(cell.id) || this.#hung.get(cell.id) === cell,
    );
    const changes = changesBetween(null, notebook);
    running.shown = notebook;
    running.watchdog.begin();
    const ids = hold.map((cell) => cell.id);
    const answered = running.sheet.update(changes, ids, [...later]) as Promise<Answer>;
    answered.then(
      (answer) => {
        running.watchdog.end();
        if (this.#standby !== standby) return;
        // A beat of the other may have been on its way here all the time.
        standby.verdict = setTimeout(() => this.#takeOver(standby, answer), this.#limit / 8);
      },
      (error: unknown) => this.#broke(running, messageOf(error)),
    );
  }

  /** The standby is done before the other has come to its next cell: that one hangs. */
  #takeOver({ running, without }: Standby, answer: Answer): void {
    this.#standby = undefined;
    this.#end('took too long', tookTooLongToTry);
    this.#running = running;
    const notebook = running.shown!;
    if (without === null) {
      this.#waiting = this.#formulasOf(notebook);
      this.#on.comingBack?.(comingBack);
    }
    for (const cell of without ?? []) this.#hung.set(cell.id, cell);
    // What was changed meanwhile is not what hung.
    const now = new Set(allCells(this.#newest!));
    const hung = without?.filter((cell) => now.has(cell)) ?? [];
    const labels = hung.map((cell) => cell.label);
    this.#hand(() => {
      this.#on.answer(answer);
      if (labels.length > 0) this.#on.quarantined(idsOf(hung), tookTooLong(labels));
    });
  }

  /** Hands something over. Whoever takes it may fail at it: what is due next is due all the same. */
  #hand(give: () => void): void {
    try {
      give();
    } catch (error) {
      if (!this.#on.threw) throw error;
      this.#on.threw(error);
    } finally {
      this.#next();
    }
  }

  /** Ids of the cells with formulas, without those that hung as they are. */
  #formulasOf(notebook: Notebook): string[] {
    return idsOf(allCells(notebook).filter((cell) => hasFormula(cell) && this.#hung.get(cell.id) !== cell));
  }

  /** An error in a thread, of the code or of the machine: no cell is to blame for it. */
  #broke(running: Running, message: string): void {
    // Of a silent thread and a broken one, the silent one may still come to something.
    if (running === this.#standby?.running) {
      this.#dismissStandby();
      this.#running?.watchdog.begin();
    }
    if (running !== this.#running) return;
    const sentence = running.ready ? brokeDown(message) : didNotStart;
    this.#end('broke down', sentence);
    if (running.ready && ++this.#faults < mostFaults) {
      this.#running = this.#begin();
      return;
    }
    this.#dropQuestions(sentence);
    this.#on.failed?.(sentence);
  }
}

function idsOf(cells: readonly Cell[]): string[] {
  return cells.map((cell) => cell.id);
}

function messageOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}

function hasFormula(cell: Cell): boolean {
  return outputsOf(cell).length > 0 || inputsOf(cell).some(({ entry }) => 'formula' in entry);
}
