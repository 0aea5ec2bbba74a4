import { CraftError } from './craft-error';
import { formatNumber } from './format';
import { cmPerInch } from './rounding';

/** A measure as the charts print it, in inches: a number, or a range from low to high. */
type Inches = number | readonly [low: number, high: number];

/** What the charts measure. */
export const bodyMeasures = [
  'bust',
  'neckToWrist',
  'backWaistLength',
  'crossBack',
  'armLengthToUnderarm',
  'upperArm',
  'armholeDepth',
  'waist',
  'hips',
] as const;
export type BodyMeasure = (typeof bodyMeasures)[number];

/** Which point of a range is meant. */
export const chartPoints = ['lower', 'middle', 'upper'] as const;
export type ChartPoint = (typeof chartPoints)[number];

/** A published chart of body measurements, with a list of one entry per size under each measure. */
export interface Chart {
  sizes: readonly string[];
  measures: Readonly<Record<BodyMeasure, readonly Inches[]>>;
  /** Something to say beside one of the measures, or beside the whole chart where `of` is missing. */
  note?: { of?: BodyMeasure; says: string };
}

export const chartNames = ['woman', 'man', 'child', 'baby'] as const;
export type ChartName = (typeof chartNames)[number];

/** Said wherever a chart's number is shown. */
export const chartSource =
  "after the Craft Yarn Council's published charts (Standards & Guidelines for Crochet and Knitting); typed from memory";

/**
 * Body measurements in inches, after the Craft Yarn Council's published charts (Standards & Guidelines for Crochet
 * and Knitting); typed from memory. They measure the body, not the garment, and a person's own measurement wins.
 * No head, hand or neck is charted.
 */
export const charts: Readonly<Record<ChartName, Chart>> = {
  woman: {
    sizes: ['XS', 'S', 'M', 'L', 'XL', '2X', '3X', '4X', '5X'],
    // prettier-ignore
    measures: {
      bust: [[28, 30], [32, 34], [36, 38], [40, 42], [44, 46], [48, 50], [52, 54], [56, 58], [60, 62]],
      neckToWrist: [[27, 27.5], [28, 28.5], [29, 29.5], [30, 30.5], [31, 31.5], [31.5, 32], [32.5, 33], [32.5, 33], [33, 33.5]],
      backWaistLength: [16.5, 17, 17.25, 17.5, 17.75, 18, 18, 18.5, 18.5],
      crossBack: [[14, 14.5], [14.5, 15], [16, 16.5], [17, 17.5], 17.5, 18, 18, 18.5, 18.5],
      armLengthToUnderarm: [16.5, 17, 17, 17.5, 17.5, 18, 18, 18.5, 18.5],
      upperArm: [9.75, 10.25, 11, 12, 13.5, 15.5, 17, 18.5, 19.5],
      armholeDepth: [[6, 6.5], [6.5, 7], [7, 7.5], [7.5, 8], [8, 8.5], [8.5, 9], [9, 9.5], [9.5, 10], [10, 10.5]],
      waist: [[23, 24], [25, 26.5], [28, 30], [32, 34], [36, 38], [40, 42], [44, 45], [46, 47], [49, 50]],
      hips: [[33, 34], [35, 36], [38, 40], [42, 44], [46, 48], [52, 53], [54, 55], [56, 57], [61, 62]],
    },
  },
  man: {
    sizes: ['S', 'M', 'L', 'XL', '2XL'],
    // prettier-ignore
    measures: {
      bust: [[34, 36], [38, 40], [42, 44], [46, 48], [50, 52]],
      neckToWrist: [[32, 32.5], [33, 33.5], [34, 34.5], [35, 35.5], [36, 36.5]],
      backWaistLength: [[25, 25.5], [26.5, 26.75], [27, 27.25], [27.5, 27.75], [28, 28.5]],
      crossBack: [[15.5, 16], [16.5, 17], [17.5, 18], [18, 18.5], [18.5, 19]],
      armLengthToUnderarm: [18, 18.5, 19.5, 20, 20.5],
      upperArm: [12, 13, 15, 16, 17],
      armholeDepth: [[8.5, 9], [9, 9.5], [9.5, 10], [10, 10.5], [10.5, 11]],
      waist: [[28, 30], [32, 34], [36, 38], [42, 44], [46, 48]],
      hips: [[35, 37], [39, 41], [43, 45], [47, 49], [51, 53]],
    },
    note: { of: 'backWaistLength', says: "For men the chart's back length is the back hip length." },
  },
  child: {
    sizes: ['2', '4', '6', '8', '10', '12', '14', '16'],
    // prettier-ignore
    measures: {
      bust: [21, 23, 25, 26.5, 28, 30, 31.5, 32.5],
      neckToWrist: [18, 19.5, 20.5, 22, 24, 26, 27, 28],
      backWaistLength: [8.5, 9.5, 10.5, 12.5, 14, 15, 15.5, 16],
      crossBack: [9.25, 9.75, 10.25, 10.75, 11.25, 12, 12.25, 13],
      armLengthToUnderarm: [8.5, 10.5, 11.5, 12.5, 13.5, 15, 16, 16.5],
      upperArm: [7, 7.5, 8, 8.5, 8.75, 9, 9.25, 9.5],
      armholeDepth: [4.25, 4.75, 5, 5.5, 6, 6.5, 7, 7.5],
      waist: [21, 21.5, 22.5, 23.5, 24.5, 25.5, 26.5, 27.5],
      hips: [22, 23.5, 25, 28, 29.5, 31.5, 33, 35.5],
    },
  },
  baby: {
    sizes: ['3 months', '6 months', '12 months', '18 months', '24 months'],
    // prettier-ignore
    measures: {
      bust: [16, 17, 18, 19, 20],
      neckToWrist: [10.5, 11.5, 12.5, 14, 18],
      backWaistLength: [6, 7, 7.5, 8, 8.5],
      crossBack: [7.25, 7.75, 8.25, 8.5, 8.75],
      armLengthToUnderarm: [6, 6.5, 7.5, 8, 8.5],
      upperArm: [5.5, 6, 6.5, 7, 7.5],
      armholeDepth: [3.25, 3.5, 3.75, 4, 4.25],
      waist: [18, 19, 20, 20.5, 21],
      hips: [19, 20, 20, 21, 22],
    },
    note: {
      of: 'neckToWrist',
      says: 'The jump of neckToWrist from 14 to 18 is in the published chart as remembered.',
    },
  },
};

