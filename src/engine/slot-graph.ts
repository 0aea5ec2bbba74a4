import { plain, sameName, sameUnit, type FormulaProblem, type Unit } from '../formulas';
import { cycles, shortestCycle, type Cycle } from './cycles';
import { Names } from './names';
import { linked, reading, type Linked } from './resolve-names';
import { engineError } from './sentences';
import { isProblem, namesIn, usesOf, type Slot, type SlotPlan } from './slot';
import { derive, type Derivation } from './units/derive';
import { affected } from './units/spread';
import { TreeReader } from './units/tree-reader';

/** What an update has found out so far. */
export interface Update {
  /** Slots to put into the engines again. */
  readonly stale: Set<Slot>;
  /** Slots whose formula has to be linked again. */
  readonly relink: Set<Slot>;
  /** Slots whose unit has to be derived again. */
  readonly rederive: Set<Slot>;
  /** Rows whose cells are called something else now. */
  readonly renamed: Set<number>;
  readonly changedNames: Set<string>;
  readonly gone: number[];
}

/**
 * The slots of a sheet and what ties them: the names they have and mention, the cycles they are in, and the units that
 * follow from each other. It knows no sizes and no results.
 */
export class SlotGraph {
  readonly slots: (Slot | undefined)[] = [];
  /** How many rows are unused. Counted, since every update asks. */
  gone = 0;
  readonly #names = new Names();
  readonly #mentions = new Map<string, Set<Slot>>();
  #cycles = new Map<number, Cycle>();
  readonly #reader: TreeReader;
  readonly #progress: () => void;

  /** @param progress called now and then in a long update */
  constructor(reader: TreeReader, progress: () => void) {
    this.#reader = reader;
    this.#progress = progress;
  }

  nameOf(row: number): string {
    return this.slots[row]!.plan.name;
  }

  /** A slot for a plan, in a row of its own. */
  add(plan: SlotPlan, update: Update): Slot {
    const row = this.slots.length;
    const slot: Slot = { row, plan, quarantined: false, unit: plan.unit === 'any' ? null : plan.unit };
    this.slots.push(slot);
    this.#addName(slot, update);
    this.#read(slot, update);
    update.stale.add(slot);
    update.rederive.add(slot);
    return slot;
  }

  /** Gives a slot another plan: its name, label, formula or unit may be another. */
  replan(slot: Slot, plan: SlotPlan, update: Update): void {
    const before = slot.plan;
    const renamed = before.name !== plan.name;
    if (renamed) this.#removeName(slot, update);
    slot.plan = plan;
    if (renamed) this.#addName(slot, update);
    if (renamed || before.label !== plan.label || before.calledElsewhere !== plan.calledElsewhere) {
      update.renamed.add(slot.row);
    }
    if (formulaOf(before) !== formulaOf(plan)) {
      this.#forgetMentions(slot);
      this.#read(slot, update);
    }
    if (before.unit !== plan.unit) update.rederive.add(slot);
    update.stale.add(slot);
  }

  /** Takes a slot out; its row stays unused. */
  drop(slot: Slot, update: Update): void {
    this.#forgetMentions(slot);
    this.#removeName(slot, update);
    this.slots[slot.row] = undefined;
    this.gone++;
    this.#cycles.delete(slot.row);
    update.stale.delete(slot);
    update.relink.delete(slot);
    update.rederive.delete(slot);
    update.gone.push(slot.row);
  }

