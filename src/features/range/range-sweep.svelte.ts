import type { CellRef, TrialResults } from '../../engine';
import { cellRefKey, type Choosable, type Workspace, type OpenNotebook } from '../../workspace';
import { isFit } from './usual';
import { whatMoves } from './what-moves';
import { wholeRepeats, type WholeRepeat } from './whole-repeats';

/** An input to be moved, where it is given, and what is wanted of each step. */
export interface Move {
  readonly input: Choosable;
  /** The size whose value it is; null for all of them. */
  readonly givenFor: string | null;
  readonly values: readonly number[];
  /** The results looked at; none where a person has not said: then those of the first likely group that it moves. */
  readonly chosen: readonly Choosable[] | null;
  readonly likely: readonly (readonly Choosable[])[];
  /** The ids of the sizes looked at. */
  readonly sizes: readonly string[];
}

/** What came of the steps. */
export interface Moved extends Pick<Move, 'input' | 'values'> {
  /** The notebook it was worked in. */
  readonly open: OpenNotebook;
  readonly chosen: readonly Choosable[];
  readonly results: TrialResults;
  /** Of each fit, by its place, the values at which its repeats are whole. */
  readonly whole: ReadonlyMap<string, readonly WholeRepeat[]>;
}

/** So many results are shown where a person has not said which. */
const mostUnasked = 2;

/** An input moved through its range, again whenever something else is asked. */
export class RangeSweep {
  moved: Moved | null = $state.raw(null);
  progress: { done: number; of: number } | null = $state.raw(null);
  stopped = $state(false);
  #stop: AbortController | undefined;
  readonly #workspace: Workspace;

  constructor(workspace: Workspace) {
    this.#workspace = workspace;
  }

  /** Works every step, then finds whole repeats between them; what was under way is given up. */
  async work({ input, givenFor, values, chosen: requested, likely, sizes }: Move): Promise<void> {
    this.#stop?.abort();
    const stop = (this.#stop = new AbortController());
    const { open } = this.#workspace.document;
    this.stopped = false;
    this.progress = { done: 0, of: values.length };
    const watch = {
      signal: stop.signal,
      progress: (done: number, of: number) => {
        if (this.#stop === stop) this.progress = { done, of };
      },
    };
    const ref = { cell: input.cell, key: input.key, size: givenFor };
    const chosen = requested ?? (await this.#firstThatMove(likely, ref, values, sizes, stop.signal));
    if (this.#stop !== stop) return;
    const wanted = chosen.map(({ cell, key }): CellRef => ({ cell, key }));
    const trials = values.map((value) => [{ ...ref, value }]);
    const results = await this.#workspace.calculation.trials({ trials, wanted, sizes }, watch);
    // Where the notebook was edited meanwhile, it is worked again once that has been.
    if (this.#stop !== stop || results.ended === 'edited') return;
    const whole = new Map<string, WholeRepeat[]>();
    this.moved = { open, input, values, chosen, results, whole };
    const fits = results.ended ? [] : chosen.filter((one) => isFit(this.#workspace.notebook, one));
    for (const fit of fits) {
      const found = await wholeRepeats(
        this.#workspace.calculation.trials,
        ref,
        fit.cell,
        sizes,
        values,
        watch,
      );
      if (this.#stop !== stop) return;
      if (stop.signal.aborted) break;
      whole.set(cellRefKey(fit), found);
      this.moved = { ...this.moved, whole: new Map(whole) };
    }
    this.progress = null;
    this.stopped = stop.signal.aborted || results.ended !== undefined;
  }

  /** Where nothing moves, what is likeliest, so that it can be said of it. */
  async #firstThatMove(
    likely: Move['likely'],
    ref: CellRef & { readonly size: string | null },
    values: readonly number[],
    sizes: readonly string[],
    signal: AbortSignal,
  ): Promise<Choosable[]> {
    const moves = new Set(
      await whatMoves(this.#workspace.calculation.trials, ref, values, likely.flat(), sizes, { signal }),
    );
    const group = likely
      .map((group) => group.filter((one) => moves.has(one)))
      .find(({ length }) => length > 0);
    return group?.slice(0, mostUnasked) ?? likely.flat().slice(0, 1);
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
