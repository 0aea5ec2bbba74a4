import type { Message } from '../../craft';
import { checkHolds, type Change, type CheckCell, type Size } from '../../notebook';
import {
  type CellRef,
  trialResult,
  type TrialResults,
  type TrialsWatch,
  type WorkTrials,
  TrialsEnded,
  unpacked,
} from '../../engine';
import type { Sample, Tries } from './intervals';
import type { Outcome } from './goal';

/** What is looked at: a result, or whether checks hold, all of them. */
export type Looked = { readonly result: CellRef } | { readonly checks: readonly CheckCell[] };

export interface TriesByTrials {
  readonly trials: WorkTrials;
  /** The value that is moved. */
  readonly input: CellRef;
  /** Every size has the same value of it by its nature, as of a swatch. */
  readonly shared: boolean;
  readonly looked: Looked;
  readonly sizes: readonly Size[];
  readonly watch?: TrialsWatch;
  /** Told the first reason why something cannot be worked. */
  readonly error?: (message: Message) => void;
}

/**
 * Tries values of an input as trials of the notebook, the sizes beside each other where they do not hang together.
 *
 * @throws TrialsEnded where they are stopped, or the notebook is edited meanwhile
 */
export function triesByTrials(o: TriesByTrials): Tries<Outcome> {
  const { input, looked, sizes } = o;
  const together = o.shared || ('checks' in looked && looked.checks.some(({ across }) => across));
  const ids = sizes.map(({ id }) => id);
  const wanted =
    'result' in looked ? [looked.result] : looked.checks.map(({ id }) => ({ cell: id, key: 'holds' }));

  return async (samples) => {
    const rounds = together ? byValue(samples) : inOneRow(samples);
    const results = await o.trials({ trials: rounds.map(changes), wanted, sizes: ids }, o.watch);
    if (results.ended) throw new TrialsEnded(results.ended);
    const error = results.errors[0];
    if (error) o.error?.(unpacked(error[3].message));
    const outcomes: Outcome[] = Array.from(samples, () => undefined);
    const read = readerOf(results);
    rounds.forEach((round, trial) => {
      for (const { size, at } of round) outcomes[at] = outcomeOf(trial, size, read);
    });
    return outcomes;
  };

  function changes(round: readonly Question[]): Change[] {
    if (together) return [{ ...input, size: null, value: round[0]!.value }];
    return round.map(({ size, value }) => ({ ...input, size: ids[size]!, value }));
  }

  function outcomeOf(trial: number, size: number, read: Read): Outcome {
    if ('result' in looked) {
      const found = read(trial, size, 0);
      return typeof found === 'number' || typeof found === 'boolean' ? found : undefined;
    }
    let all = true;
    for (const [at, check] of looked.checks.entries()) {
      const holds = checkHolds(check, sizes, size, {
        valueOf: (id) => valueIn(read(trial, ids.indexOf(id), at)),
        truthOf: (id) => truthIn(read(trial, ids.indexOf(id), at)),
      });
      if (holds === undefined) return undefined;
      all &&= holds;
    }
    return all;
  }
}

interface Question extends Sample {
  /** Its place among what was asked. */
  readonly at: number;
}

/** Questions that share a value are one trial. */
function byValue(samples: readonly Sample[]): Question[][] {
  const rounds = new Map<number, Question[]>();
  samples.forEach((one, at) => {
    const round = rounds.get(one.value);
    if (round) round.push({ ...one, at });
    else rounds.set(one.value, [{ ...one, at }]);
  });
  return [...rounds.values()];
}

/** A trial has a question of each size, as long as there are some. */
function inOneRow(samples: readonly Sample[]): Question[][] {
  const rounds: Question[][] = [];
  const next = new Map<number, number>();
  samples.forEach((one, at) => {
    const round = next.get(one.size) ?? 0;
    next.set(one.size, round + 1);
    (rounds[round] ??= []).push({ ...one, at });
  });
  return rounds;
}

type Read = (trial: number, size: number, index: number) => ReturnType<typeof trialResult>;

/** Truths by where they stand, since there may be thousands; the rest as it is told. */
function readerOf(results: TrialResults): Read {
  const truths = new Map(
    results.truths.map(([trial, size, index, truth]) => [`${trial} ${size} ${index}`, truth]),
  );
  return (trial, size, index) => {
    const truth = truths.get(`${trial} ${size} ${index}`);
    if (truth !== undefined) return truth;
    const number = results.numbers[(trial * results.sizes.length + size) * results.wanted.length + index];
    return number !== undefined && !Number.isNaN(number) ? number : trialText(results, trial, size, index);
  };
}

function trialText(results: TrialResults, trial: number, size: number, index: number): string | undefined {
  const [, , , text] =
    results.texts.find((value) => value[0] === trial && value[1] === size && value[2] === index) ?? [];
  return text;
}

function valueIn(found: ReturnType<Read>): number | string | undefined {
  return typeof found === 'number' || typeof found === 'string' ? found : undefined;
}

function truthIn(found: ReturnType<Read>): boolean | undefined {
  return typeof found === 'boolean' ? found : undefined;
}
