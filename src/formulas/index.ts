export {
  deepestBrackets,
  longestFormula,
  namesIn,
  readFormula,
  renameIn,
  sameName,
  shownFormula,
  storedFormula,
  type FormulaRead,
  type Token,
  type FormulaProblem,
} from './formula';
export type { FunctionEntry, Argument } from './functions/function-entry';
export { unitInWords } from './unit-in-words';
export {
  area,
  isDimension,
  length,
  mass,
  plain,
  rowGauge,
  rows,
  sameUnit,
  stitchGauge,
  stitches,
  timesUnit,
  unitSymbol,
  strain,
  type Dimension,
  type Unit,
} from './units';
export { readCheckedFormula } from './checked-formula';
export { docsOf, documentedFunctions } from './functions/docs';
export { tradeFunctions } from './functions/evaluators';
export { functionNamed, functions } from './functions/signatures';
export type { Value } from './functions/trade-function';
export { ordinal } from './ordinal';
export { readPiece } from './piece-text';
export { readHowWorked } from './read-how-worked';
export { shapedEvery } from './shaped-every';
export { inGroups, inSteps, timed } from './steps';
