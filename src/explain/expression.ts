import { CraftError, same } from '../craft';
import { isDimension, plain, rows, sameUnit, stitches, timesUnit } from '../formulas';
import type { Settings } from '../notebook';
import { amount, dimensionOf, numberIn, percentOf, plainOf, textOf, truthOf, type Amount } from './amount';
import { shownFunctions, unitNames } from '../formulas/functions/explanations';
import {
  closeness,
  compared,
  negative,
  partsOf,
  power,
  product,
  productUnit,
  shownAmount,
  sum,
  type Shown,
} from './shown';
import type { Operator, Syntax } from './syntax';
import type { Work } from './work';
import type { Result } from './result';
import type { TextRun } from './step';

/** A part of a formula, worked: what it comes to, and itself with its numbers put in. */
interface Worked {
  readonly amount: Amount;
  readonly shown: Shown;
  /** It is read as one number: its own step, if it has one, is written down already. */
  readonly shownAlready: boolean;
}

/** What a name stands for in the size that is worked. */
export type Lookup = (name: string) => { readonly amount: Amount; readonly of: Result };

/**
 * Works a formula and writes its steps down; what it comes to stands in the last of them.
 *
 * @throws CraftError where it cannot be worked
 */
export function workFormula(tree: Syntax, work: Work, lookup: Lookup): Amount {
  const worked = workPart(tree, work, lookup);
  if (!worked.shownAlready) say(work, worked);
  else if (work.steps.length === 0) work.say(worked.amount.of?.label ?? 'as given', worked.amount);
  return worked.amount;
}

/** Where a part has its number from, which a unit put to it leaves as it is. */
function source({ amount: { of, typed } }: Worked): Pick<Amount, 'of' | 'typed'> {
  return { ...(of ? { of } : {}), ...(typed ? { typed } : {}) };
}

function say(work: Work, { amount, shown }: Worked): void {
  work.say(partsOf(shown), amount);
}

function workPart(tree: Syntax, work: Work, lookup: Lookup): Worked {
  const one = (found: Amount): Worked => ({
    amount: found,
    shown: shownAmount(found, work.settings),
    shownAlready: true,
  });
  switch (tree.is) {
    case 'number':
      return one({ ...plainOf(tree.value), typed: true });
    case 'text':
      return one(textOf(tree.text));
    case 'name': {
      const { amount, of } = lookup(tree.name);
      return one({ ...amount, of });
    }
    case 'percent': {
      const of = workPart(tree.of, work, lookup);
      return one({ ...percentOf(numberIn(of.amount) / 100), ...source(of) });
    }
    case 'minus': {
      const of = workPart(tree.of, work, lookup);
      const found = { ...of.amount, value: -numberIn(of.amount) };
      return of.shownAlready ? one(found) : { amount: found, shown: negative(of.shown), shownAlready: false };
    }
    case 'two':
      return workTwo(
        tree.operator,
        workPart(tree.left, work, lookup),
        workPart(tree.right, work, lookup),
        work.settings,
      );
    case 'call':
      return one(workCall(tree, work, lookup));
  }
}

function workCall(tree: Syntax & { is: 'call' }, work: Work, lookup: Lookup): Amount {
  /** What is given to a function stands in its steps as one number, so what is worked for it is said before. */
  const given = (part: Syntax): Amount => {
    const worked = workPart(part, work, lookup);
    if (!worked.shownAlready) say(work, worked);
    return worked.amount;
  };
  if (tree.name === 'IF') {
    const [condition, then, alternative] = tree.given;
    const holds = given(condition!).value === true;
    const decided = work.steps.at(-1);
    const branch = workPart(holds ? then! : alternative!, work, lookup);
    const so: TextRun = holds
      ? { text: 'so ' }
      : { text: 'so, otherwise, ', ...(decided ? { tells: { step: decided, untold: 'so ' } } : {}) };
    return work.say([so, ...partsOf(branch.shown)], branch.amount);
  }
  const shows = shownFunctions[tree.name];
  if (!shows) throw new CraftError('unknown', 'The working of {name} cannot be shown.', { name: tree.name });
  if (!unitNames.has(tree.name)) return shows(work, ...tree.given.map(given));
  const worked = tree.given.map((part) => workPart(part, work, lookup));
  const found = shows(work, ...worked.map((part) => part.amount));
  // ROWS(2 * a): what stands in the brackets is a step, and it comes to rows.
  for (const part of worked) if (!part.shownAlready) work.say(partsOf(part.shown), found);
  const [only] = worked;
  return only?.shownAlready ? { ...found, ...source(only) } : found;
}

