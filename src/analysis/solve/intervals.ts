/** Values of an input from one to another, both included; each of the two has been tried. */
export interface Interval {
  readonly from: number;
  readonly to: number;
}

/** One question: what comes of a value of the input in a size, by its place in the list of sizes. */
export interface Sample {
  readonly size: number;
  readonly value: number;
}

/** Answers questions, each in its place. */
export type Tries<Answer> = (samples: readonly Sample[]) => Promise<readonly Answer[]>;

/** How close to where it changes the end of an interval has to be. */
export const closeness = 1e-6;

interface Edge {
  readonly size: number;
  inside: number;
  outside: number;
}

/**
 * The intervals in which something is true, one list for each size, ends found by halving to within 1e-6.
 *
 * Between two points that are both true it is taken to be true, and between two that are not, not: an interval, or a
 * gap, that is narrower than the points stand apart can be passed over.
 *
 * @param points in order; @param truths of each size, at each point
 * @param whole between two points that follow each other there is nothing more to try
 */
export async function intervalsOf(
  points: readonly number[],
  truths: readonly (readonly boolean[])[],
  tries: Tries<boolean>,
  whole = false,
): Promise<Interval[][]> {
  const edges: Edge[] = [];
  const ends = truths.map((true_, size) => {
    const found: { from: number | Edge; to: number | Edge }[] = [];
    const edgeOf = (inside: number, outside: number): Edge => {
      const edge = { size, inside: points[inside]!, outside: points[outside]! };
      edges.push(edge);
      return edge;
    };
    for (let at = 0; at < points.length; at++) {
      if (!true_[at]) continue;
      const first = at;
      while (true_[at + 1]) at++;
      found.push({
        from: first === 0 ? points[0]! : edgeOf(first, first - 1),
        to: at === points.length - 1 ? points[at]! : edgeOf(at, at + 1),
      });
    }
    return found;
  });
  await narrow(edges, tries, whole);
  const end = (one: number | Edge): number => (typeof one === 'number' ? one : one.inside);
  return ends.map((found) => found.map(({ from, to }) => ({ from: end(from), to: end(to) })));
}

/** Halves every edge until its two sides are as close as they have to be. */
async function narrow(edges: readonly Edge[], tries: Tries<boolean>, whole: boolean): Promise<void> {
  for (;;) {
    const wide = edges.filter(({ inside, outside }) => {
      // Where values are so large that no number lies between, there is nothing to halve.
      const close = whole ? 1 : Math.max(closeness, 1e-12 * Math.abs(inside));
      return Math.abs(outside - inside) > close;
    });
    if (wide.length === 0) return;
    const middles = wide.map(({ inside, outside }) => {
      const middle = (inside + outside) / 2;
      return whole ? Math.round(middle) : middle;
    });
    const found = await tries(wide.map(({ size }, at) => ({ size, value: middles[at]! })));
    wide.forEach((edge, at) => {
      if (found[at]) edge.inside = middles[at]!;
      else edge.outside = middles[at]!;
    });
  }
}
