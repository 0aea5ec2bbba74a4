import { taper, whole, type Order } from '../../../craft';
import { inGroups } from '../../../notebook/steps';
import { shapedEvery } from '../../../notebook/shaped-every';
import { plainOf, rowsOf, stitchesOf, textOf, type Amount } from '../amount';
import type { Work } from '../work';
import { withRemainder } from './division';

/** A taper as a formula asks for it. */
export interface AskedTaper {
  readonly from: number;
  readonly to: number;
  readonly over: number;
  readonly perRow: number;
  readonly every: 1 | 2;
  readonly before: number;
  readonly after: number;
  readonly order: Order;
}

/** A taper worked out: the shaping rows there are, the rows there are for them, and the division that spreads them. */
export function tapered(work: Work, plan: AskedTaper, startsOn: 'RS' | 'WS' = 'RS'): Amount {
  const { intervals, shapingRows } = taper({ ...plan, startsOn });
  const by = Math.abs(plan.from - plan.to);
  const more = plan.from > plan.to ? 'fewer' : 'more';
  const sts = (count: number): string => work.write(stitchesOf(count));
  if (shapingRows.length === 0) return work.say(`${sts(plan.from)} to ${sts(plan.to)}`, textOf('no shaping'));
  const change = work.say(`from ${sts(plan.from)} to ${sts(plan.to)}`, stitchesOf(by), {
    answer: `${sts(by)} ${more}`,
  });
  const shapings = work.say(
    work.tell`${change} ÷ ${sts(plan.perRow)} a shaping row`,
    plainOf(shapingRows.length),
    { answer: `${shapingRows.length} shaping ${shapingRows.length === 1 ? 'row' : 'rows'}` },
  );
  const all = plan.over - plan.before - plan.after;
  let room = rowsOf(plan.over);
  if (plan.before + plan.after > 0) {
    const plain = [plan.before, plan.after]
      .filter((count) => count > 0)
      .map((count) => work.write(rowsOf(count)));
    room = work.say(work.tell`${room} − ${plain.join(' − ')} plain`, rowsOf(all));
  }
  const units = Math.floor(all / plan.every);
  if (plan.every === 2) work.say(work.tell`${room} ÷ 2, right-side rows only`, plainOf(units));
  const pairs = plan.every === 2 ? `${units} pairs of rows` : work.write(room);
  withRemainder(work, pairs, work.write(shapings), units, shapingRows.length);
  const text = inGroups(intervals.map(shapedEvery));
  return work.say('so shape', textOf(text));
}

/** What stands in the arguments of a taper: seven numbers, and its order. */
export function askedTaper(values: readonly number[], order: string): AskedTaper {
  const [from, to, over, perRow, every, before, after] = values.map((one) => whole(one));
  return {
    from: from!,
    to: to!,
    over: over!,
    perRow: perRow!,
    every: every as 1 | 2,
    before: before!,
    after: after!,
    order: order as Order,
  };
}
