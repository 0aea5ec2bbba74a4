import { formatLength } from './quantity-words';
import { hasDigits } from './format';
import type { Message } from './message';

/** The message that an error carries, without the error: what goes into another message, or to another thread. */
export function messageOf({ code, pattern, params }: Message): Message {
  return { code, pattern, params };
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
