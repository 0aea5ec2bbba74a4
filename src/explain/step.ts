import type { Result } from './result';

/** A run of text in a step. A unit that cancels against another is struck out where that can be shown. */
export interface TextRun {
  readonly text: string;
  readonly cancels?: boolean;
  /** The result that this run is the number of: on a class sheet it may be an answer that is still covered. */
  readonly of?: Result;
  /** What it is worth, where it was worked out on the way: the same as the answer of a step before. */
  readonly worth?: string;
  /** It tells what that step came to, and this would not. */
  readonly tells?: { readonly step: Step; readonly untold: string };
}

/** The stretch of a piece, by its place and by its name. */
export interface Heading {
  readonly at: number;
  readonly label: string;
}

/** One step: what is worked, and what it comes to. */
export interface Step {
  /** What a rounding, or another decision, begins from; the step before has ended on it where there is one. */
  readonly from?: TextRun;
  /** "102 cm × 14 sts / 10 cm", "nearest multiple of 8 + 3" */
  readonly says: readonly TextRun[];
  /** "142.8 sts": what a class sheet covers. */
  readonly answer: string;
  /** The answer, whatever it is written as. */
  readonly worth?: string | undefined;
  /** The stretch of a piece that it works. */
  readonly stretch?: Heading;
  /** What stands beside the answer and would give it away: "139 is below, 147 above". */
  readonly hint?: string;
}
