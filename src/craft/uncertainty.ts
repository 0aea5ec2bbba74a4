import { CraftError } from './craft-error';
import { numberParam } from './message-parts';
import { cm, listOf, notNegative, perCm, stitches, stitchesAcross, widthOf } from './numbers';
import { degreesOfFreedom, t95 } from './student-t';
import type { Gauge } from './types';

/** A part of an uncertainty, in the unit of the result: |derivative| × the source's own u, and its freedom. */
export interface UncertaintyPart {
  u: number;
  dof: number;
}

/**
 * Give or take of a result, from independent sources: combined in quadrature, and expanded to 95 %.
 *
 * A source that enters a result more than once (one gauge that feeds several lengths) is one part: take the total
 * derivative first. The effective degrees of freedom are Welch and Satterthwaite's.
 *
 * @param parts each source's share of the result's uncertainty
 * @returns u, the effective degrees of freedom, and expanded = t95 · u
 * @throws CraftError where a part is negative or not a number, or has less than one degree of freedom
 * @example
 * combineUncertainty([{ u: 3, dof: Infinity }, { u: 4, dof: Infinity }]) // { u: 5, dof: Infinity, expanded: 9.80 }
 *
 * Source: JCGM 100:2008 (GUM), 5.1.2, and G.4.1 for Welch–Satterthwaite.
 */
export function combineUncertainty(parts: UncertaintyPart[]): { u: number; dof: number; expanded: number } {
  listOf(parts, 'The parts of an uncertainty');
  for (const part of parts) {
    if (!(part?.u >= 0 && part.u < Infinity)) {
      throw new CraftError('not-a-number', 'A standard uncertainty is a number, 0 or more; not {u}.', {
        u: numberParam(part?.u),
      });
    }
    degreesOfFreedom(part.dof);
  }
  const u = Math.hypot(...parts.map((part) => part.u));
  if (u === 0) return { u: 0, dof: Infinity, expanded: 0 };
  // Each part against the whole, so that no fourth power overflows or vanishes.
  const spread = parts.reduce((sum, part) => sum + (part.u / u) ** 4 / part.dof, 0);
  const dof = Math.max(1, 1 / spread);
  return { u, dof, expanded: t95(dof) * u };
}

/**
 * The width that a count gives, and its give or take. The count is a decision and held; the gauge is not.
 *
 * width = N / g, and u = N · u(g) / g², joined by the tape's own uncertainty where it is told.
 *
 * @param o.count stitches; @param o.gauge as `gaugeOf` gives it
 * @param o.uTape standard uncertainty of the tape measure, cm; 0 unless told
 * @returns width, u and expanded value (95 %), all in cm
 * @throws CraftError where the count is not whole or the gauge is none
 * @example
 * widthUncertainty({ count: 146, gauge: { perCm: 1.4, u: 0.0289, dof: Infinity } })
 * // { width: 104.3, u: 2.15, expanded: 4.22 }: 104.3 ± 4.2 cm
 *
 * Source: JCGM 100:2008 (GUM), 5.1.2 and annex G.
 */
export function widthUncertainty(o: { count: number; gauge: Gauge; uTape?: number }): {
  width: number;
  u: number;
  expanded: number;
} {
  const count = stitches(o.count, 'The count');
  const gauge = checked(o.gauge);
  const tape = notNegative(o.uTape ?? 0, "The tape's uncertainty");
  const { u, expanded } = combineUncertainty([
    { u: (count * gauge.u) / gauge.perCm ** 2, dof: gauge.dof },
    { u: tape, dof: Infinity },
  ]);
  return { width: widthOf(count, perCm(gauge.perCm, 'The gauge')), u, expanded };
}

/**
 * The count that a width asks for, and its give or take.
 *
 * target = W · g, with u from the gauge (W · u(g)) and from the width (g · u(W)), combined in quadrature.
 *
 * @param o.width cm; @param o.uWidth its standard uncertainty, cm, 0 where it is exact
 * @param o.gauge as `gaugeOf` gives it
 * @returns the exact target, its u and expanded value (95 %), all in stitches
 * @example
 * countUncertainty({ width: 52, uWidth: 0, gauge: { perCm: 1.4, u: 0.0289, dof: Infinity } })
 * // { target: 72.8, u: 1.50, expanded: 2.95 }
 *
 * Source: JCGM 100:2008 (GUM), 5.1.2 and annex G.
 */
export function countUncertainty(o: { width: number; uWidth: number; gauge: Gauge }): {
  target: number;
  u: number;
  expanded: number;
} {
  const width = cm(o.width, 'The width');
  const uWidth = notNegative(o.uWidth, "The width's uncertainty");
  const gauge = checked(o.gauge);
  const { u, expanded } = combineUncertainty([
    { u: width * gauge.u, dof: gauge.dof },
    { u: gauge.perCm * uWidth, dof: Infinity },
  ]);
  return { target: stitchesAcross(width, perCm(gauge.perCm, 'The gauge')), u, expanded };
}

function checked(gauge: Gauge): Gauge {
  perCm(gauge?.perCm, 'The gauge');
  notNegative(gauge.u, "The gauge's uncertainty");
  return gauge;
}
