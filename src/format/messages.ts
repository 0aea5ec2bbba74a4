import { fillPattern, formatNumber, type Message } from '../craft';
import { writeFineLength } from './quantities';

/** How a notebook is read. */
export interface Reading {
  readonly length: 'cm' | 'in';
  readonly decimal: '.' | ',';
}

/**
 * A message as the notebook is read: lengths in its unit, every number with its decimal mark. Texts stay as they are,
 * whatever digits are in them.
 *
 * @param labelOf the label of a stretch, 1 for the first, in the cell that the message is about; asked for only where the
 *   message names one
 * @example
 * formatMessage(
 *   message('flat', '{cell}: the sleeve is {sleeve}, {rows, plural, one {# row} other {# rows}} of stretch {at}.', {
 *     cell: 'Hook 4.5',
 *     sleeve: { cm: 40.5 },
 *     rows: 1,
 *     at: { stretch: 2 },
 *   }),
 *   { length: 'in', decimal: ',' },
 *   () => 'Cuff',
 * )
 * // 'Hook 4.5: the sleeve is 16 in, 1 row of stretch 2 (Cuff).'
 */
export function formatMessage(
  message: Message,
  { length, decimal }: Reading,
  labelOf: (stretch: number) => string | undefined = () => undefined,
): string {
  return fillPattern(message, (param) => {
    if (typeof param === 'string') return param;
    if (typeof param === 'number') return formatNumber(param).replace('.', decimal);
    if ('typed' in param) return String(param.typed).replace('.', decimal);
    if ('cm' in param) {
      // As many digits as other numbers have, so that what differs beyond them is one sentence for all sizes.
      const shown = writeFineLength(Number(param.cm.toPrecision(6)), { unit: length, decimal });
      // The number and its unit stay on one line.
      return `${shown}\u00a0${length}`;
    }
    const label = param.label ?? labelOf(param.stretch);
    return label ? `${param.stretch} (${label})` : String(param.stretch);
  });
}
