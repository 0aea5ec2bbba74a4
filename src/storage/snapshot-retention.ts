const minute = 60_000;

/** The least time between two earlier states: what is written again within it becomes no state of its own. */
const finestSpacing = 5 * minute;

/**
 * The most earlier states of one notebook. Storage must not grow without end, and a hundred texts of the largest starter
 * weigh some megabytes; a hundred states also reach back over any number of saves with gaps of a quarter of the distance
 * at most.
 */
export const mostStates = 100;

/** The newest that are never thinned: two hours of steady work, one state in every five minutes. */
const newestKept = 24;

/** What thinning has to know of an earlier state. */
interface Thinnable {
  readonly at: number;
  readonly order?: number;
  readonly older?: true;
}

/**
 * Which earlier states go. None does while there are no more than `mostStates`; of more, as many as there are too many.
 * The newest 24, the oldest and those in an older form of the file always stay; of the others, those go that leave the smallest gap for how far back they
 * are. Gaps and distances are counted in saves, not in time: no clock has a say in what is deleted.
 *
 * @param states the newest first, in the order in which they were written; `order` is the number of the save, and
 *   states from before that was recorded have none
 * @returns the times of those to take away
 * @example thinned([{ at: 20, order: 2 }, { at: 10, order: 1 }]) // [], there are fewer than a hundred
 */
export function thinned(states: readonly Thinnable[]): number[] {
  const left = withSaves(states.filter(({ older }) => !older));
  const gone: number[] = [];
  while (left.length > mostStates) {
    const [out] = left.splice(leastMissed(left), 1);
    gone.push(out!.at);
  }
  return gone;
}

interface Counted {
  readonly at: number;
  readonly save: number;
}

function leastMissed(states: readonly Counted[]): number {
  const newest = states[0]!.save;
  let least = newestKept;
  let leastGap = Infinity;
  for (let at = newestKept; at < states.length - 1; at++) {
    const gap = (states[at - 1]!.save - states[at + 1]!.save) / (newest - states[at]!.save + 1);
    if (gap >= leastGap) continue;
    least = at;
    leastGap = gap;
  }
  return least;
}

/** The number of the save of each state. Those without one are older than the rest, and share what comes before it. */
function withSaves(states: readonly Thinnable[]): Counted[] {
  const without = states.filter(({ order }) => order === undefined).length;
  const oldest = states.findLast(({ order }) => order !== undefined)?.order ?? without + 1;
  let older = without;
  return states.map(({ at, order }) => ({ at, save: order ?? (oldest * older--) / (without + 1) }));
}

/** Whether a write at a time begins a new span of five minutes, so that what stood there before it is remembered. */
export function beginsSpan(before: number, now: number): boolean {
  return Math.floor(before / finestSpacing) !== Math.floor(now / finestSpacing);
}

/** Earlier states in the order in which they were written, the newest first, however the clock was set meanwhile. */
export function newestFirst<State extends Thinnable>(states: readonly State[]): State[] {
  const save = ({ order }: State): number => order ?? -1;
  return [...states].sort((one, other) => save(other) - save(one) || other.at - one.at);
}
