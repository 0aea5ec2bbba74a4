/**
 * Whether a result over a range goes in steps: some neighbouring values are equal and others are not, as of a count,
 * or of a width that follows one. What moves with every step, or stands still throughout, does not.
 *
 * @example goesInSteps([[59, 59, 67, 67]]) // true
 * @example goesInSteps([[90, 90.5, 91]]) // false
 */
export function goesInSteps(sizes: readonly (readonly (number | null)[])[]): boolean {
  let [same, other] = [false, false];
  for (const values of sizes) {
    for (let at = 1; at < values.length; at++) {
      const [before, now] = [values[at - 1], values[at]];
      if (typeof before !== 'number' || typeof now !== 'number') continue;
      if (before === now) same = true;
      else other = true;
    }
  }
  return same && other;
}
