import { CraftError, workPiece } from '../../src/craft';
import type { Fabric, Row, Stretch } from '../../src/craft';

/** Counts alone are asked of these pieces, so a stitch is 1 cm wide and a row 1 cm high. */
const fabric: Fabric = { stitches: 1, rows: 1 };

/** Far more steps than any published example has. */
const mostSteps = 1000;

/**
 * A piece described as a published pattern does it, step by step from its cast-on, and worked by `workPiece`: every
 * count is read off the rows. Immutable: each step gives another piece.
 *
 * @example new WorkedPiece(102).leave(7).shape(-2, 30).count // 28: 7 bound off on each side, 2 decreased 30 times
 */
export class WorkedPiece {
  constructor(
    readonly start: number,
    readonly worked: 'flat' | 'round' = 'flat',
    private readonly stretches: readonly Stretch[] = [],
  ) {}

  /** Stitches bound off or held, the same at both ends unless told, and the row that they fall on. */
  leave(atStart: number, atEnd = atStart): WorkedPiece {
    return this.with({ kind: 'leave', fabric, atStart, atEnd }, { kind: 'even', fabric, rows: 1 });
  }

  /** Stitches cast on at the end of the row before, and the row that they first count in. */
  add(atEnd: number): WorkedPiece {
    return this.with({ kind: 'add', fabric, atStart: 0, atEnd }, { kind: 'even', fabric, rows: 1 });
  }

  /** `by` stitches more (fewer where negative) on each of `times` shaping rows, every row or every second. */
  shape(by: number, times: number, every: 1 | 2 = 2): WorkedPiece {
    const plan = { perRow: Math.abs(by), over: times * every, every, before: 0, after: 0 };
    return this.with({ kind: 'taper', fabric, to: this.count + by * times, ...plan });
  }

  /** One row shaped evenly across, `by` stitches more (fewer where negative). */
  evenly(by: number): WorkedPiece {
    return this.with({ kind: 'evenly', fabric, to: this.count + by });
  }

  /** One row in which each of so many repeats gains `by` stitches (loses them where negative). */
  eachRepeat(repeats: number, by: number): WorkedPiece {
    return this.with({ kind: 'eachRepeat', fabric, repeats, by });
  }

  /** One round of "(k `plain`, 2 together) around"; what does not fill a last group stays plain. */
  together(plain: number): WorkedPiece {
    return this.eachRepeat(Math.floor(this.count / (plain + 2)), -1);
  }

  even(rows: number): WorkedPiece {
    return this.with({ kind: 'even', fabric, rows });
  }

  /** The same step so many times over. */
  times(times: number, step: (piece: WorkedPiece) => WorkedPiece): WorkedPiece {
    return this.counts(times, step).piece;
  }

  /** The same step so many times over, with the count after each. */
  counts(
    times: number,
    step: (piece: WorkedPiece, index: number) => WorkedPiece,
  ): { piece: WorkedPiece; counts: number[] } {
    if (!Number.isInteger(times) || times < 0 || times > mostSteps) {
      throw new CraftError('not-times', `A step is worked 0 to ${mostSteps} times, not ${times} times.`);
    }
    // eslint-disable-next-line @typescript-eslint/no-this-alias
    let piece: WorkedPiece = this;
    const counts: number[] = [];
    for (let index = 0; index < times; index++) {
      piece = step(piece, index);
      counts.push(piece.count);
    }
    return { piece, counts };
  }

  get rows(): Row[] {
    return workPiece({
      name: 'Piece',
      worked: this.worked,
      start: this.start,
      stretches: [...this.stretches],
    });
  }

  /** The stitches after the last row. */
  get count(): number {
    return this.rows.at(-1)?.count ?? this.start;
  }

  /** The rows on which the count changes, from 1. */
  get shapingRows(): number[] {
    return this.rows.filter((row) => row.change !== 0).map((row) => row.number);
  }

  private with(...stretches: Stretch[]): WorkedPiece {
    return new WorkedPiece(this.start, this.worked, [...this.stretches, ...stretches]);
  }
}

/**
 * One of two equal sides.
 *
 * @throws CraftError where the stitches do not make two equal sides
 */
export function half(stitches: number): number {
  if (!Number.isInteger(stitches / 2) || stitches < 0) {
    throw new CraftError('not-even', `${stitches} stitches do not make two equal sides.`);
  }
  return stitches / 2;
}
