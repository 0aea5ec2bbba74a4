import { describe, expect, test } from 'vitest';
import { plain, rowGauge, rows, stitchGauge, stitches } from '../../../src/formulas/units';
import { pairs } from '../../../src/formulas/functions/pairs.evaluate';
import { refuses, works } from './cases';

describe('counts and gauges', () => {
  works([
    ['STS(2) + STS(3)', stitches, 5],
    ['ROWS(6) * 2', rows, 12],
    // 14 stitches over 10 cm is 1.4 to the cm; two readings are pooled, all counts over all lengths.
    ['GAUGE(STS(14); CM(10))', stitchGauge, 1.4],
    ['GAUGE(STS(14); CM(10); STS(29); CM(20))', stitchGauge, 43 / 30],
    ['GAUGE(ROWS(16); IN(4)) * IN(4)', rows, 16],
    // Gauge goes as 1 over the hook: 1.4 × 6 ÷ 7.
    ['GUESSGAUGE(body_sts; MM(6); MM(7))', stitchGauge, 1.2],
    ['GUESSGAUGE(body_rows; MM(6); MM(8))', rowGauge, 0.9],
  ]);
});

describe('a count that a repeat allows', () => {
  works([
    // A multiple of 8 plus 3: 67, 75, 83.
    ['FITREPEAT(STS(77.2); 8; 3)', stitches, 75],
    ['FITREPEAT(STS(77.2); 8; 3; "up")', stitches, 83],
    ['FITREPEAT(STS(77.2); 8; 3; "down")', stitches, 75],
    ['FITREPEAT(STS(79); 8; 3; "nearest")', stitches, 83],
    ['FITREPEAT(STS(70); 8; -1)', stitches, 71],
    ['ROUNDCOUNT(STS(67.2))', stitches, 67],
    ['ROUNDCOUNT(STS(67.2); "nearest")', stitches, 67],
    ['ROUNDCOUNT(ROWS(67.2); "up")', rows, 68],
    ['ROUNDCOUNT(STS(67.8); "down")', stitches, 67],
    ['ROUNDCOUNT(STS(67.2); "even")', stitches, 68],
    ['ROUNDCOUNT(STS(66.2); "odd")', stitches, 67],
    // 159.6 stitches with bands of 11.2: 75 + 2 × 35 + 11.2 = 156.2 is nearest, 75 against 81.2 the most alike.
    ['FITTOGETHER(1; CM(114) * body_sts; 2 * CM(4) * body_sts; 1; 8; 3; 2; 8; 3)', stitches, 75],
    ['FITTOGETHER(2; CM(114) * body_sts; 2 * CM(4) * body_sts; 1; 8; 3; 2; 8; 3)', stitches, 35],
    // 67 + 2 × 27 = 121 is nearest to 124, but a back of 67 would lose a repeat in the next size.
    ['FITTOGETHER(1; STS(124); STS(0); 1; 8; 3; 2; 8; 3)', stitches, 67],
    ['FITTOGETHER(1; STS(124); STS(0); 1; 8; 3; 2; 8; 3; "growing")', stitches, 59],
    // 61 + 2 × 31, with 2 more edge stitches on the back (8 × 7 + 3 + 2) and 4 more on each front (8 × 3 + 3 + 4).
    ['FITTOGETHER(1; STS(123); STS(0); 1; 8; 3; 2; 8; 3; "nearest"; STS(4))', stitches, 61],
    ['FITTOGETHER(2; STS(123); STS(0); 1; 8; 3; 2; 8; 3; "nearest"; STS(4))', stitches, 31],
    // Sunzi's problem (Sunzi Suanjing, 3rd to 5th century): by threes 2 are left, by fives 3, by sevens 2.
    ['FITREPEATS(1; "up"; "any"; 3; 2; 5; 3; 7; 2)', plain, 23],
    // Multiples of 8 plus 3 that are multiples of 6 plus 1 too: 19, 43, 67, 91.
    ['FITREPEATS(STS(77.2); "nearest"; "any"; 8; 3; 6; 1)', stitches, 67],
    ['FITREPEATS(STS(77.2); "up"; "odd"; 8; 3; 6; 1)', stitches, 91],
    // Multiples of 5 that are even: 70, 80.
    ['FITREPEATS(ROWS(76); "down"; "even"; 5; 0)', rows, 70],
    // A chain of 76 is 9 × 8 + 4, and its row has 75 stitches.
    ['FITCHAIN(STS(77.2); 8; 4; "nearest"; STS(1); "does not count")', stitches, 75],
    ['FOUNDATIONCHAIN(STS(75); STS(1); "does not count")', stitches, 76],
    // With 3 chains that count as a stitch the row of 75 stands on 77, which is 9 × 8 + 5.
    ['FITCHAIN(STS(77.2); 8; 5; "nearest"; STS(3); "counts")', stitches, 75],
    ['FOUNDATIONCHAIN(STS(75); STS(3); "counts")', stitches, 77],
    // A chain of 2 would leave no stitch: the first that leaves one is 4.
    ['FITCHAIN(STS(0); 2; 0; "nearest"; STS(3); "does not count")', stitches, 1],
  ]);
});

