import { message, type Message } from '../craft';
import {
  type Cell,
  type Change,
  type Size,
  inputsOf,
  outputsOf,
  changedCell,
  changedCellGone,
} from '../notebook';
import type { CellRef, CellError } from './answers';
import { packedMessage } from './pack-message';
import { Results } from './results';
import { WorkedSheet, type Fixed } from './sheet';
import type { TrialResults, TrialsRequest } from './trial-results';

/** Sheets kept for trials that want the same places in the same sizes as some before. */
const mostKept = 4;

/** A sheet for trials only, and the notebook as it has it. */
interface Scratch {
  readonly sheet: WorkedSheet;
  readonly results: Results;
  cells: Map<string, Cell>;
  sizes: readonly Size[];
  quarantined: ReadonlySet<string>;
}

/** A trial made ready: the cells that differ from the notebook, the values held, or why it cannot be. */
type Prepared =
  | { readonly changed: ReadonlyMap<string, Cell>; readonly fixed: readonly Fixed[] }
  | { readonly refused: Message };

/**
 * Works a notebook with some of its values or formulas changed, many times over. The sheet that holds the notebook is
 * only read: trials have sheets of their own, kept between trials of the same shape, so that a trial costs one edit of
 * what the wanted places depend on. A trial gives what a fresh sheet of the changed notebook would give, to the last
 * digit.
 */
export class Trials {
  readonly #base: WorkedSheet;
  readonly #kept = new Map<string, Scratch>();
  readonly #progress: () => void;

  /** @param progress called now and then in the midst of a trial */
  constructor(base: WorkedSheet, progress: () => void = () => {}) {
    this.#base = base;
    this.#progress = progress;
  }

