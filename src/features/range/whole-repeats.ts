import type { Change } from '../../notebook';
import { trialNumber, type CellRef, type TrialsWatch, type WorkTrials } from '../../engine';

/** A value of the input at which a repeat fit has nothing to round in a size. */
export interface WholeRepeat {
  readonly size: string;
  readonly value: number;
  /** The count, which is then the wanted one. */
  readonly count: number;
}

/** Where a wanted count crosses one that is allowed, between two values of the input. */
interface Crossing {
  readonly size: number;
  readonly count: number;
  low: number;
  high: number;
  /** By how much the wanted count is off at the two ends; of opposite signs. */
  atLow: number;
  atHigh: number;
  /** Which end stayed where it was the last time. */
  stayed: 'low' | 'high' | null;
}

const whole = 1e-9;
const mostTurns = 60;

/**
 * The values within a range of an input at which the wanted count of a repeat fit is itself allowed: at its steps, and
 * between two steps where the wanted count goes through an allowed one, found by the regula falsi in its Illinois form
 * (Dowell and Jarratt, BIT 11, 1971) with every try worked by the sheet.
 *
 * @param input what moves; `size` is null where it moves in every size
 * @param values the steps, in order
 */
export async function wholeRepeats(
  work: WorkTrials,
  input: CellRef & { readonly size: string | null },
  fit: string,
  sizes: readonly string[],
  values: readonly number[],
  watch: TrialsWatch = {},
): Promise<WholeRepeat[]> {
  const change = (value: number): Change => ({ cell: input.cell, key: input.key, size: input.size, value });
  const wanted = ['count', 'target', 'multiple'].map((key) => ({ cell: fit, key }));
  const scan = await work({ trials: values.map((value) => [change(value)]), wanted, sizes }, watch);
  const found: WholeRepeat[] = [];
  let open: Crossing[] = [];
  for (const [size, id] of sizes.entries()) {
    for (let at = 0; at < scan.done; at++) {
      const [count, target, multiple] = [0, 1, 2].map((index) => trialNumber(scan, at, size, index));
      if (count === undefined || target === undefined) continue;
      if (Math.abs(count - target) <= whole) found.push({ size: id, value: values[at]!, count });
      const [nextCount, next] = [0, 1].map((index) => trialNumber(scan, at + 1, size, index));
      if (nextCount === undefined || next === undefined) continue;
      for (const allowed of between(count, nextCount, multiple)) {
        const [atLow, atHigh] = [target - allowed, next - allowed];
        if (Math.abs(atLow) <= whole || Math.abs(atHigh) <= whole || atLow * atHigh > 0) continue;
        const [low, high] = [values[at]!, values[at + 1]!];
        open.push({ size, count: allowed, low, high, atLow, atHigh, stayed: null });
      }
    }
  }
  for (let turn = 0; turn < mostTurns && open.length > 0 && !watch.signal?.aborted; turn++) {
    const tries = open.map(tryOf);
    const ids = [...new Set(open.map(({ size }) => sizes[size]!))];
    const tried = await work({ trials: tries.map((value) => [change(value)]), wanted, sizes: ids }, watch);
    const left: Crossing[] = [];
    for (const [at, crossing] of open.entries()) {
      const size = ids.indexOf(sizes[crossing.size]!);
      const target = trialNumber(tried, at, size, 1);
      if (target === undefined) continue;
      const off = target - crossing.count;
      if (Math.abs(off) > whole) {
        if (narrowed(crossing, tries[at]!, off)) left.push(crossing);
      } else if (trialNumber(tried, at, size, 0) === crossing.count) {
        found.push({ size: sizes[crossing.size]!, value: tries[at]!, count: crossing.count });
      }
    }
    open = left;
  }
  const order = new Map(sizes.map((id, at) => [id, at]));
  return found.sort((a, b) => order.get(a.size)! - order.get(b.size)! || a.value - b.value);
}

/** The allowed counts from one to another: a repeat apart, where that is known. */
function between(one: number, other: number, multiple: number | undefined): number[] {
  const [low, high] = [Math.min(one, other), Math.max(one, other)];
  if (!multiple || multiple < 1 || (high - low) / multiple > 1000) return low === high ? [low] : [low, high];
  const counts: number[] = [];
  for (let count = low; count <= high; count += multiple) counts.push(count);
  return counts;
}

function tryOf({ low, high, atLow, atHigh }: Crossing): number {
  const at = low - (atLow * (high - low)) / (atHigh - atLow);
  const rounded = Number(at.toPrecision(12));
  return rounded > low && rounded < high ? rounded : (low + high) / 2;
}

/** Takes a try in as the new end on its side; tells whether there is still anything between the ends. */
function narrowed(crossing: Crossing, at: number, off: number): boolean {
  if (off * crossing.atLow > 0) {
    crossing.low = at;
    crossing.atLow = off;
    if (crossing.stayed === 'high') crossing.atHigh /= 2;
    crossing.stayed = 'high';
  } else {
    crossing.high = at;
    crossing.atHigh = off;
    if (crossing.stayed === 'low') crossing.atLow /= 2;
    crossing.stayed = 'low';
  }
  return crossing.high - crossing.low > 1e-11 * Math.max(1, Math.abs(crossing.high));
}

/** The values that serve every size, as far as the found ones agree to within a ten-millionth. */
export function inEverySize(found: readonly WholeRepeat[], sizes: readonly string[]): number[] {
  const values = [...new Set(found.map(({ value }) => value))];
  const near = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-7 * Math.max(1, Math.abs(a));
  return values.filter(
    (value, at) =>
      !values.slice(0, at).some((other) => near(other, value)) &&
      sizes.every((size) => found.some((one) => one.size === size && near(one.value, value))),
  );
}
