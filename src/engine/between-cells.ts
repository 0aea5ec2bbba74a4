import { HyperFormula, type ConfigParams } from 'hyperformula';

/*
 * A thread is seen to be getting on by what it says between one cell and the next. An engine works many cells in one
 * call and has no door for that, so its evaluator is asked: it has one method that every formula is worked by, once
 * for each cell. Where that is not found as it is in the version that package.json asks for, what is said between
 * calls has to do.
 */

interface Evaluator {
  evaluateAstToCellValue(ast: unknown, state: unknown): unknown;
}

let call = (): void => {};

/** Has a function called before each formula that an engine of this thread works or reads. */
export function betweenCells(called: () => void): void {
  call = called;
}

/** Between one cell and the next. */
export function nextCell(): void {
  call();
}

/** Has all engines of this thread tell of each formula before they work it. Gives whether they do. */
export function reportCells(settings: Partial<ConfigParams>): boolean {
  const { evaluator } = HyperFormula.buildEmpty(settings) as unknown as { evaluator?: unknown };
  const prototype: unknown = Object.getPrototypeOf(evaluator ?? {});
  if (!isEvaluator(prototype)) return false;
  const alone = prototype.evaluateAstToCellValue;
  prototype.evaluateAstToCellValue = function (this: Evaluator, ast, state) {
    call();
    return alone.call(this, ast, state);
  };
  return true;
}

function isEvaluator(found: unknown): found is Evaluator {
  return (
    typeof found === 'object' &&
    found !== null &&
    'evaluateAstToCellValue' in found &&
    typeof found.evaluateAstToCellValue === 'function'
  );
}
