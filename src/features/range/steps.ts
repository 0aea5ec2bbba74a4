/** More steps than this would be neither seen in a plot nor read in a table. */
export const mostSteps = 5000;

/**
 * The values of a range, from its start to its end by its step; both ends are in it where the step comes out even.
 * Each is worked from the start, so that no fault adds up along the way.
 *
 * @param whole the value is a count of whole things
 * @example rangeSteps(0, 1, 0.25) // { values: [0, 0.25, 0.5, 0.75, 1] }
 */
export function rangeSteps(
  start: number,
  end: number,
  step: number,
  whole = false,
): { values: readonly number[] } | { problem: string; at: 'start' | 'end' | 'step' } {
  if (![start, end, step].every(Number.isFinite)) {
    return { problem: 'Type a start, an end and a step.', at: 'start' };
  }
  if (step === 0) {
    return { problem: 'A step of 0 never arrives: type how far one step goes.', at: 'step' };
  }
  if (step < 0) {
    return {
      problem: 'A step goes up: type it without a minus, and the lesser end as the start.',
      at: 'step',
    };
  }
  if (end < start) {
    return { problem: 'The end lies before the start: exchange them, or type a later end.', at: 'end' };
  }
  if (whole && !(Number.isInteger(start) && Number.isInteger(step))) {
    return {
      problem: 'This is counted in whole numbers: type a whole start and a whole step.',
      at: Number.isInteger(start) ? 'step' : 'start',
    };
  }
  if (end > start && step > (end - start) * (1 + 1e-9)) {
    return {
      problem: 'The first step goes beyond the end: take a shorter step, or a later end.',
      at: 'step',
    };
  }
  // As much over as arithmetic leaves behind is not left out.
  const steps = Math.floor((end - start) / step + 1e-9);
  if (steps + 1 > mostSteps) {
    return {
      problem: `That would be ${Number(steps + 1).toLocaleString('en')} steps, and ${mostSteps.toLocaleString('en')} are the most: take a longer step or a shorter range.`,
      at: 'step',
    };
  }
  return {
    values: Array.from({ length: steps + 1 }, (_, at) => Number((start + at * step).toPrecision(12))),
  };
}
