import { said, saidCm } from '../craft/numbers';
import { capital } from '../notebook/capital';
import { isDimension, length, sameUnit, type Unit } from '../notebook/units';
import type { Circle } from './circles';

/** What a person is told where there is no result. */

export const setAside =
  'This formula took more than 2 seconds, so it is set aside: change it and it is tried again.';

export const valueSetAside =
  'With this value a formula took more than 2 seconds, so it is set aside: change it and it is tried again.';

export const followsNoChart = 'This size follows no body chart: type a value.';

export const unknownToChart = 'The body chart has no such measurement: type a value.';

export function emptyValue(label: string): string {
  return `${capital(label)} is empty: type a value, or = and a formula.`;
}

export function waitsFor(label: string): string {
  return `Waits for ${label}.`;
}

/** "These cells go in a circle: a → b → a." */
export function circular({ way, size }: Circle, nameOf: (row: number) => string): string {
  if (!way) return `This cell is part of a tangle of ${size} cells that all wait for each other.`;
  if (way.length === 2) return `${nameOf(way[0]!)} cannot be worked from itself.`;
  return `These cells go in a circle: ${way.map(nameOf).join(' → ')}.`;
}

/** A result that may not stand where it does, in the words for a typed value. */
export function notAllowed(wrong: string, value: number, unit: Unit | 'any'): string {
  const given = unit !== 'any' && isDimension(unit) && sameUnit(unit, length) ? saidCm(value) : said(value);
  return `${wrong} What is put in comes to ${given}.`;
}

/** The engine's own errors, by type. */
export function engineError(type: string): string {
  switch (type) {
    case 'DIV_BY_ZERO':
      return 'Something is divided by 0 here: see that what stands after ÷ is not 0.';
    case 'NUM':
      return 'The result is beyond anything that can be worked: look for a number or a power that is too large.';
    case 'VALUE':
      return 'Something here is not a number where a number is needed.';
    case 'NAME':
      return 'A function of this formula is not known here.';
    default:
      return 'This formula cannot be worked as it stands; write it another way.';
  }
}

/** For the page, when the thread a sheet works in is stopped. */
export function tookTooLong(labels: readonly string[]): string {
  const [label] = labels;
  const what = labels.length === 1 ? `"${label}" took` : `"${label}" and what was changed with it took`;
  return `${what} more than 2 seconds to work, so it is set aside: change it and it is tried again.`;
}

export const comingBack =
  'A formula of this notebook takes more than 2 seconds to work. All formulas are set aside and come back one by one, except those that take too long.';

export const didNotStart =
  'The part of the page that works formulas did not load: reload the page to try again.';

export const gaveUp =
  'This notebook takes too long to work, even with its formulas set aside. It can still be read, changed and saved.';