  /**
   * Works trials step by step; between two steps the base may be edited, and then the trials end: they no longer hold.
   *
   * @param goesOn told how many trials are done; gives whether to go on with the next
   */
  *steps(
    { trials, wanted, sizes: sizeIds }: TrialsRequest,
    goesOn: (done: number) => boolean = () => true,
  ): Generator<void, TrialResults> {
    const { updates } = this.#base;
    const texts: [number, number, number, string][] = [];
    const truths: [number, number, number, boolean][] = [];
    const errors: [number, number, number, CellError][] = [];
    const numbers = new Float64Array(trials.length * sizeIds.length * wanted.length).fill(NaN);
    const missing = new Map(wanted.flatMap((ref, at) => (this.#has(ref) ? [] : [[at, resultGone]])));
    const cells = new Map([...this.#base.cells].map(([id, { cell }]) => [id, cell]));
    const sizes = this.#base.sizes.filter(({ id }) => sizeIds.includes(id));
    const held = new Set(this.#base.quarantinedCells);
    const scratch = this.#scratchFor(wanted, sizeIds);
    let done = 0;
    let ended: TrialResults['ended'];
    for (const changes of trials) {
      if (this.#base.updates !== updates) ended = 'edited';
      else if (!goesOn(done)) ended = 'stopped';
      if (ended) break;
      const trial = this.#prepared(changes, cells, this.#base.sizes);
      if (!('refused' in trial)) yield* this.#work(scratch, cells, sizes, held, trial);
      let at = done * sizeIds.length * wanted.length;
      for (const [sizeAt, size] of sizeIds.entries()) {
        for (const [wantedAt, { cell, key }] of wanted.entries()) {
          const { results } = scratch;
          const number = 'refused' in trial ? undefined : results.number(size, cell, key);
          if (number !== undefined) numbers[at] = number;
          else {
            const [text, truth] = [results.text(size, cell, key), results.truth(size, cell, key)];
            const wrong = 'refused' in trial ? trial.refused : missing.get(wantedAt);
            if (wrong !== undefined) errors.push([done, sizeAt, wantedAt, { message: packedMessage(wrong) }]);
            else if (text !== undefined) texts.push([done, sizeAt, wantedAt, text]);
            else if (truth !== undefined) truths.push([done, sizeAt, wantedAt, truth]);
            else {
              const error = results.cellError(size, cell, key) ?? { message: packedMessage(sizeGone) };
              errors.push([done, sizeAt, wantedAt, error]);
            }
          }
          at++;
        }
      }
      done++;
      yield;
    }
    return {
      wanted,
      sizes: sizeIds,
      done,
      ...(ended ? { ended } : {}),
      numbers,
      texts,
      truths,
      errors,
    };
  }

  /** Works all trials at one go. */
  run(request: TrialsRequest): TrialResults {
    const steps = this.steps(request);
    for (;;) {
      const step = steps.next();
      if (step.done) return step.value;
    }
  }

  *#work(
    scratch: Scratch,
    cells: ReadonlyMap<string, Cell>,
    sizes: readonly Size[],
    held: ReadonlySet<string>,
    { changed, fixed }: Exclude<Prepared, { refused: Message }>,
  ): Generator<void> {
    const put: Cell[] = [];
    const drop: string[] = [];
    for (const [id, cell] of cells) {
      const now = changed.get(id) ?? cell;
      // A cell that is set aside, or no longer, is told again even where it stayed the same.
      if (scratch.cells.get(id) === now && scratch.quarantined.has(id) === held.has(id)) continue;
      put.push(now);
      scratch.cells.set(id, now);
    }
    if (scratch.cells.size > cells.size) {
      for (const id of scratch.cells.keys()) if (!cells.has(id)) drop.push(id);
      for (const id of drop) scratch.cells.delete(id);
    }
    const other =
      sizes.length !== scratch.sizes.length || sizes.some((size, at) => size !== scratch.sizes[at]);
    scratch.sizes = sizes;
    scratch.quarantined = held;
    const hold = put.flatMap(({ id }) => (held.has(id) ? [id] : []));
    const changes = { put, drop, ...(other ? { sizes } : {}) };
    scratch.results.apply(yield* scratch.sheet.updating(changes, hold, fixed));
  }

  #prepared(changes: readonly Change[], cells: ReadonlyMap<string, Cell>, sizes: readonly Size[]): Prepared {
    const changed = new Map<string, Cell>();
    const fixed: Fixed[] = [];
    for (const change of changes) {
      const { cell: id, key, size, value } = change;
      const cell = changed.get(id) ?? cells.get(id);
      if (!cell) return { refused: changedCellGone };
      if (value !== undefined && isWorkedOut(cells.get(id)!, key, size)) {
        if (!Number.isFinite(value)) return { refused: heldAtNone };
        fixed.push({ cell: id, key, size, value });
        continue;
      }
      const next = changedCell(cell, change, sizes);
      if ('refused' in next) return next;
      changed.set(id, next);
    }
    return { changed, fixed };
  }

  #has({ cell: id, key }: CellRef): boolean {
    const cell = this.#base.cells.get(id)?.cell;
    return cell !== undefined && [...inputsOf(cell), ...outputsOf(cell)].some((part) => part.key === key);
  }

  #scratchFor(wanted: readonly CellRef[], sizes: readonly string[]): Scratch {
    const shape = JSON.stringify([sizes, wanted.map(({ cell, key }) => [cell, key])]);
    const kept = this.#kept.get(shape);
    const scratch = kept ?? {
      sheet: new WorkedSheet(this.#progress, wanted),
      results: new Results(),
      cells: new Map<string, Cell>(),
      sizes: [],
      quarantined: new Set<string>(),
    };
    this.#kept.delete(shape);
    this.#kept.set(shape, scratch);
    if (this.#kept.size > mostKept) this.#kept.delete(this.#kept.keys().next().value!);
    return scratch;
  }
}

/** Whether a value can only be held there: a formula in an input cannot be given a value of one size as an edit. */
function isWorkedOut(cell: Cell, key: string, size: string | null): boolean {
  if (outputsOf(cell).some((output) => output.key === key)) return true;
  const input = size === null ? undefined : inputsOf(cell).find((candidate) => candidate.key === key);
  return input !== undefined && 'formula' in input.entry;
}

const resultGone = message('gone', 'This result is no longer in the notebook: choose another.');
const heldAtNone = message('not-a-number', 'What is held has to be held at a number.');
const sizeGone = message('gone', 'That size is no longer in the notebook.');
