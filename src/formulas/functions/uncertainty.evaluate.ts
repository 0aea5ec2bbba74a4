import {
  combineUncertainty,
  countUncertainty,
  gaugeOf,
  neighbourChance,
  widthUncertainty,
  type Rule,
  whole,
} from '../../craft';
import { pairs, readingsOf } from './pairs.evaluate';
import type { TradeFunction } from './trade-function';

/**
 * What a sheet holds for endless degrees of freedom, since it holds no endless number. Student's factor for so many
 * differs from the one for endlessly many in the ninth digit.
 */
const endless = 1e9;
const freedom = (held: number): number => (held >= endless ? Infinity : held);

/** How sure a result is: standard uncertainties in, and what is given or taken 19 times in 20 out. */
export const uncertainty = {
  GAUGEUNCERTAINTY: (...values: number[]) => gaugeOf(readingsOf('GAUGEUNCERTAINTY', values)).u,
  GAUGEFREEDOM: (...values: number[]) => Math.min(gaugeOf(readingsOf('GAUGEFREEDOM', values)).dof, endless),
  WIDTHGIVEORTAKE: (count: number, perCm: number, u: number, dof: number, uTape: number = 0) =>
    widthUncertainty({ count: whole(count), gauge: { perCm, u, dof: freedom(dof) }, uTape }).expanded,
  COUNTGIVEORTAKE: (width: number, uWidth: number, perCm: number, u: number, dof: number) =>
    countUncertainty({ width, uWidth, gauge: { perCm, u, dof: freedom(dof) } }).expanded,
  GIVEORTAKE: (...values: number[]) => {
    const parts = pairs('GIVEORTAKE', 'an uncertainty and its degrees of freedom', values);
    return combineUncertainty(parts.map(([u, dof]) => ({ u, dof: freedom(dof) }))).expanded;
  },
  NEXTCOUNTCHANCE: (target: number, u: number, dof: number, multiple: number, plus: number, rule: string) =>
    neighbourChance({
      target,
      u,
      dof: freedom(dof),
      repeats: [{ multiple: whole(multiple), plus: whole(plus) }],
      rule: rule as Rule,
    }).chance,
} satisfies Record<string, TradeFunction>;
