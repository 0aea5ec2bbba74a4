import type { TrialResults } from './trial-results';

/** Trials that were ended before all were worked: what was to be made of them is not made. */
export class TrialsEnded extends Error {
  override readonly name = 'TrialsEnded';
  readonly why: NonNullable<TrialResults['ended']>;

  constructor(why: NonNullable<TrialResults['ended']>) {
    super(`The trials were ended: ${why}.`);
    this.why = why;
  }
}
