import { bracketed } from '../../format';
import type { Size, Swatch } from '../../notebook';
import type { PatternBlock } from '../pattern-document';
import { shown, theirs, type Sentences, type Slots } from './sentence';
import { counted, sizeList, type BySize } from './size-list';
import { workedWith } from './worked-with';

/** The blocks of one piece as they are written, with what every stretch has to know. */
export class PieceWriter {
  readonly blocks: PatternBlock[] = [];
  readonly row: 'row' | 'round';
  /** The ids of the sizes, in the order of the lists. */
  readonly sizes: readonly string[];
  readonly labels: readonly string[];
  /** Whether the last line told how a row begins, and what is worked on it comes next. */
  begun = false;

  constructor(
    readonly sentences: Sentences,
    /** What the keys of its sentences begin with. */
    readonly key: string,
    readonly craft: 'crochet' | 'knitting',
    readonly worked: 'flat' | 'round',
    written: readonly Size[],
  ) {
    this.sizes = written.map(({ id }) => id);
    this.labels = written.map(({ label }) => label);
    this.row = worked === 'round' ? 'round' : 'row';
  }

  /** The line of rows worked even that stands last, where nothing has come after it. */
  #even:
    | {
        readonly first: string;
        readonly key: string;
        readonly rows: BySize<number>;
        readonly more: string;
        readonly stitch: string;
      }
    | undefined;

  /**
   * "Work 48 (50, 52) rows even."; with the rows of the line before, where that is such a line too. Where a person has
   * put either in words of their own, both stand. Nothing where no size has such rows.
   *
   * @param stitch what they are worked in, where that is not the stitch of the fabric: "k2, p2 rib"
   */
  even(key: string, rows: BySize<number>, more = '', stitch = ''): void {
    if (rows.every((count) => count === null)) return;
    const before = this.#even;
    const goesOn =
      before?.stitch === stitch &&
      ![before.key, key].some((one) => this.sentences.isReworded(`${this.key} ${one}`));
    const stated = goesOn
      ? {
          first: before.first,
          key: `${before.first} to ${key}`,
          rows: rows.map((count, sizeIndex) => (count ?? 0) + (before.rows[sizeIndex] ?? 0) || null),
          more: before.more,
        }
      : { first: key, key, rows, more };
    if (goesOn) this.blocks.pop();
    this.line(stated.key, stitch === '' ? 'Work {rows} even.' : `Work {rows} in ${stitch}.`, {
      rows: counted(stated.rows, `${stated.more}${this.row}`),
    });
    this.#even = { ...stated, stitch };
  }

  /** Ends what is told as one: a heading follows. */
  apart(): void {
    this.#even = undefined;
  }

  line(key: string, template: string, slots: Slots = {}): void {
    this.begun = false;
    this.#even = undefined;
    this.blocks.push(this.sentences.line(`${this.key} ${key}`, template, slots));
  }

  paragraph(key: string, template: string, slots: Slots = {}): void {
    this.#even = undefined;
    this.blocks.push(this.sentences.paragraph(`${this.key} ${key}`, template, slots));
  }

  /**
   * One line where all sizes can share it; otherwise a line for all, and below it a line for each group of sizes.
   *
   * @param together what is written where all can share it
   * @param apart the line above the others
   * @param each what a group of sizes does, as text
   */
  byGroups(
    key: string,
    groups: readonly (readonly number[])[],
    together: () => void,
    apart: () => void,
    each: (sizeIndices: readonly number[]) => string,
  ): void {
    if (groups.length <= 1) {
      together();
      return;
    }
    apart();
    for (const sizeIndices of groups) {
      this.line(`${key} in ${this.sizes[sizeIndices[0]!]!}`, '{sizes}: {work}.', {
        sizes: theirs(this.who(sizeIndices)),
        work: each(sizeIndices),
      });
    }
  }

  /** "Size XS", "Sizes S (M, L)". */
  who(sizeIndices: readonly number[]): string {
    const labels = sizeIndices.map((sizeIndex) => shown(this.labels[sizeIndex]!));
    return `${labels.length === 1 ? 'Size' : 'Sizes'} ${bracketed(labels)}`;
  }

  /** "Next row (RS)", the side only where it is the same in every size; "Same row" where it was begun already. */
  next(sides: BySize<'RS' | 'WS' | 'round'>): string {
    const [side] = sides.filter((one) => one !== null);
    const known = sides.every((one) => one === null || one === side) && side && side !== 'round';
    return `${this.begun ? 'Same' : 'Next'} ${this.row}${known ? ` (${side})` : ''}`;
  }
}

/** "[64 (68, 72) sts]", without its square brackets. */
export function stitchCount(counts: BySize<number>): string {
  const one = counts.every((count) => count === null || count === 1);
  return `${sizeList(counts)} ${one ? 'st' : 'sts'}`;
}

/** The values of some sizes, in their order. */
export function at<T>(values: BySize<T>, sizeIndices: readonly number[]): BySize<T> {
  return sizeIndices.map((sizeIndex) => values[sizeIndex] ?? null);
}

/** How a swatch was worked, and what it is called. */
export function fabricLine(swatch: Swatch, craft: 'crochet' | 'knitting'): string {
  const worked = workedWith(swatch, craft);
  return worked === '' ? swatch.label : `${swatch.label} (${worked})`;
}
