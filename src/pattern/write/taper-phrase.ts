import { joinWithAnd } from '../../format';
import { ordinals, sizeList, times, type BySize } from './size-list';

/** Where the shaping of a taper falls, by the row of the stretch, from 1. */
export interface TaperRows {
  readonly way: 'dec' | 'inc';
  readonly perRow: number;
  readonly rows: readonly number[];
  readonly over: number;
}

/** Rows from one shaping row to the next, so many times. */
export interface Run {
  readonly every: number;
  readonly times: number;
}

export type TaperForm =
  /** `lead` rows even; then every so many rows, counted from there. */
  | { readonly kind: 'every'; readonly lead: number; readonly runs: readonly Run[]; readonly tail: number }
  /** `lead` rows even, the next row shaped; then every so many rows from that. */
  | { readonly kind: 'next'; readonly lead: number; readonly runs: readonly Run[]; readonly tail: number }
  /** The rows one by one. */
  | { readonly kind: 'named' };

const mostRuns = 2;

function runsOf(gaps: readonly number[]): Run[] {
  const runs: { every: number; times: number }[] = [];
  for (const every of gaps) {
    const last = runs.at(-1);
    if (last?.every === every) last.times++;
    else runs.push({ every, times: 1 });
  }
  return runs;
}

/** The forms in which shaping rows can be told, the shortest first. */
export function taperForms({ rows, over }: TaperRows): TaperForm[] {
  const [first, second] = rows;
  if (first === undefined) return [];
  const gaps = rows.slice(1).map((row, at) => row - rows[at]!);
  const runs = runsOf(gaps);
  const tail = over - rows.at(-1)!;
  const forms: TaperForm[] = [];
  if (second !== undefined && first >= second - first && runs.length <= mostRuns) {
    const [firstRun, ...others] = runs as [Run, ...Run[]];
    forms.push({
      kind: 'every',
      lead: first - firstRun.every,
      runs: [{ every: firstRun.every, times: firstRun.times + 1 }, ...others],
      tail,
    });
  }
  if (runs.length <= mostRuns) forms.push({ kind: 'next', lead: first - 1, runs, tail });
  forms.push({ kind: 'named' });
  return forms;
}

/** "of every 6th (5th) row 8 (9) times, then of every 4th (–) row 5 (–) times" */
export function runsPhrase(runs: BySize<readonly Run[]>, row: string, on: 'of' | 'on'): string {
  const most = Math.max(...runs.map((list) => list?.length ?? 0));
  return Array.from({ length: most }, (_run, at) => {
    const every = runs.map((list) => list?.[at]?.every ?? null);
    const often = runs.map((list) => list?.[at]?.times ?? null);
    const which = every.every((value) => value === null || value === 1)
      ? `every ${row}`
      : `every ${ordinals(every)} ${row}`;
    return `${on} ${which} ${times(often)}`;
  }).join(', then ');
}

/** What sizes must agree in to share a line about runs: whether each run is on every row. */
export function runShape(runs: readonly Run[]): string {
  return runs.map(({ every }) => (every === 1 ? '1' : 'n')).join('');
}

/** "row 4", "rows 1–3, 5 and 7–9" */
export function rowNames(rows: readonly number[], row: string): string {
  const ranges: [number, number][] = [];
  for (const number of rows) {
    const last = ranges.at(-1);
    if (last && last[1] === number - 1) last[1] = number;
    else ranges.push([number, number]);
  }
  const named = ranges.flatMap(([from, to]) =>
    to === from ? [`${from}`] : to === from + 1 ? [`${from}`, `${to}`] : [`${from}–${to}`],
  );
  return `${rows.length === 1 ? row : `${row}s`} ${joinWithAnd(named)}`;
}

/**
 * Where on the row the stitches go, and how many each place takes: half of an even number at each end of a flat row.
 */
export function positionOf(
  perRow: number,
  worked: 'flat' | 'round',
  edge: string,
): { each: number; where: string; on: 'of' | 'on' } {
  if (worked === 'round') {
    if (perRow === 1) return { each: 1, where: 'at the marker', on: 'on' };
    if (perRow === 2) return { each: 1, where: 'at each side of the marker', on: 'on' };
    return { each: perRow, where: 'evenly around', on: 'on' };
  }
  if (perRow === 1) return { each: 1, where: `at the ${edge} edge`, on: 'on' };
  if (perRow % 2 === 0) return { each: perRow / 2, where: 'at each end', on: 'of' };
  return { each: perRow, where: 'evenly across', on: 'on' };
}

/** "Dec 1 st at each end", "Dec 2 (3) sts evenly around" */
export function shapingWords(way: 'dec' | 'inc', each: BySize<number>, where: string): string {
  const one = each.every((count) => count === null || count === 1);
  return `${way} ${sizeList(each)} ${one ? 'st' : 'sts'} ${where}`;
}
