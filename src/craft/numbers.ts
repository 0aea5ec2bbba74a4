import { CraftError } from './craft-error';
import type { Message, Params } from './message';
import { numberParam } from './message-parts';
import { greatest } from './format';

export { cmPerInch, roundDown, roundNearest, roundUp, same, whole } from './rounding';
export { counted } from './quantity-words';
export { greatest } from './format';

/*
 * Number types that cannot be mixed by accident. TypeScript lets any two kinds of number meet at a `+`, but what
 * comes out is a plain number, and a plain number does not fit where stitches or rows are asked for. So sums go
 * through `plus` and `minus`, which take two of a kind, and changes of kind through the named operations below.
 */
declare const kind: unique symbol;
type Of<Kind extends string> = number & { readonly [kind]: Kind };

export type Cm = Of<'cm'>;
export type Stitches = Of<'stitches'>;
export type Rows = Of<'rows'>;
export type PerCm = Of<'per cm'>;
export type Grams = Of<'grams'>;

type Quantity = Cm | Stitches | Rows | PerCm | Grams;

/** Adds two of a kind: `plus(back, front)` of stitches is stitches; stitches and rows do not go together. */
export function plus<Q extends Quantity>(a: Q, b: NoInfer<Q>): Q {
  return (a + b) as Q;
}

/** Takes the second from the first, both of a kind. */
export function minus<Q extends Quantity>(a: Q, b: NoInfer<Q>): Q {
  return (a - b) as Q;
}

/** So many times a quantity; half a width is `times(width, 0.5)`. */
export function times<Q extends Quantity>(a: Q, by: number): Q {
  return (a * by) as Q;
}

/** The exact stitches across a width, not yet a whole number: 45 cm at 1.4 to the cm is 63. */
export function stitchesAcross(width: Cm, gauge: PerCm): Stitches {
  return (width * gauge) as Stitches;
}

/** The exact rows over a length, not yet a whole number. */
export function rowsOver(length: Cm, gauge: PerCm): Rows {
  return (length * gauge) as Rows;
}

/** The width of a number of stitches. */
export function widthOf(count: Stitches, gauge: PerCm): Cm {
  return (count / gauge) as Cm;
}

/** A length, mass or gauge smaller than this is a slip of the keyboard, and dividing by it would overflow. */
export const smallest = 1e-12;
/** The most rows, shapings or gaps that are laid out one by one: beyond it memory is for nothing. */
export const mostRows = 1_000_000;

/** What a number is, as a sentence begins with it. */
type What = string | Message;

/** A refusal of a number, in a sentence that says `what` it is and how it was given, `x`. */
function refusal(code: string, pattern: string, what: What, x: unknown, more?: Params): CraftError {
  return new CraftError(code, pattern, { what, x: numberParam(x), ...more });
}

/** Any number that is one and not beyond reason; `what` opens the sentence ("The ease"). */
export function finite(x: number, what: What): number {
  if (typeof x !== 'number' || !Number.isFinite(x)) {
    throw refusal('not-a-number', '{what} has to be a number; it is {x}.', what, x);
  }
  if (Math.abs(x) > greatest) {
    throw refusal('too-large', '{what} is {x}, beyond anything that can be worked.', what, x);
  }
  return x + 0;
}

/** A number more than 0. */
export function positive(x: number, what: What): number {
  finite(x, what);
  if (x <= 0) throw refusal('not-positive', '{what} has to be more than 0; it is {x}.', what, x);
  if (x < smallest) {
    throw refusal('too-small', '{what} is {x}, smaller than anything that can be measured.', what, x);
  }
  return x;
}

/** A number that is 0 or more. */
export function notNegative(x: number, what: What): number {
  finite(x, what);
  if (x < 0) throw refusal('negative', '{what} has to be 0 or more; it is {x}.', what, x);
  return x + 0;
}

/** A whole number, which may be negative, as the "plus" of a repeat may. */
export function wholeNumber(x: number, what: What): number {
  finite(x, what);
  if (!Number.isInteger(x)) {
    throw refusal(
      'not-whole',
      '{what} has to be a whole number; {x} lies between {below} and {above}.',
      what,
      x,
      { below: Math.floor(x), above: Math.ceil(x) },
    );
  }
  return x + 0;
}

/** A whole number that is `least` (0 unless told) or more. */
export function wholeCount(x: number, what: What, least = 0): number {
  wholeNumber(x, what);
  if (x < least) {
    throw refusal('too-few', '{what} has to be {least} or more; it is {x}.', what, x, { least });
  }
  return x;
}

/** One of a few words: a rule, an order, flat or round. */
export function oneOf<Word extends string>(x: Word, words: readonly Word[], what: What): Word {
  if (!words.includes(x)) {
    const choice = words.map((word) => `"${word}"`).join(' or ');
    throw refusal('not-a-choice', '{what} has to be {choice}; it is {x}.', what, x, { choice });
  }
  return x;
}

/** A list, of `least` members or more and `most` or fewer. */
export function listOf<T>(list: readonly T[], what: What, least = 0, most = mostRows): readonly T[] {
  if (!Array.isArray(list)) throw new CraftError('not-a-list', '{what} have to be a list.', { what });
  if (list.length < least) {
    throw new CraftError('too-few', '{what} are missing: {least} or more are needed.', { what, least });
  }
  if (list.length > most) {
    throw new CraftError('too-many', '{what} are {length}, and {most} are the most that can be worked.', {
      what,
      length: list.length,
      most,
    });
  }
  return list;
}

/** A length more than 0, in cm. */
export const cm = (x: number, what: What) => positive(x, what) as Cm;
/** A stitch or row gauge, per cm. */
export const perCm = (x: number, what: What) => positive(x, what) as PerCm;
/** A mass more than 0, in grams. */
export const grams = (x: number, what: What) => positive(x, what) as Grams;
/** A whole count of stitches, `least` (1 unless told) or more. */
export const stitches = (x: number, what: What, least = 1) => wholeCount(x, what, least) as Stitches;
/** A whole count of rows, `least` (0 unless told) or more. */
export const rows = (x: number, what: What, least = 0) => wholeCount(x, what, least) as Rows;
