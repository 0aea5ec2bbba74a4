import type { BackgroundState, BackgroundJob } from './background-queue';
import type { SheetClient } from './client';
import type { TrialsSign } from './serve';
import {
  noTrialResults,
  type TrialResults,
  type TrialsRequest,
  type TrialsWatch,
  type WorkTrials,
} from '../engine';

interface Waiting {
  readonly number: number;
  readonly request: TrialsRequest;
  readonly watch: TrialsWatch;
  answered(results: TrialResults): void;
  dropped(error: Error): void;
}

const known = new WeakMap<SheetClient, WorkTrials>();

/**
 * Trials in the thread of a client, of the notebook it was shown last, once that is worked itself. What is shown
 * meanwhile goes before them, and ends them.
 */
export function backgroundTrials(client: SheetClient): WorkTrials {
  let work = known.get(client);
  if (!work) known.set(client, (work = trialsOf(client)));
  return work;
}

function trialsOf(client: SheetClient): WorkTrials {
  let waiting: Waiting[] = [];
  let last = 0;
  let stop: ((trials: Waiting) => void) | undefined;
  client.jobs.push((state) => {
    const trials = waiting.shift();
    if (!trials) return undefined;
    stop = (other) => {
      if (other === trials) void state.sheet.stopTrials(trials.number);
    };
    return begun(trials, state);
  });
  return (request, watch = {}) => {
    if (!client.working || watch.signal?.aborted) return Promise.resolve(noTrialResults(request, 'stopped'));
    return new Promise((answered, dropped) => {
      const trials = { number: ++last, request, watch, answered, dropped };
      waiting.push(trials);
      watch.signal?.addEventListener(
        'abort',
        () => {
          if (!waiting.includes(trials)) {
            stop?.(trials);
            return;
          }
          waiting = waiting.filter((other) => other !== trials);
          answered(noTrialResults(request, 'stopped'));
        },
        { once: true },
      );
      client.wake();
    });
  };
}

function begun(
  { number, request, watch, answered, dropped }: Waiting,
  { sheet }: BackgroundState,
): BackgroundJob {
  const results = sheet.trials(number, request) as Promise<TrialResults>;
  return {
    done: results.then(answered, dropped),
    sign(data) {
      if (isTrialsSign(data) && data.trials === number) watch.progress?.(data.done, request.trials.length);
    },
    ended: (why) => answered(noTrialResults(request, why)),
  };
}

function isTrialsSign(data: unknown): data is TrialsSign {
  return typeof data === 'object' && data !== null && 'trials' in data && 'done' in data;
}
