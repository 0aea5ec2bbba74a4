import type { Interval } from './intervals';

/** Values of the input that serve the same sizes. */
export interface Serving extends Interval {
  /** The sizes it serves, by their places in the list of sizes. */
  readonly sizes: readonly number[];
}

/**
 * The values that serve most sizes at once, the widest stretch of them first; none where no size is served at all.
 *
 * @param intervals of each size, in order, apart from each other
 * @example servesMost([[{ from: 0, to: 5 }], [{ from: 4, to: 9 }], [{ from: 7, to: 9 }]])
 * // [{ from: 7, to: 9, sizes: [1, 2] }, { from: 4, to: 5, sizes: [0, 1] }]
 */
export function servesMost(intervals: readonly (readonly Interval[])[]): Serving[] {
  const events = intervals.flatMap((found, size) =>
    found.flatMap(({ from, to }) => [
      { at: from, size, begins: true },
      { at: to, size, begins: false },
    ]),
  );
  // An end belongs to its interval, so that what begins there meets it.
  events.sort((a, b) => a.at - b.at || Number(b.begins) - Number(a.begins));
  const now = new Set<number>();
  let most = 0;
  let found: Serving[] = [];
  events.forEach(({ at, size, begins }, index) => {
    if (!begins) {
      now.delete(size);
      return;
    }
    now.add(size);
    const next = events[index + 1]!;
    // Only where something ends next is what is served now no part of something more.
    if (next.begins || now.size < most) return;
    if (now.size > most) found = [];
    most = now.size;
    found.push({ from: at, to: next.at, sizes: [...now].sort((a, b) => a - b) });
  });
  return found.sort((a, b) => b.to - b.from - (a.to - a.from));
}
