import { isDimension, length, sameUnit } from '../../formulas';
import { writeLength, writeNumber } from '../../format';
import type { Settings } from '../../notebook';
import type { Uncertainty, Share } from '../../analysis/uncertainty';
import { type Measurable, scaleOf, showNumber, symbolFor } from '../../workspace';

/** "104.3 ± 4.3", without the unit. */
export function valueAndUncertainty(uncertainty: Uncertainty, ref: Measurable, settings: Settings): string {
  if (uncertainty.decided || uncertainty.expanded === 0)
    return showNumber(uncertainty.value, ref.unit, settings, ref.written);
  const [value, by] = [uncertainty.value, uncertainty.expanded].map((each) =>
    shownTo(each, uncertainty.expanded, ref, settings),
  );
  return `${value} ± ${by}`;
}

/** A number with as many digits as its doubt leaves a meaning to: of what is given or taken, two that count. */
function shownTo(value: number, expanded: number, ref: Measurable, settings: Settings): string {
  const asLength = { unit: settings.length, decimal: settings.decimal };
  // A length is written to the same place as its doubt, as the notebook writes lengths, unless that would read as none.
  if (isLength(ref) && /[1-9½¼¾⅛⅜⅝⅞]/.test(writeLength(expanded, asLength)))
    return writeLength(value, asLength);
  const scale = scaleOf(ref, settings);
  const decimals = Math.min(8, Math.max(0, 1 - Math.floor(Math.log10(expanded / scale))));
  return writeNumber(value / scale, { decimal: settings.decimal, decimals });
}

/** "104.3 ± 4.3 cm (about 19 times in 20)" */
export function inWords(uncertainty: Uncertainty, ref: Measurable, settings: Settings): string {
  const symbol = symbolFor(ref.unit, settings, ref.written);
  const shown = [valueAndUncertainty(uncertainty, ref, settings), symbol].filter(Boolean).join(' ');
  return uncertainty.decided || uncertainty.expanded === 0 ? shown : `${shown} (about 19 times in 20)`;
}

/** "83 %" */
export function shareInWords({ share }: Pick<Share, 'share'>): string {
  const percent = Math.round(share * 100);
  return percent === 0 ? 'less than 1 %' : `${percent} %`;
}

/** "11 %", and what is next to nothing or next to all. */
export function chanceInWords(chance: number): string {
  if (chance < 0.005) return 'less than 1 %';
  if (chance > 0.995) return 'more than 99 %';
  return `${Math.round(chance * 100)} %`;
}

/** What more of a swatch halves the doubt, as something to do. */
export function halvingInWords(
  uncertainty: Uncertainty,
  ref: Measurable,
  settings: Settings,
): string | undefined {
  const { halving } = uncertainty;
  if (!halving) return undefined;
  const gauge = halving.source.label;
  if (halving.by === 'nothing') {
    const left = shownTo(halving.left, halving.left, ref, settings);
    return `No swatch halves it: were ${lower(gauge)} known exactly, ± ${left} ${symbolFor(ref.unit, settings, ref.written)} would be left of the rest.`;
  }
  if (halving.by === 'readings') {
    const more = halving.readings - (halving.source.gauge?.readings.length ?? 0);
    return `To halve it, take ${more} more ${more === 1 ? 'reading' : 'readings'} of ${lower(gauge)}, as long as those there are: ${halving.readings} in all.`;
  }
  const counted = halving.source.gauge?.counted ?? 'stitches';
  const total = Math.ceil(halving.count);
  const now = halving.count / halving.times;
  const more = Math.ceil(halving.count - now);
  const over = `${showNumber(halving.over, length, settings)} ${settings.length}`;
  return `To halve it, count ${more} more ${counted}: ${total} over ${over} instead of ${trim(now)} for ${lower(gauge)}.`;
}

function trim(count: number): string {
  return String(Math.round(count * 2) / 2);
}

/** "Body fabric, stitch gauge" in the midst of a sentence: the name of a cell keeps its capital. */
function lower(label: string): string {
  const [cell, ...rest] = label.split(', ');
  return rest.length > 0 ? `the ${rest.join(', ')} of ${cell}` : label;
}

/** Whether a place is a length, which the tape is laid to once it is worked. */
export function isLength({ unit }: Measurable): boolean {
  return isDimension(unit) && sameUnit(unit, length);
}
