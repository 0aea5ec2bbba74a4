/** What a statement has to say, worked out of the notebook and its results, and not out of the text. */
export interface Expected {
  /** The name of the reader that reads such a statement. */
  readonly name: string;
  readonly of: string;
  readonly facts: Readonly<Record<string, ExpectedFact>>;
  /** It may be said as often as the text likes, or not at all. */
  readonly anyTimes?: true;
}

/** A text, or numbers by size that may differ by as much as is lost in rounding what is printed. */
export type ExpectedFact = string | ExpectedAmounts;

export interface ExpectedAmounts {
  /** In the order of the sizes; empty where no number is to stand there. */
  readonly values: readonly (number | null)[];
  readonly within: number;
}

/** Numbers that are printed whole or to so many places. */
export function printed(values: readonly (number | null)[], decimals = 0): ExpectedAmounts {
  return { values, within: 0.5 / 10 ** decimals };
}

const cmPerInch = 2.54;

/** Lengths in cm as they are printed: to a millimetre, or to an eighth of an inch. */
export function lengths(cm: readonly (number | null)[], unit: 'cm' | 'in'): ExpectedAmounts {
  if (unit === 'cm') return printed(cm, 1);
  return { values: cm.map((value) => (value === null ? null : value / cmPerInch)), within: 1 / 16 };
}

/** Lengths of yarn or cord in cm, printed in metres or yards (36 in). */
export function longLengths(
  cm: readonly (number | null)[],
  unit: 'cm' | 'in',
  decimals = 0,
): ExpectedAmounts {
  const per = unit === 'cm' ? 100 : 36 * cmPerInch;
  return printed(
    cm.map((value) => (value === null ? null : value / per)),
    decimals,
  );
}

/** A person's text as it is compared: on one line, without marks that are not seen. */
export function asRead(text: string): string {
  return text
    .replace(/[\u202a-\u202e\u2066-\u2069\u200e\u200f]/gu, '')
    .replace(/[\p{Cc}\s]+/gu, ' ')
    .trim();
}
