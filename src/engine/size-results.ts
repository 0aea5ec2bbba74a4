import { wrongValue } from '../notebook';
import type { OfSize } from './answer-being-made';
import type { CellError } from './answers';
import { codes } from './engine-functions';
import { Engine, type Content, type Failure } from './engine';
import { packedMessage } from './pack-message';
import type { PackedMessage } from './packed-message';
import { engineError, notAllowed, waitsFor } from './sentences';
import { usesOf, type Slot } from './slot';

/** One size at work: its engine, and why rows without a result have none. */
export class SizeResults {
  readonly #slots: readonly (Slot | undefined)[];
  readonly #failures = new Map<number, Failure>();
  #engine: Engine | undefined;

  constructor(slots: readonly (Slot | undefined)[]) {
    this.#slots = slots;
  }

  /**
   * Puts contents in rows and tells what that changes.
   *
   * @param renamed rows that sentences call something else now
   */
  put(contents: ReadonlyMap<number, Content>, renamed: ReadonlySet<number>, answer: OfSize): void {
    const troubled = new Set<number>();
    const changed: Parameters<Engine['put']>[1] = (row, result) => {
      if (!this.#slots[row]) return;
      if (typeof result === 'object') {
        this.#failures.set(row, result);
        troubled.add(row);
        return;
      }
      this.#failures.delete(row);
      if (typeof result === 'number') answer.number(row, result);
      else if (typeof result === 'string') answer.text(row, result);
      else answer.truth(row, result);
    };
    for (const [row, content] of contents) {
      if (content === null) this.#failures.delete(row);
      else if (this.#reasonOf(row) !== reasonIn(content)) troubled.add(row);
    }
    if (this.#engine) this.#engine.put(contents, changed);
    else {
      const rows: Content[] = Array.from(this.#slots, () => null);
      for (const [row, content] of contents) rows[row] = content;
      this.#engine = new Engine(rows);
      this.#engine.all(changed);
    }
    if (renamed.size > 0) {
      for (const row of this.#failures.keys()) if (renamed.has(this.#origin(row))) troubled.add(row);
    }
    for (const row of troubled) if (this.#failures.has(row)) answer.error(row, this.#error(row));
  }

  #reasonOf(row: number): PackedMessage | undefined {
    return reasonIn(this.#engine?.content(row) ?? null);
  }

  #error(row: number): CellError {
    const origin = this.#origin(row);
    if (origin !== row) {
      const { calledElsewhere, ref } = this.#slots[origin]!.plan;
      return { message: packedMessage(waitsFor(calledElsewhere)), from: ref };
    }
    const reason = this.#reasonOf(row);
    if (reason !== undefined) return { message: reason };
    const { type, message } = this.#failures.get(row)!;
    if (type !== 'ERROR') return { message: packedMessage(engineError(type)) };
    if (!message.startsWith(codes.notAllowed)) return { message: message as PackedMessage };
    const value = Number(message.slice(codes.notAllowed.length));
    const { plan } = this.#slots[row]!;
    return { message: packedMessage(notAllowed(wrongValue(plan, value), value, plan.unit)) };
  }

  /** The row where the trouble of a row begins. */
  #origin(row: number): number {
    const root = this.#failures.get(row)!.root ?? row;
    // A result too large to hold carries no root, and HyperFormula takes the first that uses it for the culprit.
    if (this.#failures.get(root)?.type !== 'NUM' || this.#isRootless(root)) return root;
    return usesOf(this.#slots[root]!).find((used) => this.#isRootless(used)) ?? root;
  }

  #isRootless(row: number): boolean {
    const failure = this.#failures.get(row);
    return failure !== undefined && failure.root === undefined;
  }
}

function reasonIn(content: Content): PackedMessage | undefined {
  return typeof content === 'object' && content !== null ? content.reason : undefined;
}
