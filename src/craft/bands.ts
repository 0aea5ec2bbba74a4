import { CraftError } from './craft-error';
import { lengthParam } from './message-parts';
import { cm, notNegative, oneOf } from './numbers';

/**
 * The width of each front of a cardigan, from what the whole has to measure.
 *
 * Edge to edge, each front has a band of its own, so two bands fill the gap. Overlapping, one band lies on the other
 * and one fills it.
 *
 * @param o.bust the finished bust, cm, closed; @param o.back the width of the back, cm
 * @param o.band the width of a band, cm; 0 for none
 * @returns the width of each front without its band, cm
 * @throws CraftError where nothing is left for the fronts
 * @example
 * frontWidth({ bust: 104, back: 52, band: 3, closes: 'edge to edge' }) // 23
 * frontWidth({ bust: 104, back: 52, band: 3, closes: 'overlapping' })  // 24.5
 *
 * Source: common practice.
 */
export function frontWidth(o: {
  bust: number;
  back: number;
  band: number;
  closes: 'edge to edge' | 'overlapping';
}): number {
  const bust = cm(o.bust, 'The finished bust');
  const back = cm(o.back, 'The width of the back');
  const band = notNegative(o.band, 'The width of a band');
  const closes = oneOf(o.closes, ['edge to edge', 'overlapping'], 'How fronts close');
  const bands = closes === 'edge to edge' ? 2 * band : band;
  const front = (bust - back - bands) / 2;
  if (front <= 0) {
    throw new CraftError(
      'nothing-left',
      'A back of {back} and bands of {bands} leave nothing of {bust} for the fronts: take a narrower back or band.',
      { back: lengthParam(back), bands: lengthParam(bands), bust: lengthParam(bust) },
    );
  }
  return front;
}

/**
 * What a neck band leaves of a neck: it grows inwards on both sides, and narrows the neck by twice its width.
 *
 * @param o.neck the width of the neck without its band, cm; @param o.band the width of the band, cm
 * @returns the width of the neck with its band, cm
 * @throws CraftError where the band closes the neck
 * @example
 * neckWidth({ neck: 24, band: 2.5 }) // 19
 *
 * Source: common practice.
 */
export function neckWidth(o: { neck: number; band: number }): number {
  const neck = cm(o.neck, 'The width of the neck');
  const band = notNegative(o.band, 'The width of the neck band');
  if (2 * band >= neck) {
    throw new CraftError(
      'nothing-left',
      'A band of {band} on each side closes a neck of {neck}: take a band of less than {limit}, or a wider neck.',
      { band: lengthParam(band), neck: lengthParam(neck), limit: lengthParam(neck / 2) },
    );
  }
  return neck - 2 * band;
}
