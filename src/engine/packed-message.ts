import type { Message } from '../craft';

declare const packed: unique symbol;

/**
 * A message as JSON. HyperFormula lets an error carry nothing but a text; and a text goes to another thread, and is
 * compared with another, in a fraction of the time that an object takes. It is unpacked where somebody reads it.
 */
export type PackedMessage = string & { readonly [packed]: true };

/** The message that was packed. */
export function unpacked(message: PackedMessage): Message {
  return JSON.parse(message) as Message;
}
