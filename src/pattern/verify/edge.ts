import { amount, edgeStretch } from './forms';
import { readInstruction } from './instruction';
import { workInstruction } from './work-instruction';

/** The row ends of a stretch of an edge, and the stitches that are picked up over them. */
interface Stretch {
  readonly rowEnds: number;
  readonly share: number;
  /** So many stitches in so many row ends, as they are said to be about. */
  readonly ratio?: { readonly pick: number; readonly of: number };
  /** So many repeats with so many stitches in each, as they are said to be about. */
  readonly repeats?: { readonly count: number; readonly each: number };
}

/** An edge that a piece is picked up along, stretch by stretch. */
export class Edge {
  readonly #total: number;
  #sum = 0;
  #before: Stretch | undefined;
  #stretch: Stretch | undefined;
  /** Whether it was told how the stretch at hand comes out even. */
  #spread = false;

  constructor(total: number) {
    this.#total = total;
  }

  /** Whether nothing is picked up along the stretch at hand: there is an en dash for this size. */
  get isIdle(): boolean {
    return this.#stretch?.share === 0;
  }

  /** The stitches of the stretch at hand. */
  get share(): number {
    return this.#stretch?.share ?? 0;
  }

  /** Takes the words of a line where they are a stretch of the edge. @returns whether they were */
  read(words: string): boolean {
    const found = edgeStretch.exec(words);
    if (!found) return false;
    this.#before = this.#stretch;
    const [, share, rowEnds, pick, of, repeats, each] = found;
    this.#stretch = {
      rowEnds: amount(rowEnds),
      share: amount(share),
      ...(pick === undefined ? {} : { ratio: { pick: amount(pick), of: of === 'one' ? 1 : amount(of) } }),
      ...(each === undefined ? {} : { repeats: { count: amount(repeats), each: amount(each) } }),
    };
    this.#spread = false;
    this.#sum += this.#stretch.share;
    return true;
  }

  /** What is wrong where the stretch at hand is said to go "in the same way" as the one before it. */
  problemOfLikeness(): string | undefined {
    const [before, now] = [this.#before, this.#stretch];
    if (!before) return 'It is said to be like the stretch before it, and there is none.';
    if (!now || (before.share === now.share && before.rowEnds === now.rowEnds)) return undefined;
    return `It is said to be like the stretch before it, and it has ${now.share} stitches over ${now.rowEnds} row ends where that one has ${before.share} over ${before.rowEnds}.`;
  }

  /**
   * What is wrong with the ratio that the stretch at hand is said to have: who follows it comes within a stitch, or
   * within one in twenty, of the count that is said; in each repeat, within half a stitch.
   */
  problemOfRatio(): string | undefined {
    const stretch = this.#stretch;
    if (!stretch || stretch.share === 0) return undefined;
    const { share, rowEnds, ratio, repeats } = stretch;
    if (ratio) {
      const given = (rowEnds * ratio.pick) / ratio.of;
      if (Math.abs(given - share) <= Math.max(1, share / 20)) return undefined;
      return `About ${ratio.pick} in every ${ratio.of} of ${rowEnds} row ends are not ${share} stitches.`;
    }
    if (!repeats || Math.abs(share / repeats.count - repeats.each) <= 0.5) return undefined;
    // Fewer stitches than repeats: there is no smaller number to say.
    if (repeats.each === 1 && share < repeats.count) return undefined;
    return `About ${repeats.each} in each of ${repeats.count} repeats are not ${share} stitches.`;
  }

  /**
   * What is wrong with the groups in which the stretch at hand is picked up: "(pick up 3, skip 1) 10 times" goes over as
   * many row ends, and gives as many stitches, as the line above says.
   */
  problemOfGroups(text: string): string | undefined {
    const stretch = this.#stretch;
    if (!stretch) return 'No stretch of the edge stands before it.';
    if (stretch.share === 0) return undefined;
    if (this.#spread) return 'It was told already how this stretch of the edge comes out even.';
    this.#spread = true;
    // A row end is used where it is picked up once, and where it is skipped.
    const words = text
      .replace(
        /(?<!\d)(\d+|–) in each of the next (\d+|–) (?:row end|st|repeat)s/giu,
        '($1 in the next st) $2 times',
      )
      .replace(/(?<!\d)(\d+|–) in the next (?:row end|st|repeat)\b/giu, '$1 sc in next st')
      .replace(/pick up (?=\d)/giu, 'sc ');
    const parts = readInstruction(words);
    if ('problem' in parts) return parts.problem;
    const counted = workInstruction(parts, stretch.repeats?.count ?? stretch.rowEnds);
    if ('problem' in counted) return counted.problem;
    if (counted.count === stretch.share) return undefined;
    return `It picks up ${counted.count} stitches, and the line above says ${stretch.share}.`;
  }

  /** What is wrong once its last stretch has been told. */
  problemAtEnd(): string | undefined {
    if (this.#sum === this.#total) return undefined;
    return `The stretches of the edge add up to ${this.#sum} stitches, and ${this.#total} are picked up.`;
  }
}
