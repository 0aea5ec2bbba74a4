import {
  area,
  length,
  mass,
  plain,
  rows,
  stitches,
  type Dimension,
  type Unit,
  type WrittenAs,
} from '../../notebook';
import type { Result } from './result';

/** A value on its way through a working, with its unit. Lengths are cm, gauges per cm, as everywhere. */
export interface Amount {
  readonly value: number | string | boolean;
  readonly unit: Unit;
  readonly written?: WrittenAs;
  /** The result that it is the number of, where a formula gives a function one as it is. */
  readonly of?: Result;
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

/** The number of an amount. Units have been checked where the formula was worked, so there is one. */
export const numberIn = ({ value }: Amount): number => value as number;

export const dimensionOf = ({ unit }: Amount): Dimension => (typeof unit === 'string' ? plain : unit);
