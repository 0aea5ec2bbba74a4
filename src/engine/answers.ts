import type { Message } from '../craft';
import type { Unit } from '../formulas';
import type { PackedMessage } from './packed-message';
import type { Changes } from '../notebook';

/** One value a cell has in every size: an input or an output, by cell id and key. */
export interface CellRef {
  readonly cell: string;
  readonly key: string;
}

/** Why there is no result, and where the trouble starts if that is elsewhere. */
export interface CellError {
  readonly message: PackedMessage;
  readonly from?: CellRef;
}

/** A `CellError` in words. */
export interface WordedError {
  readonly message: string;
  readonly from?: CellRef;
}

/**
 * What changed, after an update. Numbers travel as triples in one transferred array; texts and troubles,
 * which are few, as lists. A place that has a number has neither text nor trouble, and so on.
 */
export interface Answer {
  /** Slots that are new since the last answer: slot `firstSlot + i` is `slots[i]`. */
  readonly firstSlot: number;
  readonly slots: readonly CellRef[];
  /** Slots that no longer stand for anything. */
  readonly gone: readonly number[];
  /** Ids of the sizes, in the order that size numbers in this answer follow. */
  readonly sizes: readonly string[];
  /** size number, slot, value; size number, slot, value; … */
  readonly numbers: Float64Array;
  readonly texts: readonly (readonly [size: number, slot: number, text: string])[];
  readonly truths: readonly (readonly [size: number, slot: number, truth: boolean])[];
  readonly errors: readonly (readonly [size: number, slot: number, error: CellError])[];
  readonly units: readonly (readonly [slot: number, unit: Unit | null])[];
}

/** What a formula would be, were it put in a place; or what is wrong with it, as data or in words. */
export type Checked<Problem = Message> =
  { readonly unit: Unit } | { readonly problem: Problem; readonly start?: number; readonly end?: number };

/** A sheet works a notebook. The same interface in a worker, in tests and in the bench. */
export interface Sheet {
  /** Brings the sheet to another state of the notebook and returns what that changed. */
  update(changes: Changes): Promise<Answer>;
  /** Reads, but does not keep, a stored formula as if it were at `ref`; finds cycles too. */
  check(formula: string, ref: CellRef): Promise<Checked>;
}
