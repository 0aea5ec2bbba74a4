import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { verifyPiece } from '../../../src/pattern/verify';

const one = { sizes: ['M'], sizeIndex: 0 };
const two = (sizeIndex: number) => ({ sizes: ['S', 'M'], sizeIndex });
/** The sides that lines say rows are worked on. */
const sidesOf = (lines: readonly string[]) =>
  verifyPiece(lines, one).says.flatMap((stated) =>
    stated.kind === 'side' ? [{ line: stated.line, row: stated.row, side: stated.side }] : [],
  );

describe('the lines of a piece are followed', () => {
  it('from the chain to the last row, in each size', () => {
    const lines = [
      'Ch 13 (17).',
      'Row 1 (RS): sc in the 2nd ch from hook and in each ch across [12 (16) sts].',
      'Work 2 (4) more rows even.',
      'Dec 1 st at each end of every 2nd (3rd) row twice [8 (12) sts].',
      'Next row: *sc 2, sc2tog; rep from * to end [6 (9) sts].',
      'Fasten off.',
    ];
    expect(verifyPiece(lines, two(0))).toMatchObject({
      counts: [12, 12, 12, 12, 10, 10, 8, 6],
      problems: [],
      ended: true,
      says: expect.arrayContaining([{ line: 1, row: 1, kind: 'side', side: 'RS' }]),
    });
    expect(verifyPiece(lines, two(1)).counts).toEqual([16, 16, 16, 16, 16, 16, 16, 14, 14, 14, 12, 9]);
    expect(verifyPiece(lines, two(1)).problems).toEqual([]);
  });

  it('a double crochet’s chain of 3 counts as its first stitch, in the UK a treble’s', () => {
    for (const line of [
      'Row 1 (RS): dc in the 4th ch from hook (the skipped ch count as 1 dc) and in each ch across [20 sts].',
      'Row 1 (RS): tr in the 4th ch from hook (the missed ch count as 1 tr) and in each ch across [20 sts].',
    ]) {
      expect(verifyPiece(['Ch 22.', line], one)).toMatchObject({ counts: [20], problems: [] });
    }
  });

  it.each([
    ['Bind off 4 sts at the start of the next 2 rows [12 sts].', [16, 12]],
    ['Cast off 4 sts at the beginning of the next 2 rows.', [16, 12]],
    ['Sl st across 4 sts at the start of each of the next 2 rows, working the others even.', [16, 12]],
    ['Cast on 4 sts at the start of the next 2 rows [28 sts].', [24, 28]],
    ['Next row (RS): bind off the first 4 sts, then work even, leaving the last 3 sts on a holder.', [13]],
    ['Next row: ss across the first 4 sts, then work even to the end [16 sts].', [16]],
    ['Next row: cast on 4 sts, then work even to the end, then cast on 3 sts [27 sts].', [27]],
  ])('a row that is worked even on fewer stitches or more: %s', (line, counts) => {
    expect(verifyPiece(['Cast on 20 sts.', line], one)).toMatchObject({ counts, problems: [] });
  });

  it('“that row included” goes on with the same row, and “next row” would be another', () => {
    const begun =
      'On the next row, bind off the first 4 sts, working the other 16 sts as follows, that row included.';
    const follow = (line: string) => verifyPiece(['Cast on 20 sts.', begun, line], one);
    expect(follow('Same row (RS): k2tog, k to end.')).toMatchObject({ counts: [15], problems: [] });
    expect(follow('Next row (RS): k2tog, k to end.').problems).toHaveLength(1);
    expect(verifyPiece(['Cast on 20 sts.', 'Same row (RS): k2tog, k to end.'], one).problems).toHaveLength(1);
  });

  it.each([
    [['Cast on 20 sts.', 'Row 1 is a wrong-side row.', 'Work 2 rows even.'], 1, 'WS'],
    [['Cast on 20 sts.', 'Row 1 is a right-side row.', 'Work 2 rows even.'], 1, 'RS'],
    [
      ['With the wrong side facing, join the yarn: the next row picks up 9 sts evenly round the armhole.'],
      0,
      'WS',
    ],
    [
      ['With the right side facing, join the yarn: the next row picks up 9 sts evenly round the armhole.'],
      0,
      'RS',
    ],
  ])('the side of the first row is heard in %j', (lines, line, side) => {
    expect(verifyPiece(lines, one).problems).toEqual([]);
    expect(sidesOf(lines)).toEqual([{ line, row: 1, side }]);
  });

  it('a side that faces where no row is worked, or a round, is the side of none', () => {
    for (const line of [
      'With the right side facing, pick up 9 sts evenly round the armhole.',
      'With the right side facing, join the yarn: the next round picks up 9 sts evenly round the armhole.',
      'Round 1: with the right side facing, join the yarn and work sc evenly round the armhole [9 sts].',
    ]) {
      expect(verifyPiece([line], one).problems).toEqual([]);
      expect(sidesOf([line])).toEqual([]);
    }
  });

  it('a row that is worked with one side facing and called after the other is both', () => {
    const line =
      'Row 1 (WS): with the right side facing, join the yarn and work sc evenly round the armhole [9 sts].';
    expect(sidesOf([line])).toEqual([
      { line: 0, row: 1, side: 'WS' },
      { line: 0, row: 1, side: 'RS' },
    ]);
  });

  it.each([
    [['Cast on 9 sts.', 'Work 1 row even.', 'Row 1 is a wrong-side row.'], 2, 'Row 1 is worked already.'],
    [['Ch 9.', 'Ch 9.'], 1, 'The piece has begun already.'],
    [['Cast on 9 sts.', 'Bind off all 9 sts.', 'Bind off all 9 sts.'], 2, 'The piece has ended already.'],
    [['Cast on 9 sts.', 'Bind off all 9 sts.', 'Work 2 rows even.'], 2, 'The piece has ended already.'],
    [
      [
        'With the right side facing, pick up 9 sts along the edge, as follows.',
        'To come out even: *pick up 3, skip 1; rep from * twice more.',
        'Neck: 9 sts over 12 row ends, about 3 in every 4.',
      ],
      1,
      'No stretch of the edge stands before it.',
    ],
    [
      [
        'With the right side facing, pick up 9 sts along the edge, as follows.',
        'Neck: 9 sts over 12 row ends, about 3 in every 4.',
        'To come out even: *pick up 3, skip 1; rep from * twice more.',
        'To come out even: *pick up 3, skip 1; rep from * twice more.',
      ],
      3,
      'It was told already how this stretch of the edge comes out even.',
    ],
    [
      [
        'With the right side facing, join the yarn: the next round picks up 18 sts round the armhole, as follows.',
        'Up one side: 9 sts over 12 row ends, about 3 in every 4.',
        'Down the other side, in the same way: 9 sts over 13 row ends, about 3 in every 4.',
      ],
      2,
      'It is said to be like the stretch before it, and it has 9 stitches over 13 row ends where that one has 9 over 12.',
    ],
    [
      [
        'Cast on 16 sts.',
        'Dec 4 sts evenly around on every round twice [8 sts].',
        'The first of these rounds: *k2, k2tog; rep from * around. Each one after it has 1 st more between the increases.',
      ],
      2,
      'It speaks of increases, and the shaping before it decreases.',
    ],
    [['Work 2 rows even.'], 0, 'The piece has not begun: no line says how many stitches there are.'],
    [
      ['Cast on 12 sts.', 'Next row: k2tog, k to end [12 sts].'],
      1,
      'It says 12 stitches, and following it gives 11.',
    ],
    [
      ['Cast on 12 sts.', 'Next row: *k3, k2tog; rep from * to end.'],
      1,
      'After 2 repeats 2 stitches are left, and another takes 5.',
    ],
    [['Cast on 12 sts.', 'Knit a while.'], 1, '“Knit a while” could not be read.'],
    [['Cast on 12 sts.', 'Bind off all 11 sts.'], 1, 'It says 11 stitches, and following it gives 12.'],
    [['Cast on 12 (14) sts.'], 0, '“12 (14)” has 2 numbers for 1 size.'],
    [
      ['Cast on 4 sts.', 'Dec 1 st at each end of every row 3 times [2 sts].'],
      1,
      'It takes away more stitches than there are: 2 are left.',
    ],
    [['Cast on 9 sts.', 'Row 2: k9.'], 1, 'It is called row 2, and it is row 1.'],
    [
      ['Cast on 9 sts.', 'Next row: work as follows for your size [8 sts].', 'Fasten off.'],
      1,
      'No line says what this size does here.',
    ],
    [
      [
        'With the right side facing, pick up 9 sts along the edge, as follows.',
        'Neck: 8 sts, one in each st.',
      ],
      1,
      'The stretches of the edge add up to 8 stitches, and 9 are picked up.',
    ],
    [
      [
        'With the right side facing, pick up 9 sts along the edge, as follows.',
        'Neck: 9 sts over 12 row ends, about 3 in every 4.',
        'To come out even: *pick up 2, skip 1; rep from * 3 more times.',
      ],
      2,
      'It picks up 8 stitches, and the line above says 9.',
    ],
  ])('%j: line %i does not come out', (lines, line, problem) => {
    const { problems } = verifyPiece(lines, one);
    expect(problems[0]?.problem.startsWith(problem)).toBe(true);
    expect(
      problems[0]!.line === line || problems[0]!.line === line - 1 || problems[0]!.line === lines.length - 1,
    ).toBe(true);
  });

  it('survives any lines', () => {
    const line = fc.oneof(
      fc.string({ maxLength: 200, unit: 'grapheme' }),
      fc.constantFrom(
        'Cast on 9 sts.',
        'Work 99999999 rows even.',
        'Next 99999 rows: k2tog, k to end.',
        'Rows 1–99999999: k.',
        'Dec 1 st at each end of every 100000th row 100000 times.',
        'Next row: work as follows for your size [8 sts].',
        'Size M: k.',
        'Work 5 rows; of these, dec 1 st at the neck edge on rows 1–99999999999.',
        'To come out even: pick up 99999, skip 1.',
        'On the next row, add a foundation of 99999999999999 sts at the start, working 5 sts in all as follows.',
      ),
    );
    fc.assert(
      fc.property(fc.array(line, { maxLength: 12 }), (lines) => {
        const { counts } = verifyPiece(lines, one);
        expect(counts.length).toBeLessThanOrEqual(100_001);
      }),
      { numRuns: 300 },
    );
  });
});

