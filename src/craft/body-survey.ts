import { CraftError } from './craft-error';
import { numberParam } from './message-parts';

/** What the survey measured, all in cm. Those that are not what the trade means have names of their own: see `howSurveyed`. */
export const surveyedMeasures = [
  'head',
  'neckBase',
  'shoulderWidth',
  'acrossBack',
  'bust',
  'waistAtNavel',
  'hips',
  'backToNavel',
  'upperArmFlexed',
  'spineToWristBent',
  'wrist',
  'hand',
  'stature',
] as const;
export type SurveyedMeasure = (typeof surveyedMeasures)[number];

export const surveyedSamples = ['women', 'men'] as const;
export type Sample = (typeof surveyedSamples)[number];

/** So many of a hundred measure no more than this. */
export const surveyedPercentiles = [5, 50, 95] as const;
export type SurveyedPercentile = (typeof surveyedPercentiles)[number];

/** One measure over a sample, in cm: the mean, the standard deviation, and three percentiles. */
export interface Surveyed {
  readonly mean: number;
  readonly sd: number;
  readonly p5: number;
  readonly p50: number;
  readonly p95: number;
}

/** Said wherever a number of the survey is shown. */
export const surveySource =
  'ANSUR II, the US Army’s survey of 1986 women and 4082 men (2012, Natick/TR-15/007; public domain). Soldiers: younger and fitter than most wearers, and no children';

/** How a measure was taken, and how that differs from the measurement a body chart means. */
export interface HowSurveyed {
  readonly taken: string;
  /** A sentence to be shown beside its numbers, where they are not what a maker's tape would read. */
  readonly caution?: string;
  /** The least and the most cm by which it exceeds the chart's measurement; below 0 where it is less. */
  readonly more?: Readonly<Record<Sample, readonly [number, number]>>;
}

/**
 * How each measure of the survey was taken. Its measurer's handbook (Natick/TR-11/017) says how; the differences come
 * from the survey of 1988 (Natick/TR-89/044), which took both measures of the same people, and, where only that survey
 * took the chart's measure, from carrying it over to the bodies of 2012.
 */
export const howSurveyed: Readonly<Record<SurveyedMeasure, HowSurveyed>> = {
  head: {
    taken: 'the largest round, above the ears and brows',
    caution: 'Braided and pinned-up hair was measured with the head, so women’s heads come out large.',
  },
  neckBase: { taken: 'round the base of the neck' },
  shoulderWidth: {
    taken: 'straight between the shoulder bones, with calipers',
    caution: 'A tape across the back reads 1 to 2 cm more.',
    more: { women: [-2, -1], men: [-2, -1] },
  },
  acrossBack: { taken: 'by tape between the folds at the back of the armpits' },
  bust: { taken: 'the largest level round, arms down' },
  waistAtNavel: {
    taken: 'level round at the navel',
    caution: 'The natural waist is 7 to 9 cm less on women, and 2 to 4 cm less on men.',
    more: { women: [7, 9], men: [2, 4] },
  },
  hips: { taken: 'level round at the fullest point of the seat' },
  backToNavel: {
    taken: 'down the spine from the nape to the level of the navel',
    caution: 'To the natural waist it is about 6 cm less.',
    more: { women: [5, 7], men: [5, 7] },
  },
  upperArmFlexed: {
    taken: 'round the biceps, arm raised and fist clenched',
    caution:
      'Not more than the relaxed arm at the armpit: on the same women the survey of 1988 read 28.1 cm flexed and 29.2 cm relaxed; men’s read much the same.',
    more: { women: [-1.2, 0], men: [-0.5, 0.5] },
  },
  spineToWristBent: {
    taken: 'from the spine over the tip of the bent, raised elbow to the wrist',
    caution: 'With the arm down it is 7 to 8 cm less.',
    more: { women: [6.5, 8.5], men: [6.5, 8.5] },
  },
  wrist: { taken: 'round over the wrist bone' },
  hand: {
    taken: 'round the knuckles, without the thumb',
    caution: 'The thumb was not measured with it: a cuff has to pass the thumb too.',
  },
  stature: { taken: 'without shoes' },
};

/**
 * Body measurements of the survey ANSUR II in cm, worked out from its public-domain data (US Army, 2012; Gordon et
 * al., Natick/TR-15/007): women and men apart. Soldiers are younger and fitter than most wearers; there are no children
 * among them. Not every measure is the one that a body chart means: `howSurveyed` says how each was taken. A person's
 * own measurement wins.
 */
