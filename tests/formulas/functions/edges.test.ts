import { describe, expect, test } from 'vitest';
import type { EdgeStretch } from '../../../src/craft';
import { plain, rows, stitches } from '../../../src/formulas/units';
import { readEdge } from '../../../src/formulas/edge-text';
import { valueOf } from '../../engine/worked';
import { refuses, swatches, works } from './cases';

// 20 stitches and 26 rows to 4 in: Kelbourne Woolens, 'Perfectly picked up stitches', 2015, where it is 10 of 13.
const gauges = 'GAUGE(ROWS(26); IN(4)); GAUGE(STS(20); IN(4))';

describe('picking up along row ends', () => {
  works([
    // 16 rows and 14 stitches to 10 cm: 7 stitches along every 8 row ends.
    ['PICKUPSTITCHES(GAUGE(ROWS(16); CM(10)); GAUGE(STS(14); CM(10)))', stitches, 7],
    ['PICKUPROWS(GAUGE(ROWS(16); CM(10)); GAUGE(STS(14); CM(10)))', rows, 8],
    ['PICKUPOFF(GAUGE(ROWS(16); CM(10)); GAUGE(STS(14); CM(10)))', plain, 0],
    // 10 of 13 is more than 8 rows: 3 of 4 is 0.75 where 0.76923 is exact, 2.5 % too few.
    [`PICKUPSTITCHES(${gauges})`, stitches, 3],
    [`PICKUPOFF(${gauges})`, plain, -0.025],
    [`PICKUPCONVENTION("stockinette"; ${gauges})`, plain, -0.025],
    // 1 for each row, where 4 for 3 are asked: a quarter too few.
    ['PICKUPCONVENTION("single crochet"; body_rows; sleeve_fabric_sts)', plain, -0.25],
    // Kelbourne Woolens, as above: 3 of 4, 3 of 4, 4 of 5.
    ['PICKUP(ROWS(13); STS(10))', 'text', '3 of 4 × 2, 4 of 5'],
    // Men Who Knit community thread 'Picking Up Stitches': 80 stitches over 120 rows.
    ['PICKUP(ROWS(120); STS(80))', 'text', '2 of 3 × 40'],
    ['PICKUP(ROWS(26); STS(20))', 'text', '(3 of 4 × 2, 4 of 5) × 2'],
    ['PICKUP(ROWS(12); STS(3))', 'text', '1 of 4 × 3'],
    ['PICKUP(ROWS(3); STS(4))', 'text', '1 in 1 × 2, 2 in 1'],
  ]);
});

describe('an edge of several stretches', () => {
  // 30 × 3 ÷ 4 is 22.5, twice, and 25: 70 in all, which is 4 × 17 + 2.
  const neck =
    'EDGEROWS(ROWS(30); STS(3); ROWS(4)); EDGESTITCHES(STS(25)); EDGEROWS(ROWS(30); STS(3); ROWS(4))';
  works([
    [`PICKUPUNFITTED(${neck})`, stitches, 70],
    [`PICKUPEDGE(4; 2; "nearest"; ${neck})`, stitches, 70],
    [`PICKUPEDGE(8; 3; "up"; ${neck})`, stitches, 75],
    // The odd half goes to the first of two that are owed as much.
    [`PICKUPSHARE(1; 4; 2; "nearest"; ${neck})`, stitches, 23],
    [`PICKUPSHARE(2; 4; 2; "nearest"; ${neck})`, stitches, 25],
    [`PICKUPSHARE(3; 4; 2; "nearest"; ${neck})`, stitches, 22],
    // 6 × 9 and 18 × 1.4 are 79.2; of 78 and 82 the former is nearer.
    ['PICKUPUNFITTED(EDGEMOTIFS(6; STS(9)); EDGECURVE(CM(18); body_sts))', stitches, 79.2],
    ['PICKUPEDGE(4; 2; "nearest"; EDGEMOTIFS(6; STS(9)); EDGECURVE(CM(18); body_sts))', stitches, 78],
  ]);

  test.each<[string, EdgeStretch]>([
    ['EDGEROWS(ROWS(30); STS(3); ROWS(4))', { kind: 'rows', rows: 30, pick: 3, of: 4 }],
    ['EDGESTITCHES(STS(25))', { kind: 'stitches', count: 25 }],
    ['EDGEMOTIFS(6; STS(9))', { kind: 'motifs', motifs: 6, each: 9 }],
    ['EDGECURVE(CM(18); body_sts)', { kind: 'curve', length: 18, stitchesPerCm: 1.4 }],
  ])('%s stands in the sheet as what it is', async (text, stretch) => {
    expect(readEdge((await valueOf(text, ...swatches)) as string)).toEqual(stretch);
  });
});