describe('what a text says of its rows beside their counts', () => {
  const one = { sizes: ['M'], sizeIndex: 0 };
  const says = (kind: string, ...lines: string[]) =>
    verifyPiece(['Cast on 40 sts.', ...lines], one).says.filter((stated) => stated.kind === kind);

  it.each([
    ['Work 3 rows even.', ['row']],
    ['Work 3 rounds even.', ['round']],
    ['Dec 1 st at each end of every 4th rnd twice.', ['round']],
    ['Next row: *k8, k2tog; rep from * to the end of the round.', ['row', 'round']],
    ['Bind off all 40 sts.', []],
  ])('%s', (line, units) => {
    expect(says('unit', line)).toEqual(units.map((unit) => ({ line: 1, row: 1, kind: 'unit', unit })));
  });

  it('row ends are counted along an edge, and round an armhole goes the edge', () => {
    const lines = [
      'Row 1 (RS): with the right side facing, join the yarn and work sc round the armhole, as follows [9 sts].',
      'Up one side: 9 sts over 12 row ends, about 3 in every 4.',
      'To come out even: (1 in each of the next 3 row ends, skip 1) 3 times.',
    ];
    expect(verifyPiece(lines, one).says.filter(({ kind }) => kind === 'unit')).toEqual([
      { line: 0, row: 1, kind: 'unit', unit: 'row' },
    ]);
  });

  it('the edge that is shaped is told from the first row that shapes it', () => {
    expect(
      says(
        'edge',
        'Work 2 rows even.',
        'Dec 1 st at the neck edge on every 3rd row twice.',
        'Inc 1 st at the armhole edge on the next row.',
        'Work 4 rows; of these, dec 1 st at the neck edge on rows 2 and 4.',
        'Dec 1 st at each end of the next row.',
      ),
    ).toEqual([
      { line: 2, row: 5, kind: 'edge', edge: 'neck' },
      { line: 3, row: 9, kind: 'edge', edge: 'armhole' },
      { line: 4, row: 11, kind: 'edge', edge: 'neck' },
    ]);
  });

  it('stitches left and added are told of the row and the end they are at', () => {
    const at = (line: number, row: number, start: number, end: number) => ({
      line,
      row,
      kind: 'ends',
      start,
      end,
    });
    expect(
      says(
        'ends',
        'Bind off 4 sts at the start of the next 2 rows.',
        'Next row: bind off the first 2 sts, then work even, leaving the last 3 sts on a holder.',
        'On the next row, cast on 5 sts at the end, working 32 sts in all as follows, that row included.',
        'Same row: knit.',
        'Next row: cast on 1 st, then work even to the end.',
      ),
    ).toEqual([at(1, 1, -4, 0), at(1, 2, -4, 0), at(2, 3, -2, -3), at(3, 4, 0, 5), at(5, 5, 1, 0)]);
  });
});
