import type { Change } from '../../notebook';
import { trialNumber, type TrialsWatch, type WorkTrials, TrialsEnded } from '../../engine';
import type { Moved, Works } from './works';

/**
 * Works what give or take asks for as trials of the notebook.
 *
 * @throws TrialsEnded where they are stopped, or the notebook is edited meanwhile
 */
export function worksByTrials(trials: WorkTrials, sizes: readonly string[], watch: TrialsWatch = {}): Works {
  const changes = ({ ref, values }: Moved): Change[] =>
    values.flatMap((value, at) =>
      value === undefined ? [] : [{ cell: ref.cell, key: ref.key, size: sizes[at]!, value }],
    );
  return async ({ quarantined: held, tries, wanted, instead }) => {
    const other = instead ? [{ ...instead.ref, size: null, formula: instead.formula }] : [];
    const always = [...other, ...held.flatMap(changes)];
    const requested = tries.map((moved) => (moved ? [...always, ...changes(moved)] : always));
    const results = await trials({ trials: requested, wanted, sizes }, watch);
    if (results.ended) throw new TrialsEnded(results.ended);
    return tries.map((_moved, trial) =>
      wanted.map((_ref, index) => sizes.map((_size, size) => trialNumber(results, trial, size, index))),
    );
  };
}
