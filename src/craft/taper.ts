import { CraftError } from './craft-error';
import { message } from './message';
import { numberParam } from './message-parts';
import { evenParts } from './even-parts';
import { mostRows, oneOf, rows, stitches, wholeCount } from './numbers';
import type { Order, TaperPlan } from './types';

type Side = 'RS' | 'WS' | 'round';

/** Where the shaping of a taper falls: see `taper`. */
export interface Taper {
  /** Rows on which shaping is worked, from 1. */
  shapingRows: number[];
  /**
   * Intervals in working order: `times` of them, each of `every` rows. The last may want its wrong-side row where
   * every right-side row is shaped and the last row is one.
   */
  intervals: { every: number; times: number }[];
  /** The count after each row. */
  counts: number[];
}

/**
 * A taper: a change of count spread over rows, as evenly as whole rows allow.
 *
 * Of `over` rows the first `before` and the last `after` are plain. Each shaping row changes the count by `perRow`.
 * The rows between are cut into as many intervals as there are shaping rows; intervals differ by at most one `every`,
 * and rows that make no whole `every` stay plain at the end.
 *
 * `every: 1` shapes on any row, the last of its interval. `every: 2` keeps shaping to right-side rows: the last
 * right-side row of its interval. Where there are just as many right-side rows as shapings, each is shaped. `order` says whether the longer intervals come first (the default), last, or
 * spread among the shorter, which draws the straightest line.
 *
 * @param o.from the count before the taper; @param o.to the count after it: each 1 or more
 * @param o.startsOn the side of the first row, 'RS' unless told
 * @throws CraftError where the difference is not a multiple of `perRow` (offering the two nearest), where the rows
 *   are too few (saying how many would do), and beyond 1 000 000 rows
 * @example
 * taper({ from: 63, to: 43, over: 60, perRow: 2, every: 1, before: 0, after: 0 })
 * // { shapingRows: [6, 12, … 60], intervals: [{ every: 6, times: 10 }], counts: [63, … 43] }
 * taper({ from: 10, to: 6, over: 11, perRow: 2, every: 1, before: 0, after: 0 })
 * // { shapingRows: [6, 11], intervals: [{ every: 6, times: 1 }, { every: 5, times: 1 }], … }
 * taper({ from: 10, to: 6, over: 3, perRow: 2, every: 2, before: 0, after: 0 })
 * // { shapingRows: [1, 3], intervals: [{ every: 2, times: 2 }], counts: [8, 8, 6] }
 *
 * Source: common practice; 'spread' is Bresenham's line.
 */
export function taper(o: TaperPlan & { from: number; startsOn?: 'RS' | 'WS' }): Taper {
  const startsOn = oneOf(o.startsOn ?? 'RS', ['RS', 'WS'], 'The side of the first row');
  return taperFrom(o, startsOn);
}

/** The same where the first row may be a round: every round is a right-side row. */
export function taperFrom(o: TaperPlan & { from: number }, startsOn: Side): Taper {
  const from = stitches(o.from, 'The count before a taper');
  const to = stitches(o.to, 'The count after a taper');
  const over = rows(o.over, 'The rows of a taper');
  const before = rows(o.before, 'The plain rows before a taper');
  const after = rows(o.after, 'The plain rows after a taper');
  const perRow = wholeCount(o.perRow, 'The stitches shaped on one row', 1);
  if (o.every !== 1 && o.every !== 2) {
    throw new CraftError(
      'not-a-choice',
      'Shaping falls on every row (1) or on every second (2); not on {every}.',
      { every: numberParam(o.every) },
    );
  }
  const every: 1 | 2 = o.every;
  const order = oneOf(
    o.order ?? 'longFirst',
    ['longFirst', 'shortFirst', 'spread'],
    'The order of the intervals',
  );
  if (over > mostRows) {
    throw new CraftError(
      'too-many',
      'A taper over {over} rows is too long to work out: {mostRows} rows are the most.',
      { over, mostRows },
    );
  }

  const shapings = shapingRowsFor(from, to, perRow);
  const free = over - before - after;
  // A right-side row at either end makes one right-side row more than there are pairs of rows.
  const spared = every === 2 && sideOf(before + 1, startsOn) === 'RS' ? 1 : 0;
  if (free < 0 || free < shapings * every - spared) {
    throw tooFewRows({ from, to, over, perRow, every, before, after }, shapings, spared);
  }

  const units = Math.max(Math.floor(free / every), shapings);
  const lengths = intervalLengths(shapings, units, order).map((length) => length * every);
  const shapingRows: number[] = [];
  let end: number = before;
  for (const length of lengths) {
    end += length;
    shapingRows.push(every === 2 && sideOf(end, startsOn) === 'WS' ? end - 1 : end);
  }
  return { shapingRows, intervals: runs(lengths), counts: countsAfter(from, to, over, perRow, shapingRows) };
}

