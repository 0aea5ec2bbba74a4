/** What an input is moved through: every `step` from the one bound to the other, both included. */
export interface Search {
  readonly from: number;
  readonly to: number;
  readonly step: number;
  /** The input is a count: only whole numbers are tried. */
  readonly whole?: boolean;
}

/** More would keep a person waiting for minutes. */
export const mostSteps = 10_000;

/** Why a search cannot be made as it was asked for, and what would do; undefined where it can. */
export function wrongSearch({ from, to, step, whole }: Search): string | undefined {
  if (!Number.isFinite(from) || !Number.isFinite(to)) return 'Type the least and the most value to try.';
  if (from > to)
    return 'The bounds are the wrong way round: the first is the least value to try, the second the most.';
  if (from === to)
    return 'Both bounds are the same value: put them apart, so that there is something to try.';
  if (!(step > 0) || !Number.isFinite(step)) return 'A step has to be more than 0.';
  if (whole && Math.floor(to) < Math.ceil(from)) return 'There is no whole number between these bounds.';
  const steps = Math.ceil((to - from) / (whole ? Math.max(1, step) : step));
  if (steps > mostSteps) {
    return `That is ${steps.toLocaleString('en').replaceAll(',', ' ')} steps, and the most is ${mostSteps.toLocaleString('en').replaceAll(',', ' ')}: take a wider step, or closer bounds.`;
  }
  return undefined;
}

/**
 * The values that are tried first, in order.
 *
 * @example pointsOf({ from: 0, to: 1, step: 0.4 }) // [0, 0.4, 0.8, 1]
 * @example pointsOf({ from: 0.5, to: 4, step: 0.1, whole: true }) // [1, 2, 3, 4]
 */
export function pointsOf({ from, to, step, whole }: Search): number[] {
  if (whole) {
    const stride = Math.max(1, Math.round(step));
    const first = Math.ceil(from);
    const last = Math.floor(to);
    const points = Array.from(
      { length: Math.floor((last - first) / stride) + 1 },
      (_point, at) => first + at * stride,
    );
    return points.at(-1) === last ? points : [...points, last];
  }
  const steps = Math.max(1, Math.ceil((to - from) / step - 1e-9));
  // Each from the whole, so that no sum of steps drifts.
  return Array.from({ length: steps + 1 }, (_point, at) => (at === steps ? to : from + at * step));
}
