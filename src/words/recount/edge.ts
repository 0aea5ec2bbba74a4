import { amount, edgeStretch } from './forms';
import { readInstruction } from './instruction';
import { workInstruction } from './work-instruction';

/** An edge that a piece is picked up along, stretch by stretch. */
export class Edge {
  readonly #total: number;
  #sum = 0;
  /** The row ends of the stretch at hand, and the stitches that are picked up over them. */
  #rowEnds = 0;
  #share = 0;

  constructor(total: number) {
    this.#total = total;
  }

  /** Whether nothing is picked up along the stretch at hand: there is an en dash for this size. */
  get isIdle(): boolean {
    return this.#share === 0;
  }

  /** Takes the words of a line where they are a stretch of the edge. @returns whether they were */
  take(words: string): boolean {
    const found = edgeStretch.exec(words);
    if (!found) return false;
    this.#share = amount(found[1]);
    this.#rowEnds = amount(found[2]);
    this.#sum += this.#share;
    return true;
  }

  /**
   * What is wrong with the groups in which the stretch at hand is picked up: "(pick up 3, skip 1) 10 times" goes over as
   * many row ends, and gives as many stitches, as the line above says.
   */
  problemOfGroups(text: string): string | undefined {
    if (this.isIdle) return undefined;
    // A row end is used where it is picked up once, and where it is skipped.
    const words = text
      .replace(/(?<!\d)(\d+|–) in each of the next (\d+|–) row ends/giu, '($1 in the next row end) $2 times')
      .replace(/(?<!\d)(\d+|–) in the next row end/giu, '$1 sc in next st')
      .replace(/pick up (?=\d)/giu, 'sc ');
    const parts = readInstruction(words);
    if ('problem' in parts) return parts.problem;
    const counted = workInstruction(parts, this.#rowEnds);
    if ('problem' in counted) return counted.problem;
    if (counted.count === this.#share) return undefined;
    return `It picks up ${counted.count} stitches, and the line above says ${this.#share}.`;
  }

  /** What is wrong once its last stretch has been told. */
  problemAtEnd(): string | undefined {
    if (this.#sum === this.#total) return undefined;
    return `The stretches of the edge add up to ${this.#sum} stitches, and ${this.#total} are picked up.`;
  }
}
