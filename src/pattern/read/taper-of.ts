import type { PerSize } from './types';

/** The rows on which a taper is shaped, from 1, and how many rows it takes. */
export interface ShapedRows {
  readonly shaped: readonly number[];
  readonly over: number;
}

/**
 * "Next row, then every 6th row 8 times, then every 4th row 5 times", counted literally in one size: each interval ends
 * on its shaped row.
 *
 * @example shapedRows(false, [{ every: 6, times: 2 }, { every: 4, times: 1 }]) // shaped [6, 12, 16], over 16
 */
export function shapedRows(
  next: boolean,
  runs: readonly { readonly every: number; readonly times: number }[],
): ShapedRows {
  const shaped: number[] = next ? [1] : [];
  let row = next ? 1 : 0;
  for (const { every, times } of runs) {
    for (let time = 0; time < times; time++) shaped.push((row += every));
  }
  return { shaped, over: row };
}

/** One number for all sizes, or one for each: as many as the sizes. */
export function bySize(values: PerSize, sizes: number): PerSize | undefined {
  if (values.length === sizes) return values;
  return values.length === 1 ? Array.from({ length: sizes }, () => values[0]!) : undefined;
}
