import { amountsIn, listOfAmounts as list, type Amounts } from './amounts';
import type { PrintedKind } from './printed';
import type { SentenceReader } from './statement';

/*
 * The sentences of a pattern outside its pieces. A label is whatever stands where one is due: it is compared as it is.
 */

const amounts = (text: string | undefined): Amounts => amountsIn(text ?? '') ?? [];
const whole = (source: string): RegExp => new RegExp(`^${source}$`, 'u');

/** A sentence that says one thing, always in the same words. */
const fixed = (name: string, pattern: RegExp, example: string): SentenceReader => ({
  name,
  pattern,
  examples: [example],
  read: () => ({}),
});
const plain = (name: string, words: string): SentenceReader =>
  fixed(name, whole(words.replace(/[.*+?^${}()|[\]\\]/gu, '\\$&')), words);

const cautions: readonly SentenceReader[] = [
  {
    name: 'caution for children’s sizes',
    pattern:
      /^Children’s sizes \((?<sizes>.+)\): cords, ties, buttons and glued-on parts can strangle or choke\. Keep them off, or follow the safety rules for children’s clothing where the garment is worn or sold; many countries restrict cords at neck and hem\.$/u,
    examples: [
      'Children’s sizes (4 and 6): cords, ties, buttons and glued-on parts can strangle or choke. Keep them off, or follow the safety rules for children’s clothing where the garment is worn or sold; many countries restrict cords at neck and hem.',
    ],
    read: ({ sizes = '' }) => ({ facts: { sizes } }),
  },
  plain(
    'caution for a child',
    'Worked for a baby or a small child: cords, ties, buttons and glued-on parts can strangle or choke. Keep them off, or follow the safety rules for children’s clothing where the garment is worn or sold.',
  ),
  plain(
    'caution about amounts',
    'Amounts of yarn are estimates with a reserve, and sizes are worked from charts and swatches: try on, or measure a garment that fits, before cutting or joining.',
  ),
  plain(
    'caution about charts',
    'Charts are averages of some bodies: where an upper arm, a bust or a length differs, the person’s own measurement wins.',
  ),
];

const materials: readonly SentenceReader[] = [
  {
    name: 'yarn',
    pattern: whole(
      `(?<yarn>.+): about (?<grams>${list}) g(?:, (?<length>${list}) (?<unit>m|yd))?, for (?<fabrics>.+)\\.`,
    ),
    examples: [
      'Yarn for the hat: about 41 (47, 40) g, 90 (103, 88) m, for Hat fabric and Rib.',
      'Wool: about 120 g, for Fabric.',
    ],
    read: ({ yarn = '', grams, length, unit = '', fabrics = '' }) => ({
      of: yarn,
      facts: { grams: amounts(grams), length: amounts(length), unit, fabrics },
    }),
  },
  {
    name: 'balls',
    pattern: whole(
      `That is (?<balls>${list}) balls? of (?<weight>${list}) g, with (?<reserve>${list}) % in reserve; an estimate from weighed swatches\\.`,
    ),
    examples: ['That is 2 (3) balls of 50 g, with 10 % in reserve; an estimate from weighed swatches.'],
    read: ({ balls, weight, reserve }) => ({
      facts: { balls: amounts(balls), weight: amounts(weight), reserve: amounts(reserve) },
    }),
  },
  {
    name: 'hook or needles',
    pattern: whole('(?<tool>.+), for (?<fabrics>.+), or the size that gives the (?<term>gauge|tension)\\.'),
    examples: ['4 mm needles, in the round, for Rib and Body, or the size that gives the gauge.'],
    read: ({ tool = '', fabrics = '', term = '' }) => ({ of: tool, facts: { fabrics, term } }),
  },
  {
    name: 'needles by the gauge',
    pattern: whole('Needles in the size that gives the (?<term>gauge|tension), for (?<fabrics>.+)\\.'),
    examples: ['Needles in the size that gives the gauge, for Body fabric and Sleeve fabric.'],
    read: ({ fabrics = '', term = '' }) => ({ facts: { fabrics, term } }),
  },
  fixed('marker', whole('Stitch markers?\\.'), 'Stitch marker.'),
  plain('holder', 'Stitch holders or spare yarn, to hold stitches on.'),
  {
    name: 'needle to sew with',
    pattern: whole(
      'Tapestry needle, to (?<what>sew the seams and weave in the ends|sew the seams|weave in the ends)\\.',
    ),
    examples: ['Tapestry needle, to sew the seams and weave in the ends.'],
    read: ({ what = '' }) => ({ facts: { what } }),
  },
  {
    name: 'notions by length',
    pattern: whole(
      `(?<notions>.+): (?<pieces>${list}) of (?<each>${list}) (?<unit>cm|in) each, (?<length>${list}) (?<long>m|yd) in all\\.`,
    ),
    examples: ['Cords: 7 (8) of 30 cm each, 2.3 (2.6) m in all.'],
    read: ({ notions = '', pieces, each, unit = '', length, long = '' }) => ({
      of: notions,
      facts: {
        pieces: amounts(pieces),
        each: amounts(each),
        unit,
        length: amounts(length),
        'unit of the length': long,
      },
    }),
  },
  {
    name: 'notions',
    pattern: whole(`(?<notions>.+): (?<pieces>${list})\\.`),
    examples: ['Buttons: 7 (8).'],
    read: ({ notions = '', pieces }) => ({ of: notions, facts: { pieces: amounts(pieces) } }),
  },
];

