import { taper, type Order } from '../../craft';

/** Where a taper is shaped in one size. */
export interface TaperBySize {
  readonly from: number;
  readonly shaped: readonly number[];
  readonly over: number;
  /** The side of its first row, or a round. */
  readonly startsOn: 'RS' | 'WS' | 'round';
}

export interface TaperPlan {
  readonly every: 1 | 2;
  readonly order: Order;
  readonly before: readonly number[];
  readonly after: readonly number[];
}

/**
 * The plan of a taper whose shaping falls on just the rows that a pattern prints, in every size: plain rows before and
 * after, and intervals that differ by one step. Undefined where no such taper has these rows.
 *
 * @example rows 6, 12, 18, 22 of 22 in one size: every 1, longer intervals first? No: 6 and 4 differ by two, so every 2.
 */
export function taperPlan(
  sizes: readonly TaperBySize[],
  perRow: number,
  way: 'dec' | 'inc',
): TaperPlan | undefined {
  const flat = sizes.some(({ startsOn }) => startsOn !== 'round');
  for (const every of flat ? ([2, 1] as const) : ([1] as const)) {
    for (const order of ['longFirst', 'shortFirst', 'spread'] as const) {
      const plain = sizes.map((size) => plainRows(size, perRow, way, every, order));
      if (plain.every((one) => one !== undefined)) {
        return {
          every,
          order,
          before: plain.map(({ before }) => before),
          after: plain.map(({ after }) => after),
        };
      }
    }
  }
  return undefined;
}

function plainRows(
  { from, shaped, over, startsOn }: TaperBySize,
  perRow: number,
  way: 'dec' | 'inc',
  every: 1 | 2,
  order: Order,
): { before: number; after: number } | undefined {
  if (shaped.length === 0) return { before: 0, after: 0 };
  const [first, last] = [shaped[0]!, shaped.at(-1)!];
  const to = from + (way === 'dec' ? -1 : 1) * perRow * shaped.length;
  if (to < 1) return undefined;
  const widest = Math.max(first, ...shaped.slice(1).map((row, at) => row - shaped[at]!));
  for (let before = Math.max(0, first - widest); before < first; before++) {
    for (let after = over - last; after >= Math.max(0, over - last - every); after--) {
      try {
        const plan = taper({
          from,
          to,
          over,
          perRow,
          every,
          before,
          after,
          order,
          ...(startsOn === 'WS' ? { startsOn } : {}),
        });
        // In the round every row is a right-side row, so only flat tapers keep to them.
        if (plan.shapingRows.every((row, at) => row === shaped[at])) return { before, after };
      } catch {
        // Fewer rows than the shaping takes, with so many plain ones.
      }
    }
  }
  return undefined;
}
