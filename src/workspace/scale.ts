import { isDimension, length, rowGauge, sameUnit, stitchGauge } from '../formulas';
import type { Settings } from '../notebook';
import type { Measurable } from './choosable';

const cmInInch = 2.54;

/** How much of the stored unit one of what is shown is: 2.54 for a length in inches, 0.01 for a per cent. */
export function scaleOf({ unit, written }: Pick<Measurable, 'unit' | 'written'>, settings: Settings): number {
  const inches = settings.length === 'in';
  if (written === 'percent') return 0.01;
  if (written === 'metres') return inches ? 36 * cmInInch : 100;
  if (!isDimension(unit)) return 1;
  if (sameUnit(unit, length)) return inches ? cmInInch : 1;
  if (sameUnit(unit, stitchGauge) || sameUnit(unit, rowGauge))
    return 1 / (settings.gaugeOver === '4 in' ? 4 * cmInInch : 10);
  return inches ? cmInInch ** (unit.length ?? 0) : 1;
}

/** A stored number as it is written where its last digits matter: three decimals at most, no zeros at their end. */
export function exactly(value: number, scale: number, settings: Settings): string {
  return plainly(Math.round((value / scale) * 1000) / 1000, settings);
}

/** The ends of an interval, each rounded to its inside, so that what is read lies in it. */
export function endsOf(
  { from, to }: { from: number; to: number },
  scale: number,
  settings: Settings,
): readonly [string, string] {
  const [low, high] = [from / scale, to / scale];
  // An interval narrower than a thousandth has no room to be rounded in.
  if (high - low < 0.002) return [exactly(from, scale, settings), exactly(to, scale, settings)];
  const inwards = (value: number, round: (x: number) => number): number => {
    const nearest = Math.round(value * 1000) / 1000;
    return Math.abs(nearest - value) < 1e-5 ? nearest : round(value * 1000) / 1000;
  };
  return [plainly(inwards(low, Math.ceil), settings), plainly(inwards(high, Math.floor), settings)];
}

function plainly(value: number, { decimal }: Settings): string {
  return String(value === 0 ? 0 : value)
    .replace('-', '−')
    .replace('.', decimal);
}
