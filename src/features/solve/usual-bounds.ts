/** A step of 1, 2 or 5 of some decimal place, no more than a width. */
function tidyStep(width: number): number {
  const power = 10 ** Math.floor(Math.log10(width) + 1e-9);
  const times = width / power;
  return Number(((times >= 5 ? 5 : times >= 2 ? 2 : 1) * power).toPrecision(3));
}

/**
 * Bounds about the values that stand in an input, and a step: what a person is offered before they choose.
 *
 * @param values as they are shown; @param positive it cannot be 0 or less; @param whole it is a count
 * @example usualBounds([20], { positive: false, whole: false }) // { from: 0, to: 40, step: 0.2 }
 */
export function usualBounds(
  values: readonly number[],
  { positive, whole }: { positive: boolean; whole: boolean },
): { from: number; to: number; step: number } {
  const low = Math.min(...values);
  const high = Math.max(...values);
  const nothing = values.length === 0 || (low === 0 && high === 0);
  const aboutThem = positive ? [low / 2, high * 1.5] : [Math.min(0, 2 * low), Math.max(0, 2 * high)];
  let [from, to] = (nothing ? (positive ? [1, 11] : [-10, 10]) : aboutThem) as [number, number];
  const about = tidyStep((to - from) / 20);
  from = Math.floor(from / about + 1e-9) * about;
  to = Math.ceil(to / about - 1e-9) * about;
  if (whole) {
    [from, to] = [Math.floor(from), Math.ceil(to)];
    if (positive) from = Math.max(1, from);
    return { from, to, step: Math.max(1, Math.ceil((to - from) / 1000)) };
  }
  if (positive && from <= 0) from = about / 10;
  const tidy = (value: number): number => Number(value.toPrecision(12));
  return { from: tidy(from), to: tidy(to), step: tidyStep((to - from) / 200) };
}
