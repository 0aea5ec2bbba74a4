import { CraftError } from './craft-error';

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

/** Exact, by the international agreement of 1959. */
export const cmPerInch = 2.54;

/** Relative distance below which a value is the whole number beside it. */
const edge = 1e-9;

/** How far from `x` another number may be and still count as `x`. Below 1 the distance is absolute. */
function edgeAt(x: number): number {
  return edge * Math.max(1, Math.abs(x));
}

/**
 * Whether two results of arithmetic are the same number, but for the dust that floating point leaves: a thousand
 * millionth of the greater, and no less than a thousand millionth.
 *
 * @example
 * same(0.1 + 0.2, 0.3)   // true
 * same(77.2, 77.2001)    // false
 */
export function same(a: number, b: number): boolean {
  return Math.abs(a - b) <= edgeAt(Math.max(Math.abs(a), Math.abs(b)));
}

/**
 * A value within 1e-9 (relative) of a whole number is that number; any other value is returned as it is.
 * Without this 750 g × 1.1 / 25 g asks for 34 balls where 33 are exactly enough.
 *
 * @example
 * whole(45 * 1.4)   // 63, where the product is 62.99999999999999
 * whole(77.2)       // 77.2
 */
export function whole(x: number): number {
  const near = Math.round(x);
  // Adding 0 turns -0 into 0.
  return (Math.abs(x - near) <= edgeAt(x) ? near : x) + 0;
}

/**
 * The least whole number that is not below x, after the float edge.
 *
 * @example
 * roundUp(33.00000000000001)   // 33
 * roundUp(33.2)                // 34
 */
export function roundUp(x: number): number {
  return Math.ceil(whole(x)) + 0;
}

/**
 * The greatest whole number that is not above x, after the float edge.
 *
 * @example
 * roundDown(62.99999999999999)   // 63
 * roundDown(62.9)                // 62
 */
export function roundDown(x: number): number {
  return Math.floor(whole(x)) + 0;
}

/**
 * The nearest whole number, halves going up.
 *
 * @example
 * roundNearest(49.5)   // 50
 * roundNearest(-0.5)   // 0
 */
export function roundNearest(x: number): number {
  // Snapped at the double, so that a half blurred by floating point is still a half.
  return Math.floor((whole(2 * x) + 1) / 2) + 0;
}

/** Beyond this no count, length or gauge is meant; below it every whole number is exact and no product overflows. */
export const greatest = 1e12;
/** A length, mass or gauge smaller than this is a slip of the keyboard, and dividing by it would overflow. */
export const smallest = 1e-12;
/** The most rows, shapings or gaps that are laid out one by one: beyond it memory is for nothing. */
export const mostRows = 1_000_000;

/** A number as it stands in a sentence: 6 digits at most, and words where it is none. */
export function said(x: unknown): string {
  if (typeof x === 'string') return `"${x.slice(0, 40)}"`;
  if (typeof x !== 'number') return x === null || x === undefined ? 'missing' : 'not a number';
  if (Number.isNaN(x)) return 'not a number';
  if (!Number.isFinite(x)) return x > 0 ? 'endless' : 'endlessly negative';
  if (Math.abs(x) > greatest)
    return x > 0 ? 'more than a million million' : 'less than minus a million million';
  if (x !== 0 && Math.abs(x) < 1e-6) return x > 0 ? 'next to nothing' : 'a hair below 0';
  const shown = Number.isInteger(x) ? x + 0 : Number(x.toPrecision(6));
  return String(shown).replace('-', '−');
}

/**
 * A count and what is counted, as they stand in a sentence: singular where there is one.
 *
 * @example
 * counted(1, 'row')                    // '1 row'
 * counted(3, 'shaping row')            // '3 shaping rows'
 * counted(2, 'stitch', 'stitches')     // '2 stitches'
 */
export function counted(count: number, one: string, several = `${one}s`): string {
  return `${said(count)} ${count === 1 ? one : several}`;
}

/**
 * A length as it stands in a sentence. A space that does not break holds its unit to it: so who shows the sentence can
 * tell a length in it from words that only look like one, and write it in other units.
 */
export function saidCm(cm: unknown): string {
  return `${said(cm)}\u00a0cm`;
}

/** Any number that is one and not beyond reason; `what` opens the sentence ("The ease"). */
export function finite(x: number, what: string): number {
  if (typeof x !== 'number' || !Number.isFinite(x)) {
    throw new CraftError('not-a-number', `${what} has to be a number; it is ${said(x)}.`);
  }
  if (Math.abs(x) > greatest) {
    throw new CraftError('too-large', `${what} is ${said(x)}, beyond anything that can be worked.`);
  }
  return x + 0;
}

/** A number more than 0. */
export function positive(x: number, what: string): number {
  finite(x, what);
  if (x <= 0) throw new CraftError('not-positive', `${what} has to be more than 0; it is ${said(x)}.`);
  if (x < smallest) {
    throw new CraftError('too-small', `${what} is ${said(x)}, smaller than anything that can be measured.`);
  }
  return x;
}

/** A number that is 0 or more. */
export function notNegative(x: number, what: string): number {
  finite(x, what);
  if (x < 0) throw new CraftError('negative', `${what} has to be 0 or more; it is ${said(x)}.`);
  return x + 0;
}

/** A whole number, which may be negative, as the "plus" of a repeat may. */
export function wholeNumber(x: number, what: string): number {
  finite(x, what);
  if (!Number.isInteger(x)) {
    throw new CraftError(
      'not-whole',
      `${what} has to be a whole number; ${said(x)} lies between ${said(Math.floor(x))} and ${said(Math.ceil(x))}.`,
    );
  }
  return x + 0;
}

/** A whole number that is `least` (0 unless told) or more. */
export function wholeCount(x: number, what: string, least = 0): number {
  wholeNumber(x, what);
  if (x < least) {
    throw new CraftError('too-few', `${what} has to be ${least} or more; it is ${said(x)}.`);
  }
  return x;
}

/** One of a few words: a rule, an order, flat or round. */
export function oneOf<Word extends string>(x: Word, words: readonly Word[], what: string): Word {
  if (!words.includes(x)) {
    const choice = words.map((word) => `"${word}"`).join(' or ');
    throw new CraftError('not-a-choice', `${what} has to be ${choice}; it is ${said(x)}.`);
  }
  return x;
}

/** A list, of `least` members or more and `most` or fewer. */
export function listed<T>(list: readonly T[], what: string, least = 0, most = mostRows): readonly T[] {
  if (!Array.isArray(list)) throw new CraftError('not-a-list', `${what} have to be a list.`);
  if (list.length < least) {
    throw new CraftError('too-few', `${what} are missing: ${least} or more are needed.`);
  }
  if (list.length > most) {
    throw new CraftError(
      'too-many',
      `${what} are ${list.length}, and ${most} are the most that can be worked.`,
    );
  }
  return list;
}

/** A length more than 0, in cm. */
export const cm = (x: number, what: string) => positive(x, what) as Cm;
/** A stitch or row gauge, per cm. */
export const perCm = (x: number, what: string) => positive(x, what) as PerCm;
/** A mass more than 0, in grams. */
export const grams = (x: number, what: string) => positive(x, what) as Grams;
/** A whole count of stitches, `least` (1 unless told) or more. */
export const stitches = (x: number, what: string, least = 1) => wholeCount(x, what, least) as Stitches;
/** A whole count of rows, `least` (0 unless told) or more. */
export const rows = (x: number, what: string, least = 0) => wholeCount(x, what, least) as Rows;
