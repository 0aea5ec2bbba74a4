/*
 * What the page needs of the engine. The engine itself is behind `lazy.ts`: it is large, and only the worker imports it.
 */
export type { Answer, Checked, CellRef, CellError, WordedError } from './answers';
export { unpacked } from './packed-message';
export { Results, type Move } from './results';
export {
  trialNumber,
  trialResult,
  noTrialResults,
  type TrialResults,
  type TrialsWatch,
  type WorkTrials,
  type TrialsRequest,
} from './trial-results';
export { betweenCells } from './between-cells';
export { inSlices } from './in-slices';
export { brokeDown, comingBack, didNotStart, notWorking, tookTooLong, tookTooLongToTry } from './sentences';
export { TrialsEnded } from './trials-ended';
