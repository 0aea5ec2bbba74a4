import { plainMessage, type Message } from '../craft';
import { isDimension, type Unit } from '../formulas';
import { unpacked } from './packed-message';
import type { Answer, CellRef, CellError, WordedError } from './answers';

type Result = number | string | boolean | CellError;

/** A number that is not what it was before. */
export interface Move extends CellRef {
  readonly size: string;
  readonly before: number;
  readonly after: number;
}

/**
 * The results of a sheet as they stand, added up from its answers. A place has, in each size, a number, a text, a
 * truth or a trouble, or nothing yet.
 */
export class Results {
  #slots = new Map<string, Map<string, number>>();
  #refs: (CellRef | undefined)[] = [];
  #units: (Unit | null)[] = [];
  #sizes = new Map<string, (Result | undefined)[]>();

  /** Puts the message of a cell in words: the plain ones of the arithmetic, unless something else is put here. */
  messageFor: (message: Message, cell: string) => string = plainMessage;

  /**
   * Takes an answer in and tells the places that are not the same as before in some size, each once.
   * Numbers that moved are told to `moved` as well.
   */
  apply(answer: Answer, moved?: (move: Move) => void): CellRef[] {
    const changed = new Set<CellRef>();
    // A sheet that begins with its first slot knows nothing of what an earlier one told.
    if (answer.firstSlot === 0) this.#forget(changed);
    answer.slots.forEach((ref, index) => this.#add(ref, answer.firstSlot + index));
    for (const slot of answer.gone) this.#remove(slot, changed);
    this.#sizes = new Map(answer.sizes.map((size) => [size, this.#sizes.get(size) ?? []]));
    const columns = [...this.#sizes.values()];
    const put = (size: number, slot: number, result: Result): void => {
      const ref = this.#refs[slot];
      if (!ref) return;
      const before = columns[size]![slot];
      columns[size]![slot] = result;
      changed.add(ref);
      if (moved && typeof before === 'number' && typeof result === 'number' && before !== result) {
        moved({ ...ref, size: answer.sizes[size]!, before, after: result });
      }
    };
    const { numbers } = answer;
    for (let i = 0; i + 2 < numbers.length; i += 3) put(numbers[i]!, numbers[i + 1]!, numbers[i + 2]!);
    for (const list of [answer.texts, answer.truths, answer.errors]) {
      for (const [size, slot, result] of list) put(size, slot, result);
    }
    for (const [slot, unit] of answer.units) {
      this.#units[slot] = unit;
      const ref = this.#refs[slot];
      if (ref) changed.add(ref);
    }
    return [...changed];
  }

  number(size: string, cell: string, key: string): number | undefined {
    const result = this.#result(size, cell, key);
    return typeof result === 'number' ? result : undefined;
  }

  text(size: string, cell: string, key: string): string | undefined {
    const result = this.#result(size, cell, key);
    return typeof result === 'string' ? result : undefined;
  }

  truth(size: string, cell: string, key: string): boolean | undefined {
    const result = this.#result(size, cell, key);
    return typeof result === 'boolean' ? result : undefined;
  }

  /** Why a place has no result, in words. */
  error(size: string, cell: string, key: string): WordedError | undefined {
    const error = this.cellError(size, cell, key);
    return error && { ...error, message: this.messageFor(unpacked(error.message), cell) };
  }

  /** Why a place has no result, as it came. */
  cellError(size: string, cell: string, key: string): CellError | undefined {
    const result = this.#result(size, cell, key);
    return typeof result === 'object' ? result : undefined;
  }

  /** The unit of a place; undefined where it is not known. */
  unit(cell: string, key: string): Unit | undefined {
    const slot = this.#slots.get(cell)?.get(key);
    return slot === undefined ? undefined : (this.#units[slot] ?? undefined);
  }

  /** Whether a place holds numbers, as far as its unit is known. */
  isNumber(cell: string, key: string): boolean {
    const unit = this.unit(cell, key);
    return unit !== undefined && isDimension(unit);
  }

  /** Ids of the sizes that have been worked, in their order. */
  get sizes(): string[] {
    return [...this.#sizes.keys()];
  }

  #result(size: string, cell: string, key: string): Result | undefined {
    const slot = this.#slots.get(cell)?.get(key);
    return slot === undefined ? undefined : this.#sizes.get(size)?.[slot];
  }

  #add(ref: CellRef, slot: number): void {
    this.#refs[slot] = ref;
    const keys = this.#slots.get(ref.cell);
    if (keys) keys.set(ref.key, slot);
    else this.#slots.set(ref.cell, new Map([[ref.key, slot]]));
  }

  #remove(slot: number, changed: Set<CellRef>): void {
    const ref = this.#refs[slot];
    if (!ref) return;
    changed.add(ref);
    this.#refs[slot] = undefined;
    this.#units[slot] = null;
    for (const column of this.#sizes.values()) column[slot] = undefined;
    const keys = this.#slots.get(ref.cell);
    // The cell may have come back meanwhile, on another slot.
    if (keys?.get(ref.key) !== slot) return;
    keys.delete(ref.key);
    if (keys.size === 0) this.#slots.delete(ref.cell);
  }

  #forget(changed: Set<CellRef>): void {
    for (const ref of this.#refs) if (ref) changed.add(ref);
    this.#slots = new Map();
    this.#refs = [];
    this.#units = [];
    this.#sizes = new Map();
  }
}
