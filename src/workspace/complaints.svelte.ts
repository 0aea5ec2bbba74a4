/** A sentence about something that went wrong. */
export interface Complaint {
  readonly sentence: string;
  /** Whether it is of an attempt at an edit, so that the next one that succeeds takes it away. */
  readonly ofAttempt: boolean;
}

/** More than can be read is no help. */
const most = 12;

/** What went wrong and is not on any cell: all of it, the newest first. None hides another. */
export class Complaints {
  all: readonly Complaint[] = $state.raw([]);

  get newest(): string | null {
    return this.all[0]?.sentence ?? null;
  }

  /** Adds a sentence that stays until it is closed. The same once more comes to the top. */
  add(sentence: string, ofAttempt = false): void {
    const others = this.all.filter((one) => one.sentence !== sentence);
    this.all = [{ sentence, ofAttempt }, ...others].slice(0, most);
  }

  /** What an attempt at an edit came to: why it could not be made, or null. */
  ofAttempt(sentence: string | null): void {
    if (sentence !== null) this.add(sentence, true);
    else if (this.all.some(({ ofAttempt }) => ofAttempt)) {
      this.all = this.all.filter(({ ofAttempt }) => !ofAttempt);
    }
  }

  close(complaint: Complaint): void {
    this.all = this.all.filter((one) => one !== complaint);
  }
}
