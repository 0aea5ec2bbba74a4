import { describe } from 'vitest';
import { plain, stitches } from '../../../src/formulas/units';
import { refuses, works } from './cases';

describe('shaping spread across a row', () => {
  works([
    // Magazine how-to 'Decreasing multiple stitches across one row', issuhub.com/view/index/4587, page 76: 30 less 10
    // have 1 plain stitch between decreases.
    ['SPACING(STS(30); STS(20); "round")', 'text', '1 × 10, 0'],
    // cherryblossomlove.com, 'How do you decrease evenly in knitting?': 40 and 4 make sections of 8, 8, 8, 8, 8.
    ['SPACING(STS(40); STS(44); "flat"; "whole")', 'text', '8 × 5'],
    // Half a gap at each end: 5 + (9 + 10) + (9 + 10) + 9 + 9 + 10 + 4 is 75.
    ['SPACING(STS(75); STS(83); "flat")', 'text', '5, (9, 10) × 2, 9 × 2, 10, 4'],
    ['SPACING(STS(30); STS(30); "flat")', 'text', '30'],
    ['SHAPINGS(STS(75); STS(83); "flat"; "half")', plain, 8],
    // Papermoon Knits, 'Math Monday: Decreasing, Part II, across a row/round': 55 to 38.
    ['SHAPINGS(STS(55); STS(38); "round")', plain, 17],
  ]);
});

describe('shaping spread over rows', () => {
  const to = (from: number, count: number, over: number, rest: string) =>
    `TAPEREVERY(STS(${from}); STS(${count}); ROWS(${over}); STS(2); ${rest})`;
  works([
    // 10 shaping rows over 60.
    [to(63, 43, 60, '1; ROWS(0); ROWS(0); "longFirst"'), 'text', 'every 6th row 10 times'],
    // 2 over 11: 6 and 5; the other way round where the shorter comes first.
    [to(10, 6, 11, '1; ROWS(0); ROWS(0); "longFirst"'), 'text', 'every 6th row once, every 5th row once'],
    [to(10, 6, 11, '1; ROWS(0); ROWS(0); "shortFirst"'), 'text', 'every 5th row once, every 6th row once'],
    // 9 rows hold 4 pairs of rows: 2 for each of 2 shapings.
    [to(10, 6, 9, '2; ROWS(0); ROWS(0); "longFirst"'), 'text', 'every 4th row twice'],
    [to(20, 12, 22, '1; ROWS(0); ROWS(0); "spread"'), 'text', '(every 6th row once, every 5th row once) × 2'],
    [to(5, 1, 4, '1; ROWS(1); ROWS(1); "longFirst"'), 'text', 'every row twice'],
    [to(10, 10, 4, '1; ROWS(0); ROWS(0); "longFirst"'), 'text', 'no shaping'],
  ]);
});

describe('gathering, and shaping in each repeat', () => {
  works([
    // Common practice: 3, 2, 1 takes a count to two fifths.
    ['GATHER(STS(100); STS(40); ROWS(3))', 'text', '3 plain: 80; 2 plain: 60; 1 plain: 40'],
    ['GATHERED(STS(100); STS(40); ROWS(3))', stitches, 40],
    ['GATHER(STS(9); STS(5); ROWS(1))', 'text', '0 plain: 5'],
    // 83 stitches with 10 repeats lose a stitch in each.
    ['SHAPEREPEATS(STS(83); 10; STS(-1))', stitches, 73],
  ]);
});

describe('shaping that has no room', () => {
  refuses([
    ['SPACING(STS(30); STS(10); "flat")', 'has room for 15 decreases'],
    ['SPACING(STS(30); STS(20); "diagonally")', 'has to be "flat" or "round"'],
    ['SHAPINGS(STS(30); STS(20); "flat"; "quarter")', 'has to be "half" or "whole"'],
    ['SHAPINGS(STS(30.5); STS(20); "flat")', 'has to be a whole number'],
    ['TAPEREVERY(STS(63); STS(42); ROWS(60); STS(2); 1; ROWS(0); ROWS(0); "spread")', 'end on 43 or 41'],
    ['TAPEREVERY(STS(63); STS(43); ROWS(60); STS(2); 3; ROWS(0); ROWS(0); "spread")', 'on every second (2)'],
    ['TAPEREVERY(STS(63); STS(43); ROWS(60); STS(2); 1; ROWS(0); ROWS(0); "best")', 'it is "best"'],
    ['GATHER(STS(40); STS(100); ROWS(3))', 'increase instead'],
    ['GATHERED(STS(40); STS(10); ROWS(0))', 'The number of rounds has to be 1 or more'],
    ['SHAPEREPEATS(STS(20); 10; STS(-2))', 'at most 1 can go from each'],
  ]);
});
