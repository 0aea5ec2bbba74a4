import type { Remote } from 'comlink';
import type { Cell, Notebook } from '../notebook';
import type { ServedSheet } from './serve';

/** Work under way in a thread beside its updates. */
export interface BackgroundJob {
  readonly done: Promise<unknown>;
  /** Hears every message of the thread that is not a reply. */
  sign?(data: unknown): void;
  /** The thread was ended before the work was done. */
  ended?(why: EndedBecause): void;
}

/** Why a thread was ended: the page wanted no more of it, nothing came of its work, or an error in it. */
export type EndedBecause = 'stopped' | 'took too long' | 'broke down';

/** What work beside the updates can rely on: what is shown has been worked. */
export interface BackgroundState {
  readonly sheet: Remote<ServedSheet>;
  readonly notebook: Notebook;
  /** Whether a cell hung, as it is, and is set aside. */
  isQuarantined(cell: Cell): boolean;
}

/** A lane of a thread for work beside its updates. */
export interface BackgroundQueue {
  /** Where the work comes from: one at a time, those that come first going first. */
  readonly jobs: JobSource[];
  /** Looks again for what is due: a source of work has some now. */
  wake(): void;
  readonly working: boolean;
}

/** Begins the next of its work, if it has any. */
export type JobSource = (state: BackgroundState) => BackgroundJob | undefined;
