import {
  isDimension,
  length,
  plain,
  rowGauge,
  sameUnit,
  stitchGauge,
  unitSymbol,
  type Dimension,
} from '../formulas';
import { writeGauge, writeFineLength, writeLength, writeNumber, writePercent } from '../format';
import type { Settings } from '../notebook';
import type { Amount } from './amount';

const cmInInch = 2.54;

/** A number with what stands behind it, apart, so that a unit can be struck out where it cancels. */
export interface Written {
  readonly number: string;
  /** Each base unit, its power, and the words it stands in: " sts", " / 10 cm". */
  readonly units: readonly WrittenUnit[];
}

export interface WrittenUnit {
  readonly base: keyof Dimension;
  readonly power: number;
  readonly before: string;
  readonly symbol: string;
}

/**
 * An amount as it stands among the numbers of a working: in the notebook's units, with the decimals that are needed
 * to work on from it.
 *
 * @example writtenApart({ value: 1.4, unit: stitchGauge }, settings)
 * // number '14', units ' sts' and ' / 10 cm'
 */
export function writtenApart(given: Amount, settings: Settings): Written {
  const { value, unit } = given;
  if (typeof value !== 'number' || !isDimension(unit)) return { number: inWords(given), units: [] };
  const { decimal } = settings;
  const write = (number: number, decimals: number): string =>
    writeNumber(number, { decimal, decimals, trailingZero: false });
  if (given.written === 'percent')
    return { number: `${writePercent(value, { decimal, decimals: 2 })}%`, units: [] };
  if (given.written === 'metres') {
    const [cm, symbol] = settings.length === 'in' ? [36 * cmInInch, 'yd'] : [100, 'm'];
    return { number: write(value / cm, 2), units: [{ base: 'length', power: 1, before: ' ', symbol }] };
  }
  if (sameUnit(unit, stitchGauge) || sameUnit(unit, rowGauge)) {
    const number = writeGauge(value, settings.gaugeOver, { decimal, decimals: 3 });
    const base = unit.stitch ? 'stitch' : 'row';
    const [over, symbol] = settings.gaugeOver.split(' ') as [string, string];
    return {
      number,
      units: [
        { base, power: 1, before: ' ', symbol: symbols(base, number) },
        { base: 'length', power: -1, before: ` / ${over} `, symbol },
      ],
    };
  }
  const lengths = unit.length ?? 0;
  const converted = settings.length === 'in' ? value / cmInInch ** lengths : value;
  if (sameUnit(unit, length)) {
    return {
      number: settings.length === 'in' ? inches(value, settings) : write(value, 2),
      units: [{ base: 'length', power: 1, before: ' ', symbol: settings.length }],
    };
  }
  if (sameUnit(unit, plain)) return { number: value >= 1e9 ? '∞' : write(value, 3), units: [] };
  const number = write(converted, Math.abs(converted) < 1 ? 4 : 2);
  const bases = Object.keys(unit) as (keyof Dimension)[];
  if (bases.length === 1 && unit[bases[0]!] === 1) {
    const base = bases[0]!;
    return {
      number,
      units: [{ base, power: 1, before: ' ', symbol: symbols(base, number) }],
    };
  }
  const symbol = unitSymbol(unit, settings.length);
  return { number: `${number} ${symbol}`.trim(), units: [] };
}

/** An eighth is told as one; what lies between them, in decimals. */
function inches(cm: number, settings: Settings): string {
  const eighths = (cm / cmInInch) * 8;
  const { decimal } = settings;
  if (Math.abs(eighths - Math.round(eighths)) < 1e-6) return writeLength(cm, { unit: 'in', decimal });
  return writeNumber(cm / cmInInch, { decimal, decimals: 3, trailingZero: false });
}

function symbols(base: keyof Dimension, number: string): string {
  if (base === 'mass') return 'g';
  if (base === 'length') return '';
  const one = number === '1' || number === '−1';
  return base === 'stitch' ? (one ? 'st' : 'sts') : one ? 'row' : 'rows';
}

function inWords({ value, unit }: Amount): string {
  if (unit === 'truth') return value ? 'yes' : 'no';
  if (unit === 'text') return String(value);
  return planned[unit as keyof typeof planned] ?? '';
}

/** Plans are no numbers: they stand for themselves. */
const planned = {
  fabric: 'a fabric',
  stretch: 'a stretch of a piece',
  piece: 'a piece',
  edge: 'a stretch of an edge',
} as const;

/** An amount in a line of text. */
export function writeAmount(given: Amount, settings: Settings): string {
  const { number, units } = writtenApart(given, settings);
  return number + units.map(({ before, symbol }) => before + symbol).join('');
}

/**
 * A result with its unit, to as many places as the grid shows it: what a working ends on.
 *
 * @example writeResult({ value: 99.2857, unit: length }, settings) // '99.3 cm', or '39⅛ in'
 */
export function writeResult(given: Amount, settings: Settings): string {
  const { value, unit } = given;
  const { decimal } = settings;
  if (typeof value !== 'number' || !isDimension(unit)) return inWords(given);
  if (given.written === 'percent') return `${writePercent(value, { decimal })}%`;
  const { units } = writtenApart(given, settings);
  const behind = units.map(({ before, symbol }) => before + symbol).join('');
  if (given.written === 'metres') {
    const cm = settings.length === 'in' ? 36 * cmInInch : 100;
    return writeNumber(value / cm, { decimal, decimals: 0 }) + behind;
  }
  if (sameUnit(unit, length)) return writeFineLength(value, { unit: settings.length, decimal }) + behind;
  if (sameUnit(unit, stitchGauge) || sameUnit(unit, rowGauge))
    return writeGauge(value, settings.gaugeOver, { decimal }) + behind;
  const lengths = unit.length ?? 0;
  if (lengths >= 2) {
    const converted = settings.length === 'in' ? value / cmInInch ** lengths : value;
    return `${writeNumber(converted, { decimal, decimals: 0 })} ${unitSymbol(unit, settings.length)}`;
  }
  return writeAmount(given, settings);
}