describe('motifs set in plain fabric', () => {
  const motifs = 'STS(80); STS(10); STS(2); STS(4); STS(1)';
  works([
    // 6 × 10 + 5 × 4 + 2 is 82; 6 × 10 + 5 × 3 + 2 is 77; 7 × 10 + 6 × 2 + 2 is 84.
    [`FITMOTIFS(${motifs}; "flat")`, stitches, 82],
    [`MOTIFS(${motifs}; "flat")`, plain, 6],
    [`MOTIFGAP(${motifs}; "flat")`, stitches, 4],
    [`FITMOTIFS(${motifs}; "flat"; 2)`, stitches, 77],
    [`MOTIFGAP(${motifs}; "flat"; 2)`, stitches, 3],
    [`MOTIFS(${motifs}; "flat"; 3)`, plain, 7],
    // Round, 6 × (10 + 3) is 78 and 6 × (10 + 4) is 84.
    [`FITMOTIFS(${motifs}; "round")`, stitches, 78],
    // 5 gaps lose a stitch each from 82; round 6 from 84.
    ['NARROWMOTIFS(6; STS(10); STS(4); STS(2); STS(1); "flat")', stitches, 77],
    ['NARROWMOTIFS(6; STS(10); STS(4); STS(2); STS(0); "round")', stitches, 78],
  ]);
});

describe('a count that cannot be found', () => {
  refuses([
    ['GAUGE(STS(0); CM(10))', 'has to be more than 0'],
    ['GUESSGAUGE(body_sts; MM(0); MM(5))', 'The hook of the swatch has to be more than 0'],
    ['FABRIC(body_sts * 0; body_rows)', 'has to be more than 0'],
    ['FABRIC(body_sts; body_rows; CM(1); CM(0))', 'The height of a row has to be more than 0'],
    ['FITREPEAT(STS(5); 8; 3; "down")', 'No allowed count is as small as 5'],
    ['FITREPEAT(STS(50); 8; 3; "sideways")', 'The rule for fitting has to be "nearest" or "up" or "down"'],
    ['FITREPEAT(STS(50); 2.5; 3)', 'has to be a whole number'],
    ['FITREPEATS(STS(50); "nearest"; "even"; 8; 3)', 'an even count'],
    ['FITREPEATS(STS(50); "nearest"; "any"; 8; 3; 4; 2)', 'a multiple of 4 plus 2'],
    [
      'FITREPEATS(STS(50); "nearest"; "both"; 8; 3)',
      'FITREPEATS takes "any", "odd" or "even"; "both" is none',
    ],
    ['FITREPEATS(STS(50); "nearest"; "any"; 8; 3; 6)', 'in pairs'],
    ['FITTOGETHER(3; STS(124); STS(0); 1; 8; 3; 2; 8; 3)', 'There are 2 halves of a garment'],
    ['FITTOGETHER(1; STS(124); STS(0); 1; 8; 3; 2; 8; 3; "up")', 'has to be "nearest" or "growing"'],
    ['FITTOGETHER(1; STS(124); STS(0); 1; 0; 3; 2; 8; 3)', 'The multiple of a repeat has to be 1 or more'],
    ['FITCHAIN(STS(75); 8; 4; "nearest"; STS(0); "counts")', 'A turning chain of 0 cannot count as a stitch'],
    ['FITCHAIN(STS(75); 8; 4; "nearest"; STS(1); "no")', 'FITCHAIN takes "counts" or "does not count"'],
    ['FOUNDATIONCHAIN(STS(75); STS(1); "constructor")', '"constructor" is none of them'],
    ['ROUNDCOUNT(STS(50); "around")', 'ROUNDCOUNT takes "nearest", "up", "down", "even" or "odd"'],
    ['FITMOTIFS(STS(80); STS(10); STS(4); STS(2); STS(1); "flat")', 'exchange the two'],
    ['MOTIFS(STS(80); STS(10); STS(2); STS(4); STS(1); "sideways")', 'has to be "flat" or "round"'],
    ['MOTIFGAP(STS(80); STS(10); STS(2); STS(4); STS(1); "flat"; 6)', 'There are 5 ways to set these motifs'],
    ['NARROWMOTIFS(6; STS(10); STS(2); STS(2); STS(1); "flat")', 'start with a gap of 3 or more'],
  ]);
});

test('arguments in pairs are refused where the last pair is broken', () => {
  expect(pairs('GAUGE', 'a count and a length', [14, 10, 29, 20])).toEqual([
    [14, 10],
    [29, 20],
  ]);
  expect(() => pairs('GAUGE', 'a count and a length', [14, 10, 29])).toThrow(
    'GAUGE takes a count and a length, in pairs: the last pair is not complete.',
  );
});

describe('numbers that a pattern prints for its sizes', () => {
  works([
    ['STS(STATED(2; 98; 106; 114))', stitches, 106],
    ['CM(STATED(3; 89; 96.5; 103.5))', { length: 1 }, 103.5],
    // 101 cm are 3 from 98 and 5 from 106.
    ['NEARESTSIZE(CM(101) / CM(1); 90; 98; 106)', plain, 2],
    ['SIZENAMED(NEARESTSIZE(101; 90; 98; 106); "S"; "M"; "L")', 'text', 'M'],
  ]);
  refuses([
    ['STATED(4; 98; 106; 114)', 'There are 3 sizes, so there is no number 4'],
    ['STATED(2; 98; -1; 114)', 'prints a dash here'],
    ['SIZENAMED(3; "S"; "M")', 'There are 2 sizes of this pattern'],
  ]);
});
