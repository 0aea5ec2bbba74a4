import { taper, whole, type Order } from '../../craft';
import { inGroups, shapedEvery } from '..';
import { numberIn, plainOf, rowsOf, stitchesOf, textOf, type Amount } from '../../explain/amount';
import type { Work } from '../../explain/work';
import { withRemainder } from './division.explain';

/** A taper as a formula asks for it. */
export interface TaperRequest {
  readonly from: Amount;
  readonly to: Amount;
  readonly over: Amount;
  readonly perRow: Amount;
  readonly every: 1 | 2;
  readonly before: Amount;
  readonly after: Amount;
  readonly order: Order;
}

/**
 * A taper worked out: the shaping rows there are, the rows there are for them, and the division that spreads them. None
 * of it depends on the side of the first row, which only moves a shaping row inside its interval (and a formula counts
 * from a right-side row).
 */
export function tapered(work: Work, request: TaperRequest): Amount {
  const { every, order } = request;
  const [from, to, over, perRow, before, after] = [
    request.from,
    request.to,
    request.over,
    request.perRow,
    request.before,
    request.after,
  ].map((one) => whole(numberIn(one))) as [number, number, number, number, number, number];
  const { intervals, shapingRows } = taper({ from, to, over, perRow, every, before, after, order });
  const by = Math.abs(from - to);
  const more = from > to ? 'fewer' : 'more';
  if (shapingRows.length === 0)
    return work.say(work.words`${request.from} to ${request.to}`, textOf('no shaping'));
  const change = work.say(work.words`from ${request.from} to ${request.to}`, stitchesOf(by), {
    answer: `${work.write(stitchesOf(by))} ${more}`,
  });
  const shapings = work.say(
    work.words`${change} ÷ ${request.perRow} a shaping row`,
    plainOf(shapingRows.length),
    { answer: `${shapingRows.length} shaping ${shapingRows.length === 1 ? 'row' : 'rows'}` },
  );
  const all = over - before - after;
  let room = request.over;
  const plain = [request.before, request.after].filter((rows) => numberIn(rows) > 0);
  if (plain.length > 0)
    room = work.say(work.words`${room} − ${work.joined(plain, ' − ')} plain`, rowsOf(all));
  let units = all;
  let parts = work.words`${room}`;
  if (every === 2) {
    const pairs = Math.floor(all / every);
    units = Math.max(pairs, shapingRows.length);
    // With a right-side row at either end there is one right-side row more than there are pairs.
    parts =
      units > pairs
        ? work.words`${work.say(work.words`right-side rows of ${room}`, plainOf(units))} right-side rows`
        : work.words`${work.say(work.words`${room} ÷ 2, right-side rows only`, plainOf(units))} pairs of rows`;
  }
  withRemainder(work, parts, work.words`${shapings}`, units, shapingRows.length);
  const text = inGroups(intervals.map(shapedEvery));
  return work.say('so shape', textOf(text));
}

/** What stands in the arguments of a taper: from, to, over, each row, every, plain before and after, and its order. */
export function taperRequest(given: readonly Amount[], order: Amount): TaperRequest {
  const [from, to, over, perRow, every, before, after] = given as [
    Amount,
    Amount,
    Amount,
    Amount,
    Amount,
    Amount,
    Amount,
  ];
  return {
    from,
    to,
    over,
    perRow,
    every: whole(numberIn(every)) as 1 | 2,
    before,
    after,
    order: order.value as Order,
  };
}
