import { gather, shapeEachRepeat, spaceEvenly, taper, type Order, whole } from '../../craft';
import { shapedEvery } from '../shaped-every';
import { inGroups, inSteps } from '../steps';
import type { TradeFunction } from './trade-function';

function spaced(from: number, to: number, worked: string, ends: string = 'half') {
  return spaceEvenly({
    from: whole(from),
    to: whole(to),
    worked: worked as 'flat' | 'round',
    ends: ends as 'half' | 'whole',
  });
}

function gathered(from: number, to: number, rounds: number) {
  return gather({ from: whole(from), to: whole(to), rounds: whole(rounds) }).steps;
}

/** Where shaping falls, across a row and over rows. */
export const shaping = {
  SPACING: (...given: Parameters<typeof spaced>) => inSteps(spaced(...given).plain.map(String)),
  SHAPINGS: (...given: Parameters<typeof spaced>) => spaced(...given).shapings,
  TAPEREVERY: (
    from: number,
    to: number,
    over: number,
    perRow: number,
    every: number,
    before: number,
    after: number,
    order: string,
  ) => {
    const { intervals } = taper({
      from: whole(from),
      to: whole(to),
      over: whole(over),
      perRow: whole(perRow),
      every: whole(every) as 1 | 2,
      before: whole(before),
      after: whole(after),
      order: order as Order,
    });
    if (intervals.length === 0) return 'no shaping';
    return inGroups(intervals.map(shapedEvery));
  },
  GATHER: (...given: Parameters<typeof gathered>) =>
    gathered(...given)
      .map(({ plain, count }) => `${plain} plain: ${count}`)
      .join('; '),
  GATHERED: (...given: Parameters<typeof gathered>) => gathered(...given).at(-1)!.count,
  SHAPEREPEATS: (count: number, repeats: number, by: number) =>
    shapeEachRepeat({ count: whole(count), repeats: whole(repeats), by: whole(by) }),
} satisfies Record<string, TradeFunction>;
