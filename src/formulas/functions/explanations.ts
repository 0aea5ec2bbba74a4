import type { Shows } from '../../explain/work';
import { counts } from './counts.explain';
import { uncertainty } from './uncertainty.explain';
import { edges } from './edges.explain';
import { lengths } from './lengths.explain';
import { pieces } from './pieces.explain';
import { shaping } from './shaping.explain';
import { standard } from './standard.explain';
import { yarn } from './yarn.explain';

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
  ...uncertainty,
  ...standard,
};

/** Functions that only say what unit a number has: they are read as an amount, without a step. */
export const unitNames: ReadonlySet<string> = new Set([
  ...['CM', 'MM', 'METRES', 'IN', 'YARDS', 'STS', 'ROWS', 'GRAMS'],
  ...['TRUE', 'FALSE', 'PI'],
]);
