import { DetailedCellError, HyperFormula, type RawCellContent } from 'hyperformula';
import { engineSettings } from './engine-functions';
import { own } from './own-functions';
import { packedMessage } from './pack-message';
import type { PackedMessage } from './packed-message';
import { notTaken } from './sentences';

/** What the sheet puts in a row: a number, a formula ready for the engine, a reason why there is neither, or nothing. */
export type Content = number | string | Reason | null;

/** Why a row has no result. */
export interface Reason {
  readonly reason: PackedMessage;
}

/** Why a formula gave no result, as the engine tells it. */
export interface Failure {
  readonly type: string;
  readonly message: string;
  /** The row where it began; undefined where the engine does not know. */
  readonly root: number | undefined;
}

export type Result = number | string | boolean | Failure;

const mostRead = 5000;
const nothing = `=${own.nothing}()`;

/**
 * One size (or a size under a what-if): HyperFormula with a single column, each slot on its row.
 *
 * An exception out of HyperFormula leaves it stale, so it is built again from the contents; a row that throws even
 * then has no result and says so.
 */
export class Engine {
  readonly #contents: Content[];
  #hyperFormula: HyperFormula;
  /** Formulas read since it was built: HyperFormula keeps the tree of every one, also of those long replaced. */
  #read = 0;

  constructor(contents: readonly Content[] = []) {
    this.#contents = [...contents];
    this.#hyperFormula = this.#built();
  }

  content(row: number): Content {
    return this.#contents[row] ?? null;
  }

  /** Puts contents in rows and tells each row whose result may have changed; the last word on a row counts. */
  put(contents: ReadonlyMap<number, Content>, changed: (row: number, result: Result) => void): void {
    let failed = false;
    const changes: [number, RawCellContent][] = [];
    for (const [row, content] of contents) {
      const before = raw(this.content(row));
      this.#contents[row] = content;
      const after = raw(content);
      if (before !== after) changes.push([row, after]);
    }
    if (changes.length === 0) return;
    try {
      const exported =
        changes.length === 1
          ? this.#set(...changes[0]!)
          : this.#hyperFormula.batch(() => {
              for (const change of changes) this.#set(...change);
            });
      for (const change of exported) {
        const result = 'address' in change ? resultOf(change.newValue) : undefined;
        if (result !== undefined) changed((change as { address: { row: number } }).address.row, result);
      }
    } catch {
      failed = true;
    }
    if (failed) {
      this.#buildAgain();
      this.all(changed);
    } else if (this.#read > mostRead) {
      this.#buildAgain();
    }
  }

  /** Tells the result of every row. */
  all(each: (row: number, result: Result) => void): void {
    this.#hyperFormula.getSheetValues(0).forEach((values, row) => {
      const result = resultOf(values[0]);
      if (result !== undefined) each(row, result);
    });
  }

  #set(row: number, content: RawCellContent) {
    if (typeof content === 'string') this.#read++;
    return this.#hyperFormula.setCellContents({ sheet: 0, col: 0, row }, content);
  }

  #built(): HyperFormula {
    try {
      const rows = Array.from(this.#contents, (content) => [raw(content ?? null)]);
      return HyperFormula.buildFromArray(rows, engineSettings);
    } catch {
      return this.#builtOneByOne();
    }
  }

  #builtOneByOne(): HyperFormula {
    const built = HyperFormula.buildFromArray([], engineSettings);
    this.#contents.forEach((content, row) => {
      try {
        built.setCellContents({ sheet: 0, col: 0, row }, raw(content));
      } catch {
        this.#contents[row] = { reason: packedMessage(notTaken) };
      }
    });
    const rows = this.#contents.map((content) => [raw(content)]);
    return HyperFormula.buildFromArray(rows, engineSettings);
  }

  #buildAgain(): void {
    try {
      this.#hyperFormula.destroy();
    } catch {
      // It is thrown away whatever state it is in.
    }
    this.#read = 0;
    this.#hyperFormula = this.#built();
  }
}

/** A content as HyperFormula takes it. */
function raw(content: Content): RawCellContent {
  return typeof content === 'object' && content !== null ? nothing : content;
}

function resultOf(value: unknown): Result | undefined {
  if (typeof value === 'number') {
    // Rounding to 15 digits turns what is smaller than any power of ten it can hold into NaN; it is as good as 0.
    return Number.isNaN(value) ? 0 : value;
  }
  if (typeof value === 'string' || typeof value === 'boolean') return value;
  if (!(value instanceof DetailedCellError)) return undefined;
  const { type, message, address } = value;
  // 'Sheet1!A7' is row 6.
  const root = address === undefined ? undefined : Number(address.slice(address.lastIndexOf('A') + 1)) - 1;
  return { type, message, root };
}
