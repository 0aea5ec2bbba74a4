import { messageOf, type Message } from '../craft';
import type { PackedMessage } from './packed-message';

/**
 * A message, or what an error carries of one, as JSON; `unpacked` gives it back.
 *
 * @example packedMessage(message('waits', 'Needs {label}.', { label: 'bust' }))
 * // '{"code":"waits","pattern":"Waits for {label}.","params":{"label":"bust"}}'
 */
export function packedMessage(message: Message): PackedMessage {
  return JSON.stringify(messageOf(message)) as PackedMessage;
}