const comparisons: Partial<Record<Operator, { shown: string; holds(a: Amount, b: Amount): boolean }>> = {
  '=': { shown: '=', holds: equal },
  '<>': { shown: '≠', holds: (a, b) => !equal(a, b) },
  '<': { shown: '<', holds: (a, b) => less(a, b) },
  '<=': { shown: '≤', holds: (a, b) => !less(b, a) },
  '>': { shown: '>', holds: (a, b) => less(b, a) },
  '>=': { shown: '≥', holds: (a, b) => !less(a, b) },
};

function equal(a: Amount, b: Amount): boolean {
  if (typeof a.value === 'number' && typeof b.value === 'number') return same(a.value, b.value);
  return a.value === b.value;
}

function less(a: Amount, b: Amount): boolean {
  return a.value < b.value && !equal(a, b);
}

const counted = ({ unit }: Amount): boolean =>
  isDimension(unit) && (sameUnit(unit, stitches) || sameUnit(unit, rows));

const bare = ({ amount, shownAlready: message }: Worked): boolean =>
  message && isDimension(amount.unit) && sameUnit(amount.unit, plain) && !amount.written;

/** A bare number that is added to a count, or taken from it, counts the same: "24 rows − 1 row". */
function withCount(one: Worked, other: Amount, settings: Settings): Shown {
  if (!bare(one) || !counted(other)) return one.shown;
  return shownAmount({ ...one.amount, unit: other.unit, counts: one.amount.unit }, settings);
}

/** A bare number that is held against a share is told as one: "3.7% ≤ 8%". */
function withShare(one: Worked, other: Amount, settings: Settings): Shown {
  if (!bare(one) || other.written !== 'percent') return one.shown;
  return shownAmount({ ...one.amount, written: 'percent' }, settings);
}

function workTwo(operator: Operator, left: Worked, right: Worked, settings: Settings): Worked {
  const [a, b] = [left.amount, right.amount];
  const comparison = comparisons[operator];
  if (comparison) {
    return {
      amount: truthOf(comparison.holds(a, b)),
      shown: compared(withShare(left, b, settings), comparison.shown, withShare(right, a, settings)),
      shownAlready: false,
    };
  }
  switch (operator) {
    case '&':
      return {
        amount: textOf(`${a.value}${b.value}`),
        shown: { parts: [...left.shown.parts, ...right.shown.parts], close: closeness.one, units: [] },
        shownAlready: false,
      };
    case '*':
    case '/': {
      const by = operator === '*' ? '×' : '÷';
      if (by === '÷' && numberIn(b) === 0)
        throw new CraftError('division-by-zero', 'Nothing can be divided by zero.');
      const value = by === '×' ? numberIn(a) * numberIn(b) : numberIn(a) / numberIn(b);
      return {
        amount: amount(value, productUnit(a, by, b)),
        shown: product(left.shown, by, right.shown, b),
        shownAlready: false,
      };
    }
    case '^': {
      const exponent = numberIn(b);
      const unit = isDimension(a.unit) ? timesUnit(plain, a.unit, exponent) : plain;
      return {
        amount: amount(numberIn(a) ** exponent, unit),
        shown: power(left.shown, right.shown),
        shownAlready: false,
      };
    }
    default: {
      const by = operator === '+' ? '+' : '−';
      const value = by === '+' ? numberIn(a) + numberIn(b) : numberIn(a) - numberIn(b);
      const written = a.written && a.written === b.written ? { written: a.written } : {};
      const unit = counted(b) ? b.unit : a.unit;
      return {
        amount: { ...amount(value, unit), ...written },
        shown: sum(
          withCount(left, b, settings),
          by,
          withCount(right, a, settings),
          dimensionOf({ ...a, unit }),
        ),
        shownAlready: false,
      };
    }
  }
}
