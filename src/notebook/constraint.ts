import { message, type Message, type Params } from '../craft';
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
  const about = (code: string, pattern: string, more?: Params): Message =>
    message(code, pattern, { label, ...more });
  if (!Number.isFinite(value)) return about('not-a-number', '{label} must be a number.');
  if (above !== undefined && value <= above) {
    return about('not-more', '{label} must be more than {above}.', { above });
  }
  if (least !== undefined && value < least) {
    return about('too-little', '{label} must be at least {least}.', { least });
  }
  if (input.within) {
    const [lowest, most] = input.within;
    if (value < lowest || value > most) {
      return about('not-within', '{label} must be between {lowest} and {most}: is the unit right?', {
        lowest: { cm: lowest },
        most: { cm: most },
      });
    }
  }
  if (whole && !isWhole(value)) return about('not-whole', '{label} must be a whole number.');
  return undefined;
}

/** Whole as the trade counts: within a billionth, which is what arithmetic on fractions leaves behind. */
function isWhole(value: number): boolean {
  return Math.abs(value - Math.round(value)) <= 1e-9 * Math.max(1, Math.abs(value));
}
