import { formatMessage } from '../../format';
import type { Size } from '../../notebook';
import { TrialsEnded } from '../../engine';
import {
  triesByTrials,
  type TriesByTrials,
  workBack,
  type WorkBack,
  type WorkedBack,
} from '../../analysis/solve';
import type { OpenNotebook, Workspace } from '../../workspace';

/** What is to be looked for. */
export interface Sought extends Pick<WorkBack, 'search' | 'wish'> {
  readonly input: TriesByTrials['input'];
  readonly shared: boolean;
  readonly looked: TriesByTrials['looked'];
  readonly sizes: readonly Size[];
}

/** What was found, with what was sought. */
export interface Found {
  /** The notebook it was found in. */
  readonly open: OpenNotebook;
  readonly sought: Sought;
  readonly found: WorkedBack;
  /** Why something could not be worked, the first of the reasons. */
  readonly problem: string;
}

/** A search through the values of an input, made again whenever something else is sought. */
export class SolveRun {
  found: Found | null = $state.raw(null);
  /** From 0 to 1 while it is being searched; null while it is not. */
  progress: number | null = $state(null);
  stopped = $state(false);
  problem = $state('');
  #stop: AbortController | undefined;
  readonly #workspace: Workspace;

  constructor(workspace: Workspace) {
    this.#workspace = workspace;
  }

  /** Searches; what was under way is given up. What was found before is shown until there is something else. */
  async run(sought: Sought): Promise<void> {
    this.#stop?.abort();
    const stop = (this.#stop = new AbortController());
    this.stopped = false;
    this.problem = '';
    this.progress = 0;
    const { open } = this.#workspace.document;
    let problem = '';
    try {
      const found = await workBack({
        search: sought.search,
        wish: sought.wish,
        sizes: sought.sizes.length,
        signal: stop.signal,
        progress: (part) => {
          if (this.#stop === stop) this.progress = part;
        },
        tries: triesByTrials({
          trials: (...trials) => this.#workspace.calculation.trials(...trials),
          input: sought.input,
          shared: sought.shared,
          looked: sought.looked,
          sizes: sought.sizes,
          watch: { signal: stop.signal },
          error: (message) => (problem ||= formatMessage(message, this.#workspace.settings)),
        }),
      });
      if (this.#stop === stop) this.found = { open, sought, found, problem };
    } catch (error) {
      if (this.#stop !== stop) return;
      const ended = error instanceof TrialsEnded ? error.why : undefined;
      if (!ended && (error as Error).name !== 'AbortError') throw error;
      this.stopped = ended === undefined || ended === 'stopped';
      if (ended === 'took too long') {
        this.problem = 'This took too long and was given up: take a wider step, or closer bounds.';
      } else if (ended === 'broke down') this.problem = 'Something broke while calculating. Try again.';
    } finally {
      if (this.#stop === stop) this.progress = null;
    }
  }

  stop(): void {
    this.#stop?.abort();
  }

  /** Gives up what is under way and forgets what was found. */
  forget(): void {
    const stop = this.#stop;
    this.#stop = undefined;
    stop?.abort();
    this.found = null;
    this.progress = null;
    this.stopped = false;
    this.problem = '';
  }
}
