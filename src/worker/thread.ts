import { wrap, type Endpoint, type Remote } from 'comlink';
import type { Cell, Notebook } from '../notebook';
import { Watchdog } from './watchdog';
import type { ServedSheet } from './serve';

/** A thread that serves a sheet: a `Worker`, or what does as much. */
export type SheetThread = Endpoint & { terminate(): void };

/** What a thread does of itself. */
export interface ThreadEvents {
  /** Every message: replies, beats and 'ready'. */
  message(running: Running, data: unknown): void;
  /** No message for the limit, since its patience began. */
  silent(running: Running): void;
  /** An error in it that no call of it answers with. */
  broke(running: Running, message: string): void;
}

/** A thread with what it has been told. */
export class Running {
  readonly thread: SheetThread;
  readonly sheet: Remote<ServedSheet>;
  readonly watchdog: Watchdog;
  ready = false;
  /** The notebook it holds; null where it holds none yet. */
  shown: Notebook | null = null;
  /** The cells it is told at the moment; null where no one cell is to blame for what happens. */
  updating: readonly Cell[] | null = null;
  /** Cells it has been sent in the midst of other work, and has not said yet that it took up. */
  sent: readonly Cell[] | null = null;

  /** @param limit milliseconds without a message before it counts as silent */
  constructor(thread: SheetThread, limit: number, on: ThreadEvents) {
    this.thread = thread;
    this.sheet = wrap<ServedSheet>(thread);
    this.watchdog = new Watchdog(limit, () => on.silent(this));
    thread.addEventListener('message', (event) => {
      const { data } = event as MessageEvent<unknown>;
      this.watchdog.sign();
      this.ready ||= data === 'ready';
      on.message(this, data);
    });
    thread.addEventListener('error', (event) => on.broke(this, (event as Partial<ErrorEvent>).message ?? ''));
    thread.addEventListener('messageerror', () => on.broke(this, ''));
    thread.start?.();
  }

  end(): void {
    this.watchdog.end();
    this.thread.terminate();
  }
}
