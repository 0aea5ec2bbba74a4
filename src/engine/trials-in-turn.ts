import { type Notebook, changesBetween } from '../notebook';
import { inSlices } from './in-slices';
import { WorkedSheet } from './sheet';
import type { WorkTrials } from './trial-results';
import { Trials } from './trials';

/** Trials that wait for each other, and let the thread answer others in between. */
export function inTurn(trials: Trials): WorkTrials {
  let turn: Promise<unknown> = Promise.resolve();
  return (request, { progress, signal } = {}) => {
    const all = request.trials.length;
    const goesOn = (done: number): boolean => {
      progress?.(done, all);
      return !signal?.aborted;
    };
    const mine = turn.then(() => inSlices(trials.steps(request, goesOn)));
    turn = mine.catch(() => {});
    return mine;
  };
}

/**
 * Trials of a notebook in this thread, for tests and the bench.
 *
 * @example const work = await trialsOf(cardigan());
 * const { numbers } = await work({ trials: [[{ cell: 'finishedBust', key: 'ease', size: null, value: 20 }]],
 *   wanted: [{ cell: 'backSts', key: 'count' }], sizes: ['size-m'] });
 */
export async function trialsOf(notebook: Notebook): Promise<WorkTrials> {
  const sheet = new WorkedSheet();
  await sheet.update(changesBetween(null, notebook));
  return inTurn(new Trials(sheet));
}
