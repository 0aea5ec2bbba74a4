import { formatNumber } from './format';

/**
 * What a message puts into a slot of its pattern. Plain data, so that it goes through JSON and to another thread.
 *
 * - a number, written with the reader's decimal mark
 * - a text, which stays as it is: what a person typed, or words in which no number is to be written otherwise
 * - a length in cm, written in the reader's unit
 * - a number as a formula has it, with all its digits
 * - a stretch of a piece or an edge, 1 for the first, written "2", or "2 (Armhole to wrist)" where it has a label or the
 *   reader's notebook has one for it
 * - a message within the message
 */
export type Param = Single | Message;

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

/** A sentence that is whole already, with nothing in it to be written otherwise. */
export function sentence(text: string): Message {
  return { code: 'sentence', pattern: '{text}', params: { text } };
}

/** A plural, with its name and its two forms, in which there may be slots. */
const plurals = /\{(\w+), plural, one \{(.*?)\} other \{(.*?)\}\}(?!\})/g;

/**
 * A message in words, each param as `write` writes it. Only the pattern is read: what a param is written as stays so.
 *
 * @example
 * fillPattern(message('left', '{rows, plural, one {# row} other {# rows}} left.', { rows: 1 }), String) // '1 row left.'
 */
export function fillPattern({ pattern, params }: Message, write: (param: Single) => string): string {
  return pattern
    .replace(plurals, (_, name: string, one: string, other: string) =>
      (params[name] === 1 ? one : other).replaceAll('#', `{${name}}`),
    )
    .replace(/\{(\w+)\}/g, (_, name: string) => {
      const param = params[name] ?? '';
      return typeof param === 'object' && 'pattern' in param ? fillPattern(param, write) : write(param);
    });
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
    if ('cm' in param) return `${formatNumber(param.cm)} cm`;
    if ('typed' in param) return `${param.typed}`;
    return `${param.stretch}${param.label ? ` (${param.label})` : ''}`;
  });
}
