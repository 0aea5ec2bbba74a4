import { describe } from 'vitest';
import { length, mass, plain } from '../../../src/formulas/units';
import { refuses, works } from './cases';

const swatchArea = 'CM(10) * CM(10)';
const panel = 'CM(75) * CM(100)';

describe('yarn', () => {
  works([
    ['GRAMS(50)', mass, 50],
    // 7500 cm² at 10 g to 100 cm² are 750 g, and a tenth more unless told otherwise.
    [`YARNGRAMS(${panel}; ${swatchArea}; GRAMS(10))`, mass, 825],
    [`YARNGRAMS(${panel}; ${swatchArea}; GRAMS(10); 0)`, mass, 750],
    [`YARNGRAMS(${panel}; ${swatchArea}; GRAMS(10); 20%)`, mass, 900],
    // 750 × 1.1 ÷ 25 is 33.00000000000001 in binary, and 33 balls are enough.
    ['BALLS(GRAMS(750) * 1.1; GRAMS(25))', plain, 33],
    // 130 g and 20 g of one yarn are 3 balls of 50 g; rounded up one by one they would be 4.
    ['BALLS(GRAMS(130) + GRAMS(20); GRAMS(50))', plain, 3],
    // 825 g at 60 m for 25 g are 1980 m; a length in the sheet is cm.
    ['YARNMETRES(GRAMS(825); GRAMS(25); METRES(60))', length, 198_000],
    ['YARNMETRES(GRAMS(100); GRAMS(50); YARDS(110))', length, 220 * 91.44],
    // Craft Yarn Council, Standard Yarn Weight System: 23 to 26 is fine, 21 to 24 light.
    ['YARNWEIGHT(GAUGE(STS(24); IN(4)); "stockinette")', 'text', '2 fine or 3 light'],
    ['YARNWEIGHT(GAUGE(STS(10); IN(4)); "single crochet")', 'text', '5 bulky'],
    ['YARNWEIGHT(GAUGE(STS(40); IN(4)); "single crochet")', 'text', 'none'],
  ]);
});

describe('notions and time', () => {
  works([
    // Sites 2, 6, … 58.
    ['NOTIONS(60; 4; 2)', plain, 15],
    ['NOTIONS(60; 1; 1)', plain, 60],
    // 15 × 30 cm, and a twentieth more.
    ['NOTIONLENGTH(60; 4; 2; CM(30))', length, 450],
    ['NOTIONLENGTH(60; 4; 2; CM(30); 5%)', length, 472.5],
    // 27000 ÷ 15 is 1800 minutes.
    ['WORKHOURS(STS(27000); 15)', plain, 30],
  ]);
});

describe('amounts that cannot be worked', () => {
  refuses([
    [`YARNGRAMS(${panel}; ${swatchArea}; GRAMS(0))`, 'The weight of the swatch has to be more than 0'],
    [`YARNGRAMS(${panel}; ${swatchArea}; GRAMS(10); 10)`, 'write it as a fraction'],
    ['BALLS(GRAMS(-1); GRAMS(50))', 'has to be 0 or more'],
    ['BALLS(GRAMS(100); GRAMS(0))', 'has to be more than 0'],
    ['YARNMETRES(GRAMS(100); GRAMS(50); CM(0))', 'has to be more than 0'],
    [
      'YARNWEIGHT(body_sts; "garter")',
      'YARNWEIGHT takes "stockinette" or "single crochet"; "garter" is none',
    ],
    ['NOTIONS(60; 4; 61)', 'start at site 60 or before'],
    ['NOTIONS(60; 1.5; 1)', 'has to be a whole number'],
    ['NOTIONLENGTH(60; 4; 2; CM(30); 5)', 'write it as a fraction'],
    ['WORKHOURS(STS(100); 0)', 'has to be more than 0'],
  ]);
});
