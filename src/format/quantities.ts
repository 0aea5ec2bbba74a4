import { greatest, roundNearest } from '../craft';

/*
 * Numbers as people write them, read into what is stored and written back: lengths in cm, gauges per cm, percentages
 * as fractions, counts whole. Reading never rounds; writing rounds what is shown and nothing else. What cannot be
 * read comes back as a sentence.
 */

export interface Written {
  /** The mark before the decimals in this notebook. */
  readonly decimal: '.' | ',';
}
export interface WrittenLength extends Written {
  /** The unit of a bare number. */
  readonly unit: 'cm' | 'in';
}
export type Problem = { readonly problem: string };

/**
 * A length as people write it, in cm: `26`, `26 cm`, `26,5`, `260 mm`, `1 m`, `10 1/4 in`, `10-1/4"`, `10¼″`, `−0.5`.
 *
 * A bare number is in the notebook's unit. The inch is 2.54 cm exactly (international yard and pound agreement, 1959).
 * Both decimal marks are understood, except where one could as well set thousands apart.
 *
 * @example readLength('10 1/4 in', { unit: 'cm', decimal: '.' }) // { value: 26.035 }
 * @example readLength('26,5', { unit: 'cm', decimal: ',' })      // { value: 26.5 }
 * @example readLength('long', { unit: 'cm', decimal: '.' })
 * // { problem: 'Type a number, such as 26 cm or 10 1/4 in.' }
 */
