import { counts } from './counts';
import { doubt } from './doubt';
import { edges } from './edges';
import { lengths } from './lengths';
import { pieces } from './pieces';
import { shaping } from './shaping';
import { standard } from './standard';
import type { TradeFunction } from './trade-function';
import { yarn } from './yarn';

/** The functions of formulas that are ours, by name. What a person is told of each stands in `notebook/functions`. */
export const tradeFunctions: Readonly<Record<string, TradeFunction>> = {
  ...lengths,
  ...counts,
  ...shaping,
  ...edges,
  ...pieces,
  ...yarn,
  ...doubt,
  ...standard,
};
