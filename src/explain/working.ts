import type { Amount } from './amount';
import type { Result } from './result';
import type { Step } from './step';

/** How one result is worked: its formula, and the steps with the numbers put in. */
export interface WorkingLine {
  readonly of: Result;
  /** As a person reads it. */
  readonly formula: string;
  readonly steps: readonly Step[];
  /** What the last step comes to. */
  readonly result: Amount;
}

/** The working of a result: what it is worked from first, itself last. */
export interface Working {
  readonly lines: readonly WorkingLine[];
  /** Results it is worked from that are not among the lines: there is more further back. */
  readonly further: boolean;
}
