import { sentence, type Message } from '../craft';
import type { Changes, Cell, Size } from '../notebook';
import type { FormulaProblem } from '../formulas';
import { AnswerBuilder } from './answer-being-made';
import type { Answer, Checked, CellRef, Sheet } from './answers';
import { contentOf, problemOf } from './content';
import type { Content } from './engine';
import { circular, engineError, waitsFor } from './sentences';
import { packedMessage } from './pack-message';
import type { PackedMessage } from './packed-message';
import { SizeResults } from './size-results';
import { isProblem, plansOf, usesOf, type Slot } from './slot';
import { SlotGraph, type Update } from './slot-graph';
import { misfit } from './units/derive';
import { TreeReader } from './units/tree-reader';

/** A number in a place, in one size or (`size: null`) in all, whatever its formula would give. */
export interface Fixed extends CellRef {
  readonly size: string | null;
  readonly value: number;
}

/** With more unused rows than this the sheet is rebuilt. */
const mostGone = 2000;

/**
 * Works a notebook: every formula in every size, with units and errors. Given what changed in the notebook, it
 * tells what changed in the results; what it has told adds up to what a fresh sheet of the same notebook would tell.
 */
export class WorkedSheet implements Sheet {
  #cells = new Map<string, { readonly cell: Cell; readonly slots: Map<string, Slot> }>();
  #graph: SlotGraph;
  #sizes: readonly Size[] = [];
  #results = new Map<string, SizeResults>();
  #updates = 0;
  #fixed = new Set<Slot>();
  readonly #wanted: readonly CellRef[] | null;
  /** Rows that the wanted places depend on, and their own. */
  #needed = new Set<number>();
  readonly #reader = new TreeReader();
  readonly #progress: () => void;

  /**
   * @param progress called now and then in a long update, to show that it is getting on
   * @param wanted the only places whose results are of interest; null where all are
   */
  constructor(progress: () => void = () => {}, wanted: readonly CellRef[] | null = null) {
    this.#progress = progress;
    this.#graph = new SlotGraph(this.#reader, progress);
    this.#wanted = wanted;
  }

  /**
   * @param hold ids of cells whose formulas are left out until the cell is changed again
   * @param later those of them that do not take too long and only wait for their turn
   */
  async update(
    changes: Changes,
    hold: readonly string[] = [],
    later: readonly string[] = [],
  ): Promise<Answer> {
    const work = this.updating(changes, hold, [], later);
    for (;;) {
      const step = work.next();
      if (step.done) return step.value;
    }
  }

  /**
   * An update in steps: whoever takes them may do other things in between, but has to take them all.
   *
   * @param fixed all the values that stand instead of what formulas would give
   */
  *updating(
    changes: Changes,
    hold: readonly string[] = [],
    fixed: readonly Fixed[] = [],
    later: readonly string[] = [],
  ): Generator<void, Answer> {
    this.#updates++;
    const holds = holdsOf(hold, later);
    if (this.#graph.gone > Math.max(mostGone, this.#graph.slots.length - this.#graph.gone)) {
      return yield* this.#update(...this.#fromTheBeginning(changes, holds), fixed);
    }
    return yield* this.#update(changes, holds, fixed);
  }

  /** The cells it holds now. */
  get cells(): ReadonlyMap<string, { readonly cell: Cell }> {
    return this.#cells;
  }

  /** How often it has been updated. */
  get updates(): number {
    return this.#updates;
  }

  get sizes(): readonly Size[] {
    return this.#sizes;
  }

  /** Ids of the cells that are set aside. */
  get quarantinedCells(): string[] {
    const held: string[] = [];
    for (const [id, { slots }] of this.#cells) {
      for (const slot of slots.values()) {
        if (!slot.quarantined) continue;
        held.push(id);
        break;
      }
    }
    return held;
  }

