import { cellById, type Notebook, type Size } from '../../notebook';
import {
  giveOrTake,
  type Uncertainty,
  nextCountChance,
  nextRoundedChance,
  roundedIn,
  targetOf,
  type Works,
  worksByTrials,
} from '../../analysis/uncertainty';
import { TrialsEnded } from '../../engine';
import type { Workspace, Measurable } from '../../workspace';
import { isLength } from './words';

/** A result's doubt in each size, in their order; and beside a fitted count the chance of another. */
export interface UncertaintyRow {
  readonly ref: Measurable;
  readonly uncertainties: readonly (Uncertainty | undefined)[];
  readonly chances: readonly (number | undefined)[];
}

/** The give or take of some results, worked again for each state of the notebook, beside everything else. */
export class UncertaintyRun {
  rows: readonly UncertaintyRow[] = $state.raw([]);
  /** The sizes that the rows are for. */
  sizes: readonly Size[] = $state.raw([]);
  /** From 0 to 1 while it is being worked; null while it is not. */
  progress: number | null = $state(null);
  stopped = $state(false);
  problem = $state('');
  #stop: AbortController | undefined;
  readonly #workspace: Workspace;

  constructor(workspace: Workspace) {
    this.#workspace = workspace;
  }

  /** Works them; what was under way is given up. */
  async work(notebook: Notebook, refs: readonly Measurable[], sizes: readonly Size[]): Promise<void> {
    this.#stop?.abort();
    const stop = (this.#stop = new AbortController());
    this.stopped = false;
    this.problem = '';
    this.progress = 0;
    const ids = sizes.map(({ id }) => id);
    const targets = refs.map((ref) => {
      const cell = cellById(notebook, ref.cell);
      return cell && targetOf(cell, ref.key);
    });
    const wanted = [
      ...refs.map((ref) => ({ cell: ref.cell, key: ref.key, isLength: isLength(ref) })),
      ...targets.flatMap((target) => (target ? [{ ...target, isLength: false }] : [])),
    ];
    try {
      const works = worksByTrials((...trials) => this.#workspace.calculation.trials(...trials), ids, {
        signal: stop.signal,
        progress: (done, of) => {
          if (this.#stop === stop) this.progress = done / of;
        },
      });
      const found = await giveOrTake({ notebook, sizes: ids, wanted, works });
      if (this.#stop !== stop) return;
      let next = refs.length;
      this.rows = refs.map((ref, at) => {
        const cell = cellById(notebook, ref.cell)!;
        const target = targets[at] ? found[next++]! : [];
        const chances = ids.map((size, index) => {
          const uncertainty = target[index];
          const results = this.#workspace.results(cell.id);
          return (
            uncertainty &&
            nextCountChance(cell, uncertainty, (asks) => results.number(size, asks.cell, asks.key))?.chance
          );
        });
        return { ref, uncertainties: found[at]!, chances };
      });
      this.sizes = sizes;
      await this.#rounded(notebook, ids, works, stop);
    } catch (error) {
      if (this.#stop !== stop) return;
      if (!(error instanceof TrialsEnded)) throw error;
      this.stopped = error.why === 'stopped';
      if (error.why === 'took too long') {
        this.problem =
          'This took too long and was given up: choose fewer results, or set right the formula that hangs.';
      } else if (error.why === 'broke down') this.problem = 'Something broke while calculating. Try again.';
    } finally {
      if (this.#stop === stop) this.progress = null;
    }
  }

  /** Beside counts that are rounded: the chance of another, each from what it was before. */
  async #rounded(
    notebook: Notebook,
    sizes: readonly string[],
    works: Works,
    stop: AbortController,
  ): Promise<void> {
    for (const { ref } of this.rows) {
      const cell = cellById(notebook, ref.cell);
      const rounded = cell && roundedIn(cell);
      if (!rounded) continue;
      const { instead } = rounded;
      const wanted = [{ ...instead.ref, isLength: false }];
      const [uncertainties] = await giveOrTake({ notebook, sizes, wanted, works, instead });
      if (this.#stop !== stop) return;
      const chances = uncertainties!.map(
        (uncertainty) => uncertainty && nextRoundedChance(rounded, uncertainty)?.chance,
      );
      this.rows = this.rows.map((row) => (row.ref === ref ? { ...row, chances } : row));
    }
  }

  stop(): void {
    this.#stop?.abort();
  }

  /** Gives up what is under way, for good. */
  end(): void {
    const stop = this.#stop;
    this.#stop = undefined;
    stop?.abort();
  }
}
