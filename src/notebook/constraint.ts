import { formatLength as saidCm } from '../craft';
import { capital } from '../format';
import type { Input } from './kind';

/**
 * Why a number cannot stand in an input, or undefined where it can.
 *
 * @example wrongValue({ label: 'Stitches counted', constraint: { above: 0 } }, 0)
 * // 'Stitches counted must be more than 0.'
 */
export function wrongValue(
  input: Pick<Input, 'label' | 'constraint' | 'within'>,
  value: number,
): string | undefined {
  const { whole, above, least } = input.constraint ?? {};
  // "Must" goes with a measure and with rows alike.
  const label = capital(input.label);
  if (!Number.isFinite(value)) return `${label} must be a number.`;
  if (above !== undefined && value <= above) return `${label} must be more than ${above}.`;
  if (least !== undefined && value < least) return `${label} must be at least ${least}.`;
  if (input.within) {
    const [lowest, most] = input.within;
    if (value < lowest || value > most)
      return `${label} must be between ${saidCm(lowest)} and ${saidCm(most)}: is the unit right?`;
  }
  if (whole && !isWhole(value)) return `${label} must be a whole number.`;
  return undefined;
}

/** Whole as the trade counts: within a billionth, which is what arithmetic on fractions leaves behind. */
function isWhole(value: number): boolean {
  return Math.abs(value - Math.round(value)) <= 1e-9 * Math.max(1, Math.abs(value));
}
