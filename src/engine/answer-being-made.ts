import type { Answer, CellRef, CellError } from './answers';
import type { Slot } from './slot';

/** What an update tells of one size. */
export interface OfSize {
  number(slot: number, value: number): void;
  text(slot: number, text: string): void;
  truth(slot: number, truth: boolean): void;
  error(slot: number, error: CellError): void;
}

/** An answer while its results come in. */
export class AnswerBuilder {
  #numbers = new Float64Array(3 * 1024);
  #filled = 0;
  readonly #texts: [number, number, string][] = [];
  readonly #truths: [number, number, boolean][] = [];
  readonly #errors: [number, number, CellError][] = [];
  readonly #start: Pick<Answer, 'firstSlot' | 'slots' | 'gone' | 'units'>;

  constructor(
    firstSlot: number,
    slots: readonly (Slot | undefined)[],
    gone: readonly number[],
    units: ReadonlySet<Slot>,
  ) {
    const refs: CellRef[] = slots.slice(firstSlot).map((slot) => slot!.plan.ref);
    const reported = new Set([...units, ...(slots.slice(firstSlot) as Slot[])]);
    this.#start = {
      firstSlot,
      slots: refs,
      gone,
      units: [...reported].map((slot) => [slot.row, slot.unit] as const),
    };
  }

  ofSize(size: number): OfSize {
    return {
      number: (slot, value) => this.#number(size, slot, value),
      text: (slot, text) => void this.#texts.push([size, slot, text]),
      truth: (slot, truth) => void this.#truths.push([size, slot, truth]),
      error: (slot, error) => void this.#errors.push([size, slot, error]),
    };
  }

  made(sizes: readonly string[]): Answer {
    return {
      ...this.#start,
      sizes,
      numbers: this.#numbers.slice(0, this.#filled),
      texts: this.#texts,
      truths: this.#truths,
      errors: this.#errors,
    };
  }

  #number(size: number, slot: number, value: number): void {
    if (this.#filled + 3 > this.#numbers.length) {
      const wider = new Float64Array(this.#numbers.length * 2);
      wider.set(this.#numbers);
      this.#numbers = wider;
    }
    this.#numbers[this.#filled++] = size;
    this.#numbers[this.#filled++] = slot;
    this.#numbers[this.#filled++] = value;
  }
}
