import { CraftError } from './craft-error';
import { message, type Param } from './message';
import { lengthParam, numberParam } from './message-parts';
import { fitBands } from './fit-bands';
import type { FitBand } from './fit-bands';
import { cm, cmPerInch, finite } from './numbers';
import type { Cm } from './numbers';
import type { Ease } from './types';

/** Published centimetres of ease are rounded to 5, 10 and 15, a little short of 2, 4 and 6 in. */
const tolerance = 0.1;

/**
 * A finished measurement: the body's plus the ease.
 *
 * Ease is a length in cm or a per cent of the body (`percent: 10` means 10 %). Either may be negative, for a
 * garment that stretches to fit.
 *
 * @param body the body measurement, cm
 * @returns the measurement of the garment, cm
 * @throws CraftError where the body is not more than 0, or the ease leaves nothing of it
 * @example
 * finished(86.36, { length: 5.08 })   // 91.44: a 34 in bust with 2 in of ease is 36 in
 * finished(90, { percent: -10 })      // 81
 *
 * Source: common practice.
 */
export function finished(body: number, ease: Ease): number {
  const from = cm(body, 'The body measurement');
  const to = (from + easeAt(from, ease)) as Cm;
  if (to <= 0) {
    throw new CraftError(
      'nothing-left',
      'An ease of {ease} on a body measurement of {body} leaves nothing: take an ease of more than {least} (−100 %).',
      { ease: easeParam(ease), body: lengthParam(body), least: lengthParam(-body) },
    );
  }
  return cm(to, 'The finished measurement');
}

/** The ease as a length in cm, for a body measurement. */
function easeAt(body: Cm, ease: Ease): Cm {
  if (typeof ease === 'object' && ease !== null) {
    if ('length' in ease && !('percent' in ease)) return finite(ease.length, 'The ease') as Cm;
    if ('percent' in ease && !('length' in ease)) {
      return ((body * finite(ease.percent, 'The ease in per cent')) / 100) as Cm;
    }
  }
  throw new CraftError('not-an-ease', 'An ease has to be either a length in cm or a per cent of the body.');
}

function easeParam(ease: Ease): Param {
  if ('length' in ease) return lengthParam(ease.length);
  return message('per-cent', '{percent} %', { percent: numberParam(ease.percent) });
}

/**
 * The conventional name of a fit, from the ease at the bust.
 *
 * A band holds its lower end, with 0.1 in of tolerance since published centimetres are rounded, and not its upper.
 * The published bands leave gaps: an ease in none of them takes the nearest band's name (of two as near, the
 * roomier), and `between` is true.
 *
 * @param bodyBust the body's bust, cm
 * @param ease a length in cm or a per cent of the bust
 * @throws CraftError where the bust is not more than 0 or the ease leaves nothing of it
 * @example
 * fitName(90, { length: 5 })      // { name: 'classic', between: false }
 * fitName(90, { length: 2.54 })   // { name: 'classic', between: true }
 *
 * Source: the Craft Yarn Council's fit guide, typed from memory (see fit-bands.ts).
 */
export function fitName(bodyBust: number, ease: Ease): { name: string; between: boolean } {
  finished(bodyBust, ease);
  const inches = easeAt(bodyBust as Cm, ease) / cmPerInch;
  const [nearest, ...others] = fitBands.map((band) => ({ name: band.name, away: awayFrom(band, inches) }));
  let found = nearest as { name: string; away: number };
  for (const other of others) if (other.away <= found.away + 1e-9) found = other;
  return { name: found.name, between: found.away > 0 };
}

/** How many inches of ease lie between `inches` and a band; 0 within it. */
function awayFrom({ ease: [low, high] }: FitBand, inches: number): number {
  // Dust of floating point is far below what the tolerance is for, but must not decide at its very edge.
  const dust = 1e-9;
  if (inches < low - tolerance - dust) return low - inches;
  if (low === high) return inches <= high + tolerance + dust ? 0 : inches - high;
  return inches < high - dust ? 0 : Math.max(inches - high, dust * 2);
}