const gauge: readonly SentenceReader[] = [
  {
    name: 'gauge',
    pattern: whole(
      `(?<fabric>.+): (?<stitches>${list}) sts? and (?<rows>${list}) rows? to (?<over>10 cm|4 in)(?:, exactly (?<exactStitches>${list}) sts? and (?<exactRows>${list}) rows? to 10 cm)?(?: \\((?<worked>.+)\\))?\\.`,
    ),
    examples: [
      'Rib: 24.5 sts and 30 rows to 10 cm (3.5 mm needles, 2 by 2, in the round).',
      'Body: 14 sts and 16.5 rows to 4 in, exactly 14 sts and 16 rows to 10 cm (flat).',
    ],
    read: ({ fabric = '', stitches, rows, over = '', exactStitches, exactRows, worked = '' }) => ({
      of: fabric,
      facts: {
        stitches: amounts(stitches),
        rows: amounts(rows),
        over,
        'exact stitches': amounts(exactStitches),
        'exact rows': amounts(exactRows),
        worked,
      },
    }),
  },
];

const measurements: readonly SentenceReader[] = [
  {
    name: 'order of the sizes',
    pattern: whole('Numbers stand for the sizes in this order: (?<sizes>.+)\\.'),
    examples: ['Numbers stand for the sizes in this order: S (M, L).'],
    read: ({ sizes = '' }) => ({ facts: { sizes } }),
  },
];

const abbreviations: readonly SentenceReader[] = [
  {
    name: 'terms',
    pattern: whole('This pattern uses (?<terms>US|UK) terms\\.'),
    examples: ['This pattern uses UK terms.'],
    read: ({ terms = '' }) => ({ facts: { terms } }),
  },
];

const notes: readonly SentenceReader[] = [
  plain(
    'note on sizes',
    'Where numbers differ by size, they stand in the order of the sizes, all but the first in brackets; one number is for all sizes, and an en dash means not in that size.',
  ),
  plain('note on counts', 'Numbers in square brackets are the stitches at the end of the row or round.'),
  plain(
    'note on working even',
    'To work even is to work in the stitch of the fabric, with neither increases nor decreases.',
  ),
  plain('note on decreases', 'Dec: work 2 sts together, so that the pattern of the fabric goes on.'),
  {
    name: 'note on increases',
    pattern: whole('Inc: (?<how>work 2 sts in 1|make 1 st), so that the pattern of the fabric goes on\\.'),
    examples: ['Inc: make 1 st, so that the pattern of the fabric goes on.'],
    read: ({ how = '' }) => ({ facts: { how } }),
  },
  plain('note on edges', 'Before picking up along an edge, join the seams that it runs across.'),
  {
    name: 'turning chain',
    pattern: whole(
      'Rows of (?<stitch>\\S+) begin with ch (?<chain>\\d+), which (?:counts as the first (?<first>\\S+)|does not count as a st)\\.',
    ),
    examples: [
      'Rows of dc begin with ch 3, which counts as the first dc.',
      'Rows of sc begin with ch 1, which does not count as a st.',
    ],
    read: ({ stitch = '', chain, first = '' }) => ({
      of: stitch,
      facts: { chain: amounts(chain), 'counts as': first },
    }),
  },
];

const makingUp: readonly SentenceReader[] = [
  {
    name: 'join',
    pattern: whole(
      `(?<join>.+): join (?<by>row to row|stitch to stitch), (?<count>${list}) (?<unit>rows?|sts?) on each side\\.`,
    ),
    examples: ['Side seams: join row to row, 46 (44) rows on each side.'],
    read: ({ join = '', by = '', count, unit = '' }) => ({
      of: join,
      facts: { by, count: amounts(count), unit: unit.replace(/s$/u, '') },
    }),
  },
  {
    name: 'stitches in the middle',
    pattern: whole(
      `(?<piece>.+): (?<off>bind|cast) off the (?<count>${list}) sts? in the middle, or work them into an edging\\.`,
    ),
    examples: ['Front: bind off the 16 (20) sts in the middle, or work them into an edging.'],
    read: ({ piece = '', off = '', count }) => ({ of: piece, facts: { off, count: amounts(count) } }),
  },
  plain('finish', 'Weave in the ends, and block to the finished measurements.'),
];

/** The readers of each part that is not a piece; the first that fits a sentence is taken. */
export const sentenceReaders: Readonly<Record<Exclude<PrintedKind, 'piece'>, readonly SentenceReader[]>> = {
  cautions,
  materials,
  gauge,
  measurements,
  abbreviations,
  notes,
  'making up': makingUp,
};