export function readLength(text: string, written: WrittenLength): { value: number } | Problem {
  const [, number = '', named = ''] =
    /^(.*?)\s*([a-z]+\.?|["″”“]|'{1,2}|′{1,2}|’{1,2})?$/iu.exec(tidy(text)) ?? [];
  const ratio = readRatio(number, written.decimal);
  if (!ratio) return { problem: 'Type a number, such as 26 cm or 10 1/4 in.' };
  if ('problem' in ratio) return ratio;
  const unit = named === '' ? written.unit : unitNamed(named);
  if (!unit) {
    return isFoot(named)
      ? { problem: 'Type feet as inches, such as 62 in.' }
      : { problem: `"${named}" is no unit of length here: type mm, cm, m or in after the number.` };
  }
  const [top, bottom] = cmPer[unit];
  return valueOf({ top: ratio.top * top, bottom: ratio.bottom * bottom });
}

/** As whole numbers, so that 10¼ in is the double nearest to 26.035 and not one beside it. */
const cmPer = { mm: [1, 10], cm: [1, 1], m: [100, 1], in: [254, 100] } as const;

function unitNamed(name: string): keyof typeof cmPer | undefined {
  if (/^(in\.?|inch(es)?|["″”“]|''|′′|’’)$/i.test(name)) return 'in';
  if (/^(cm\.?|centimet(re|er)s?)$/i.test(name)) return 'cm';
  if (/^(mm\.?|millimet(re|er)s?)$/i.test(name)) return 'mm';
  if (/^(m\.?|met(re|er)s?)$/i.test(name)) return 'm';
  return undefined;
}

function isFoot(name: string): boolean {
  return /^(['′’]|ft\.?|foot|feet)$/i.test(name);
}

/**
 * A length in the notebook's unit, without its symbol: cm to the nearest tenth or half, inches to the nearest eighth.
 *
 * Tenths always show their decimal, so that a column of them lines up; halves and inches do not. `trailingZero` says
 * otherwise. The stored length is not touched: what is shown is for reading.
 *
 * @example writeLength(26.035, { unit: 'in', decimal: '.' })              // '10¼'
 * @example writeLength(26.035, { unit: 'cm', decimal: ',' })              // '26,0'
 * @example writeLength(26.035, { unit: 'cm', decimal: '.', cmStep: 0.5 }) // '26'
 */
export function writeLength(
  cm: number,
  written: WrittenLength & { readonly cmStep?: 0.1 | 0.5; readonly trailingZero?: boolean },
): string {
  if (!isShown(cm)) return noNumber;
  const { decimal, cmStep = 0.1, trailingZero = cmStep === 0.1 } = written;
  if (written.unit === 'cm') {
    const shown = cmStep === 0.5 ? (Math.sign(cm) * roundNearest(Math.abs(cm) * 2)) / 2 : cm;
    return writeNumber(shown, { decimal, decimals: 1, trailingZero });
  }
  const count = roundNearest((Math.abs(cm) / 2.54) * 8);
  const whole = Math.floor(count / 8);
  const part = eighths[count % 8]!;
  return signed(cm, count, whole === 0 && part !== '' ? part : `${whole}${part}`);
}

/**
 * A length as a result tells it: as {@link writeLength} does, and more finely where that would be more than a twentieth
 * off. What is left between two lengths is often so short.
 *
 * @example writeFineLength(26.035, { unit: 'cm', decimal: '.' }) // '26.0'
 * @example writeFineLength(0.16, { unit: 'cm', decimal: '.' })   // '0.16', which is not 0.2
 * @example writeFineLength(0.16, { unit: 'in', decimal: '.' })   // '0.063'
 */
export function writeFineLength(cm: number, written: WrittenLength): string {
  const inUnit = written.unit === 'in' ? cm / 2.54 : cm;
  const steps = written.unit === 'in' ? 8 : 10;
  const shown = roundNearest(Math.abs(inUnit) * steps) / steps;
  const decimals = written.unit === 'in' ? 3 : 2;
  const near = Math.abs(shown - Math.abs(inUnit)) <= Math.abs(inUnit) / 20;
  // What even more places would not tell is nothing.
  if (near || !isShown(cm) || Math.abs(inUnit) < 0.5 / 10 ** decimals) return writeLength(cm, written);
  return writeNumber(inUnit, { decimal: written.decimal, decimals, trailingZero: false });
}

const eighths = ['', '⅛', '¼', '⅜', '½', '⅝', '¾', '⅞'];

/**
 * A plain number, with decimals or with a common fraction.
 *
 * @example readNumber('1,5', { decimal: ',' })  // { value: 1.5 }
 * @example readNumber('4 ½', { decimal: '.' })  // { value: 4.5 }
 */
export function readNumber(text: string, { decimal }: Written): { value: number } | Problem {
  return orElse(readRatio(text, decimal), `Type a number, such as 12 or 1${decimal}5.`);
}

/**
 * A number to so many decimal places, halves away from 0, with a true minus sign.
 *
 * @example writeNumber(-1.005, { decimal: ',', decimals: 2 })                     // '−1,01'
 * @example writeNumber(4, { decimal: '.', decimals: 2, trailingZero: false })     // '4'
 */
export function writeNumber(
  value: number,
  written: Written & { readonly decimals: number; readonly trailingZero?: boolean },
): string {
  if (!isShown(value)) return noNumber;
  const { decimal, decimals: fractionDigits, trailingZero = true } = written;
  const steps = roundNearest(Math.abs(value) * 10 ** fractionDigits);
  const digits = String(steps).padStart(fractionDigits + 1, '0');
  const whole = digits.slice(0, digits.length - fractionDigits);
  const after = digits.slice(digits.length - fractionDigits);
  const decimals = trailingZero ? after : after.replace(/0+$/, '');
  return signed(value, steps, decimals === '' ? whole : whole + decimal + decimals);
}

/**
 * A whole number of stitches, rows or pieces, `least` (0 unless told) or more. The word may stand behind it.
 *
 * @example readCount('24 sts', { decimal: '.' }) // { value: 24 }
 * @example readCount('24.5', { decimal: '.' })   // { problem: 'A count is a whole number: type 24 or 25.' }
 */
export function readCount(
  text: string,
  { decimal, least = 0 }: Written & { readonly least?: number },
): { value: number } | Problem {
  const read = orElse(readRatio(withoutWord(text), decimal), 'Type a whole number, such as 12.');
  if ('problem' in read) return read;
  const { value } = read;
  if (value < least) {
    return {
      problem: `A count here is ${shownPlain(least)} or more: type ${shownPlain(least)}, or a greater number.`,
    };
  }
  if (!Number.isInteger(value)) {
    const [below, above] = [shownPlain(Math.floor(value)), shownPlain(Math.ceil(value))];
    return { problem: `A count is a whole number: type ${below} or ${above}.` };
  }
  return read;
}

/**
 * A percentage, as the fraction that is stored.
 *
 * @example readPercent('12.5 %', { decimal: '.' }) // { value: 0.125 }
 */
export function readPercent(text: string, { decimal }: Written): { value: number } | Problem {
  const ratio = readRatio(tidy(text).replace(/\s*(%|per\s?cent)\s*$/i, ''), decimal);
  const percent = ratio && 'top' in ratio ? { top: ratio.top, bottom: ratio.bottom * 100 } : ratio;
  return orElse(percent, `Type a percentage, such as 10 or 12${decimal}5 %.`);
}

/**
 * A stored fraction as a percentage without its sign, to so many decimal places (1 unless told), zeros dropped.
 *
 * @example writePercent(0.1, { decimal: '.' })   // '10'
 * @example writePercent(0.125, { decimal: ',' }) // '12,5'
 */
export function writePercent(fraction: number, written: Written & { readonly decimals?: number }): string {
  return writeNumber(fraction * 100, {
    decimal: written.decimal,
    decimals: written.decimals ?? 1,
    trailingZero: false,
  });
}

/** What a gauge is counted over. The trade writes one for the other, but 4 in are 10.16 cm. */
export type GaugeOver = '10 cm' | '4 in';

const hundredthsOfCmIn = { '10 cm': 1000, '4 in': 1016 } as const;

/**
 * A gauge per cm, from what is counted over 10 cm or over 4 in (10.16 cm).
 *
 * @example readGauge('14 sts', '10 cm', { decimal: '.' }) // { value: 1.4 }
 * @example readGauge('14', '4 in', { decimal: '.' })      // { value: 1.3779527559055118 }
 */
export function readGauge(text: string, over: GaugeOver, { decimal }: Written): { value: number } | Problem {
  const ratio = readRatio(withoutWord(text), decimal);
  if (!ratio) return { problem: `Type how many there are to ${over}, such as 14.` };
  if ('problem' in ratio) return ratio;
  if (ratio.top <= 0)
    return { problem: `A gauge is more than 0: type how many there are to ${over}, such as 14.` };
  return valueOf({ top: ratio.top * 100, bottom: ratio.bottom * hundredthsOfCmIn[over] });
}

/**
 * A gauge as what is counted over 10 cm or over 4 in, to so many decimal places (1 unless told), zeros dropped unless
 * `trailingZero` keeps them.
 *
 * @example writeGauge(1.4, '10 cm', { decimal: '.' }) // '14'
 * @example writeGauge(1.4, '4 in', { decimal: '.' })  // '14.2'
 */
export function writeGauge(
  perCm: number,
  over: GaugeOver,
  written: Written & { readonly decimals?: number; readonly trailingZero?: boolean },
): string {
  const { decimal, decimals = 1, trailingZero = false } = written;
  return writeNumber((perCm * hundredthsOfCmIn[over]) / 100, { decimal, decimals, trailingZero });
}

/** A number as it was typed, not yet divided: units are applied to whole numbers and round only once. */
interface Ratio {
  top: number;
  bottom: number;
}

const fractionSigns: Readonly<Record<string, readonly [over: number, under: number]>> = {
  '½': [1, 2],
  '⅓': [1, 3],
  '⅔': [2, 3],
  '¼': [1, 4],
  '¾': [3, 4],
  '⅛': [1, 8],
  '⅜': [3, 8],
  '⅝': [5, 8],
  '⅞': [7, 8],
};

/** Longer than any number that is meant; and what is longer is not searched for one. */
const mostCharacters = 60;

function tidy(text: string): string {
  const trimmed = text.trim();
  return trimmed.length > mostCharacters ? '' : trimmed;
}

/** A typed number; undefined where it is none, a problem where it could be two. */
function readRatio(text: string, decimal: '.' | ','): Ratio | Problem | undefined {
  const [, sign = '', number = ''] = /^([-−–+]?)\s*(.*)$/u.exec(tidy(text)) ?? [];
  const ratio = readDecimal(number, decimal) ?? readFraction(number);
  if (!ratio || 'problem' in ratio) return ratio;
  return sign === '' || sign === '+' ? ratio : { top: 0 - ratio.top, bottom: ratio.bottom };
}

function readDecimal(text: string, decimal: '.' | ','): Ratio | Problem | undefined {
  const simple = /^(\d*)(?:([.,])(\d*))?$/.exec(text);
  if (simple) {
    const [, whole = '', mark, decimals = ''] = simple;
    if (whole + decimals === '') return undefined;
    // 1,250 in a notebook that writes 1.25: one and a quarter, or twelve hundred and fifty?
    if (mark && mark !== decimal && /^[1-9]\d{0,2}$/.test(whole) && decimals.length === 3) {
      return {
        problem: `${text} could be two numbers: type ${whole}${decimals}, or ${whole}${decimal}${decimals} for the smaller one.`,
      };
    }
    const digits = (whole + decimals).replace(/^0+/, '');
    return digits.length + decimals.length > 15
      ? { top: Number(`${whole}.${decimals}`), bottom: 1 }
      : { top: Number(digits), bottom: 10 ** decimals.length };
  }
  const grouped = /^\d{1,3}(?:[.,'’\s]\d{3})+(?:[.,]\d+)?$/u.test(text);
  return grouped
    ? {
        problem: `Leave out the marks between thousands: type 12500, not 12${decimal === '.' ? ',' : '.'}500.`,
      }
    : undefined;
}

function readFraction(text: string): Ratio | Problem | undefined {
  const typed = /^(?:(\d+)(?:\s+|\s*[-–‐]\s*))?(\d+)\s*[/⁄∕]\s*(\d+)$/u.exec(text);
  const drawn = typed ? null : /^(?:(\d+)\s*[-–‐]?\s*)?([½⅓⅔¼¾⅛⅜⅝⅞])$/u.exec(text);
  const whole = typed?.[1] ?? drawn?.[1];
  const [over, under] = typed
    ? [Number(typed[2]), Number(typed[3])]
    : (fractionSigns[drawn?.[2] ?? ''] ?? []);
  if (over === undefined || under === undefined) return undefined;
  if (under === 0) return { problem: 'A fraction needs a number under its line that is not 0, such as 1/4.' };
  if (whole !== undefined && over >= under) {
    return { problem: `After ${whole} the fraction has to be less than 1, such as ${whole} 1/4.` };
  }
  return { top: Number(whole ?? 0) * under + over, bottom: under };
}

/**
 * A count or gauge without the stitches or rows behind it.
 *
 * @example withoutWord('13.5 rows') // '13.5'
 */
export function withoutWord(text: string): string {
  return tidy(text).replace(/\s*(sts?|stitch(es)?|rows?|rnds?|rounds?)\.?\s*$/i, '');
}

function orElse(ratio: Ratio | Problem | undefined, problem: string): { value: number } | Problem {
  if (!ratio) return { problem };
  return 'problem' in ratio ? ratio : valueOf(ratio);
}

function valueOf({ top, bottom }: Ratio): { value: number } | Problem {
  const value = top / bottom;
  return Math.abs(value) <= greatest
    ? { value }
    : { problem: 'That is beyond anything that can be worked: check the number.' };
}

/** What stands where there is no number to show. */
const noNumber = '–';

/** Beyond this a double has no decimals left to round. */
function isShown(value: number): boolean {
  return Math.abs(value) < 1e15;
}

function signed(value: number, steps: number, text: string): string {
  return value < 0 && steps > 0 ? `−${text}` : text;
}

function shownPlain(value: number): string {
  return value < 0 ? `−${-value}` : String(value);
}
