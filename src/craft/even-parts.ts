/**
 * Cuts a count into parts as even as whole numbers allow: any two parts differ by at most one.
 *
 * Part i ends at i · total / parts, rounded to the nearest whole number (halves up), or with `lean: 'down'` to the
 * whole number below, which puts the smaller parts first. The longer parts are spread among the shorter ones, not
 * heaped at one end. `total` and `parts` are whole, `parts` at least 1; the callers see to it and say so in their
 * own words.
 *
 * @example
 * evenParts(13, 3)           // [4, 5, 4]
 * evenParts(13, 3, 'down')   // [4, 4, 5]
 *
 * Source: common practice; the method is the straightest staircase between two corners (Bresenham 1965),
 * held against published spacings in tests/published/classical-problems.test.ts.
 */
export function evenParts(total: number, parts: number, lean: 'nearest' | 'down' = 'nearest'): number[] {
  const each = Math.floor(total / parts);
  // Only the remainder is spread, so that no product grows beyond the whole numbers that are exact.
  const left = total - each * parts;
  const sizes: number[] = [];
  let before = 0;
  for (let part = 1; part <= parts; part++) {
    const end =
      lean === 'down'
        ? Math.floor((part * left) / parts)
        : Math.floor((2 * part * left + parts) / (2 * parts));
    sizes.push(each + end - before);
    before = end;
  }
  return sizes;
}
