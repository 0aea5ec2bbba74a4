import { describe } from 'vitest';
import { length, massPerArea, plain, stitches, strain } from '../../../src/formulas/units';
import { refuses, works } from './cases';

const gauge15 = 'GAUGE(STS(15); CM(10))';

describe('lengths are in cm', () => {
  works([
    // An inch is 2.54 cm and a yard 91.44 cm exactly, by the international agreement of 1959.
    ['CM(10)', length, 10],
    ['MM(6.5)', length, 0.65],
    ['METRES(100)', length, 10_000],
    ['IN(4)', length, 10.16],
    ['YARDS(110)', length, 10_058.4],
  ]);
});

describe('what a body gives', () => {
  works([
    ['FINISHED(CM(90); CM(10))', length, 100],
    ['FINISHED(CM(90); CM(-5))', length, 85],
    ['FINISHEDBY(CM(90); 10%)', length, 99],
    ['FINISHEDBY(CM(90); -0.1)', length, 81],
    // Yay For Yarn, "Dotty Pullover": 2 in of ease is a classic fit, after the Craft Yarn Council's bands.
    ['FITNAME(IN(38); IN(2))', 'text', 'classic'],
    ['FITNAME(CM(90); CM(20))', 'text', 'oversized'],
    // 1 in lies between 0 and 2 in, as near to the one as to the other: the roomier is told.
    ['FITNAME(IN(38); IN(1))', 'text', 'nearest to classic'],
    // 74 less half of 50.
    ['DROPSLEEVE(CM(74); CM(50))', length, 49],
    // (47 + 8) ÷ 2 is more than 25.4; (30 + 8) ÷ 2 is less.
    ['ARMHOLEDEPTH(CM(25.4); CM(47); CM(8))', length, 27.5],
    ['ARMHOLEDEPTH(CM(25.4); CM(30); CM(8))', length, 25.4],
    // (104 − 52 − 2 × 3) ÷ 2, and with one band only (104 − 52 − 3) ÷ 2.
    ['FRONTWIDTH(CM(104); CM(52); CM(3); "edge to edge")', length, 23],
    ['FRONTWIDTH(CM(104); CM(52); CM(3); "overlapping")', length, 24.5],
    ['NECKWIDTH(CM(24); CM(2.5))', length, 19],
  ]);
});

describe('what a fabric does to a length', () => {
  works([
    // Two seams take a stitch from each side: 146 of 150 are left, at 1.4 to the cm.
    ['SEAMEDWIDTH(STS(75) + STS(75); 2; STS(1); body_sts)', length, 146 / 1.4],
    ['SEAMSTAKE(2; STS(1); body_sts)', length, 4 / 1.4],
    // A tenth longer under 50 g on 10 cm of width, which is 5 g to the cm: 0.02 for each.
    ['STRAIN(CM(10); CM(11); CM(10); GRAMS(50))', strain, 0.02],
    // Hooke's law: 0.02 × 0.05 × 60² ÷ 2.
    [
      'HANGINGGROWTH(CM(60); STRAIN(CM(10); CM(11); CM(10); GRAMS(50)); GRAMS(5) / (CM(10) * CM(10)))',
      length,
      1.8,
    ],
    [
      'LENGTHTOWORK(CM(60); STRAIN(CM(10); CM(11); CM(10); GRAMS(50)); GRAMS(5) / (CM(10) * CM(10)))',
      length,
      (Math.sqrt(1.12) - 1) / 0.001,
    ],
    ['HANGINGGROWTH(CM(60); 0; 0)', length, 0],
    ['GRAMS(5) / (CM(10) * CM(10))', massPerArea, 0.05],
    // 40 cm at 12 rows to 10 cm are 48 rows, which measure 38.4 cm at 12.5 to 10 cm.
    ['MEASUREWHILEWORKING(CM(40); GAUGE(ROWS(12.5); CM(10)); GAUGE(ROWS(12); CM(10)))', length, 38.4],
    ['MEASUREWHILEWORKING(CM(40); GAUGE(STS(16); CM(10)); GAUGE(STS(14); CM(10)))', length, 35],
    ['STRETCH(CM(10); CM(14))', plain, 1.4],
    // 60 stitches at 1.5 to the cm are 40 cm, which stretch to 56.
    [`OPENING(STS(60); ${gauge15}; 1.4)`, length, 56],
    [`PASSES(STS(60); ${gauge15}; 1.4; CM(57))`, 'truth', false],
    [`PASSES(STS(60); ${gauge15}; 1.4; CM(56))`, 'truth', true],
    // 57 × 1.5 ÷ 1.4 is 61.07.
    [`LEASTTOPASS(${gauge15}; 1.4; CM(57))`, stitches, 62],
  ]);
});

describe('a length that cannot be worked', () => {
  refuses([
    ['FINISHED(CM(90); CM(-95))', 'leaves nothing'],
    ['FITNAME(CM(90); CM(-95))', 'leaves nothing'],
    ['DROPSLEEVE(CM(40); CM(90))', 'no sleeve is left'],
    ['ARMHOLEDEPTH(CM(25); CM(30); CM(-30))', 'leaves no sleeve'],
    ['FRONTWIDTH(CM(104); CM(104); CM(3); "overlapping")', 'leave nothing of 104 cm for the fronts'],
    ['FRONTWIDTH(CM(104); CM(52); CM(3); "zip")', 'has to be "edge to edge" or "overlapping"; it is "zip"'],
    ['NECKWIDTH(CM(4); CM(2))', 'closes a neck of 4 cm'],
    ['SEAMEDWIDTH(STS(4); 2; STS(1); body_sts)', 'take fewer into each seam'],
    ['SEAMEDWIDTH(STS(150); 2.5; STS(1); body_sts)', 'The number of seams has to be a whole number'],
    ['SEAMSTAKE(2; STS(0.5); body_sts)', 'has to be a whole number'],
    ['STRAIN(CM(11); CM(10); CM(10); GRAMS(50))', 'exchange the two'],
    ['LENGTHTOWORK(CM(60); CM(1) / GRAMS(1); GRAMS(1) / (CM(1) * CM(1)))', 'choose a firmer fabric'],
    ['STRETCH(CM(14); CM(10))', 'measure it relaxed first'],
    ['OPENING(STS(60.5); body_sts; 1.4)', 'has to be a whole number'],
    ['PASSES(STS(60); body_sts; 0.5; CM(50))', 'A fabric stretches to 1 time its width or more'],
    ['LEASTTOPASS(body_sts; 1.4; CM(0))', 'has to be more than 0'],
  ]);
});
