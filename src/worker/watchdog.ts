const ticks = 8;

/**
 * Waits for signs of life, and no longer than a limit without one.
 *
 * The time is counted in ticks of its own: when the whole computer slept, or the page was too busy to listen, that is
 * one tick and not the thread's fault.
 */
export class Watchdog {
  readonly #limit: number;
  readonly #over: () => void;
  #timer: ReturnType<typeof setInterval> | undefined;
  #silent = 0;

  constructor(limit: number, over: () => void) {
    this.#limit = limit;
    this.#over = over;
  }

  begin(): void {
    this.end();
    this.#silent = 0;
    this.#timer = setInterval(() => this.#tick(), this.#limit / ticks);
  }

  sign(): void {
    this.#silent = 0;
  }

  end(): void {
    clearInterval(this.#timer);
    this.#timer = undefined;
  }

  #tick(): void {
    this.#silent++;
    if (this.#silent <= ticks) return;
    this.end();
    this.#over();
  }
}
