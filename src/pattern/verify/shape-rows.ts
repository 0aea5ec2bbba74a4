import * as forms from './forms';
import { amount } from './forms';
import { readInstruction } from './instruction';
import { readShaping } from './shaping';
import type { Tally } from './tally';
import { workInstruction } from './work-instruction';

/** The first row of a taper, by its number, and the stitches before and after it. */
export interface Taper {
  readonly before: number;
  readonly after: number;
  readonly row: number;
}

/** Which way a row is shaped, as a sign. */
export const sign = (way: string): number => (way.toLowerCase() === 'dec' ? -1 : 1);

/** Stitches added at the ends of a row that is worked even; less than 0 where they are left. */
export function endsOf(content: string): { start: number; end: number } | undefined {
  const left = forms.leftOnRow.exec(content);
  if (left) return { start: -amount(left[1]), end: -amount(left[2]) };
  const added = forms.addedOnRow.exec(content);
  return added ? { start: amount(added[1]), end: amount(added[2]) } : undefined;
}

/**
 * The count after a row worked on so many stitches, or why it cannot be told.
 *
 * @example rowAfter('dec 1 st in each of the 6 repeats', 51) // 45
 */
export function rowAfter(content: string, before: number): number | { readonly problem: string } {
  const repeats = forms.inRepeats.exec(content);
  if (repeats) return before + sign(repeats[1]!) * amount(repeats[2]) * amount(repeats[3] ?? '1');
  const ends = endsOf(content);
  if (ends) return before + ends.start + ends.end;
  const evenly = forms.evenly.exec(content);
  if (evenly) return before + sign(evenly[1]!) * amount(evenly[2]);
  const parts = readInstruction(content);
  if ('problem' in parts) return parts;
  const counted = workInstruction(parts, before);
  return 'problem' in counted ? counted : counted.count;
}

/**
 * Works the rows of a shaping line.
 *
 * @param putRow is told the first row that is shaped, by its number
 * @returns that row; undefined where the line could not be read or its first row not be worked
 */
export function shapeRows(text: string, tally: Tally, putRow: (row: number) => void): Taper | undefined {
  const shaping = readShaping(text);
  if ('problem' in shaping) {
    tally.wrong(shaping.problem);
    return undefined;
  }
  const before = tally.have();
  if (before === undefined) return undefined;
  const by = sign(shaping.way) * shaping.perRow;
  const shaped = (): boolean => {
    const left = tally.count!;
    if (left + by < 1) {
      tally.wrong(`It takes away more stitches than there are: ${left} are left.`);
      return false;
    }
    tally.to(left + by);
    tally.rows(1);
    return !tally.isFull;
  };
  const lead = shaping.next ? 1 : (shaping.intervals[0]?.every ?? 1);
  const row = tally.counts.length + lead;
  if (shaping.next || shaping.intervals.length > 0) putRow(row);
  if (shaping.next && !shaped()) return undefined;
  const taper = { before, after: before + by, row };
  for (const { every, times } of shaping.intervals) {
    for (let time = 0; time < times; time++) {
      tally.rows(every - 1);
      if (!shaped()) return taper;
    }
  }
  return taper;
}

/** What is wrong with how the first row of a taper is told, stitch by stitch. */
export function problemsOfFirst(content: string, each: string, taper: Taper): string[] {
  const after = rowAfter(content, taper.before);
  if (typeof after !== 'number') return [after.problem];
  const [says, does] = [/^fewer/iu.test(each), taper.after < taper.before].map((fewer) =>
    fewer ? 'decreases' : 'increases',
  );
  return [
    ...(says === does ? [] : [`It speaks of ${says}, and the shaping before it ${does}.`]),
    ...(after === taper.after
      ? []
      : [`It gives ${after} stitches, and the shaping before it ${taper.after}.`]),
  ];
}

/** Works rows of which those that are shaped are named one by one. @param putRow as in `shapeRows` */
export function shapeNamedRows(
  over: number,
  text: string,
  tally: Tally,
  putRow: (row: number) => void,
): void {
  if (tally.have() === undefined) return;
  if (/^work even$/iu.test(text)) return tally.rows(over);
  const found = forms.onNamedRows.exec(text);
  if (!found) return tally.wrong(`“${text.slice(0, 120)}” could not be read.`);
  const shaping = readShaping(`${found[1]!} on the next row`);
  if ('problem' in shaping) return tally.wrong(shaping.problem);
  // Before the rows are named one by one: a text may say that there are a million millions.
  if (!tally.room(over)) return;
  const rows = new Set<number>();
  for (const part of found[2]!.split(/\s*(?:,|and)\s*/u)) {
    const [from, to = from] = part.split(/\s*[–-]\s*/u).map(Number);
    if (!from || !to || to > over || to < from)
      return tally.wrong(`There is no row ${part.trim()} among ${over}.`);
    for (let row = from; row <= to; row++) rows.add(row);
  }
  putRow(tally.counts.length + Math.min(...rows));
  for (let row = 1; row <= over; row++) {
    if (rows.has(row)) tally.to(tally.count! + sign(shaping.way) * shaping.perRow);
    tally.rows(1);
  }
}
