import { cmPerInch } from '../../craft';
import { isDimension, type Unit } from '../../formulas';
import type { Settings, WrittenAs } from '../../notebook';
import { isGauge, yarnUnit } from '../../workspace';

/** What a stored number is multiplied by where it is shown: 1 / 2.54 for a length in inches, say. */
export function shownFactor(unit: Unit, settings: Settings, written?: WrittenAs): number {
  if (written === 'percent') return 100;
  if (written === 'metres') return 1 / yarnUnit(settings).cm;
  if (!isDimension(unit)) return 1;
  if (isGauge(unit)) return settings.gaugeOver === '10 cm' ? 10 : 4 * cmPerInch;
  return settings.length === 'in' ? cmPerInch ** -(unit.length ?? 0) : 1;
}
