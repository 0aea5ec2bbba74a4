import { CraftError } from '../craft';

/** More steps than this are no instruction any more: nobody follows them, and a cell cannot show them. */
const mostSteps = 1000;
/** Steps that repeat in longer groups than this are not seen as a repeat when they are read. */
const longestGroup = 8;

/**
 * Steps in a row, as they are written down: equal ones in a row once with the times, and groups that repeat in
 * brackets.
 *
 * @throws CraftError where there are too many even so
 * @example inSteps(['3', '4', '4', '4', '2'])      // '3, 4 × 3, 2'
 * @example inSteps(['3', '4', '5', '4', '5', '2']) // '3, (4, 5) × 2, 2'
 */
export function inSteps(steps: readonly string[]): string {
  const runs: { step: string; times: number }[] = [];
  for (const step of steps) {
    const last = runs.at(-1);
    if (last?.step === step) last.times++;
    else runs.push({ step, times: 1 });
  }
  return inGroups(runs.map(({ step, times }) => (times === 1 ? step : timed(step, times))));
}

/** Steps that already tell their times, groups that repeat in brackets. */
export function inGroups(steps: readonly string[]): string {
  const written: string[] = [];
  for (let at = 0; at < steps.length;) {
    const { size, times } = groupAt(steps, at);
    const group = steps.slice(at, at + size).join(', ');
    written.push(times === 1 ? group : timed(`(${group})`, times));
    at += size * times;
    if (written.length > mostSteps) {
      throw new CraftError(
        'too-many',
        'Written down, this is more than {mostSteps} steps: work it in sections, each by itself.',
        { mostSteps },
      );
    }
  }
  return written.join(', ');
}

/** @example timed('4', 3) // '4 × 3' */
export function timed(step: string, times: number): string {
  return `${step} × ${times}`;
}

/** The group beginning here that covers most of what follows by repeating; a single step where none repeats. */
function groupAt(steps: readonly string[], at: number): { size: number; times: number } {
  let best = { size: 1, times: 1 };
  for (let size = 2; size <= longestGroup; size++) {
    let end = at + size;
    while (end < steps.length && steps[end] === steps[end - size]) end++;
    const times = Math.floor((end - at) / size);
    if (times > 1 && size * times > best.size * best.times) best = { size, times };
  }
  return best;
}
