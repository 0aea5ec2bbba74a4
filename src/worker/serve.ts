import { expose, transfer, type Endpoint } from 'comlink';
import type { Changes } from '../notebook';
import {
  type Answer,
  type Checked,
  type CellRef,
  betweenCells,
  inSlices,
  type TrialResults,
  type TrialsRequest,
} from '../engine';
import { inTurn, Trials, WorkedSheet } from '../engine/lazy';

/** The sheet as it is called from another thread. */
export interface ServedSheet {
  update(changes: Changes, hold: readonly string[], later?: readonly string[]): Answer;
  check(formula: string, ref: CellRef): Checked;
  /** Works trials beside everything else; how far they are is told by messages with their number. */
  trials(number: number, request: TrialsRequest): TrialResults;
  stopTrials(number: number): void;
  /** Brings a what-if to another state of itself, beside everything else. */
  updateWhatIf(id: string, changes: Changes, hold: readonly string[]): Answer;
  dropWhatIf(id: string): void;
}

/** What a thread says of trials under way. */
export interface TrialsSign {
  readonly trials: number;
  readonly done: number;
}

/** Often enough for who waits to see that there is still work going on, seldom enough not to be work itself. */
const signEvery = 200;
const trialSignEvery = 50;

/**
 * Serves a sheet over a message channel. Says 'ready' once, 'working' in the midst of long work, how far trials are,
 * and 'updating' when it takes up an update in the midst of other work; every other message is a reply.
 */
export function serve(endpoint: Endpoint): void {
  let lastSign = performance.now();
  const progress = (): void => {
    const now = performance.now();
    if (now - lastSign < signEvery) return;
    lastSign = now;
    endpoint.postMessage('working');
  };
  betweenCells(progress);
  const sheet = new WorkedSheet(progress);
  const workTrials = inTurn(new Trials(sheet, progress));
  const whatIfs = new Map<string, WorkedSheet>();
  const underWay = new Map<number, AbortController>();
  let jobs = 0;
  expose(
    {
      async update(changes: Changes, hold: readonly string[], later: readonly string[] = []) {
        if (jobs > 0) endpoint.postMessage('updating');
        lastSign = performance.now();
        const answer = await sheet.update(changes, hold, later);
        return transfer(answer, [answer.numbers.buffer as ArrayBuffer]);
      },
      check: (formula: string, ref: CellRef) => sheet.check(formula, ref),
      async trials(number: number, request: TrialsRequest) {
        const stop = new AbortController();
        jobs++;
        underWay.set(number, stop);
        let message = performance.now();
        try {
          const results = await workTrials(request, {
            signal: stop.signal,
            progress(done) {
              const now = performance.now();
              if (now - message < trialSignEvery) return;
              message = lastSign = now;
              endpoint.postMessage({ trials: number, done } satisfies TrialsSign);
            },
          });
          return transfer(results, [results.numbers.buffer as ArrayBuffer]);
        } finally {
          jobs--;
          underWay.delete(number);
        }
      },
      stopTrials: (number: number) => underWay.get(number)?.abort(),
      async updateWhatIf(id: string, changes: Changes, hold: readonly string[]) {
        const whatIf = whatIfs.get(id) ?? new WorkedSheet(progress);
        whatIfs.set(id, whatIf);
        jobs++;
        try {
          const answer = await inSlices(whatIf.updating(changes, hold));
          return transfer(answer, [answer.numbers.buffer as ArrayBuffer]);
        } finally {
          jobs--;
        }
      },
      dropWhatIf: (id: string) => void whatIfs.delete(id),
    },
    endpoint,
  );
  endpoint.postMessage('ready');
}
