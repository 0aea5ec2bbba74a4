import type { Message } from '../../craft';
import { isDimension, rows, sameUnit, stitches, type Unit } from '../../formulas';
import {
  cannotCombine,
  notACondition,
  numberOfWhat,
  takesAnother,
  worksOnNumbers,
  type Together,
} from './sentences';

/**
 * The unit of a formula, from its syntax tree.
 *
 * `literal`: it is made of nothing but numbers written in the formula, so it can still become stitches or rows where
 * it stands beside them (`value` as far as it is known); 0 can become anything.
 */
export interface Derived {
  readonly unit: Unit;
  readonly literal?: { readonly value?: number };
}

/** What is wrong; or 'unknown' where the formula uses something whose own unit is not known. */
export type Derivation = Derived | { readonly problem: Message } | 'unknown';

/** Thrown inside, and caught at the door: the first problem in reading order is the one told. */
export class Problem {
  constructor(readonly message: Message) {}
}

export type Known = Derived | 'unknown';

/** Whether it can stand where a unit is wanted. */
export function fits(found: Derived, wanted: Unit): boolean {
  if (sameUnit(found.unit, wanted)) return true;
  if (!found.literal || !isDimension(wanted)) return false;
  // A count has only one unit, and nothing is nothing in any.
  return found.literal.value === 0 || sameUnit(wanted, stitches) || sameUnit(wanted, rows);
}

/** An argument where one unit is wanted. */
export function expected(found: Derived, wanted: Unit, name: string, label: string): void {
  if (fits(found, wanted)) return;
  if (wanted === 'truth') throw new Problem(notACondition(name, found.unit));
  if (found.literal && isDimension(wanted)) throw new Problem(numberOfWhat(found.literal.value, wanted));
  throw new Problem(takesAnother(name, label, wanted, found.unit));
}

/** What can be calculated with, or a problem. */
export function number(found: Known, alternative: (unit: Unit) => Message): Known {
  if (found === 'unknown' || isDimension(found.unit)) return found;
  throw new Problem(alternative(found.unit));
}

/** An argument of a function that works on numbers. */
export function of(found: Known, name: string): Known {
  return number(found, (unit) => worksOnNumbers(name, unit));
}

/** The one unit of two values that stand beside each other. */
export function same(a: Known, b: Known, together: Together): Known {
  if (a === 'unknown' || b === 'unknown') return 'unknown';
  if (sameUnit(a.unit, b.unit)) return { unit: a.unit, ...(a.literal && b.literal ? { literal: {} } : {}) };
  if (fits(a, b.unit)) return { unit: b.unit };
  if (fits(b, a.unit)) return { unit: a.unit };
  if (isDimension(a.unit) && isDimension(b.unit)) {
    if (a.literal) throw new Problem(numberOfWhat(a.literal.value, b.unit));
    if (b.literal) throw new Problem(numberOfWhat(b.literal.value, a.unit));
  }
  throw new Problem(cannotCombine(a.unit, b.unit, together));
}
