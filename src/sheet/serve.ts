import { expose, transfer, type Endpoint } from 'comlink';
import type { Changes } from '../notebook/changes';
import type { Answer, Checked, Place } from './answers';
import { WorkedSheet } from './sheet';
import type { TrialResults, TrialsAsked } from './trial-results';
import { Trials } from './trials';
import { inTurn } from './trials-in-turn';

/** The sheet as it is called from another thread. */
export interface ServedSheet {
  update(changes: Changes, hold: readonly string[]): Answer;
  check(formula: string, place: Place): Checked;
  /** Works trials beside everything else; how far they are is told by messages with their number. */
  trials(number: number, asked: TrialsAsked): TrialResults;
  stopTrials(number: number): void;
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
 * and 'updating' when it takes up an update in the midst of trials; every other message is a reply.
 */
export function serve(endpoint: Endpoint): void {
  let lastSign = performance.now();
  const progress = (): void => {
    const now = performance.now();
    if (now - lastSign < signEvery) return;
    lastSign = now;
    endpoint.postMessage('working');
  };
  const sheet = new WorkedSheet(progress);
  const workTrials = inTurn(new Trials(sheet, progress));
  const underWay = new Map<number, AbortController>();
  expose(
    {
      async update(changes: Changes, hold: readonly string[]) {
        if (underWay.size > 0) endpoint.postMessage('updating');
        lastSign = performance.now();
        const answer = await sheet.update(changes, hold);
        return transfer(answer, [answer.numbers.buffer as ArrayBuffer]);
      },
      check: (formula: string, place: Place) => sheet.check(formula, place),
      async trials(number: number, asked: TrialsAsked) {
        const stop = new AbortController();
        underWay.set(number, stop);
        let said = performance.now();
        const results = await workTrials(asked, {
          signal: stop.signal,
          progress(done) {
            const now = performance.now();
            if (now - said < trialSignEvery) return;
            said = lastSign = now;
            endpoint.postMessage({ trials: number, done } satisfies TrialsSign);
          },
        });
        underWay.delete(number);
        return transfer(results, [results.numbers.buffer as ArrayBuffer]);
      },
      stopTrials: (number: number) => underWay.get(number)?.abort(),
    },
    endpoint,
  );
  endpoint.postMessage('ready');
}
