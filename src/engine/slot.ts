import { type Cell, type Entry, type Constraint, inputsOf, outputsOf, namesOf } from '../notebook';
import type { FormulaProblem, Unit } from '../formulas';
import type { CellRef } from './answers';
import type { Cycle } from './cycles';
import type { Linked, Reading } from './resolve-names';
import type { Derivation } from './units/derive';
import type { Syntax } from './units/syntax';

/** What a cell declares of one of its inputs or outputs. */
export interface SlotPlan {
  readonly ref: CellRef;
  readonly name: string;
  /** As the cell calls it, and as other cells call it. */
  readonly label: string;
  readonly calledElsewhere: string;
  readonly unit: Unit | 'any';
  readonly constraint?: Constraint;
  readonly entry: Entry;
  /** Whether the formula is of the cell's own making, and not typed. */
  readonly generated: boolean;
}

/** An input or an output on its row, with all that is known of its formula. */
export interface Slot {
  readonly row: number;
  plan: SlotPlan;
  /** Left out: its formula is not worked, since it takes too long or until its turn comes. */
  quarantined: false | 'too long' | 'later';
  /** Numbers that stand in it, by size, whatever its formula would give. */
  fixed?: { readonly values: ReadonlyMap<string, number>; readonly everywhere: boolean };
  /** Undefined where no formula stands in it. */
  formula?: {
    readonly read: Reading | FormulaProblem;
    link: Linked | FormulaProblem;
    tree?: Syntax | undefined;
    cycle?: Cycle | undefined;
    derivation: Derivation;
  };
  /** Its unit as other formulas see it; null where it is not known. */
  unit: Unit | null;
}

/** What a cell declares, each key once. */
export function plansOf(cell: Cell): SlotPlan[] {
  const parts = [
    ...inputsOf(cell).map((input) => ({ ...input, generated: false })),
    ...outputsOf(cell).map((output) => ({ ...output, entry: { formula: output.formula }, generated: true })),
  ];
  const called = new Map(namesOf(cell).map(({ key, label }) => [key, label]));
  const plans = new Map<string, SlotPlan>();
  for (const part of parts) {
    if (plans.has(part.key)) continue;
    plans.set(part.key, {
      ref: { cell: cell.id, key: part.key },
      name: part.name,
      label: part.label,
      calledElsewhere: called.get(part.key) ?? cell.label,
      unit: part.unit,
      ...('constraint' in part && part.constraint ? { constraint: part.constraint } : {}),
      entry: part.entry,
      generated: part.generated,
    });
  }
  return [...plans.values()];
}

export function isProblem<T extends object>(found: T): found is Extract<T, { problem: unknown }> {
  return 'problem' in found;
}

/** The rows a slot's formula uses, as far as it is worked. */
export function usesOf({ quarantined: held, fixed, formula }: Slot): readonly number[] {
  return held || fixed?.everywhere || !formula || isProblem(formula.link) ? [] : formula.link.uses;
}

/** The names a slot's formula mentions, as they are compared. */
export function namesIn({ formula }: Slot): readonly string[] {
  return !formula || isProblem(formula.read) ? [] : formula.read.names;
}