  async check(formula: string, ref: CellRef): Promise<Checked> {
    const link = this.#graph.linked(formula);
    if (isProblem(link)) return asChecked(link);
    const slot = this.#cells.get(ref.cell)?.slots.get(ref.key);
    if (slot) {
      const way = this.#graph.cycleThrough(slot, link.uses);
      if (way)
        return { problem: circular({ path: way, size: way.length - 1 }, (row) => this.#graph.nameOf(row)) };
    }
    const found = this.#graph.derived(link.text);
    if (found === 'unknown') return { problem: this.#waiting(link.uses) };
    if (isProblem(found)) return found;
    const wanted = slot?.plan.unit ?? 'any';
    const wrong = wanted === 'any' ? undefined : misfit(found, wanted);
    if (wrong !== undefined) return { problem: wrong };
    return { unit: wanted === 'any' ? found.unit : wanted };
  }

  *#update(changes: Changes, hold: Holds, fixed: readonly Fixed[]): Generator<void, Answer> {
    const firstSlot = this.#graph.slots.length;
    const update: Update = {
      stale: new Set(),
      relink: new Set(),
      rederive: new Set(),
      renamed: new Set(),
      changedNames: new Set(),
      gone: [],
    };
    for (const id of changes.drop) this.#drop(id, update);
    for (const cell of changes.put) this.#put(cell, update);
    this.#hold(changes.put, hold, update);
    this.#fix(fixed, changes.sizes ?? this.#sizes, update);
    this.#graph.link(update);
    const units = this.#graph.deriveUnits(update);
    if (update.rederive.size + update.gone.length > 0) this.#findNeeded(update);
    const answer = new AnswerBuilder(firstSlot, this.#graph.slots, update.gone, units);
    yield* this.#work(changes.sizes, update, answer);
    return answer.made(this.#sizes.map((size) => size.id));
  }

  #drop(id: string, update: Update): void {
    for (const slot of this.#cells.get(id)?.slots.values() ?? []) this.#dropSlot(slot, update);
    this.#cells.delete(id);
  }

  #dropSlot(slot: Slot, update: Update): void {
    this.#graph.drop(slot, update);
    this.#fixed.delete(slot);
  }

  #put(cell: Cell, update: Update): void {
    const before = this.#cells.get(cell.id);
    if (before?.cell === cell) return;
    const slots = new Map<string, Slot>();
    for (const plan of plansOf(cell)) {
      const key = plan.ref.key;
      const known = before?.slots.get(key);
      const slot = known ?? this.#graph.add(plan, update);
      if (known) this.#graph.replan(known, plan, update);
      slots.set(key, slot);
      before?.slots.delete(key);
    }
    for (const slot of before?.slots.values() ?? []) this.#dropSlot(slot, update);
    this.#cells.set(cell.id, { cell, slots });
    if (slots.size > 0) this.#progress();
  }

  /**
   * A cell that was changed is tried again unless it is to be held again. Of a cell with formulas only these are
   * held: it then feeds no result, and what was typed in it is not to blame.
   */
  #hold(put: readonly Cell[], hold: Holds, update: Update): void {
    for (const id of new Set([...put.map((cell) => cell.id), ...hold.keys()])) {
      const slots = [...(this.#cells.get(id)?.slots.values() ?? [])];
      const noFormulas = !slots.some((slot) => slot.formula);
      for (const slot of slots) {
        const holds = ((noFormulas || slot.formula) && hold.get(id)) || false;
        if (slot.quarantined === holds) continue;
        slot.quarantined = holds;
        update.stale.add(slot);
        if (slot.formula) update.relink.add(slot);
      }
    }
  }

  #fix(fixed: readonly Fixed[], sizes: readonly Size[], { stale, relink }: Update): void {
    if (fixed.length + this.#fixed.size === 0) return;
    const now = new Map<Slot, Map<string, number>>();
    for (const { cell, key, size, value } of fixed) {
      const slot = this.#cells.get(cell)?.slots.get(key);
      if (!slot) continue;
      const values = now.get(slot) ?? new Map<string, number>();
      for (const id of size === null ? sizes.map((one) => one.id) : [size]) values.set(id, value);
      now.set(slot, values);
    }
    for (const slot of new Set([...this.#fixed, ...now.keys()])) {
      const values = now.get(slot);
      const everywhere = values !== undefined && sizes.every(({ id }) => values.has(id));
      if (slot.formula && everywhere !== (slot.fixed?.everywhere ?? false)) relink.add(slot);
      if (values) slot.fixed = { values, everywhere };
      else delete slot.fixed;
      stale.add(slot);
    }
    this.#fixed = new Set(now.keys());
  }

  /** Where only some places are wanted: what they depend on, and with it what is to be put in or left out now. */
  #findNeeded({ stale }: Update): void {
    if (!this.#wanted) return;
    const before = this.#needed;
    this.#needed = new Set();
    const open = this.#wanted.flatMap(({ cell, key }) => this.#cells.get(cell)?.slots.get(key)?.row ?? []);
    for (let row = open.pop(); row !== undefined; row = open.pop()) {
      if (this.#needed.has(row)) continue;
      this.#needed.add(row);
      open.push(...usesOf(this.#graph.slots[row]!));
    }
    for (const row of before)
      if (!this.#needed.has(row) && this.#graph.slots[row]) stale.add(this.#graph.slots[row]);
    for (const row of this.#needed) if (!before.has(row)) stale.add(this.#graph.slots[row]!);
  }

  #isNeeded(slot: Slot): boolean {
    return this.#wanted === null || this.#needed.has(slot.row);
  }

  *#work(sizes: readonly Size[] | undefined, update: Update, answer: AnswerBuilder): Generator<void> {
    const stale = [...update.stale].map((slot) => ({ slot, problem: this.#problemOf(slot) }));
    const before = this.#sizes;
    if (sizes) this.#sizes = sizes;
    const results = new Map<string, SizeResults>();
    for (const [number, size] of this.#sizes.entries()) {
      if (number > 0) yield;
      const known = this.#results.get(size.id);
      const again = known && before.includes(size) ? stale : this.#everything();
      const contents = new Map<number, Content>();
      for (const row of update.gone) contents.set(row, null);
      for (const { slot, problem: error } of again) {
        contents.set(slot.row, this.#isNeeded(slot) ? contentOf(slot, size, error) : null);
      }
      const worked = known ?? new SizeResults(this.#graph.slots);
      worked.put(contents, update.renamed, answer.ofSize(number));
      results.set(size.id, worked);
      this.#progress();
    }
    this.#results = results;
  }

  #everything(): { slot: Slot; problem: PackedMessage | undefined }[] {
    return this.#graph.slots.flatMap((slot) => (slot ? [{ slot, problem: this.#problemOf(slot) }] : []));
  }

  #problemOf(slot: Slot): PackedMessage | undefined {
    const problem = problemOf(slot, this.#graph.slots);
    return problem && packedMessage(problem);
  }

  /** The same changes for a sheet that knows nothing yet, once rows that stand for nothing outnumber the others. */
  #fromTheBeginning(changes: Changes, hold: Holds): [Changes, Holds] {
    const put = new Map<string, Cell>();
    const held = new Map(hold);
    for (const [id, { cell, slots }] of this.#cells) {
      put.set(id, cell);
      for (const slot of slots.values())
        if (slot.quarantined && !held.has(id)) held.set(id, slot.quarantined);
    }
    for (const id of changes.drop) put.delete(id);
    for (const cell of changes.put) {
      put.set(cell.id, cell);
      if (!hold.has(cell.id)) held.delete(cell.id);
    }
    const sizes = changes.sizes ?? this.#sizes;
    this.#cells = new Map();
    this.#graph = new SlotGraph(this.#reader, this.#progress);
    this.#sizes = [];
    this.#results = new Map();
    this.#fixed = new Set();
    this.#needed = new Set();
    return [{ sizes, put: [...put.values()], drop: [] }, held];
  }

  #waiting(uses: readonly number[]): Message {
    const unknown = uses.find((row) => this.#graph.slots[row]!.unit === null);
    return unknown === undefined
      ? engineError('')
      : waitsFor(this.#graph.slots[unknown]!.plan.calledElsewhere);
  }
}

/** What cannot be read or found in a formula, as a check tells it. */
function asChecked({ problem, ...index }: FormulaProblem): Checked {
  return { problem: sentence(problem), ...index };
}

/** Ids of the cells whose formulas are left out, and why they are. */
type Holds = ReadonlyMap<string, Exclude<Slot['quarantined'], false>>;

function holdsOf(hold: readonly string[], later: readonly string[]): Holds {
  const waits = new Set(later);
  return new Map(hold.map((id) => [id, waits.has(id) ? 'later' : 'too long'] as const));
}
