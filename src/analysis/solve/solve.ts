import { intervalsOf, type Interval, type Tries } from './intervals';
import { pointsOf, type Search } from './search';
import { servesMost, type Serving } from './serves-most';
import { edge, meets, sideOf, type Outcome, type Wish } from './goal';

/** Where a result comes nearest to a wish that nothing meets. */
export interface Near {
  readonly result: number;
  readonly intervals: readonly Interval[];
}

/** What was found for one size. */
export interface FoundInSize {
  /** Where the wish is met, in order; where the nearest is wished, where that is. */
  readonly intervals: readonly Interval[];
  /** By how much the result then misses a wish for the nearest. */
  readonly off: number;
  /** Where a value is wished and none meets it: the nearest results below and above. */
  readonly below?: Near;
  readonly above?: Near;
  /** Whether anything could be worked at all, and whether it was ever another than at the first value. */
  readonly worked: boolean;
  readonly moves: boolean;
}

export interface Solved {
  readonly sizes: readonly FoundInSize[];
  /** The values that serve most sizes, the widest stretch first. */
  readonly most: readonly Serving[];
  /** How far apart the values stood that were tried first. */
  readonly step: number;
}

export interface SolveRequest {
  readonly search: Search;
  readonly wish: Wish;
  /** How many sizes there are. */
  readonly sizes: number;
  readonly tries: Tries<Outcome>;
  /** Told how much of the first trying is done, from 0 to 1. */
  readonly progress?: (part: number) => void;
  readonly signal?: AbortSignal;
}

/** Values that are tried in one go: few enough to be stopped soon, and to let what a person types come between. */
const atOnce = 60;

/**
 * From a wished result back to the values of an input that give it: all the intervals of the input between two bounds
 * that are wider than the step, in every size, their ends to within 1e-6.
 *
 * Results are steps more often than lines, so nothing is assumed of them but that what is narrower than a step may be
 * passed over. Every step is tried, then wherever the wish begins or ceases to be met the place is found by halving.
 * Between two values whose results lie on either side of the wish, halving also finds a meeting that is narrower.
 *
 * @throws DOMException 'AbortError' once `signal` is aborted
 */
export async function solve({ search, wish, sizes, tries, progress, signal }: SolveRequest): Promise<Solved> {
  const asking: Tries<Outcome> = async (samples) => {
    signal?.throwIfAborted();
    return tries(samples);
  };
  let points = pointsOf(search);
  let outcomes = await scanned(points, sizes, asking, progress);
  const met = outcomes.map((row) => row.map((outcome) => meets(wish, outcome)));
  const crossings = await crossed(points, outcomes, wish, asking, search.whole ?? false);
  if (crossings.length > 0) {
    // What lies between the points is put among them.
    const extra = [...new Set(crossings.map(({ value }) => value))].filter(
      (value) => !points.includes(value),
    );
    const more = await scanned(extra, sizes, asking);
    const all = [
      ...points.map((value, at) => ({ value, at })),
      ...extra.map((value, at) => ({ value, at: -1 - at })),
    ];
    all.sort((a, b) => a.value - b.value);
    const rowOf = (size: number): Outcome[] =>
      all.map(({ at }) => (at >= 0 ? outcomes[size]![at] : more[size]![-1 - at]));
    outcomes = outcomes.map((_row, size) => rowOf(size));
    points = all.map(({ value }) => value);
    met.splice(0, met.length, ...outcomes.map((row) => row.map((outcome) => meets(wish, outcome))));
  }
  const wholes = search.whole ?? false;
  const found = await intervalsOf(
    points,
    met,
    truthOf(asking, (outcome) => meets(wish, outcome)),
    wholes,
  );
  const perSize: FoundInSize[] = [];
  for (let size = 0; size < sizes; size++) {
    const row = outcomes[size]!;
    const base = {
      intervals: found[size]!,
      off: 0,
      worked: row.some((outcome) => outcome !== undefined),
      moves: row.some((outcome) => outcome !== row[0]),
    };
    if (wish.wish === 'holds' || base.intervals.length > 0) {
      perSize.push(base);
      continue;
    }
    const near = async (way: -1 | 1): Promise<Near | undefined> => {
      const best = nearest(row, wish.value, way);
      if (best === undefined) return undefined;
      // As near as the best, or by as much further as is no difference to the person.
      const asNear = (outcome: Outcome): boolean =>
        typeof outcome === 'number' &&
        (outcome - wish.value) * way > 0 &&
        Math.abs(outcome - best) <= wish.within + edge(best);
      const holds: Tries<boolean> = (list) =>
        truthOf(asking, asNear)(list.map(({ value }) => ({ size, value })));
      const [intervals] = await intervalsOf(points, [row.map(asNear)], holds, wholes);
      return { result: best, intervals: intervals! };
    };
    const below = await near(-1);
    const above = await near(1);
    perSize.push(
      wish.wish === 'nearest'
        ? theNearer(base, wish.value, below, above)
        : { ...base, ...sides(below, above) },
    );
  }
  return { sizes: perSize, most: servesMost(perSize.map(({ intervals }) => intervals)), step: search.step };
}

