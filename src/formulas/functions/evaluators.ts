import { counts } from './counts.evaluate';
import { uncertainty } from './uncertainty.evaluate';
import { edges } from './edges.evaluate';
import { lengths } from './lengths.evaluate';
import { pieces } from './pieces.evaluate';
import { shaping } from './shaping.evaluate';
import { standard } from './standard.evaluate';
import type { TradeFunction } from './trade-function';
import { yarn } from './yarn.evaluate';

/** The functions of formulas that are ours, by name. What a person is told of each stands in `formulas/functions`. */
export const tradeFunctions: Readonly<Record<string, TradeFunction>> = {
  ...lengths,
  ...counts,
  ...shaping,
  ...edges,
  ...pieces,
  ...yarn,
  ...uncertainty,
  ...standard,
};
