/*
 * What the page holds of the sheet. The engine itself is in `sheet.ts`, which only the worker, the tests and the
 * bench import: it is large and loads after the first cells are readable.
 */
export type { Answer, Checked, CellRef, CellError } from './answers';
export { Results, type Move } from './results';
export {
  trialNumber,
  trialResult,
  type TrialResults,
  type TrialsWatch,
  type WorkTrials,
} from './trial-results';
