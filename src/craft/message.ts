import { formatLength, formatNumber, hasDigits } from './format';

/**
 * What a message puts into a slot of its pattern. Plain data, so that it goes through JSON and to another thread.
 *
 * - a number, written with the reader's decimal mark
 * - a text, which stays as it is: what a person typed, or words in which no number is to be written otherwise
 * - a length in cm, written in the reader's unit
 * - a number as a formula has it, with all its digits
 * - a stretch of a piece or an edge, 1 for the first, written "2", or "2 (Armhole to wrist)" where it has a label or the
 *   reader's notebook has one for it
 * - several of them, with what stands between; or a message within the message
 */
export type Param = Single | { readonly list: readonly Param[]; readonly between: string } | Message;

/** A param that is not made of others. */
export type Single =
  | number
  | string
  | { readonly cm: number }
  | { readonly typed: number }
  | { readonly stretch: number; readonly label?: string };

export type Params = Readonly<Record<string, Param>>;

/**
 * A sentence as data: which one it is, how it goes, and what it tells. Whoever shows it writes its numbers and lengths
 * as the reader has them.
 *
 * The pattern is a small part of ICU MessageFormat (unicode-org.github.io/icu/userguide/format_parse/messages): slots
 * `{name}`, and `{name, plural, one {…} other {…}}`, where `#` is the number. Its forms are those of English, as Unicode
 * CLDR has them: `one` for 1 and `other` for all else. Nothing is quoted: no pattern has a brace or, in a plural, a `#`
 * of its own.
 *
 * @example
 * plainMessage({
 *   code: 'too-few-rows',
 *   pattern: '{least, plural, one {# row} other {# rows}} would do.',
 *   params: { least: 40 },
 * })
 * // '40 rows would do.'
 */
export interface Message {
  readonly code: string;
  readonly pattern: string;
  readonly params: Params;
}

export function message(code: string, pattern: string, params: Params = {}): Message {
  return { code, pattern, params };
}

/** The message that an error carries, without the error: what goes into another message, or to another thread. */
export function messageOf({ code, pattern, params }: Message): Message {
  return { code, pattern, params };
}

/** A sentence that is whole already, with nothing in it to be written otherwise. */
export function sentence(text: string, code = 'sentence'): Message {
  return { code, pattern: '{text}', params: { text } };
}

/**
 * Anything that was given for a number: the number, or words where it is none or has no digits to show.
 *
 * @example numberParam(2.5)       // 2.5
 * @example numberParam(undefined) // 'missing'
 */
export function numberParam(x: unknown): number | string {
  return hasDigits(x) ? x : formatNumber(x);
}

/**
 * Anything that was given for a length in cm.
 *
 * @example lengthParam(40.5) // { cm: 40.5 }
 * @example lengthParam(NaN)  // 'not a number cm'
 */
export function lengthParam(cm: unknown): { readonly cm: number } | string {
  return hasDigits(cm) ? { cm } : formatLength(cm);
}

/** Whether two messages say the same. */
export function sameMessage(a: Message | undefined, b: Message | undefined): boolean {
  if (a === b || !a || !b) return a === b;
  return a.pattern === b.pattern && JSON.stringify(a.params) === JSON.stringify(b.params);
}

/**
 * A message in words, each param as `write` writes it.
 *
 * @example
 * fillPattern(message('left', '{rows, plural, one {# row} other {# rows}} left.', { rows: 1 }), String) // '1 row left.'
 */
export function fillPattern({ pattern, params }: Message, write: (param: Single) => string): string {
  const written = (param: Param | undefined): string => {
    if (typeof param !== 'object') return param === undefined ? '' : write(param);
    if ('pattern' in param) return fillPattern(param, write);
    if ('list' in param) return param.list.map(written).join(param.between);
    return write(param);
  };
  const filled = (parts: readonly Part[]): string =>
    parts
      .map((part) => {
        if (typeof part === 'string') return part;
        const param = params[part.slot];
        return part.one ? filled(param === 1 ? part.one : part.other!) : written(param);
      })
      .join('');
  return filled(partsOf(pattern));
}

/**
 * A message in the plain words of the arithmetic: lengths in cm, decimals with a point.
 *
 * @example plainMessage(message('long', 'It is {length} long.', { length: { cm: 40.5 } })) // 'It is 40.5 cm long.'
 */
export function plainMessage(message: Message): string {
  return fillPattern(message, (param) => {
    if (typeof param === 'string') return param;
    if (typeof param === 'number') return formatNumber(param);
    if ('typed' in param) return String(param.typed);
    return 'cm' in param ? formatLength(param.cm) : labelled(param.stretch, param.label);
  });
}

/**
 * A stretch as it is counted, with its label.
 *
 * @example labelled(2, 'Cuff')    // '2 (Cuff)'
 * @example labelled(2, undefined) // '2'
 */
export function labelled(stretch: number, label: string | undefined): string {
  return label ? `${stretch} (${label})` : String(stretch);
}

/**
 * The slots of a pattern, each once, in order.
 *
 * @example slotsOf('{rows, plural, one {# row} other {# rows}} of {all}') // ['rows', 'all']
 */
export function slotsOf(pattern: string): string[] {
  const slots = new Set<string>();
  const add = (part: Part): void => {
    if (typeof part === 'string') return;
    slots.add(part.slot);
    part.one?.forEach(add);
    part.other?.forEach(add);
  };
  partsOf(pattern).forEach(add);
  return [...slots];
}

type Part =
  string | { readonly slot: string; readonly one?: readonly Part[]; readonly other?: readonly Part[] };

/** Patterns stand in the code, so there are only so many; each is read once. */
const read = new Map<string, readonly Part[]>();

function partsOf(pattern: string): readonly Part[] {
  let parts = read.get(pattern);
  if (!parts) read.set(pattern, (parts = readPattern(pattern)));
  return parts;
}

/** What stands at the beginning of the rest of a pattern: a plural, a slot, its number, or text. */
const heads = /\{(\w+), plural, one \{|\{(\w+)\}|(#)|[^{}#]+/y;

function readPattern(pattern: string): Part[] {
  let at = 0;
  const skip = (mark: string): void => {
    if (!pattern.startsWith(mark, at)) throw new Error(`"${pattern}" should have "${mark}" at ${at}.`);
    at += mark.length;
  };
  const parts = (counted?: string): Part[] => {
    const found: Part[] = [];
    while (at < pattern.length && !(counted && pattern[at] === '}')) {
      heads.lastIndex = at;
      const [head, plural, slot, number] = heads.exec(pattern) ?? [];
      if (!head) throw new Error(`"${pattern}" has a brace at ${at} that does not belong there.`);
      at += head.length;
      if (plural) {
        const one = parts(plural);
        skip('} other {');
        found.push({ slot: plural, one, other: parts(plural) });
        skip('}}');
      } else if (slot) found.push({ slot });
      else found.push(number && counted ? { slot: counted } : head);
    }
    return found;
  };
  return parts();
}
