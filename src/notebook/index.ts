export type { MeasureQuestion } from './measure-questions';
export { called } from './called';
export * from './changes';
export * from './check-results';
export * from './document';
export * from './edits';
export * from './dependencies';
export * from './file';
export * from './file-head';
export * from './file-version-of';
export * from './fresh';
export * from './fresh-cell';
export * from './history';
export type * from './kind';
export { inputsOf, kindOf, kinds, outputsOf } from './kinds';
export { largestFile, mostValues } from './limits';
export * from './migrations';
export * from './constraint';
export * from './names';
export * from './ready-checks';
export * from './ready-choices';
export * from './terms';
export * from './what-if';
export { stretchLabel } from './stretch-label';
export { tableOf } from './name-table';
export { asMadeMessage, measureLabel } from './as-made-message';
export { asMadeSuggested } from './as-made-suggested';
export {
  asMade,
  charted,
  check,
  chosen,
  each,
  even,
  f,
  fit,
  formula,
  measure,
  pickUp,
  piece,
  swatch,
  value,
} from './cell-builders';
export { changesBetween, type Changes } from './changes';
export { checkHolds } from './check-results';
export { clearValues } from './clear-values';
export { wrongValue } from './constraint';
export { upstream } from './dependencies';
export {
  allCells,
  type Cell,
  type Change,
  type CheckCell,
  type Entry,
  type Notebook,
  type PickUpCell,
  type PieceCell,
  type Settings,
  type Size,
} from './document';
export { fileFormat, fileVersion } from './file-head';
export { fileVersionOf } from './file-version-of';
export {
  entering,
  fillValues,
  onChart as followed,
  forAll,
  givenIn,
  perSize,
  sizesAfter,
} from './fill-values';
export { frontsMessage } from './fronts-message';
export { joinsOf, usesMainly, type JoinEdge, type NotebookJoin } from './joins';
export type { Constraint, Input } from './kind';
export { migrated, migrations } from './migrations';
export { namesOf } from './names';
export { asWorked, startOf, type Start } from './piece-start';
export { asksOf, chartSizes, freshSize, givingTo, ownValues, withMoreSizes, type Ask } from './size-lists';
export { changedCell, changedCellGone } from './what-if';
