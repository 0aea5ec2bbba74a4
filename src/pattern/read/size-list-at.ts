import { numberAt } from './number';

export type LengthUnit = 'cm' | 'in';

/** Numbers by size as printed, before anybody has asked whether they are as many as the sizes. */
export interface PrintedList {
  readonly values: readonly (number | null)[];
  readonly from: number;
  readonly to: number;
  /** The finest step among them. */
  readonly step: number;
  /** The units that stand on its numbers or right after it. */
  readonly units: readonly LengthUnit[];
}

const open = '([{';
const close = ')]}';
const noNumber = /[-–—−]|\bnone\b|\bn\/a\b/iuy;
const unitMark =
  /\s*(cm\b\.?|centimet(?:re|er)s?\b|inch(?:es)?\b|in\b\.?(?!\s+(?:the|each|every|next|st|ch|rib|patt|this|stock))|["″”])/iuy;

function unitAt(text: string, at: number): { unit: LengthUnit; to: number } | undefined {
  unitMark.lastIndex = at;
  const found = unitMark.exec(text);
  if (!found) return undefined;
  return { unit: /^c/iu.test(found[1]!) ? 'cm' : 'in', to: at + found[0].length };
}

const skipSpace = (text: string, at: number): number => {
  while (text[at] === ' ' || text[at] === '\u00a0' || text[at] === '\t') at++;
  return at;
};

/** One entry of a list: a number, or a dash for none. */
function entryAt(text: string, at: number, decimal: '.' | ',') {
  const number = numberAt(text, at, decimal);
  if (number) {
    // "6th (5th, 4th)": a row by its number.
    const nth = /^(?:st|nd|rd|th)\b/iu.exec(text.slice(number.to, number.to + 3));
    const end = number.to + (nth?.[0].length ?? 0);
    const unit = nth ? undefined : unitAt(text, end);
    return { value: number.value, step: number.step, to: unit?.to ?? end, unit: unit?.unit };
  }
  noNumber.lastIndex = at;
  const none = noNumber.exec(text);
  return none ? { value: null, step: Infinity, to: at + none[0].length, unit: undefined } : undefined;
}

/**
 * The size list that begins at a place: `104 (112, 120, 128)`, `104 (112) 120 [128]`, `104 (112, 120) (128, 136)`,
 * `104 (112: 120: 128)`, `34 (36-38-40)`, `104/112/120`, a dash for none, units on its numbers or after them. A bare
 * number is a list of one. Undefined where no number begins.
 *
 * @param bare also take numbers that only commas part: a table's row
 * @example sizeListAt('104 (112, –) sts', 0, '.') // values [104, 112, null], to: 12
 */
export function sizeListAt(
  text: string,
  from: number,
  decimal: '.' | ',',
  bare = false,
): PrintedList | undefined {
  const first = entryAt(text, from, decimal);
  if (!first || (first.value === null && !/^[-–—−]\s*[([{]/u.test(text.slice(from)))) return undefined;
  const values: (number | null)[] = [first.value];
  const units: LengthUnit[] = first.unit ? [first.unit] : [];
  let step = first.step;
  let to = first.to;
  const accept = (entry: NonNullable<ReturnType<typeof entryAt>>): void => {
    values.push(entry.value);
    if (entry.unit) units.push(entry.unit);
    step = Math.min(step, entry.step);
  };
  let grouped = false;
  for (;;) {
    const at = skipSpace(text, to);
    const kind = open.indexOf(text[at] ?? ' ');
    if (kind >= 0) {
      const group = groupAt(text, at + 1, close[kind]!, decimal);
      if (!group) break;
      group.entries.forEach(accept);
      to = group.to;
      grouped = true;
      continue;
    }
    // "104 (112) 120 [128]": after a group, a number goes on with the list where another group follows it or it ends it.
    const again = grouped && at > to ? entryAt(text, at, decimal) : undefined;
    if (
      again?.value !== null &&
      again?.value !== undefined &&
      /^\s*(?:[([{]|$|sts?\b|stitch|rows?\b|rounds?\b|rnds?\b|cm\b|in\b|times\b)/iu.test(
        text.slice(again.to),
      ) &&
      /^\d/u.test(text.slice(at))
    ) {
      if (/^\s*[([{]/u.test(text.slice(again.to)) && !groupIsList(text, again.to, decimal)) break;
      accept(again);
      to = again.to;
      continue;
    }
    const slash = /^\s*\/\s*(?=[\d–—])/u.exec(text.slice(to));
    const comma = bare ? /^\s*[,;]\s*(?=[\d–—])/u.exec(text.slice(to)) : null;
    const next = slash ?? comma;
    const entry = next && entryAt(text, to + next[0].length, decimal);
    if (!next || !entry || grouped) break;
    accept(entry);
    to += next[0].length + (entry.to - to - next[0].length);
  }
  const after = unitAt(text, to);
  if (after && values.length > 1) {
    units.push(after.unit);
    to = after.to;
  }
  return { values, from, to, step: Number.isFinite(step) ? step : 1, units: [...new Set(units)] };
}

function groupIsList(text: string, at: number, decimal: '.' | ','): boolean {
  const start = skipSpace(text, at);
  const kind = open.indexOf(text[start] ?? ' ');
  return kind >= 0 && groupAt(text, start + 1, close[kind]!, decimal) !== undefined;
}

/** The entries up to a closing bracket; undefined where anything else stands between. */
function groupAt(text: string, from: number, closing: string, decimal: '.' | ',') {
  const entries: NonNullable<ReturnType<typeof entryAt>>[] = [];
  let at = skipSpace(text, from);
  for (;;) {
    const entry = entryAt(text, at, decimal);
    if (!entry) return undefined;
    entries.push(entry);
    at = skipSpace(text, entry.to);
    if (text[at] === closing) {
      // "(10 cm)" after "4 in", and a lone dash, say something else.
      if (entries.length === 1 && (entry.unit !== undefined || entry.value === null)) return undefined;
      return { entries, to: at + 1 };
    }
    if (!/[,;:/–—-]/u.test(text[at] ?? '')) return undefined;
    at = skipSpace(text, at + 1);
  }
}

/** All size lists and bare numbers of a line, from left to right. */
export function sizeListsIn(text: string, decimal: '.' | ',', bare = false): PrintedList[] {
  const found: PrintedList[] = [];
  for (let at = 0; at < text.length;) {
    const before = text[at - 1] ?? ' ';
    const list = /[\p{L}\p{N}_.]/u.test(before) ? undefined : sizeListAt(text, at, decimal, bare);
    if (list && list.values.some((value) => value !== null)) {
      found.push(list);
      at = list.to;
    } else at++;
  }
  return found;
}
