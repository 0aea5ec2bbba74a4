import { formatNumber as said, formatLength as saidCm } from '../craft';
import { capital } from '../format';
import { isDimension, length, sameUnit, type Unit } from '../formulas';
import type { Cycle } from './cycles';

/** What a person is told where there is no result. */

export const setAside = 'This takes too long. Shorten the formula, or try again.';

export const valueSetAside = 'With this value a formula takes too long. Try another value.';

/** Of a formula that was left out and comes back when its turn comes. */
export const stillCalculating = 'Still calculating…';

export const followsNoChart = 'This size follows no body chart: type a value.';

export const unknownToChart = 'The body chart has no such measurement: type a value.';

export function emptyValue(label: string): string {
  return `${capital(label)} is empty: type a value, or = and a formula.`;
}

export function waitsFor(label: string): string {
  return `Waits for ${label}.`;
}

/** "These cells go in a circle: a → b → a." */
export function circular({ path: way, size }: Cycle, nameOf: (row: number) => string): string {
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

/** For the page, when what was changed last takes so long that it is left out. */
export function tookTooLong(labels: readonly string[]): string {
  const what = labels.length === 1 ? `"${labels[0]}"` : `"${labels[0]}", or another change made with it,`;
  return `${what} takes too long to calculate, so it is left out for now. Change it to try again.`;
}

export const tookTooLongToTry = setAside;

export const didNotStart =
  'The part of the page that calculates did not load. Is there a network? It is tried again at your next change.';

export const notWorking = 'Nothing can be calculated right now. Try again after your next change.';

/** An error in the thread, in the words of whatever broke. */
export function brokeDown(message: string): string {
  const what = message.split('\n')[0]!.slice(0, 200);
  return `Something broke while calculating${what ? ` (${what})` : ''}. Your notebook is safe. It is tried again at your next change.`;
}