  #read(slot: Slot, update: Update): void {
    const formula = formulaOf(slot.plan);
    update.rederive.add(slot);
    if (formula === undefined) {
      delete slot.formula;
      return;
    }
    const read = reading(formula, slot.plan.generated);
    const link = isProblem(read) ? read : { text: '', uses: [] };
    slot.formula = { read, link, derivation: 'unknown' };
    for (const name of namesIn(slot)) {
      const mentions = this.#mentions.get(name);
      if (mentions) mentions.add(slot);
      else this.#mentions.set(name, new Set([slot]));
    }
    update.relink.add(slot);
  }

  #forgetMentions(slot: Slot): void {
    for (const name of namesIn(slot)) {
      const mentions = this.#mentions.get(name);
      mentions?.delete(slot);
      if (mentions?.size === 0) this.#mentions.delete(name);
    }
  }

  #addName(slot: Slot, update: Update): void {
    this.#names.add(slot.plan.name, slot.row);
    update.changedNames.add(sameName(slot.plan.name));
  }

  #removeName(slot: Slot, update: Update): void {
    this.#names.remove(slot.plan.name, slot.row);
    update.changedNames.add(sameName(slot.plan.name));
  }

  /** Turns the names of formulas into rows, where formulas or names have changed, and finds cycles again. */
  link({ relink, rederive, stale, changedNames }: Update): void {
    for (const name of changedNames) for (const slot of this.#mentions.get(name) ?? []) relink.add(slot);
    if (changedNames.size > 0) {
      // What was meant by an unknown name depends on all the names there are.
      for (const slot of this.slots) {
        if (slot?.formula && !isProblem(slot.formula.read) && isProblem(slot.formula.link)) relink.add(slot);
      }
    }
    for (const slot of relink) {
      this.#progress();
      const formula = slot.formula!;
      stale.add(slot);
      rederive.add(slot);
      if (isProblem(formula.read)) continue;
      const before = isProblem(formula.link) ? undefined : formula.link.text;
      formula.link = linked(formula.read, this.#names);
      if (isProblem(formula.link) || formula.link.text !== before) formula.tree = undefined;
    }
    if (relink.size > 0) this.#findCycles(rederive);
  }

  #findCycles(rederive: Set<Slot>): void {
    const before = this.#cycles;
    const formulas = this.slots.flatMap((slot) => (slot?.formula ? [slot.row] : []));
    this.#cycles = cycles(formulas, (row) => usesOf(this.slots[row]!));
    for (const row of new Set([...before.keys(), ...this.#cycles.keys()])) {
      const slot = this.slots[row];
      if (!slot?.formula) continue;
      slot.formula.cycle = this.#cycles.get(row);
      // Also where it was in that circle before: its sentence names the others, which may have been renamed.
      rederive.add(slot);
    }
  }

  /** Derives units where they may have changed; gives the rows whose unit is another now. */
  deriveUnits({ rederive, stale }: Update): Set<Slot> {
    const changed = new Set<Slot>();
    const rows = affected(
      [...rederive].map((slot) => slot.row),
      (row) => this.#usersOf(row),
      (row) => this.slots[row]!.plan.unit === 'any' || rederive.has(this.slots[row]!),
    );
    for (const row of rows) {
      const slot = this.slots[row]!;
      const due = rederive.has(slot) || usesOf(slot).some((used) => changed.has(this.slots[used]!));
      if (!due) continue;
      this.#progress();
      const unit = this.#derive(slot);
      stale.add(slot);
      if (unit === null ? slot.unit === null : slot.unit !== null && sameUnit(unit, slot.unit)) continue;
      slot.unit = unit;
      changed.add(slot);
    }
    return changed;
  }

  #derive({ plan, formula, quarantined: held }: Slot): Unit | null {
    if (!formula) return plan.unit === 'any' ? plain : plan.unit;
    if (held || formula.cycle || isProblem(formula.link)) formula.derivation = 'unknown';
    else formula.derivation = this.derived(formula.link.text, formula);
    if (plan.unit !== 'any') return plan.unit;
    return formula.derivation === 'unknown' || isProblem(formula.derivation) ? null : formula.derivation.unit;
  }

  /** The unit that a linked formula gives. */
  derived(text: string, keep: Pick<NonNullable<Slot['formula']>, 'tree'> = {}): Derivation {
    const tree = (keep.tree ??= this.#reader.tree(text));
    if (!tree) return { problem: engineError('') };
    return derive(tree, (row) => this.slots[row]?.unit ?? null);
  }

  #usersOf(row: number): number[] {
    const slot = this.slots[row]!;
    const users = [...(this.#mentions.get(sameName(slot.plan.name)) ?? [])];
    return users.filter((user) => usesOf(user).includes(row)).map((user) => user.row);
  }

  /** A formula as it would be in this sheet; why it cannot be, where it cannot. */
  linked(formula: string): Linked | FormulaProblem {
    const read = reading(formula);
    return isProblem(read) ? read : linked(read, this.#names);
  }

  /** The shortest way from a slot back to itself if it used other rows; undefined where there is none. */
  cycleThrough({ row }: Slot, uses: readonly number[]): number[] | undefined {
    return shortestCycle(row, (other) => (other === row ? uses : usesOf(this.slots[other]!)));
  }
}

function formulaOf({ entry }: SlotPlan): string | undefined {
  return 'formula' in entry ? entry.formula : undefined;
}
