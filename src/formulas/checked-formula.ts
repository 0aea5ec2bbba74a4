import { longestFormula, readFormula, type FormulaRead } from './formula';
import { functionNamed } from './functions/signatures';

/**
 * Reads a formula as `readFormula` does, and checks that each function in it is one there is, with as many arguments as
 * it takes.
 *
 * @example readCheckedFormula('CM()') // { problem: 'CM takes number in its brackets; here are 0 arguments.', … }
 */
export function readCheckedFormula(
  formula: string,
  decimal: '.' | ',' = '.',
  longest: number = longestFormula,
): FormulaRead {
  return readFormula(formula, decimal, longest, functionNamed);
}
