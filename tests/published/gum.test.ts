import { describe, expect, test } from 'vitest';
import { gaugeOf, t95 } from '../../src/craft';

/*
 * Source: JCGM 100:2008 (GUM), 4.3.7: a quantity known to lie within ±a, any value in it as likely, has the standard
 * uncertainty a / √3.
 */
test('GUM 4.3.7: a count within half a stitch either way has a standard uncertainty of 0.28867513459 stitches', () => {
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
