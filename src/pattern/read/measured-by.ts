import { gaugeFor } from './gauge-for';
import type { PerSize, StatedMeasure, StatedPattern, StatedPiece } from './types';

/** What the pattern's own counts make of a measurement. */
export interface MeasuredBy {
  readonly values: PerSize;
  /** Half a stitch of each piece that is counted, cm. */
  readonly halfStitch: number;
  readonly what: string;
  readonly count: string;
  /** How many stitches (or rows) a difference is. */
  stitches(off: number): string;
}

/** The pieces of a part of a garment, by what they are called. */
export function piecesCalled(pattern: StatedPattern, word: RegExp): StatedPiece[] {
  return pattern.pieces.filter(({ label, start }) => word.test(label) && start.kind !== 'from');
}

/**
 * The counts that make a finished measurement: back and fronts, or the body, the bust; the start of a sleeve picked up at
 * the armhole, or the end of one worked from its cuff, the upper arm; the other end the wrist. Undefined where the pieces
 * are called otherwise: then nothing is compared.
 */
export function measuredBy(pattern: StatedPattern, measure: StatedMeasure): MeasuredBy | undefined {
  if (measure.on !== 'garment') return undefined;
  const count = countsFor(pattern, measure);
  if (!count) return undefined;
  const { gauge } = count;
  const values = count.counts.map((stitches) => (stitches === null ? null : stitches / gauge));
  return {
    values,
    halfStitch: (0.5 * count.pieces) / gauge,
    what: count.what,
    count: count.what,
    stitches: (off) => {
      const many = Math.max(1, Math.round(Math.abs(off) * gauge));
      return `${many} ${many === 1 ? 'stitch' : 'stitches'} too ${off > 0 ? 'many' : 'few'}`;
    },
  };
}

interface Counted {
  readonly counts: PerSize;
  readonly gauge: number;
  readonly pieces: number;
  readonly what: string;
}

function countsFor(pattern: StatedPattern, measure: StatedMeasure): Counted | undefined {
  if (measure.of === 'bust') {
    const [body] = piecesCalled(pattern, /^body\b/iu);
    const [back] = piecesCalled(pattern, /^back\b/iu);
    const [front] = piecesCalled(pattern, /^(?:(?:left|right) )?fronts?\b/iu);
    if (body?.worked === 'round') return sized(pattern, [[body, 1]], 'the stitches of the body');
    if (!back || !front) return undefined;
    return sized(
      pattern,
      [
        [back, 1],
        [front, front.make],
      ],
      'the stitches of back and front',
    );
  }
  const [sleeve] = piecesCalled(pattern, /sleeve/iu);
  if (!sleeve || (measure.of !== 'upper arm' && measure.of !== 'wrist')) return undefined;
  const top = sleeve.start.kind === 'picked up';
  if (measure.of === 'upper arm' && top) return sized(pattern, [[sleeve, 1]], 'the stitches of the sleeve');
  if (measure.of === 'wrist' && !top) return sized(pattern, [[sleeve, 1]], 'the stitches of the cuff');
  return undefined;
}

function sized(
  pattern: StatedPattern,
  pieces: readonly (readonly [StatedPiece, number])[],
  what: string,
): Counted | undefined {
  const gauge = gaugeFor(pattern.gauges, '')?.stitches;
  if (!gauge) return undefined;
  const counts = pattern.sizes.map((_size, at) =>
    pieces.reduce<number | null>((sum, [piece, times]) => {
      const count = piece.start.count[at];
      return sum === null || count === null || count === undefined ? null : sum + times * count;
    }, 0),
  );
  return { counts, gauge, pieces: pieces.reduce((sum, [, times]) => sum + times, 0), what };
}