describe('ribs, buttonholes and joins', () => {
  works([
    // 92 × 1.2 is 110.4 rows, and 91.5 × 1.2 is 109.8.
    ['SIDEWAYSRIB(CM(92); body_rows)', rows, 110],
    ['SIDEWAYSRIB(CM(92); body_rows; "up")', rows, 112],
    ['SIDEWAYSRIB(CM(91.5); body_rows; "down")', rows, 108],
    // 80 − 2 × 3 − 5 × 3 leave 59 for 4 gaps: 15, 15, 14, 15.
    ['BUTTONHOLES(STS(80); STS(3); 5; STS(3))', 'text', '4, 22, 40, 57, 75'],
    ['BUTTONHOLES(ROWS(80); ROWS(3); 5; 3)', 'text', '4, 22, 40, 57, 75'],
    // 48 rows at 2 for every 3 are 32 on each side; 31 at 3 for 4 are 23.
    ['JOINARMHOLE(ROWS(48); STS(2); ROWS(3); STS(10); STS(0))', stitches, 74],
    ['JOINARMHOLE(ROWS(31); STS(3); ROWS(4); STS(8); STS(2))', stitches, 56],
    // 56 stitches at 1.4 to the cm are 40 cm, a ninth more than 36.
    ['ARMHOLEFIT(STS(56); body_sts; CM(36))', plain, 1 / 9],
    ['JOINS(STS(21); STS(21))', 'truth', true],
    ['JOINS(STS(21); STS(19))', 'truth', false],
    ['JOINS(ROWS(21); ROWS(21); ROWS(20))', 'truth', false],
    ['JOINS(STS(45 * 1.4); 63)', 'truth', true],
  ]);
});

describe('an edge that cannot be picked up', () => {
  const edge = 'EDGESTITCHES(STS(25))';
  refuses([
    ['PICKUPOFF(body_rows * 0; body_sts)', 'has to be more than 0'],
    ['PICKUPCONVENTION("felt"; body_rows; body_sts)', 'it is "felt"'],
    ['PICKUP(ROWS(13.5); STS(10))', 'has to be a whole number'],
    ['PICKUPEDGE(4; 2; "sideways"; EDGESTITCHES(STS(25)))', 'The rule for fitting'],
    [
      'PICKUPUNFITTED(EDGESTITCHES(STS(2.5)))',
      'The number of stitch tops of stretch 1 has to be a whole number',
    ],
    ['PICKUPUNFITTED(EDGESTITCHES(STS(0)))', 'The edge takes no stitch'],
    [`PICKUPUNFITTED(${edge}; EDGEROWS(ROWS(4); STS(3); ROWS(0)))`, 'on stretch 2 has to be 1 or more'],
    [`PICKUPUNFITTED(EDGEMOTIFS(1.5; STS(3)))`, 'The number of motifs of stretch 1'],
    ['PICKUPUNFITTED(EDGECURVE(CM(-3); body_sts))', 'The length of stretch 1 has to be 0 or more'],
    [
      `PICKUPSHARE(2; 1; 0; "nearest"; ${edge})`,
      'There is 1 stretch of this edge, counted from 1: there is no number 2',
    ],
    [`PICKUPSHARE(3; 1; 0; "nearest"; ${edge}; ${edge})`, 'There are 2 stretches of this edge'],
    ['SIDEWAYSRIB(CM(0); body_rows)', 'The length of the edge has to be more than 0'],
    ['SIDEWAYSRIB(CM(90); body_rows; "over")', 'it is "over"'],
    ['BUTTONHOLES(STS(20); STS(3); 5; STS(3))', '3 buttonholes would fit'],
    ['JOINARMHOLE(ROWS(0); STS(2); ROWS(3); STS(0); STS(0))', 'no stitches to join'],
    ['ARMHOLEFIT(STS(0); body_sts; CM(36))', 'The stitches of the sleeve has to be 1 or more'],
    ['JOINS(STS(20.5); STS(20))', 'The count of side 1 in the join has to be a whole number'],
  ]);
});
