import { CraftError } from './craft-error';
import { lengthParam } from './message-parts';
import { cm, notNegative, positive } from './numbers';

/** A fabric as a weighted swatch shows it: `strain` per gram per cm of width, and `mass` in grams per cm². */
interface Hanging {
  length: number;
  strain: number;
  mass: number;
}

/**
 * How much a garment grows under its own weight.
 *
 * Each row carries what hangs below it: nothing at the hem, the whole length's weight at the shoulder. A strip 1 cm
 * wide weighs m·L grams, carries half of that on average, and so grows by about c · m · L² / 2.
 *
 * @param o.length the length as worked, cm
 * @param o.strain c, the part by which the fabric grows per gram per cm of width (see `strainOf`)
 * @param o.mass m, the fabric's g/cm²
 * @returns the growth, cm
 * @example
 * hangingGrowth({ length: 60, strain: 0.02, mass: 0.05 }) // 1.8
 *
 * Source: Hooke's law for a hanging strip.
 */
export function hangingGrowth(o: Hanging): number {
  const length = cm(o.length, 'The length');
  const strain = notNegative(o.strain, 'The stretch per gram per cm');
  return (strain * notNegative(o.mass, "The fabric's mass per cm²") * length * length) / 2;
}

/**
 * The length to work so that a garment hangs at the length wanted: the length which, with its own growth, is that.
 *
 * W + c · m · W² / 2 = L, so W = (√(1 + 2 c·m·L) − 1) / (c·m); written as 2L / (1 + √(1 + 2 c·m·L)), it holds for a
 * fabric that gives nothing too, and loses no digits where it gives little.
 *
 * @param o.length the length wanted when worn, cm; the rest as for `hangingGrowth`
 * @returns cm to work
 * @throws CraftError where the fabric would hang at twice the length worked, or more: no fabric stretches evenly so far
 * @example
 * lengthToWork({ length: 60, strain: 0.02, mass: 0.05 }) // 58.3005
 *
 * Source: Hooke's law for a hanging strip, as for `hangingGrowth`, solved for the length worked.
 */
export function lengthToWork(o: Hanging): number {
  const length = cm(o.length, 'The length');
  const strain = notNegative(o.strain, 'The stretch per gram per cm');
  const mass = notNegative(o.mass, "The fabric's mass per cm²");
  const worked = (2 * length) / (1 + Math.sqrt(1 + 2 * strain * mass * length));
  if (length > 0 && length >= 2 * worked) {
    throw new CraftError(
      'grows-too-much',
      'Hanging, {worked} of this fabric would grow by {growth}: weigh the swatch again, or choose a firmer fabric.',
      { worked: lengthParam(worked), growth: lengthParam(length - worked) },
    );
  }
  return worked;
}

/**
 * The strain of a fabric from a swatch that is clipped up and weighted.
 *
 * @param o.length the swatch's length unweighted, cm; @param o.stretched with the weight on, cm
 * @param o.width the swatch's width, cm; @param o.grams the weight
 * @returns the part by which it grows per gram per cm of width
 * @throws CraftError where the weighted swatch is shorter than the other
 * @example
 * strainOf({ length: 10, stretched: 11, width: 10, grams: 50 }) // 0.02
 *
 * Source: Hooke's law.
 */
export function strainOf(o: { length: number; stretched: number; width: number; grams: number }): number {
  const length = cm(o.length, "The swatch's length");
  const stretched = cm(o.stretched, "The weighted swatch's length");
  const width = cm(o.width, "The swatch's width");
  if (stretched < length) {
    throw new CraftError(
      'shorter-when-weighted',
      'The weighted swatch is {stretched} and the other {length}: exchange the two.',
      { stretched: lengthParam(stretched), length: lengthParam(length) },
    );
  }
  return ((stretched - length) / length / positive(o.grams, 'The weight')) * width;
}
