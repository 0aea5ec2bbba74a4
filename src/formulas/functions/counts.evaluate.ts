import {
  CraftError,
  fitCount,
  fitMotifs,
  fitTogether,
  foundationChain,
  gaugeOf,
  guessGauge,
  narrowMotifs,
  nearestSize,
  ofSize,
  type MotifFit,
  type Repeat,
  type Rule,
  cm,
  perCm,
  whole,
} from '../../craft';
import { fabricText } from '../piece-text';
import { chosen, nth } from './choice.evaluate';
import { pairs, readingsOf } from './pairs.evaluate';
import type { TradeFunction } from './trade-function';

type Worked = 'flat' | 'round';

type Together = [...pieces: [number, number, number, number, number, number], rule?: string, extra?: number];

const turningCounts = { counts: true, 'does not count': false } as const;
const parities = { any: undefined, odd: 'odd', even: 'even' } as const;

function motifFit(
  wanted: number,
  motif: number,
  least: number,
  most: number,
  edge: number,
  worked: string,
  which: number = 1,
): MotifFit {
  const fits = fitMotifs({
    target: wanted,
    motif: whole(motif),
    gap: { least: whole(least), most: whole(most) },
    edge: whole(edge),
    worked: worked as Worked,
  });
  return nth(fits, whole(which), ['way to set these motifs', 'ways to set these motifs']);
}

/**
 * A count that repeats allow. One repeat that is more than twice what is wanted is a slip: it is said here, where it was
 * typed, and not on everything that is worked from the count. The sentence has no number of the size in it, so that
 * it is one for all sizes.
 */
function repeated(wanted: number, repeats: Repeat[], rule: Rule, parity?: 'odd' | 'even'): number {
  const { count, below } = fitCount(wanted, repeats, rule, parity);
  if (rule === 'nearest' && below === null && wanted > 0 && count > 2 * wanted) {
    throw new CraftError(
      'too-wide',
      'The least that this repeat allows is {count}, more than twice what is wanted: take a smaller repeat.',
      { count },
    );
  }
  return count;
}

/** Counts and gauges, and the counts that repeats and motifs allow. A gauge is per cm. */
export const counts = {
  STS: (number: number) => number,
  ROWS: (number: number) => number,
  GAUGE: (...values: number[]) => gaugeOf(readingsOf('GAUGE', values)).perCm,
  GUESSGAUGE: (gauge: number, hook: number, other: number) => guessGauge({ perCm: gauge, hook, other }).perCm,
  FABRIC: (stitches: number, rows: number, ...heights: number[]) =>
    fabricText(
      perCm(stitches, 'The stitch gauge of a fabric'),
      perCm(rows, 'The row gauge of a fabric'),
      heights.map((height) => cm(height, 'The height of a row')),
    ),
  FITREPEAT: (wanted: number, multiple: number, plus: number, rule: string = 'nearest') =>
    repeated(wanted, [{ multiple: whole(multiple), plus: whole(plus) }], rule as Rule),
  FITREPEATS: (...[wanted, rule, parity, ...repeats]: [number, string, string, ...number[]]) =>
    repeated(
      wanted,
      pairs('FITREPEATS', 'a multiple and what is added to it', repeats).map(([multiple, plus]) => ({
        multiple: whole(multiple),
        plus: whole(plus),
      })),
      rule as Rule,
      chosen('FITREPEATS', parity, parities),
    ),
  FITTOGETHER: (...[which, wanted, fixed, ...given]: [number, number, number, ...Together]) => {
    const [times1, multiple1, plus1, times2, multiple2, plus2, rule = 'nearest', extra = 0] = given;
    const { counts } = fitTogether({
      target: wanted,
      fixed,
      halves: [
        { times: whole(times1), multiple: whole(multiple1), plus: whole(plus1), extra: whole(extra) },
        { times: whole(times2), multiple: whole(multiple2), plus: whole(plus2), extra: whole(extra) },
      ],
      rule: rule as 'nearest' | 'growing',
    });
    const count = nth(counts, whole(which), ['half of a garment', 'halves of a garment']);
    // A repeat too wide for its half is told of on that half; the count of the other is worth nothing, and says nothing.
    const [share, times, multiple, plus] =
      whole(which) === 1
        ? [wanted / 2, times1, multiple1, plus1]
        : [wanted / 2 - fixed, times2, multiple2, plus2];
    repeated(share / times, [{ multiple: whole(multiple), plus: whole(plus) }], 'nearest');
    return count;
  },
  FITCHAIN: (
    wanted: number,
    multiple: number,
    plus: number,
    rule: string,
    turning: number,
    counts: string,
  ) => {
    const chains = { turning: whole(turning), counts: chosen('FITCHAIN', counts, turningCounts) };
    // The chain is so much longer than its row, whatever the row: so the row has the same multiple with less added.
    const longer = foundationChain({ stitches: 1, ...chains }) - 1;
    return repeated(wanted, [{ multiple: whole(multiple), plus: whole(plus) - longer }], rule as Rule);
  },
  FOUNDATIONCHAIN: (stitches: number, turning: number, counts: string) =>
    foundationChain({
      stitches: whole(stitches),
      turning: whole(turning),
      counts: chosen('FOUNDATIONCHAIN', counts, turningCounts),
    }),
  ROUNDCOUNT: (wanted: number, rule: string = 'nearest') => {
    const [rounded, parity] = chosen('ROUNDCOUNT', rule, {
      nearest: ['nearest', undefined],
      up: ['up', undefined],
      down: ['down', undefined],
      even: ['nearest', 'even'],
      odd: ['nearest', 'odd'],
    } as const);
    return fitCount(wanted, [], rounded, parity).count;
  },
  FITMOTIFS: (...given: Parameters<typeof motifFit>) => motifFit(...given).count,
  MOTIFS: (...given: Parameters<typeof motifFit>) => motifFit(...given).motifs,
  MOTIFGAP: (...given: Parameters<typeof motifFit>) => motifFit(...given).gap,
  NARROWMOTIFS: (motifs: number, motif: number, gap: number, least: number, edge: number, worked: string) =>
    narrowMotifs({
      motifs: whole(motifs),
      motif: whole(motif),
      gap: whole(gap),
      least: whole(least),
      edge: whole(edge),
      worked: worked as Worked,
    }).count,
  STATED: (which: number, ...list: number[]) => ofSize(list, whole(which)),
  NEARESTSIZE: (wanted: number, ...list: number[]) => nearestSize(wanted, list),
  SIZENAMED: (which: number, ...names: string[]) =>
    nth(names, whole(which), ['size of this pattern', 'sizes of this pattern']),
} satisfies Record<string, TradeFunction>;
