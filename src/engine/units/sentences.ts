import { message, type Message, type Param } from '../../craft';
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
function writtenAs(number: Param, unit: Unit): Param | undefined {
  const written = (pattern: string): Message => message('written-as', pattern, { number });
  if (sameUnit(unit, length)) return written('CM({number}) or IN({number})');
  if (sameUnit(unit, stitches)) return written('STS({number})');
  if (sameUnit(unit, rows)) return written('ROWS({number})');
  if (sameUnit(unit, mass)) return written('GRAMS({number})');
  if (sameUnit(unit, stitchGauge)) return 'GAUGE(STS(14); CM(10))';
  if (sameUnit(unit, rowGauge)) return 'GAUGE(ROWS(16); CM(10))';
  return undefined;
}

const numberOr = (value: number | undefined, alternative: string): Param =>
  value === undefined ? alternative : { typed: value };

/** A bare number where a length, a weight or a gauge is needed: "10 of what? Write CM(10) or IN(10)." */
export function numberOfWhat(value: number | undefined, wanted: Unit): Message {
  const number = numberOr(value, 'A number');
  if (!isDimension(wanted)) {
    return message('not-a-number', '{number} is here where {unit} is needed.', {
      number,
      unit: unitInWords(wanted),
    });
  }
  const written = writtenAs(numberOr(value, '…'), wanted);
  return written === undefined
    ? message('of-what', '{number} of what? Here {unit} is needed.', { number, unit: unitInWords(wanted) })
    : message('of-what', '{number} of what? Write {written}.', { number, written });
}

/** A bare number where stitches or rows are needed. */
export function countOfWhat(value: number | undefined): Message {
  return message('of-what', '{number} of what? Write STS({written}) or ROWS({written}).', {
    number: numberOr(value, 'A number'),
    written: numberOr(value, '…'),
  });
}

/** "A length and a stitch gauge cannot be added." and, where there is one, the way that works. */
export function cannotCombine(a: Unit, b: Unit, together: Together): Message {
  return message('not-together', '{one} and {other} {cannot} {together}{wayOut}.', {
    one: capital(unitInWords(a)),
    other: unitInWords(b),
    cannot: together === 'results of one IF' ? 'cannot both be' : 'cannot be',
    together,
    wayOut: remedy(a, b),
  });
}

function remedy(a: Unit, b: Unit): Param {
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
        return message('way-out', '; if the number is {unit}, write {written} round it', {
          unit: unitInWords(other),
          written,
        });
    }
  }
  return '';
}

/** "This should be a length, but the formula gives a number of stitches." */
export function givesAnother(wanted: Unit, found: Unit): Message {
  return message('another-unit', 'This should be {wanted}, but the formula gives {found}{wayOut}.', {
    wanted: unitInWords(wanted),
    found: unitInWords(found),
    wayOut: byGauge(wanted, found),
  });
}

/** "ROUND takes a plain number for "places"; here stands a length." */
export function takesAnother(name: string, label: string, wanted: Unit, found: Unit): Message {
  return message('takes-another', '{name} takes {takes}; here stands {found}{wayOut}.', {
    name,
    // A label in quotes is the list of texts to choose from.
    takes: label.includes('"') ? label : `${unitInWords(wanted)} for "${label}"`,
    found: unitInWords(found),
    wayOut: byGauge(wanted, found),
  });
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
export function cannotBe(done: string, unit: Unit): Message {
  return message('cannot-be', '{unit} cannot be {done}{access}.', {
    unit: capital(unitInWords(unit)),
    done,
    access: accessTo(unit),
  });
}

/** "MAX works on numbers; here stands text." */
export function worksOnNumbers(name: string, unit: Unit): Message {
  return message('works-on-numbers', '{name} works on numbers; here stands {unit}{access}.', {
    name,
    unit: unitInWords(unit),
    access: accessTo(unit),
  });
}

export function percentOf(unit: Unit): Message {
  return message('per-cent-of', '% stands after a plain number; here it is after {unit}.', {
    unit: unitInWords(unit),
  });
}

/** What of a piece or a fabric is a number. */
function accessTo(unit: Unit): string {
  if (unit === 'piece') return ': take one of its results, such as its length';
  if (unit === 'fabric') return ': take one of its gauges';
  return '';
}

export function notACondition(name: string, unit: Unit): Message {
  return message(
    'not-a-condition',
    '{name} asks whether something holds, such as bust > CM(110); here stands {unit}.',
    { name, unit: unitInWords(unit) },
  );
}

export function notThatPower(unit: Unit, exponent: Syntax): Message {
  const of = capital(unitInWords(unit));
  return exponent.type === 'NUMBER'
    ? message(
        'not-that-power',
        '{unit} cannot have the power {power}: a value with a unit takes a whole one, such as ^2.',
        { unit: of, power: { typed: exponent.value } },
      )
    : message(
        'not-that-power',
        '{unit} cannot have the power: a value with a unit takes a whole one, such as ^2.',
        { unit: of },
      );
}

/** A name of a function that there is not. */
export function noFunction(name: string): Message {
  return message('unknown', 'There is no function {name} here.', { name });
}

/** "GAUGE takes a count and the length it was counted over, in pairs: the last pair is not complete." */
export function pairBroken(name: string, what: string): Message {
  return message('pair-broken', '{name} takes {what}, in pairs: the last pair is not complete.', {
    name,
    what,
  });
}

export function noSquareRoot(unit: Unit): Message {
  return message('no-square-root', 'The square root of {unit} is nothing the trade measures.', {
    unit: unitInWords(unit),
  });
}