/**
 * A measure of a chart in cm, as the range it is printed as.
 *
 * @param chart woman, man, child or baby
 * @param size a size of that chart, as it is written there ('M', '2X', '6 months')
 * @returns both ends in cm (equal where the chart prints one number), and the note beside that measure, if any
 * @throws CraftError where there is no such chart, size or measure, naming those there are
 * @example
 * chartRange('woman', 'M', 'bust')
 * // { low: 91.44, high: 96.52 }, from 36 to 38 in
 *
 * Source: the Craft Yarn Council's charts, typed from memory.
 */
export function chartRange(
  chart: ChartName,
  size: string,
  measure: BodyMeasure,
): { low: number; high: number; note?: string } {
  const { sizes, measures, note } = charts[known(chart, chartNames, 'chart')];
  const column = sizes.indexOf(known(size, sizes, `size in the ${chart}'s chart`));
  const row = measures[known(measure, bodyMeasures, `measure in the ${chart}'s chart`)];
  const printed = row[column] as Inches;
  const [low, high] = typeof printed === 'number' ? [printed, printed] : printed;
  const applies = note !== undefined && (note.of === undefined || note.of === measure);
  return { low: low * cmPerInch, high: high * cmPerInch, ...(applies && { note: note.says }) };
}

/**
 * One point of a chart's range, in cm: its lower end, its upper end, or the middle unless told.
 *
 * @throws CraftError where there is no such chart, size, measure or point, naming those there are
 * @example
 * chartPoint('woman', 'M', 'bust')            // 93.98, 37 in
 * chartPoint('woman', 'M', 'bust', 'lower')   // 91.44, 36 in
 *
 * Source: as for `chartRange`; the middle is our own choice, and the page says which point is used.
 */
export function chartPoint(
  chart: ChartName,
  size: string,
  measure: BodyMeasure,
  point: ChartPoint = 'middle',
): number {
  const { low, high } = chartRange(chart, size, measure);
  const at = { lower: low, middle: (low + high) / 2, upper: high };
  return at[known(point, chartPoints, 'point of a range')];
}

/** The word where it is one of those there are; else a sentence that names them. */
function known<Word extends string>(word: Word, words: readonly Word[], what: string): Word {
  if (words.includes(word)) return word;
  throw new CraftError('not-charted', 'There is no {what} called {word}: there are {words}.', {
    what,
    word: formatNumber(word),
    words: words.join(', '),
  });
}