function shapingRowsFor(from: number, to: number, perRow: number): number {
  const apart = Math.abs(from - to);
  if (apart % perRow === 0) return apart / perRow;
  const way = Math.sign(to - from);
  const short = from + way * perRow * Math.floor(apart / perRow);
  const long = short + way * perRow;
  const offered =
    short < 1 ? long : long < 1 ? short : message('either', '{short} or {long}', { short, long });
  throw new CraftError(
    'not-a-multiple',
    'From {from} to {to} is {apart, plural, one {# stitch} other {# stitches}}, which {perRow} on a row do not divide: end on {offered}, or start {nearer} nearer.',
    { from, to, apart, perRow, offered, nearer: apart % perRow },
  );
}

function tooFewRows(o: TaperPlan & { from: number }, shapings: number, spared: number): CraftError {
  const plain = o.before + o.after;
  if (shapings === 0) {
    return new CraftError(
      'too-few-rows',
      '{before, plural, one {# plain row} other {# plain rows}} before and {after} after make {plain}, more than the {over, plural, one {# row} other {# rows}} there {over, plural, one {is} other {are}}: work {plain} or more, or fewer plain ones.',
      { before: o.before, after: o.after, plain, over: o.over },
    );
  }
  const least = plain + shapings * o.every - spared;
  const stayPlain =
    plain > 0
      ? message('plain', ' of which {plain, plural, one {# stays} other {# stay}} plain', { plain })
      : '';
  const alternatives = [
    o.every === 2 ? 'shape on every row instead of every second' : '',
    plain > 0 ? 'leave fewer plain rows' : '',
    'shape more stitches on a row',
    'or change the count by less',
  ].filter(Boolean);
  return new CraftError(
    'too-few-rows',
    'From {from} to {to} takes {shapings, plural, one {# shaping row} other {# shaping rows}}, too many for {over, plural, one {# row} other {# rows}}{stayPlain}: {least, plural, one {# row} other {# rows}} would do. Or {ways}.',
    { from: o.from, to: o.to, shapings, over: o.over, stayPlain, least, ways: alternatives.join(', ') },
  );
}

/** The length of each interval in units of `every` rows: `units` shared among `shapings`, differing by at most one. */
function intervalLengths(shapings: number, units: number, order: Order): number[] {
  if (shapings === 0) return [];
  if (order === 'spread') return evenParts(units, shapings);
  const short = Math.floor(units / shapings);
  const longer = units % shapings;
  return Array.from({ length: shapings }, (_, i) => {
    const isLong = order === 'longFirst' ? i < longer : i >= shapings - longer;
    return isLong ? short + 1 : short;
  });
}

function sideOf(row: number, startsOn: Side): Side {
  if (startsOn === 'round' || row % 2 === 1) return startsOn;
  return startsOn === 'RS' ? 'WS' : 'RS';
}

function runs(lengths: number[]): { every: number; times: number }[] {
  const found: { every: number; times: number }[] = [];
  for (const every of lengths) {
    const last = found.at(-1);
    if (last?.every === every) last.times += 1;
    else found.push({ every, times: 1 });
  }
  return found;
}

function countsAfter(
  from: number,
  to: number,
  over: number,
  perRow: number,
  shapingRows: number[],
): number[] {
  const step = Math.sign(to - from) * perRow;
  let count = from;
  let next = 0;
  return Array.from({ length: over }, (_, i) => {
    if (shapingRows[next] === i + 1) {
      count += step;
      next += 1;
    }
    return count;
  });
}
