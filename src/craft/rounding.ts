/** Exact, by the international agreement of 1959. */
export const cmPerInch = 2.54;

/** Relative distance below which a value is the whole number beside it. */
const edge = 1e-9;

/** How far from `x` another number may be and still count as `x`. Below 1 the distance is absolute. */
function edgeAt(x: number): number {
  return edge * Math.max(1, Math.abs(x));
}

/**
 * Whether two results of arithmetic are the same number, but for the dust that floating point leaves: a thousand
 * millionth of the greater, and no less than a thousand millionth.
 *
 * @example
 * same(0.1 + 0.2, 0.3)   // true
 * same(77.2, 77.2001)    // false
 */
export function same(a: number, b: number): boolean {
  return Math.abs(a - b) <= edgeAt(Math.max(Math.abs(a), Math.abs(b)));
}

/**
 * A value within 1e-9 (relative) of a whole number is that number; any other value is returned as it is.
 * Without this 750 g × 1.1 / 25 g asks for 34 balls where 33 are exactly enough.
 *
 * @example
 * whole(45 * 1.4)   // 63, where the product is 62.99999999999999
 * whole(77.2)       // 77.2
 */
export function whole(x: number): number {
  const near = Math.round(x);
  // Adding 0 turns -0 into 0.
  return (Math.abs(x - near) <= edgeAt(x) ? near : x) + 0;
}

/**
 * The least whole number that is not below x, after the float edge.
 *
 * @example
 * roundUp(33.00000000000001)   // 33
 * roundUp(33.2)                // 34
 */
export function roundUp(x: number): number {
  return Math.ceil(whole(x)) + 0;
}

/**
 * The greatest whole number that is not above x, after the float edge.
 *
 * @example
 * roundDown(62.99999999999999)   // 63
 * roundDown(62.9)                // 62
 */
export function roundDown(x: number): number {
  return Math.floor(whole(x)) + 0;
}

/**
 * The nearest whole number, halves going up.
 *
 * @example
 * roundNearest(49.5)   // 50
 * roundNearest(-0.5)   // 0
 */
export function roundNearest(x: number): number {
  // Snapped at the double, so that a half blurred by floating point is still a half.
  return Math.floor((whole(2 * x) + 1) / 2) + 0;
}
