import type { Swatch } from '../../../notebook';
import type { WorkedStretch } from '../gathered';

/** A stretch in all sizes that are written. */
export interface StretchBySize {
  /** Unique in its piece; the keys of its sentences are made of it. */
  readonly name: string;
  readonly label: string;
  readonly swatch: Swatch | undefined;
  readonly sizes: readonly WorkedStretch[];
  /** Rows of it that were written already, with how the piece starts. */
  readonly done: number;
}

/** The count after the stretch in each size. */
export function endsOf({ sizes }: StretchBySize): number[] {
  return sizes.map((size) => size.counts.at(-1) ?? size.from);
}
