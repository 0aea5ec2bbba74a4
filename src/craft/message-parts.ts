import { formatLength } from './quantity-words';
import { formatNumber, hasDigits } from './format';
import type { Message } from './message';

/** The message that an error carries, without the error: what goes into another message, or to another thread. */
export function messageOf({ code, pattern, params }: Message): Message {
  return { code, pattern, params };
}

/**
 * Anything that was given for a number: the number, or words where it is none or has no digits to show.
 *
 * @example numberParam(2.5)       // 2.5
 * @example numberParam(undefined) // 'missing'
 */
export function numberParam(x: unknown): number | string {
  return hasDigits(x) ? x : formatNumber(x);
}

/**
 * Anything that was given for a length in cm.
 *
 * @example lengthParam(40.5) // { cm: 40.5 }
 * @example lengthParam(NaN)  // 'not a number cm'
 */
export function lengthParam(cm: unknown): { readonly cm: number } | string {
  return hasDigits(cm) ? { cm } : formatLength(cm);
}
