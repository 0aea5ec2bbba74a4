import { message, type Message } from '../craft';
import { capital } from '../format';
import type { Input } from './kind';

/**
 * Why a number cannot stand in an input, or undefined where it can.
 *
 * @example plainMessage(wrongValue({ label: 'Stitches counted', constraint: { above: 0 } }, 0))
 * // 'Stitches counted must be more than 0.'
 */
export function wrongValue(
  input: Pick<Input, 'label' | 'constraint' | 'within'>,
  value: number,
): Message | undefined {
  const { whole, above, least } = input.constraint ?? {};
  // "Must" goes with a measure and with rows alike.
  const label = capital(input.label);
  if (!Number.isFinite(value)) return message('not-a-number', '{label} must be a number.', { label });
  if (above !== undefined && value <= above)
    return message('not-more', '{label} must be more than {above}.', { label, above });
  if (least !== undefined && value < least)
    return message('too-little', '{label} must be at least {least}.', { label, least });
  if (input.within) {
    const [lowest, most] = input.within;
    if (value < lowest || value > most)
      return message('not-within', '{label} must be between {lowest} and {most}: is the unit right?', {
        label,
        lowest: { cm: lowest },
        most: { cm: most },
      });
  }
  if (whole && !isWhole(value)) return message('not-whole', '{label} must be a whole number.', { label });
  return undefined;
}

/** Whole as the trade counts: within a billionth, which is what arithmetic on fractions leaves behind. */
function isWhole(value: number): boolean {
  return Math.abs(value - Math.round(value)) <= 1e-9 * Math.max(1, Math.abs(value));
}
