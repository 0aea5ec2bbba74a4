import { capital } from '../../format';
import {
  isDimension,
  length,
  mass,
  plain,
  rowGauge,
  rows,
  sameUnit,
  stitchGauge,
  stitches,
  timesUnit,
  type Unit,
  unitInWords,
} from '../../formulas';
import type { Syntax } from './syntax';

/** What a formula does with values that have to be of one unit. */
export type Together =
  | 'added'
  | 'subtracted from each other'
  | 'compared'
  | 'taken together'
  | 'counted for one gauge'
  | 'results of one IF';

/** How a number of a unit is written: CM(10) or IN(10). Undefined where it is not written as one number. */
function writtenAs(number: string, unit: Unit): string | undefined {
  if (sameUnit(unit, length)) return `CM(${number}) or IN(${number})`;
  if (sameUnit(unit, stitches)) return `STS(${number})`;
  if (sameUnit(unit, rows)) return `ROWS(${number})`;
  if (sameUnit(unit, mass)) return `GRAMS(${number})`;
  if (sameUnit(unit, stitchGauge)) return 'GAUGE(STS(14); CM(10))';
  if (sameUnit(unit, rowGauge)) return 'GAUGE(ROWS(16); CM(10))';
  return undefined;
}

/** A bare number where a length, a weight or a gauge is needed: "10 of what? Write CM(10) or IN(10)." */
export function numberOfWhat(value: number | undefined, wanted: Unit): string {
  if (!isDimension(wanted))
    return `${value ?? 'A number'} stands here where ${unitInWords(wanted)} is needed.`;
  const written = writtenAs(value === undefined ? '…' : String(value), wanted);
  const asks = value === undefined ? 'A number of what?' : `${value} of what?`;
  return written ? `${asks} Write ${written}.` : `${asks} Here ${unitInWords(wanted)} is needed.`;
}

/** A bare number where stitches or rows are needed. */
export function countOfWhat(value: number | undefined): string {
  const number = value ?? '…';
  return `${value ?? 'A number'} of what? Write STS(${number}) or ROWS(${number}).`;
}

/** "A length and a stitch gauge cannot be added." and, where there is one, the way that works. */
export function cannotCombine(a: Unit, b: Unit, together: Together): string {
  const cannot = together === 'results of one IF' ? 'cannot both be' : 'cannot be';
  return `${capital(unitInWords(a))} and ${unitInWords(b)} ${cannot} ${together}${wayOut(a, b)}.`;
}

function wayOut(a: Unit, b: Unit): string {
  if (!isDimension(a) || !isDimension(b)) return '';
  for (const [one, other] of [
    [a, b],
    [b, a],
  ] as const) {
    if (sameUnit(one, length)) {
      for (const [gauge, count] of [
        [stitchGauge, stitches],
        [rowGauge, rows],
      ] as const) {
        if (sameUnit(other, gauge)) return `; multiplied, they give ${unitInWords(count)}`;
        if (sameUnit(other, count)) {
          return `; multiply the length by ${unitInWords(gauge)} first, and it is ${unitInWords(count)}`;
        }
      }
    }
    if (sameUnit(one, plain)) {
      const written = writtenAs('…', other);
      if (written && !sameUnit(other, plain))
        return `; if the number is ${unitInWords(other)}, write ${written} round it`;
    }
  }
  return '';
}

/** "This should be a length, but the formula gives a number of stitches." */
export function givesAnother(wanted: Unit, found: Unit): string {
  return `This should be ${unitInWords(wanted)}, but the formula gives ${unitInWords(found)}${byGauge(wanted, found)}.`;
}

/** "ROUND takes a plain number for "places"; here stands a length." */
export function takesAnother(name: string, label: string, wanted: Unit, found: Unit): string {
  // A label in quotes is the list of texts to choose from.
  const takes = label.includes('"') ? label : `${unitInWords(wanted)} for "${label}"`;
  return `${name} takes ${takes}; here stands ${unitInWords(found)}${byGauge(wanted, found)}.`;
}

function byGauge(wanted: Unit, found: Unit): string {
  if (!isDimension(wanted) || !isDimension(found)) return '';
  for (const [gauge, count] of [
    [stitchGauge, stitches],
    [rowGauge, rows],
  ] as const) {
    if (sameUnit(found, length) && sameUnit(wanted, count)) return `: multiply it by ${unitInWords(gauge)}`;
    if (sameUnit(found, count) && sameUnit(wanted, timesUnit(count, gauge, -1))) {
      return `: divide it by ${unitInWords(gauge)}`;
    }
  }
  return '';
}

/** "A piece cannot be added: take one of its results, such as its length." */
export function cannotBe(done: string, unit: Unit): string {
  return `${capital(unitInWords(unit))} cannot be ${done}${accessTo(unit)}.`;
}

/** "MAX works on numbers; here stands text." */
export function worksOnNumbers(name: string, unit: Unit): string {
  return `${name} works on numbers; here stands ${unitInWords(unit)}${accessTo(unit)}.`;
}

export function percentOf(unit: Unit): string {
  return `% stands after a plain number; here it is after ${unitInWords(unit)}.`;
}

/** What of a piece or a fabric is a number. */
function accessTo(unit: Unit): string {
  if (unit === 'piece') return ': take one of its results, such as its length';
  if (unit === 'fabric') return ': take one of its gauges';
  return '';
}

export function notACondition(name: string, unit: Unit): string {
  return `${name} asks whether something holds, such as bust > CM(110); here stands ${unitInWords(unit)}.`;
}

export function notThatPower(unit: Unit, exponent: Syntax): string {
  const written = exponent.type === 'NUMBER' ? ` ${exponent.value}` : '';
  return `${capital(unitInWords(unit))} cannot have the power${written}: a value with a unit takes a whole one, such as ^2.`;
}
