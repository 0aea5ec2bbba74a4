/** A shaping line as data: what is shaped on a row, and on which rows. */
export interface Shaping {
  readonly way: 'dec' | 'inc';
  /** Stitches of all places of the row together. */
  readonly perRow: number;
  /** Whether the first shaping falls on the very next row; `intervals` then count from it. */
  readonly next: boolean;
  /** In working order: `times` shaping rows, each the last of `every` rows. */
  readonly intervals: readonly { readonly every: number; readonly times: number }[];
}

const most = 100_000;
const number = String.raw`(?:\d+|–)`;
const what = new RegExp(
  String.raw`^(dec|inc)(?:rease)?\s+(${number})\s+(?:sts?|stitch(?:es)?)\b[\s,]*(.*)$`,
  'isu',
);
const forms: readonly (readonly [RegExp, number])[] = [
  [/^(?:at\s+)?(?:each|both)\s+(?:ends?|sides?|edges?)(?:\s+of\s+(?:the\s+)?(?:marker|m)\b)?\s*/iu, 2],
  [/^evenly(?:\s+(?:across|around|spaced))?\s*/iu, 1],
  [/^(?:at\s+)?(?:the\s+)?(?:marker|beg(?:inning)?|start|end)\s*/iu, 1],
  [/^(?:at\s+)?(?:the\s+)?\p{L}+\s+edge\s*/iu, 1],
];
const row = String.raw`(?:rows?|rounds?|rnds?)`;
const next = new RegExp(
  String.raw`^(?:of\s+|on\s+|in\s+)?(?:the\s+)?(?:next|foll(?:owing)?)\s+${row}$`,
  'iu',
);
const several = new RegExp(
  String.raw`^(?:of\s+|on\s+|in\s+)?(?:each\s+of\s+)?(?:the\s+)?next\s+(\d+)\s+${row}$`,
  'iu',
);
const every = new RegExp(
  String.raw`^(?:of\s+|on\s+|in\s+)?every\s+(?:foll(?:owing)?\s+)?(?:(\d+)(?:st|nd|rd|th)?\s+|(–)\s+|(other|alt(?:ernate)?)\s+)?(?:foll(?:owing)?\s+)?${row}\s+(?:(once|twice)|(?:(\d+|–)\s*(?:more\s+)?times?)|x\s*(\d+))(?:\s+more)?$`,
  'iu',
);

/**
 * Reads a shaping line, a size's own numbers in it.
 *
 * @example readShaping('dec 1 st each end of every 6th row 8 times, then every 4th row 5 times')
 * // { way: 'dec', perRow: 2, next: false, intervals: [{ every: 6, times: 8 }, { every: 4, times: 5 }] }
 * @example readShaping('inc 1 st') // { problem: '…' }
 */
export function readShaping(line: string): Shaping | { readonly problem: string } {
  if (line.length > 2000) return { problem: 'A shaping line of more than 2000 characters is not read.' };
  const text = line.trim().replace(/\.$/u, '').replace(/\s+/gu, ' ');
  const head = what.exec(text);
  if (!head) return { problem: 'A shaping line begins like “dec 1 st each end of every 6th row 8 times”.' };
  const [, way, each, rest = ''] = head;
  let schedule = rest;
  let ends = 1;
  for (const [pattern, many] of forms) {
    const found = pattern.exec(rest);
    if (!found) continue;
    schedule = rest.slice(found[0].length);
    ends = many;
    break;
  }
  const perRow = amount(each) * ends;
  const intervals: { every: number; times: number }[] = [];
  let onNext = false;
  const steps = schedule.split(/\s*(?:,|;|\band\b|\bthen\b)\s*/iu).filter((step) => step !== '');
  if (steps.length === 0) return { problem: 'It does not say on which rows.' };
  for (const [at, step] of steps.entries()) {
    if (at === 0 && next.test(step)) {
      onNext = true;
      continue;
    }
    const run = several.exec(step);
    if (run) {
      intervals.push({ every: 1, times: amount(run[1]) });
      continue;
    }
    const found = every.exec(step);
    if (!found) return { problem: `“${step.slice(0, 80)}” does not say on which rows.` };
    const [, nth, none, other, word, times, by] = found;
    const often = word ? (word.toLowerCase() === 'once' ? 1 : 2) : amount(times ?? by);
    // An en dash: this size skips the step.
    if (none !== undefined || often === 0) continue;
    const rows = other ? 2 : nth ? amount(nth) : 1;
    if (rows < 1 || rows > most || often > most)
      return { problem: `“${step.slice(0, 80)}” cannot be followed.` };
    intervals.push({ every: rows, times: often });
  }
  return { way: way!.toLowerCase() as 'dec' | 'inc', perRow, next: onNext, intervals };
}

function amount(digits: string | undefined): number {
  return digits === undefined || digits === '–' ? 0 : Math.min(Number(digits), most + 1);
}
