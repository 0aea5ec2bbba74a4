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
} from './formula';
export type { FunctionEntry } from './functions/function-entry';
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
  type Dimension,
  type Unit,
} from './units';
