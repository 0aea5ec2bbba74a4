/**
 * The unit of a result: a product of powers of the trade's base units, or one of the things that are not numbers.
 * A gauge in stitches is `{ stitch: 1, length: -1 }`; a bare number is `plain`.
 */
export interface Dimension {
  readonly length?: number;
  readonly stitch?: number;
  readonly row?: number;
  readonly mass?: number;
}
export type Unit = Dimension | 'text' | 'truth' | 'fabric' | 'stretch' | 'piece' | 'edge';

export const plain: Dimension = {};
export const length: Dimension = { length: 1 };
export const area: Dimension = { length: 2 };
export const stitches: Dimension = { stitch: 1 };
export const rows: Dimension = { row: 1 };
export const mass: Dimension = { mass: 1 };
export const stitchGauge: Dimension = { stitch: 1, length: -1 };
export const rowGauge: Dimension = { row: 1, length: -1 };
/** What a fabric weighs, per area. */
export const massPerArea: Dimension = { mass: 1, length: -2 };
/** The part by which a fabric grows under a weight, per gram on each cm of its width: 1 / (g / cm). */
export const strain: Dimension = { length: 1, mass: -1 };

const bases = ['length', 'stitch', 'row', 'mass'] as const;

/** Whether a unit is of numbers; a text, a truth, a fabric, a stretch, an edge and a piece have none. */
export function isDimension(unit: Unit): unit is Dimension {
  return typeof unit !== 'string';
}

/** Whether two units are one: lengths with lengths, gauges of stitches with gauges of stitches. */
export function sameUnit(a: Unit, b: Unit): boolean {
  if (!isDimension(a) || !isDimension(b)) return a === b;
  return bases.every((base) => (a[base] ?? 0) === (b[base] ?? 0));
}

/** `a · b^power`, with powers that cancel left out: a length times a gauge in stitches is stitches. */
export function timesUnit(a: Dimension, b: Dimension, power = 1): Dimension {
  const product: Record<string, number> = {};
  for (const base of bases) {
    const exponent = (a[base] ?? 0) + power * (b[base] ?? 0);
    if (exponent !== 0) product[base] = exponent;
  }
  return product;
}

const symbols = { length: '', stitch: 'sts', row: 'rows', mass: 'g' };
const superscripts = ['⁰', '¹', '²', '³', '⁴', '⁵', '⁶', '⁷', '⁸', '⁹'];

/** The unit as a symbol: "cm", "cm²", "sts/cm". Lengths are written in the unit given. */
export function unitSymbol(unit: Unit, lengthSymbol: 'cm' | 'in'): string {
  if (!isDimension(unit)) return '';
  const above: string[] = [];
  const below: string[] = [];
  for (const base of [...bases].sort((a, b) => Number(a === 'length') - Number(b === 'length'))) {
    const exponent = unit[base] ?? 0;
    if (exponent === 0) continue;
    const size = Math.abs(exponent);
    const power = size === 1 ? '' : (superscripts[size] ?? `^${size}`);
    (exponent > 0 ? above : below).push((base === 'length' ? lengthSymbol : symbols[base]) + power);
  }
  if (above.length === 0 && below.length === 0) return '';
  return (above.join('·') || '1') + (below.length ? `/${below.join('·')}` : '');
}
