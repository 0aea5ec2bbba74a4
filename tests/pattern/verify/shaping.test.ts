import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readShaping } from '../../../src/pattern/verify/shaping';

const every = (...runs: [every: number, times: number][]) =>
  runs.map(([rows, times]) => ({ every: rows, times }));

describe('a shaping line is read into data', () => {
  it.each([
    [
      'dec 1 st each end of every 6th row 8 times, then every 4th row 5 times',
      'dec',
      2,
      false,
      every([6, 8], [4, 5]),
    ],
    [
      'Dec 1 st at each end of every 6th row 8 times, then of every 4th row 5 times.',
      'dec',
      2,
      false,
      every([6, 8], [4, 5]),
    ],
    ['inc 1 st at each end of next row, then every foll 6th row 7 times', 'inc', 2, true, every([6, 7])],
    ['inc 1 st each side of every other row 10 times', 'inc', 2, false, every([2, 10])],
    ['dec 1 st at neck edge of next 5 rows', 'dec', 1, false, every([1, 5])],
    [
      'dec 1 st at neck edge on every row once, then on every alt row twice',
      'dec',
      1,
      false,
      every([1, 1], [2, 2]),
    ],
    ['inc 2 sts at each end of every 8th row 3 times', 'inc', 4, false, every([8, 3])],
    ['dec 8 sts evenly around on every 2nd round 6 times', 'dec', 8, false, every([2, 6])],
    [
      'dec 1 st at each side of the marker on every 7th round 7 times, then on every 6th round twice',
      'dec',
      2,
      false,
      every([7, 7], [6, 2]),
    ],
    ['dec 1 st at each end of every 6th row – times, then of every – row – times', 'dec', 2, false, []],
    ['decrease 1 stitch at each end of every 4th row 3 more times', 'dec', 2, false, every([4, 3])],
  ] as const)('%s', (line, way, perRow, next, intervals) => {
    expect(readShaping(line)).toEqual({ way, perRow, next, intervals });
  });

  it.each(['dec 1 st', 'dec 1 st at each end sometimes', 'work 5 rows even', ''])(
    '"%s" says why not',
    (line) => {
      expect(readShaping(line)).toHaveProperty('problem');
    },
  );

  it('a step with an en dash for its rows is skipped, whatever its times', () => {
    expect(readShaping('dec 1 st at each end of every – row 3 times')).toMatchObject({ intervals: [] });
  });

  it('“next row” is the first step or none', () => {
    expect(readShaping('dec 1 st each end of every 2nd row twice, then next row')).toEqual({
      problem: '“next row” does not say on which rows.',
    });
  });

  it.each([
    ['every 0th row 3 times', undefined],
    ['every 100000th row once', every([100_000, 1])],
    ['every 100001st row once', undefined],
    ['every 2nd row 100000 times', every([2, 100_000])],
    ['every 2nd row 100001 times', undefined],
  ])('follows shaping %s as far as rows are followed', (step, intervals) => {
    const read = readShaping(`dec 1 st at each end of ${step}`);
    if (intervals) expect(read).toMatchObject({ intervals });
    else expect(read).toEqual({ problem: `“of ${step}” cannot be followed.` });
  });

  it('reads up to 2000 characters, and tells no more than 80 of what it cannot read', () => {
    const line = 'dec 1 st at each end of every 2nd row 3 times';
    expect(readShaping(line.padEnd(2000))).toMatchObject({ intervals: every([2, 3]) });
    expect(readShaping(line.padEnd(2001))).toHaveProperty('problem');
    expect(readShaping(`  ${line}`)).toMatchObject({ intervals: every([2, 3]) });
    expect(readShaping(`dec 1 st at each end ${'o'.repeat(90)}`)).toEqual({
      problem: `“${'o'.repeat(80)}” does not say on which rows.`,
    });
  });

  it('survives any text', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 300, unit: 'grapheme' }), (text) => {
        readShaping(text);
        readShaping(`dec 1 st at each end of ${text}`);
      }),
    );
    expect(readShaping(`dec 1 st ${'every 2nd row '.repeat(4000)}`)).toHaveProperty('problem');
    expect(readShaping('dec 1 st at each end of every 99999999999th row 99999999999 times')).toHaveProperty(
      'problem',
    );
  });
});
