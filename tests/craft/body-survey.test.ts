import { describe, expect, test } from 'vitest';
import {
  bodySurvey,
  howSurveyed,
  surveyed,
  surveyedMeasures,
  surveyedPercentiles,
  surveyedSamples,
  surveySource,
} from '../../src/craft/body-survey';
import { CraftError } from '../../src/craft/craft-error';

test('95 of 100 women have a hand of no more than 20.2 cm and a head of no more than 59.7', () => {
  expect(surveyed('women', 'hand', 95)).toBe(20.2);
  expect(surveyed('women', 'head', 95)).toBe(59.7);
});

test('every second man has a head of more than 57.4 cm, and 5 of 100 a wrist of less than 16.2', () => {
  expect(surveyed('men', 'head', 50)).toBe(57.4);
  expect(surveyed('men', 'wrist', 5)).toBe(16.2);
});

const all = surveyedSamples.flatMap((sample) =>
  surveyedMeasures.map((measure) => [sample, measure] as const),
);

describe.each(all)('of %s, %s', (sample, measure) => {
  const { mean, sd, p5, p50, p95 } = bodySurvey[sample][measure];

  test('the percentiles rise and hold the mean between them', () => {
    expect(p5).toBeLessThan(p50);
    expect(p50).toBeLessThan(p95);
    expect(Math.abs(mean - p50)).toBeLessThan(0.12 * sd);
  });

  // Bodies are spread nearly as the normal distribution is, whose 5th and 95th percentiles lie 1.645 standard
  // deviations from the mean: a mistyped digit shows at once.
  test('the 5th and the 95th percentile lie about 1.645 standard deviations from the mean', () => {
    expect((mean - p5) / sd).toBeGreaterThan(1.35);
    expect((mean - p5) / sd).toBeLessThan(1.75);
    expect((p95 - mean) / sd).toBeGreaterThan(1.6);
    expect((p95 - mean) / sd).toBeLessThan(1.95);
  });
});

// ANSUR (US Army, 1988; Natick/TR-89/044), the survey before: means in cm, typed from memory.
test.each([
  ['women', 'hand', 18.62],
  ['men', 'hand', 21.38],
  ['women', 'head', 54.62],
  ['men', 'head', 56.77],
] as const)('of %s, the mean %s is within 3 %% of the survey of 1988', (sample, measure, earlier) => {
  expect(Math.abs(bodySurvey[sample][measure].mean / earlier - 1)).toBeLessThan(0.03);
});

// Medians in cm of the measures a body chart means, of the same bodies. Spine to wrist with the arm down is from the
// survey of 2012; the others from that of 1988 (Natick/TR-89/044), carried over to the bodies of 2012 by regression
// on their other measures, our own calculation from the public-domain data of both.
test.each([
  ['women', 'waistAtNavel', 76.4],
  ['men', 'waistAtNavel', 90.2],
  ['women', 'backToNavel', 36.6],
  ['men', 'backToNavel', 41.5],
  ['women', 'upperArmFlexed', 30.6],
  ['men', 'upperArmFlexed', 35.3],
  ['women', 'spineToWristBent', 73.5],
  ['men', 'spineToWristBent', 81.4],
] as const)('of %s, %s is more than the chart’s measure by what its note says', (sample, measure, charts) => {
  const [least, most] = howSurveyed[measure].more![sample];
  const more = bodySurvey[sample][measure].p50 - charts;
  expect(more).toBeGreaterThanOrEqual(least);
  expect(more).toBeLessThanOrEqual(most);
});

test('on the same women of 1988 the flexed arm read less than the relaxed one at the armpit', () => {
  // Means of Natick/TR-89/044: relaxed at the armpit 29.2 cm, flexed 28.1 cm.
  const [least, most] = howSurveyed.upperArmFlexed.more!.women;
  expect(28.1 - 29.2).toBeGreaterThanOrEqual(least);
  expect(28.1 - 29.2).toBeLessThanOrEqual(most);
  expect(howSurveyed.upperArmFlexed.caution).toContain('28.1 cm flexed and 29.2 cm relaxed');
});

test('no measure has the name of a chart’s unless it is that measure', () => {
  for (const name of ['waist', 'backWaistLength', 'neckToWrist', 'upperArm']) {
    expect(surveyedMeasures).not.toContain(name);
  }
  expect(howSurveyed.head.caution).toMatch(/[Bb]raided/);
});

test('what was not surveyed is refused with what was: no children, no 99th percentile, no ankle', () => {
  const refused = (...wanted: unknown[]): string => {
    try {
      surveyed(...(wanted as Parameters<typeof surveyed>));
    } catch (error) {
      expect(error).toBeInstanceOf(CraftError);
      return (error as CraftError).message;
    }
    throw new Error('it was not refused');
  };
  expect(refused('child', 'head', 50)).toBe(
    'The survey measured women and men, not "child"; for a child, measure the child or follow a children\'s chart.',
  );
  expect(refused('women', 'head', 99)).toBe('The survey has no percentile 99 here: there are 5, 50, 95.');
  expect(refused('men', 'ankle', 50)).toMatch(/no measure "ankle" here: there are head, neckBase/);
  expect(surveyedPercentiles).toEqual([5, 50, 95]);
});

test('its source says whose bodies it measured', () => {
  expect(surveySource).toMatch(/ANSUR II.*2012.*TR-15\/007.*public domain.*no children/);
});
