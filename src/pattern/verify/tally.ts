export const mostRows = 100_000;
const mostStitches = 10_000_000;
const mostProblems = 200;

/** The stitches of a piece as its lines are followed: the count after each row, and what did not come out. */
export class Tally {
  readonly counts: number[] = [];
  readonly problems: { line: number; problem: string }[] = [];
  /** The line that is followed, from 0: where what is wrong is told. */
  line = 0;
  #count: number | undefined;

  /** The stitches there are; undefined before the piece has begun. */
  get count(): number | undefined {
    return this.#count;
  }

  get isFull(): boolean {
    return this.counts.length >= mostRows;
  }

  wrong(problem: string): void {
    if (this.problems.length < mostProblems) this.problems.push({ line: this.line, problem });
  }

  begin(count: number | undefined): void {
    if (count === undefined || count < 1) return this.wrong('It does not say how many stitches there are.');
    if (this.#count !== undefined) return this.wrong('The piece has begun already.');
    this.#count = count;
  }

  /** The stitches there are; where there are none yet, that is wrong. */
  have(): number | undefined {
    if (this.#count === undefined)
      this.wrong('The piece has not begun: no line says how many stitches there are.');
    return this.#count;
  }

  /** Whether so many rows can be followed; more would only be meant to hang whoever counts. */
  room(rows: number): boolean {
    if (this.counts.length + rows <= mostRows) return true;
    this.wrong(`More than ${mostRows} rows are not followed.`);
    return false;
  }

  rows(rows: number): void {
    const count = this.have();
    if (count === undefined || !this.room(rows)) return;
    for (let row = 0; row < rows; row++) this.counts.push(count);
  }

  /** The count that the next row leaves. */
  to(count: number): void {
    if (count < 1) this.wrong(`That leaves ${count} stitches.`);
    else if (count > mostStitches) this.wrong('That is more stitches than can be counted.');
    else this.#count = count;
  }

  /** Compares with what the line says; goes on with what was counted. */
  check(stated: number | null): void {
    if (stated === null || this.#count === undefined || this.#count === stated) return;
    this.wrong(`It says ${stated} stitches, and following it gives ${this.#count}.`);
  }
}
