import type { Input } from './kind';

/**
 * Why a number cannot stand in an input, or undefined where it can.
 *
 * @example wrongValue({ label: 'Stitches counted', must: { above: 0 } }, 0)
 * // 'Stitches counted has to be more than 0.'
 */
export function wrongValue(input: Pick<Input, 'label' | 'must'>, value: number): string | undefined {
  const { whole, above, least } = input.must ?? {};
  if (!Number.isFinite(value)) return `${input.label} has to be a number.`;
  if (above !== undefined && value <= above) return `${input.label} has to be more than ${above}.`;
  if (least !== undefined && value < least) return `${input.label} has to be at least ${least}.`;
  if (whole && !isWhole(value)) return `${input.label} has to be a whole number.`;
  return undefined;
}

/** Whole as the trade counts: within a billionth, which is what arithmetic on fractions leaves behind. */
function isWhole(value: number): boolean {
  return Math.abs(value - Math.round(value)) <= 1e-9 * Math.max(1, Math.abs(value));
}
