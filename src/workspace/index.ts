export { afterPaint } from './after-paint';
export type { Follower } from './calculation.svelte';
export type { DependencyRole } from './cell-signals.svelte';
export {
  bySection,
  cellRefKey,
  choosableIn,
  chosenIn,
  isGiven,
  isResult,
  measurable,
  type Choosable,
  type Measurable,
} from './choosable';
export { Complaints } from './complaints.svelte';
export {
  errorsOf,
  fromWhere,
  isGauge,
  numberOf,
  showDifference,
  showNumber,
  shownAt,
  symbolFor,
  textsOf,
  typeable,
  typedNumber,
  yarnUnit,
  type ShownError,
} from './display';
export { FetchedPart } from './fetched.svelte';
export { fetched, noteMissing } from './fetching';
export { asidesOf, linesOf, valueLine, type ValueLine, type WordsLine } from './lines';
export { missingAt } from './missing';
export { endsOf, exactly, scaleOf } from './scale';
export { inSpareTime } from './spare-time';
export type { OpenNotebook, StartState } from './start-state';
export { surroundings } from './surroundings.svelte';
export { sizeAtHand, wordsSource } from './words-source';
export { workedPiece, workedPlan } from './worked-rows';
export { Workspace } from './workspace.svelte';
