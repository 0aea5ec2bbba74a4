/**
 * The number with the fewest decimals in an interval, off its ends by a tenth of it; of several, the nearest to its
 * middle.
 *
 * @param scale how many of the interval's units make one of those it is written in: 2.54 for inches
 * @example tidyWithin({ from: 17.143, to: 22.857 }) // 20
 * @example tidyWithin({ from: 1.121, to: 1.139 })   // 1.13
 */
export function tidyWithin({ from, to }: { from: number; to: number }, scale = 1): number {
  // By the very end, the least other reading of a swatch would fall outside.
  const margin = (to - from) / 10;
  const low = (from + margin) / scale;
  const high = (to - margin) / scale;
  // By tens first: a round number is easier to remember than the middle.
  for (const step of [10, 5, 1, 0.5, 0.1, 0.05, 0.01, 0.001, 0.0001, 0.00001]) {
    const nearest = Math.round((low + high) / 2 / step);
    for (const multiple of [nearest, nearest - 1, nearest + 1]) {
      const value = Number((multiple * step).toFixed(6));
      if (value >= low && value <= high) return value * scale;
    }
  }
  return (from + to) / 2;
}
