import { lengthParam, message, numberParam, type Message } from '../craft';
import { capital } from '../format';
import { isDimension, length, sameUnit, type Unit } from '../formulas';
import type { Cycle } from './cycles';

/** What a person is told where there is no result. */

export const tookTooLongToTry = 'This takes too long. Shorten the formula, or try again.';

export const quarantinedSentence = message('too-long', tookTooLongToTry);

export const quarantinedValueSentence = message(
  'too-long',
  'With this value a formula takes too long. Try another value.',
);

/** That a formula was left out and comes back when its turn comes. */
export const comingBack = 'Still calculating…';

export const stillCalculating = message('waits-its-turn', comingBack);

export const followsNoChart = message('no-chart', 'This size follows no body chart: type a value.');

export const unknownToChart = message('not-charted', 'The body chart has no such measurement: type a value.');

export function emptyValue(label: string): Message {
  return message('empty', '{label} is empty: type a value, or = and a formula.', { label: capital(label) });
}

export function waitsFor(label: string): Message {
  return message('waits', 'Needs {label}.', { label });
}

/** "These use each other: a → b → a." */
export function circular({ path: way, size }: Cycle, nameOf: (row: number) => string): Message {
  if (!way) {
    return message('circular', 'This cell is one of {size} that all use each other.', {
      size,
    });
  }
  if (way.length === 2) {
    return message('circular', '{name} uses itself.', { name: nameOf(way[0]!) });
  }
  return message('circular', 'These use each other: {way}.', { way: way.map(nameOf).join(' → ') });
}

/** A result that may not stand where it does, in the words for a typed value. */
export function notAllowed(wrong: Message | undefined, value: number, unit: Unit | 'any'): Message {
  const isLength = unit !== 'any' && isDimension(unit) && sameUnit(unit, length);
  return message('not-allowed', '{wrong} This is {value}.', {
    wrong: wrong ?? '',
    value: isLength ? lengthParam(value) : numberParam(value),
  });
}

/** A formula that the engine does not take. */
export const notTaken = message('not-taken', 'This formula does not work yet: write it another way.');

/** The engine's own errors, by type. */
export function engineError(type: string): Message {
  switch (type) {
    case 'DIV_BY_ZERO':
      return message(
        'division-by-zero',
        'Something is divided by 0 here: see that what stands after ÷ is not 0.',
      );
    case 'NUM':
      return message(
        'too-large',
        'The result is beyond anything that can be worked: look for a number or a power that is too large.',
      );
    case 'VALUE':
      return message('not-a-number', 'Something here is not a number where a number is needed.');
    case 'NAME':
      return message('unknown', 'A function of this formula is not known here.');
    default:
      return notTaken;
  }
}

/** For the page, when what was changed last takes so long that it is left out. */
export function tookTooLong(labels: readonly string[]): string {
  const what = labels.length === 1 ? `"${labels[0]}"` : `"${labels[0]}", or another change made with it,`;
  return `${what} takes too long to calculate, so it is left out for now. Change it to try again.`;
}

export const didNotStart =
  'The part of the page that calculates did not load. Is there a network? It is tried again at your next change.';

export const notWorking = 'Nothing can be calculated right now. Try again after your next change.';

/** An error in the thread, in the words of whatever broke. */
export function brokeDown(message: string): string {
  const what = message.split('\n')[0]!.slice(0, 200);
  return `Something broke while calculating${what ? ` (${what})` : ''}. Your notebook is safe. It is tried again at your next change.`;
}
