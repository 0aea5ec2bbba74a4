import { area, length, mass, plain, rows, stitches, type Dimension, type Unit } from '../formulas';
import type { WrittenAs } from '../notebook';
import type { Result } from './result';
import type { TextRun } from './step';

/** A value on its way through a working, with its unit. Lengths are cm, gauges per cm, as everywhere. */
export interface Amount {
  readonly value: number | string | boolean;
  readonly unit: Unit;
  readonly written?: WrittenAs;
  /** The result that it is the number of, where a formula gives a function one as it is. */
  readonly of?: Result;
  /** It stands in the formula as it is. */
  readonly typed?: true;
  /** What it counts, where its number stands alone. */
  readonly counts?: Unit;
  /** What a stretch of a piece was made of. */
  readonly madeOf?: readonly Amount[];
}

export const amount = (value: Amount['value'], unit: Unit): Amount => ({ value, unit });
export const lengthOf = (cm: number): Amount => amount(cm, length);
export const areaOf = (squareCm: number): Amount => amount(squareCm, area);
export const stitchesOf = (count: number): Amount => amount(count, stitches);
export const rowsOf = (count: number): Amount => amount(count, rows);
export const gramsOf = (grams: number): Amount => amount(grams, mass);
export const plainOf = (number: number): Amount => amount(number, plain);
export const percentOf = (share: number): Amount => ({ value: share, unit: plain, written: 'percent' });
export const metresOf = (cm: number): Amount => ({ value: cm, unit: length, written: 'metres' });
export const textOf = (text: string): Amount => amount(text, 'text');
export const truthOf = (holds: boolean): Amount => amount(holds, 'truth');

/** An amount without its unit: "row 74", "multiple of 8 + 3". */
export const bare = (given: Amount): Amount => ({
  ...given,
  unit: plain,
  counts: given.counts ?? given.unit,
});

/** The number of an amount. Units have been checked where the formula was worked, so there is one. */
export const numberIn = ({ value }: Amount): number => value as number;

/**
 * What a number is known by, however it is written: two amounts of the same worth tell each other.
 *
 * @returns nothing for texts, truths and plans, nor for one of something or none, which tell nothing
 * @example worthOf(lengthOf(10)) === worthOf(lengthOf(10.16)) // false
 */
export function worthOf({ value, unit, counts = unit }: Amount): string | undefined {
  if (typeof value !== 'number' || typeof counts === 'string' || value === 0 || value === 1) return undefined;
  const bases = Object.entries(counts).filter(([, power]) => power !== 0);
  return `${Math.abs(value).toPrecision(9)} ${bases
    .map(([base, power]) => base + power)
    .sort()
    .join(' ')}`;
}

/** Where a number comes from, as a run of text knows it: a result, the formula itself, or steps before. */
export function knownBy(given: Amount): Pick<TextRun, 'of' | 'worth'> {
  if (given.of) return { of: given.of };
  const worth = given.typed ? undefined : worthOf(given);
  return worth === undefined ? {} : { worth };
}

export const dimensionOf = ({ unit }: Amount): Dimension => (typeof unit === 'string' ? plain : unit);
