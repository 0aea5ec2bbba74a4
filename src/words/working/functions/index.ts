import type { Shows } from '../work';
import { counts } from './counts';
import { doubt } from './doubt';
import { edges } from './edges';
import { lengths } from './lengths';
import { pieces } from './pieces';
import { shaping } from './shaping';
import { standard } from './standard';
import { yarn } from './yarn';

/**
 * How each function of formulas is shown, by its name. `IF` is not among them: only the branch that is taken is worked,
 * and `expression.ts` sees to that.
 */
export const shownFunctions: Readonly<Record<string, Shows>> = {
  ...lengths,
  ...counts,
  ...shaping,
  ...edges,
  ...pieces,
  ...yarn,
  ...doubt,
  ...standard,
};

/** Functions that only say what unit a number has: they are read as an amount, without a step. */
export const unitNames: ReadonlySet<string> = new Set([
  ...['CM', 'MM', 'METRES', 'IN', 'YARDS', 'STS', 'ROWS', 'GRAMS'],
  ...['TRUE', 'FALSE', 'PI'],
]);
