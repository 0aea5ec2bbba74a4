import { describe, expect, test } from 'vitest';
import {
  chanceWithin,
  combineUncertainty,
  gaugeOf,
  neighbourChance,
  t95,
  widthUncertainty,
  withinLimits,
} from '../../src/craft';

/*
 * Source: JCGM 100:2008 (GUM), 4.3.7: a quantity known to lie within ±a, any value in it as likely, has the standard
 * uncertainty a / √3.
 */
test('GUM 4.3.7: a count within half a stitch either way has a standard uncertainty of 0.28867513459 stitches', () => {
  expect(withinLimits(0.5)).toBeCloseTo(0.28867513459, 11);
  expect(gaugeOf([{ count: 14, over: 1 }]).u).toBeCloseTo(0.28867513459, 11);
  expect(gaugeOf([{ count: 14, over: 10 }]).u * 10).toBeCloseTo(0.28867513459, 11);
});

/* Source: JCGM 100:2008 (GUM), table G.2, the column for 95 %; typed from memory. */
describe('GUM table G.2, 95 %', () => {
  test.each([
    [1, 12.71],
    [2, 4.3],
    [3, 3.18],
    [4, 2.78],
    [5, 2.57],
    [6, 2.45],
    [7, 2.36],
    [8, 2.31],
    [9, 2.26],
    [10, 2.23],
    [11, 2.2],
    [12, 2.18],
    [13, 2.16],
    [14, 2.14],
    [15, 2.13],
    [16, 2.12],
    [17, 2.11],
    [18, 2.1],
    [19, 2.09],
    [20, 2.09],
    [25, 2.06],
    [30, 2.04],
    [35, 2.03],
    [40, 2.02],
    [45, 2.01],
    [50, 2.01],
  ])('%s degrees of freedom have the factor %s', (dof, factor) => {
    expect(Math.abs(t95(dof) - factor)).toBeLessThanOrEqual(0.005);
  });

  test('100 degrees of freedom have 1.984, and endlessly many 1.960', () => {
    expect(t95(100)).toBeCloseTo(1.984, 3);
    expect(t95(Infinity)).toBeCloseTo(1.96, 3);
  });
});

/* Source: JCGM 100:2008 (GUM), table G.1: the part of a normal distribution within ± k · u; typed from memory. */
describe('GUM table G.1', () => {
  test.each([
    [68.27, 1],
    [90, 1.645],
    [95, 1.96],
    [95.45, 2],
    [99, 2.576],
    [99.73, 3],
  ])('%s %% lie within %s standard uncertainties', (percent, k) => {
    expect(100 * chanceWithin(k, Infinity)).toBeCloseTo(percent, 1);
    // A count fitted to 10 stays 10 while the target is within half a stitch of it.
    const wanted = { target: 10, u: 0.5 / k, dof: Infinity, repeats: [], rule: 'nearest' as const };
    const { lower, higher, chance } = neighbourChance(wanted);
    expect(100 * (1 - chance)).toBeCloseTo(percent, 1);
    expect(lower).toBeCloseTo(higher, 12);
  });
});

/*
 * Source: JCGM 100:2008 (GUM), G.4.1, the example: y = f(X1, X2, X3) = b·X1·X2·X3 from 10, 5 and 15 readings whose
 * relative standard uncertainties are 0.25 %, 0.57 % and 0.82 %; from memory.
 */
test('GUM G.4.1: three factors of 10, 5 and 15 readings have 19.0 effective degrees of freedom, and ± 2.2 %', () => {
  const found = combineUncertainty([
    { u: 0.25, dof: 9 },
    { u: 0.57, dof: 4 },
    { u: 0.82, dof: 14 },
  ]);
  expect(found.u).toBeCloseTo(1.03, 2);
  expect(found.dof).toBeCloseTo(19.0, 1);
  expect(t95(19)).toBeCloseTo(2.09, 2);
  expect(found.expanded).toBeCloseTo(2.2, 1);
});

/*
 * Source: JCGM 100:2008 (GUM), H.1, calibration of an end gauge: the four components of table H.1, in nm, with 18, 25.6,
 * 50 and 2 degrees of freedom; from memory. GUM rounds u to 32 nm before it gives 16.7.
 */
test('GUM H.1.6: the length of an end gauge has u = 32 nm with about 16.7 degrees of freedom', () => {
  const found = combineUncertainty([
    { u: 25, dof: 18 },
    { u: 9.7, dof: 25.6 },
    { u: 2.9, dof: 50 },
    { u: 16.6, dof: 2 },
  ]);
  expect(Math.round(found.u)).toBe(32);
  expect(Math.abs(found.dof - 16.7)).toBeLessThan(0.2);
});

/* Source: JCGM 100:2008 (GUM), 4.3.7 and 5.1.2: y = N / g has |∂y/∂g| = N / g². */
test('GUM 5.1.2: a width of N stitches has u = N · u(g) / g²', () => {
  const gauge = gaugeOf([{ count: 14, over: 10 }]);
  expect(widthUncertainty({ count: 146, gauge }).u).toBeCloseTo(
    (146 * 0.5) / Math.sqrt(3) / 10 / 1.4 ** 2,
    12,
  );
});
