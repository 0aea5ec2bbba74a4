import type { Change } from '../notebook';
import type { CellRef, CellError } from './answers';

/**
 * What is asked of trials. Each is the notebook with some changes, made in no other way than a person's edits; a
 * value for a place that is worked out holds it at that value in the sizes it is given for.
 */
export interface TrialsRequest {
  readonly trials: readonly (readonly Change[])[];
  /** The places whose results are wanted; what they do not depend on is not worked. */
  readonly wanted: readonly CellRef[];
  /** Ids of the sizes they are wanted in. */
  readonly sizes: readonly string[];
}

/** Told how far trials have come, and asked whether to go on. */
export interface TrialsWatch {
  progress?(done: number, of: number): void;
  readonly signal?: AbortSignal;
}

/** Works trials one after another. In a worker, or directly. */
export type WorkTrials = (request: TrialsRequest, watch?: TrialsWatch) => Promise<TrialResults>;

type TrialValue<T> = readonly [trial: number, size: number, index: number, value: T];

/** What trials gave; of those that were not reached, nothing. Read with `trialResult`. */
export interface TrialResults extends Omit<TrialsRequest, 'trials'> {
  /** How many of the trials were worked, from the first on. */
  readonly done: number;
  /**
   * Why the others were not: the person stopped them; the notebook was edited, so that they no longer hold; or one of
   * them takes too long; or there was an error in the thread.
   */
  readonly ended?: 'stopped' | 'edited' | 'took too long' | 'broke down';
  /** Number by trial, size and place, the last fastest; NaN where there is none. */
  readonly numbers: Float64Array;
  readonly texts: readonly TrialValue<string>[];
  readonly truths: readonly TrialValue<boolean>[];
  readonly errors: readonly TrialValue<CellError>[];
}

/** The number a trial gave, by the places of its size and place in what was asked; undefined where there is none. */
export function trialNumber(
  { numbers, sizes, wanted }: TrialResults,
  trial: number,
  size: number,
  index: number,
): number | undefined {
  const number = numbers[(trial * sizes.length + size) * wanted.length + index];
  return number === undefined || Number.isNaN(number) ? undefined : number;
}

/** Results of trials of which none was worked. */
export function noTrialResults(
  { wanted, sizes }: TrialsRequest,
  ended: NonNullable<TrialResults['ended']>,
): TrialResults {
  return { wanted, sizes, done: 0, ended, numbers: new Float64Array(), texts: [], truths: [], errors: [] };
}

const found = new WeakMap<TrialResults, Map<number, string | boolean | CellError>>();

/**
 * What a trial gave: a number, a text, a truth, or the trouble why there is none; undefined where it was not reached.
 *
 * @example trialResult(results, 0, 0, 0) // what the first trial gave for the first place in the first size
 */
export function trialResult(
  results: TrialResults,
  trial: number,
  size: number,
  index: number,
): number | string | boolean | CellError | undefined {
  const number = trialNumber(results, trial, size, index);
  if (number !== undefined) return number;
  const at = (of: readonly [number, number, number, unknown]): number =>
    (of[0] * results.sizes.length + of[1]) * results.wanted.length + of[2];
  let others = found.get(results);
  if (!others) {
    others = new Map();
    for (const value of [...results.texts, ...results.truths, ...results.errors])
      others.set(at(value), value[3]);
    found.set(results, others);
  }
  return others.get(at([trial, size, index, undefined]));
}
