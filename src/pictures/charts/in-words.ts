import type { Row } from '../../craft';
import type { Shown } from './types';

const cmPerInch = 2.54;

/** A number with so many decimals in the person's own sign; a true minus, and never "-0.0". */
export function figure(value: number, decimals: number, decimal: Shown['decimal']): string {
  const fixed = Math.abs(value).toFixed(decimals).replace('.', decimal);
  return value < 0 && Number(Math.abs(value).toFixed(decimals)) !== 0 ? `−${fixed}` : fixed;
}

/** cm as the unit shown, unrounded: 25.4 cm is 10 in. */
export function inUnit(cm: number, unit: Shown['unit']): number {
  return unit === 'cm' ? cm : cm / cmPerInch;
}

/** The unit shown as cm: 10 in is 25.4 cm. */
export function fromUnit(value: number, unit: Shown['unit']): number {
  return unit === 'cm' ? value : value * cmPerInch;
}

/** A length to a tenth, without its unit: lengthFigure(54.28, { unit: 'cm', decimal: ',' }) is "54,3". */
export function lengthFigure(cm: number, { unit, decimal }: Shown): string {
  return figure(inUnit(cm, unit), 1, decimal);
}

/** A length to a tenth with its unit: "54.3 cm". */
export function lengthInWords(cm: number, shown: Shown): string {
  return `${lengthFigure(cm, shown)} ${shown.unit}`;
}

/** The unit as a word that can stand by itself: "inches", since "in" alone is read as something else. */
export function unitWord(unit: Shown['unit']): string {
  return unit === 'in' ? 'inches' : unit;
}

/** "1 st", "62 sts". */
export function stitchesInWords(count: number): string {
  return `${count} ${count === 1 ? 'st' : 'sts'}`;
}

/** What one of these rows is called: in the round it is a round. */
export function rowWord(rows: readonly Row[]): 'row' | 'round' {
  return rows[0]?.side === 'round' ? 'round' : 'row';
}

/** "1 row", "92 rounds". */
export function rowsInWords(rows: readonly Row[]): string {
  return `${rows.length} ${rowWord(rows)}${rows.length === 1 ? '' : 's'}`;
}
