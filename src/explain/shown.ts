import { isDimension, sameUnit, stitchGauge, rowGauge, timesUnit, type Dimension } from '../formulas';
import type { Settings } from '../notebook';
import { dimensionOf, knownBy, type Amount } from './amount';
import type { Result } from './result';
import type { TextRun } from './step';
import { writtenApart } from './write-amount';

/** How closely what is shown holds together: where it is put into something closer, it takes brackets. */
export const closeness = { comparison: 1, sum: 2, product: 3, power: 4, one: 5 } as const;

/** An expression with its numbers put in. */
export interface Shown {
  readonly parts: readonly MarkedPart[];
  readonly close: number;
  /** The units that still stand in it, each with the runs of text that are struck out when it cancels. */
  readonly units: readonly UnitFactor[];
}

interface MarkedPart {
  readonly text: string;
  cancels?: boolean;
  readonly of?: Result;
  readonly worth?: string;
}

interface UnitFactor {
  readonly base: keyof Dimension;
  readonly power: number;
  readonly parts: readonly MarkedPart[];
}

/** An amount with its unit; each run knows whose number it is. */
export function shownAmount(given: Amount, settings: Settings): Shown {
  const { number, units } = writtenApart(given, settings);
  const of = knownBy(given);
  const parts: MarkedPart[] = [{ text: number, ...of }];
  const remaining: UnitFactor[] = [];
  for (const { base, power, before, symbol } of units) {
    const unit: MarkedPart = { text: symbol, ...of };
    parts.push({ text: before, ...of }, unit);
    remaining.push({ base, power, parts: [unit] });
  }
  return { parts, close: number.startsWith('−') ? closeness.sum : closeness.one, units: remaining };
}

/** "to 10 cm" among the factors of a product reads by itself, but not behind ÷. */
function isRatio(given: Amount): boolean {
  return isDimension(given.unit) && (sameUnit(given.unit, stitchGauge) || sameUnit(given.unit, rowGauge));
}

function bracketed(shown: Shown, least: number): Shown {
  if (shown.close >= least) return shown;
  return { ...shown, parts: [{ text: '(' }, ...shown.parts, { text: ')' }], close: closeness.one };
}

/** Two expressions with × or ÷ between them; units that stand in both, one above and one below, cancel. */
export function product(left: Shown, by: '×' | '÷', right: Shown, rightAmount: Amount): Shown {
  const before = bracketed(left, closeness.product);
  const ratio = by === '÷' && isRatio(rightAmount) && right.close === closeness.one;
  const after = bracketed(ratio ? { ...right, close: closeness.sum } : right, closeness.power);
  const turned = after.units.map((unit) => (by === '÷' ? { ...unit, power: -unit.power } : unit));
  return {
    parts: [...before.parts, { text: ` ${by} ` }, ...after.parts],
    close: closeness.product,
    units: cancelled([...before.units, ...turned]),
  };
}

/** The units that are left once those above and those below have struck each other out. */
function cancelled(units: readonly UnitFactor[]): UnitFactor[] {
  const left: UnitFactor[] = [];
  for (const unit of units) {
    const against = left.findIndex((other) => other.base === unit.base && other.power === -unit.power);
    if (against < 0) {
      left.push(unit);
      continue;
    }
    for (const part of [...left[against]!.parts, ...unit.parts]) part.cancels = true;
    left.splice(against, 1);
  }
  return left;
}

/** Two expressions with + or − between them. The units of both stand in it as one. */
export function sum(left: Shown, by: '+' | '−', right: Shown, unit: Dimension): Shown {
  const before = bracketed(left, closeness.sum);
  const after = bracketed(
    right,
    by === '−' || right.parts[0]!.text.startsWith('−') ? closeness.product : closeness.sum,
  );
  const units = (Object.keys(unit) as (keyof Dimension)[]).map((base) => ({
    base,
    power: unit[base]!,
    parts: [...before.units, ...after.units].filter((one) => one.base === base).flatMap((one) => one.parts),
  }));
  return { parts: [...before.parts, { text: ` ${by} ` }, ...after.parts], close: closeness.sum, units };
}

export function power(base: Shown, exponent: Shown): Shown {
  const raised = bracketed(base, closeness.one);
  const two = exponent.parts.map(({ text }) => text).join('');
  const sign = { 2: '²', 3: '³' }[two];
  // The unit belongs to what is raised: (3 cm)².
  const parts =
    base.units.length > 0 && raised === base ? bracketed({ ...base, close: 0 }, 1).parts : raised.parts;
  return {
    parts: sign
      ? [...parts, { text: sign }]
      : [...parts, { text: ' ^ ' }, ...bracketed(exponent, closeness.one).parts],
    close: closeness.power,
    units: [],
  };
}

export function compared(left: Shown, by: string, right: Shown): Shown {
  return {
    parts: [
      ...bracketed(left, closeness.sum).parts,
      { text: ` ${by} ` },
      ...bracketed(right, closeness.sum).parts,
    ],
    close: closeness.comparison,
    units: [],
  };
}

export function negative(of: Shown): Shown {
  const inner = bracketed(of, closeness.product);
  return { ...inner, parts: [{ text: '−' }, ...inner.parts], close: closeness.sum };
}

export const partsOf = (shown: Shown): readonly TextRun[] => shown.parts;

/** The unit of a product or a quotient. */
export function productUnit(left: Amount, by: '×' | '÷', right: Amount): Dimension {
  return timesUnit(dimensionOf(left), dimensionOf(right), by === '×' ? 1 : -1);
}
