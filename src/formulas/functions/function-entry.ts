import type { Unit } from '../units';

/** What people read over the functions of one family, in the order the families are shown. */
export const families = [
  'Lengths',
  'Counts and repeats',
  'Shaping',
  'Edges and joins',
  'Pieces',
  'Yarn and time',
  'Give or take',
  "The standard's",
] as const;
export type Family = (typeof families)[number];

/**
 * A function that a formula may use: what stands in its brackets and what it gives, as the tokenizer and the completion
 * read it. It is computed in `x.evaluate.ts` and described in `x.docs.ts`.
 */
export interface FunctionEntry {
  readonly name: string;
  readonly family: Family;
  readonly arguments: readonly Argument[];
  /** The last argument may be repeated; where arguments go in pairs, the last two. */
  readonly repeats?: true;
  /** The message where only the repeated arguments are missing: a cell may have made the formula. */
  readonly lacks?: string;
  readonly gives: Unit | 'any';
  readonly of: 'the trade' | 'the standard';
}

export interface Argument {
  readonly label: string;
  /** 'any' where the function has a rule of its own for units. */
  readonly unit: Unit | 'any';
  readonly optional?: true;
}

/** An entry as its family lists it. */
export type FunctionSignature = Omit<FunctionEntry, 'of' | 'family'>;

export const given = (label: string, unit: Unit | 'any'): Argument => ({ label, unit });
export const optional = (label: string, unit: Unit | 'any'): Argument => ({ label, unit, optional: true });
