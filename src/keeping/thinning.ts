const minute = 60_000;
const hour = 60 * minute;
const day = 24 * hour;

/**
 * How close earlier states of a notebook stand, by their age: of the last hour one in every five minutes, of the last
 * day one an hour, of the last month one a day, and one in every thirty days before that.
 */
const spacings: readonly { readonly upTo: number; readonly one: number }[] = [
  { upTo: hour, one: 5 * minute },
  { upTo: day, one: hour },
  { upTo: 30 * day, one: day },
  { upTo: Infinity, one: 30 * day },
];

/** The least time between two states that are kept: what is written again within it becomes no state of its own. */
const finestSpacing = spacings[0]!.one;

/**
 * Which earlier states go. Time is cut into spans that begin at fixed moments (not at `now`), each span of a longer
 * spacing made of whole ones of the shorter; the newest state of each span stays. So it does not matter how often the
 * states are thinned on the way: what is left at a time is the same.
 *
 * @param times when the states were written, in milliseconds since 1970, in any order
 * @returns those of them to take away
 * @example thinned([12 minutes ago, 11 minutes ago], now) // the one of 12 minutes ago, if both fall in one span
 */
export function thinned(times: readonly number[], now: number): number[] {
  const newest = new Map<string, number>();
  for (const at of times) {
    const span = spanOf(at, now);
    newest.set(span, Math.max(newest.get(span) ?? -Infinity, at));
  }
  return times.filter((at) => newest.get(spanOf(at, now)) !== at);
}

/** The span a time belongs to. A span changes its spacing as a whole, once all of it is old enough. */
function spanOf(at: number, now: number): string {
  for (const { upTo, one } of spacings) {
    const start = Math.floor(at / one) * one;
    if (now - start <= upTo) return `${one} ${start}`;
  }
  return '';
}

/** Whether a write at a time begins a new span, so that what stood there before it is worth remembering. */
export function beginsSpan(before: number, now: number): boolean {
  return Math.floor(before / finestSpacing) !== Math.floor(now / finestSpacing);
}