export const bodySurvey: Readonly<Record<Sample, Readonly<Record<SurveyedMeasure, Surveyed>>>> = {
  women: {
    head: { mean: 56.11, sd: 1.94, p5: 53.2, p50: 56.0, p95: 59.7 },
    neckBase: { mean: 37.12, sd: 1.97, p5: 34.0, p50: 37.0, p95: 40.5 },
    shoulderWidth: { mean: 36.53, sd: 1.83, p5: 33.5, p50: 36.5, p95: 39.6 },
    acrossBack: { mean: 37.34, sd: 2.98, p5: 32.6, p50: 37.3, p95: 42.3 },
    bust: { mean: 94.69, sd: 8.27, p5: 82.4, p50: 94.0, p95: 109.4 },
    waistAtNavel: { mean: 86.09, sd: 9.99, p5: 71.0, p50: 85.2, p95: 104.0 },
    hips: { mean: 102.12, sd: 7.59, p5: 90.1, p50: 101.8, p95: 115.6 },
    backToNavel: { mean: 42.54, sd: 2.64, p5: 38.4, p50: 42.4, p95: 47.0 },
    upperArmFlexed: { mean: 30.56, sd: 3.08, p5: 25.9, p50: 30.4, p95: 36.0 },
    spineToWristBent: { mean: 80.67, sd: 3.79, p5: 74.6, p50: 80.5, p95: 87.0 },
    wrist: { mean: 15.48, sd: 0.78, p5: 14.2, p50: 15.4, p95: 16.8 },
    hand: { mean: 18.66, sd: 0.88, p5: 17.3, p50: 18.7, p95: 20.2 },
    stature: { mean: 162.85, sd: 6.42, p5: 152.5, p50: 162.6, p95: 174.0 },
  },
  men: {
    head: { mean: 57.44, sd: 1.6, p5: 54.8, p50: 57.4, p95: 60.1 },
    neckBase: { mean: 43.46, sd: 2.57, p5: 39.5, p50: 43.3, p95: 47.9 },
    shoulderWidth: { mean: 41.57, sd: 1.92, p5: 38.4, p50: 41.5, p95: 44.7 },
    acrossBack: { mean: 43.09, sd: 3.52, p5: 37.4, p50: 43.0, p95: 49.1 },
    bust: { mean: 105.87, sd: 8.74, p5: 92.2, p50: 105.6, p95: 120.7 },
    waistAtNavel: { mean: 94.06, sd: 11.17, p5: 76.8, p50: 93.7, p95: 113.1 },
    hips: { mean: 101.95, sd: 7.67, p5: 89.9, p50: 101.7, p95: 114.9 },
    backToNavel: { mean: 47.76, sd: 2.77, p5: 43.3, p50: 47.7, p95: 52.4 },
    upperArmFlexed: { mean: 35.81, sd: 3.46, p5: 30.3, p50: 35.7, p95: 41.8 },
    spineToWristBent: { mean: 89.58, sd: 4.02, p5: 83.1, p50: 89.5, p95: 96.3 },
    wrist: { mean: 17.59, sd: 0.9, p5: 16.2, p50: 17.6, p95: 19.1 },
    hand: { mean: 21.23, sd: 1.02, p5: 19.5, p50: 21.2, p95: 23.0 },
    stature: { mean: 175.62, sd: 6.86, p5: 164.8, p50: 175.5, p95: 187.0 },
  },
};

/**
 * What so many of a hundred of a sample measure no more than, in cm.
 *
 * An opening that passes the 95th percentile passes 95 of 100; one made for the 50th is too small for every second.
 *
 * @param sample 'women' or 'men'; children were not surveyed
 * @param measure 'head', 'hand', 'wrist' … as in `surveyedMeasures`
 * @param percentile 5, 50 or 95
 * @throws CraftError where there is no such sample, measure or percentile, naming those there are
 * @example
 * surveyed('women', 'hand', 95) // 20.2
 * surveyed('men', 'head', 50)   // 57.4
 *
 * Source: ANSUR II (US Army, 2012; Natick/TR-15/007), public domain.
 */
export function surveyed(sample: Sample, measure: SurveyedMeasure, percentile: SurveyedPercentile): number {
  if (!surveyedSamples.includes(sample)) {
    throw new CraftError(
      'not-surveyed',
      "The survey measured women and men, not {sample}; for a child, measure the child or follow a children's chart.",
      { sample: numberParam(sample) },
    );
  }
  const figures = bodySurvey[sample][known(measure, surveyedMeasures, 'measure')];
  const at = { 5: figures.p5, 50: figures.p50, 95: figures.p95 };
  return at[known(percentile, surveyedPercentiles, 'percentile')];
}

function known<One extends string | number>(one: One, those: readonly One[], what: string): One {
  if (those.includes(one)) return one;
  throw new CraftError('not-surveyed', 'The survey has no {what} {one} here: there are {those}.', {
    what,
    one: numberParam(one),
    those: those.join(', '),
  });
}
