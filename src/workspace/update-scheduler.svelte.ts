import { afterPaint } from './after-paint';
import type { CellSignals } from './cell-signals.svelte';

/** As many cells of twelve sizes as are drawn again within a frame. */
const updatedAtOnce = 40;

/**
 * Tells the components of cells that their results are new: those of cells in sight at once; those of the others when
 * these have been painted, some with every frame, so that a notebook of any length follows every key. Where there are but
 * few of them, all are told at once.
 */
export class UpdateScheduler {
  /** Cells that are told later; in a browser that does not say which are out of sight, none. */
  readonly outOfSight = new Set<string>();
  readonly #signals: CellSignals;
  readonly #waiting = new Set<string>();
  #behind = $state(false);

  constructor(signals: CellSignals) {
    this.#signals = signals;
  }

  /** Whether there are cells yet to be told. */
  get behind(): boolean {
    return this.#behind;
  }

  schedule(cells: ReadonlySet<string>): void {
    const few = cells.size <= updatedAtOnce;
    for (const cell of cells) {
      if (few || !this.outOfSight.has(cell)) this.#update(cell);
      else this.#waiting.add(cell);
    }
    if (this.#behind || this.#waiting.size === 0) return;
    this.#behind = true;
    this.#goOn();
  }

  #goOn(): void {
    afterPaint(() => {
      for (const cell of [...this.#waiting].slice(0, updatedAtOnce)) this.#update(cell);
      if (this.#waiting.size > 0) this.#goOn();
      else this.#behind = false;
    });
  }

  #update(cell: string): void {
    this.#waiting.delete(cell);
    this.#signals.at(cell).results++;
  }
}
