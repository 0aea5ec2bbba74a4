import { CraftError } from './craft-error';
import { numberParam } from './message-parts';

/**
 * Student's factor for 95 %: how many standard uncertainties either way hold the true value 19 times in 20.
 *
 * Few readings make a standard uncertainty itself uncertain, and the factor makes up for it: 12.7 for one degree of
 * freedom (two readings), 4.3 for two, 1.96 for endlessly many.
 *
 * @param dof degrees of freedom: any number from 1, whole or not, or Infinity
 * @throws CraftError where it is less than 1 or not a number
 * @example
 * t95(1)         // 12.706
 * t95(Infinity)  // 1.960
 *
 * Source: JCGM 100:2008 (GUM), G.3 and table G.2. Found by Newton's method on the distribution's integral.
 */
export function t95(dof: number): number {
  const freedom = degreesOfFreedom(dof);
  // Most gauges are one reading, and a notebook asks thousands of times for the same factor.
  return freedom === Infinity ? (normal ??= found(freedom)) : found(freedom);
}

let normal: number | undefined;

function found(freedom: number): number {
  // The distribution is concave above 0, so from the normal factor Newton's method climbs and never overshoots.
  let t = 1.95;
  for (let step = 1, tries = 0; step > 1e-13 * t && tries < 100; tries++) {
    step = (0.95 - chanceWithin(t, freedom)) / (2 * density(t, freedom));
    t += step;
  }
  return t;
}

/**
 * The chance that a value with Student's t-distribution lies within ±t.
 *
 * @example
 * chanceWithin(1, 1)   // 0.5: half of the distribution with one degree of freedom lies within ±1
 *
 * Source: with t = √dof · tan θ the density becomes a power of a cosine, which is integrated by Gauss's 5-point rule.
 */
export function chanceWithin(t: number, dof: number): number {
  const freedom = degreesOfFreedom(dof);
  if (!(t >= 0))
    throw new CraftError('negative', 'A factor has to be 0 or more; it is {t}.', { t: numberParam(t) });
  const root = Math.sqrt(freedom);
  const end = freedom === Infinity ? t : root * Math.atan(t / root);
  const height = (s: number) => {
    if (freedom === Infinity) return Math.exp((-s * s) / 2);
    // log1p of the sine keeps the digits that the cosine of a tiny angle loses.
    return Math.exp(((freedom - 1) / 2) * Math.log1p(-(Math.sin(s / root) ** 2)));
  };
  // Beyond 12 standard uncertainties nothing is left that a number can hold.
  const area = integral(height, Math.min(end, 12));
  return Math.min(1, Math.sqrt(2 / Math.PI) * scaledGammas(freedom / 2) * area);
}

/** The chance that a value with Student's t-distribution is above t, which may be negative. */
export function chanceAbove(t: number, dof: number): number {
  const outside = 1 - chanceWithin(Math.abs(t), dof);
  return t >= 0 ? outside / 2 : 1 - outside / 2;
}

/** Degrees of freedom as they can be: 1 or more, whole or not, or endless. */
export function degreesOfFreedom(dof: number): number {
  if (dof >= 1) return dof;
  throw new CraftError(
    'no-freedom',
    'Degrees of freedom are 1 or more, one fewer than the readings; not {dof}.',
    { dof: numberParam(dof) },
  );
}

function density(t: number, dof: number): number {
  const power = dof === Infinity ? (-t * t) / 2 : (-(dof + 1) / 2) * Math.log1p((t * t) / dof);
  return (scaledGammas(dof / 2) / Math.sqrt(2 * Math.PI)) * Math.exp(power);
}

/** Γ(a + ½) / (Γ(a) · √a), which tends to 1: by its series from 100 to the last digit, and by recurrence below. */
function scaledGammas(a: number): number {
  let factor = 1;
  let high = a;
  for (; high < 100; high++) factor *= high / (high + 0.5);
  const terms = [1, -1 / 8, 1 / 128, 5 / 1024, -21 / 32768, -399 / 262144];
  const series = terms.reduceRight((sum, term) => sum / high + term, 0);
  return high === a ? series : (factor * series * Math.sqrt(high)) / Math.sqrt(a);
}

const near = Math.sqrt(5 - 2 * Math.sqrt(10 / 7)) / 3;
const far = Math.sqrt(5 + 2 * Math.sqrt(10 / 7)) / 3;
const nearWeight = (322 + 13 * Math.sqrt(70)) / 900;
const farWeight = (322 - 13 * Math.sqrt(70)) / 900;
const gauss = [
  { at: 0, weight: 128 / 225 },
  { at: near, weight: nearWeight },
  { at: -near, weight: nearWeight },
  { at: far, weight: farWeight },
  { at: -far, weight: farWeight },
];

/** The integral of a smooth function from 0, in panels of at most a quarter. */
function integral(of: (s: number) => number, to: number): number {
  const panels = Math.max(1, Math.ceil(to * 4));
  const half = to / panels / 2;
  let sum = 0;
  for (let panel = 0; panel < panels; panel++) {
    const middle = (2 * panel + 1) * half;
    for (const { at, weight } of gauss) sum += weight * of(middle + at * half);
  }
  return sum * half;
}
