import { describe, expect, test } from 'vitest';
import { t95 } from '../../../src/craft';
import { length, plain, rowGauge, rows, stitchGauge, stitches } from '../../../src/formulas/units';
import { refuses, works } from './cases';

/** JCGM 100:2008 (GUM), 4.3.7: half a stitch either way, a rectangle. */
const ofOneReading = 0.5 / Math.sqrt(3);
/** The factor of the normal distribution for 95 %, to the digits of any table. */
const normal = 1.959963984540054;
/** Student's factors for 1 and for 2 degrees of freedom, from their closed forms tan(0.95 π/2) and 0.95 √(2 ÷ (1 − 0.95²)). */
const [t1, t2] = [Math.tan((0.95 * Math.PI) / 2), 0.95 * Math.sqrt(2 / (1 - 0.95 ** 2))];

describe('how sure a gauge is', () => {
  works([
    ['GAUGEUNCERTAINTY(STS(14); CM(10))', stitchGauge, ofOneReading / 10],
    ['GAUGEUNCERTAINTY(ROWS(12); CM(20))', rowGauge, ofOneReading / 20],
    ['GAUGEFREEDOM(STS(14); CM(10))', plain, 1e9],
    // 14 and 15 over 10 cm are half a stitch from their mean: √(2 × 2 × 0.25) ÷ 20.
    ['GAUGEUNCERTAINTY(STS(14); CM(10); STS(15); CM(10))', stitchGauge, 0.05],
    ['GAUGEFREEDOM(STS(14); CM(10); STS(15); CM(10))', plain, 1],
  ]);

  test('a thousand million degrees of freedom are endlessly many, to the eighth digit of the factor', () => {
    expect(Math.abs(t95(1e9) / t95(Infinity) - 1)).toBeLessThan(1e-8);
  });
});

describe('give or take', () => {
  works([
    // 146 × 0.05 ÷ 1.4², with 1.96 of it either way; with two readings 12.7.
    [
      'WIDTHGIVEORTAKE(STS(146); body_sts; GAUGE(STS(0.5); CM(10)); 1000000000)',
      length,
      (normal * 7.3) / 1.96,
    ],
    ['WIDTHGIVEORTAKE(STS(146); body_sts; GAUGE(STS(0.5); CM(10)); 1)', length, (t1 * 7.3) / 1.96],
    ['WIDTHGIVEORTAKE(ROWS(60); body_rows; 0; 1)', length, 0],
    // With an exact gauge only the tape is left.
    ['WIDTHGIVEORTAKE(STS(146); body_sts; 0; 1000000000; CM(0.3))', length, normal * 0.3],
    // 52 × 0.05 from the gauge; and 1.4 × 2 from the width alone.
    ['COUNTGIVEORTAKE(CM(52); 0; body_sts; GAUGE(STS(0.5); CM(10)); 2)', stitches, t2 * 2.6],
    ['COUNTGIVEORTAKE(CM(52); CM(2); body_sts; 0; 1)', stitches, normal * 2.8],
    ['COUNTGIVEORTAKE(CM(52); 0; body_rows; GAUGE(ROWS(0.5); CM(10)); 1000000000)', rows, normal * 2.6],
    // 3 and 4 are 5, in quadrature.
    ['GIVEORTAKE(CM(3); 1000000000; CM(4); 1000000000)', length, normal * 5],
    ['GIVEORTAKE(STS(1); 1)', stitches, t1],
    ['GIVEORTAKE(1; 2)', plain, t2],
    // Welch and Satterthwaite: two equal parts with 1 degree of freedom each have 2 together.
    ['GIVEORTAKE(CM(1); 1; CM(1); 1)', length, t2 * Math.SQRT2],
  ]);
});

describe('the chance of another count', () => {
  works([
    // Half way between 67 and 75 is 71. With 1 degree of freedom the chance beyond x is ½ − arctan(x) ÷ π: below 71 by
    // 1.8 from 72.8, and above 79 by 6.2, each over 1.5.
    [
      'NEXTCOUNTCHANCE(STS(72.8); STS(1.5); 1; 8; 3; "nearest")',
      plain,
      1 - (Math.atan(1.2) + Math.atan(6.2 / 1.5)) / Math.PI,
    ],
    ['NEXTCOUNTCHANCE(ROWS(72.8); 0; 1; 8; 3; "nearest")', plain, 0],
    // On the very border of 71 and 79: an even chance of the one below, and next to none of the one above.
    ['NEXTCOUNTCHANCE(STS(71); STS(0.1); 1000000000; 8; 3; "nearest")', plain, 0.5],
  ]);
});

describe('doubt that cannot be worked', () => {
  refuses([
    ['GAUGEUNCERTAINTY(STS(0); CM(10))', 'has to be more than 0'],
    ['GAUGEFREEDOM(STS(14); CM(-1))', 'has to be more than 0'],
    ['WIDTHGIVEORTAKE(STS(146); body_sts; 0; 0.5)', 'Degrees of freedom are 1 or more'],
    ['WIDTHGIVEORTAKE(STS(14.5); body_sts; 0; 1)', 'The count has to be a whole number'],
    ['COUNTGIVEORTAKE(CM(0); 0; body_sts; 0; 1)', 'The width has to be more than 0'],
    ['GIVEORTAKE(CM(-1); 1)', 'A standard uncertainty is a number, 0 or more'],
    ['NEXTCOUNTCHANCE(STS(72.8); STS(-1); 1; 8; 3; "nearest")', 'has to be 0 or more'],
    ['NEXTCOUNTCHANCE(STS(72.8); STS(1); 1; 8; 3; "about")', 'it is "about"'],
  ]);
});
