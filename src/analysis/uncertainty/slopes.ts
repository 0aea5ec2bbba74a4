/**
 * How far a source is moved either way, for the slope of a result: a ten-thousandth of its own value.
 *
 * What central differences leave out falls with the square of the step (for 1 / g, a hundred-millionth of the slope at
 * this one); what the last digit of a result adds grows as the step shrinks (14 digits are held, so a
 * ten-thousand-millionth). It is also far more than the billionth within which a number counts as whole.
 */
export function stepOf(value: number): number {
  return 1e-4 * (value === 0 ? 1 : Math.abs(value));
}

/** Results of one place in one size about the value of a source: as it is, a step and half a step to either side. */
export interface About {
  readonly here: number;
  readonly below: number;
  readonly above: number;
}

/** Whether the two sides of a value tell so different slopes that one of them may have gone over a step. */
export function mayLeap({ here, below, above }: About, step: number): boolean {
  const left = (here - below) / step;
  const right = (above - here) / step;
  // A curve's sides differ by a few steps of its bend; a leap by what it leaps over the step, thousands of times more.
  return (
    Math.abs(right - left) > 0.05 * Math.max(Math.abs(left), Math.abs(right)) &&
    Math.abs(right - left) * step > edge(here)
  );
}

/**
 * The slope of a result at the value of a source, from a step to either side; where it leaps on one side, from the
 * other alone. A leap is what does not halve when the step is halved.
 *
 * @param half the same at half the step, where the two sides were unlike
 */
export function slope(whole: About, step: number, half?: About): number {
  if (!half || !mayLeap(whole, step)) return (whole.above - whole.below) / (2 * step);
  const left = leaps(whole.here - whole.below, whole.here - half.below, whole.here);
  const right = leaps(whole.above - whole.here, half.above - whole.here, whole.here);
  if (left && !right) return (half.above - half.here) / (step / 2);
  if (right && !left) return (half.here - half.below) / (step / 2);
  // A leap on both sides leaves nothing to tell a slope by; without any, it is a bend.
  return left && right ? 0 : (half.above - half.below) / step;
}

function leaps(byWhole: number, byHalf: number, about: number): boolean {
  return Math.abs(byHalf) > 0.75 * Math.abs(byWhole) && Math.abs(byWhole) > edge(about);
}

function edge(about: number): number {
  return 1e-11 * Math.max(1, Math.abs(about));
}