function sides(below: Near | undefined, above: Near | undefined): Pick<FoundInSize, 'below' | 'above'> {
  return { ...(below ? { below } : {}), ...(above ? { above } : {}) };
}

function theNearer(base: FoundInSize, value: number, below?: Near, above?: Near): FoundInSize {
  const under = below ? value - below.result : Infinity;
  const over = above ? above.result - value : Infinity;
  if (under === Infinity && over === Infinity) return base;
  if (Math.abs(under - over) <= edge(value)) {
    const both = [...below!.intervals, ...above!.intervals].sort((a, b) => a.from - b.from);
    return { ...base, intervals: both, off: over };
  }
  return under < over
    ? { ...base, intervals: below!.intervals, off: -under }
    : { ...base, intervals: above!.intervals, off: over };
}

/** The outcome of every point in every size: a row to a size. */
async function scanned(
  points: readonly number[],
  sizes: number,
  tries: Tries<Outcome>,
  progress?: (part: number) => void,
): Promise<Outcome[][]> {
  const rows: Outcome[][] = Array.from({ length: sizes }, () => []);
  for (let at = 0; at < points.length; at += atOnce) {
    const some = points.slice(at, at + atOnce);
    const wanted = some.flatMap((value) => rows.map((_row, size) => ({ size, value })));
    const answers = await tries(wanted);
    wanted.forEach(({ size }, index) => rows[size]!.push(answers[index]));
    progress?.(Math.min(1, (at + some.length) / points.length));
  }
  return rows;
}

interface Bracket {
  readonly size: number;
  low: number;
  high: number;
  readonly lowSide: -1 | 1;
}

/**
 * The values nearest to where a result passes the wished value between two points without meeting it at either: the two
 * sides of a leap, or a value that meets it.
 */
async function crossed(
  points: readonly number[],
  outcomes: readonly (readonly Outcome[])[],
  wish: Wish,
  tries: Tries<Outcome>,
  whole: boolean,
): Promise<{ size: number; value: number }[]> {
  if (whole && points.every((point, at) => at === 0 || point - points[at - 1]! <= 1)) return [];
  let open: Bracket[] = outcomes.flatMap((row, size) =>
    row.flatMap((outcome, at): Bracket[] => {
      if (at === 0) return [];
      const [before, now] = [sideOf(wish, row[at - 1]), sideOf(wish, outcome)];
      if (before === 0 || now === 0 || before === now) return [];
      return [{ size, low: points[at - 1]!, high: points[at]!, lowSide: before }];
    }),
  );
  const found: { size: number; value: number }[] = [];
  while (open.length > 0) {
    const middles = open.map(({ low, high }) => (whole ? Math.round((low + high) / 2) : (low + high) / 2));
    const answers = await tries(open.map(({ size }, at) => ({ size, value: middles[at]! })));
    open = open.filter((bracket, at) => {
      const middle = middles[at]!;
      const side = sideOf(wish, answers[at]);
      if (side === 0) {
        if (meets(wish, answers[at])) found.push({ size: bracket.size, value: middle });
        return false;
      }
      if (side === bracket.lowSide) bracket.low = middle;
      else bracket.high = middle;
      if (bracket.high - bracket.low > (whole ? 1 : edge(bracket.high))) return true;
      found.push({ size: bracket.size, value: bracket.low }, { size: bracket.size, value: bracket.high });
      return false;
    });
  }
  return found;
}

function truthOf(tries: Tries<Outcome>, is: (outcome: Outcome) => boolean): Tries<boolean> {
  return async (samples) => (await tries(samples)).map(is);
}

/** The outcome nearest to a value on one side of it. */
function nearest(row: readonly Outcome[], value: number, way: -1 | 1): number | undefined {
  let best: number | undefined;
  for (const outcome of row) {
    if (typeof outcome !== 'number' || (outcome - value) * way <= 0) continue;
    if (best === undefined || (best - outcome) * way > 0) best = outcome;
  }
  return best;
}
