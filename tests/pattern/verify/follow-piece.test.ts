import { describe, expect, it } from 'vitest';
import { verifyPiece } from '../../../src/pattern/verify';

const one = { sizes: ['M'], sizeIndex: 0 };
const sizes = (sizeIndex: number) => ({ sizes: ['S', 'M', 'L'], sizeIndex });
const counted = (...counts: number[]) => ({ counts, problems: [] });
/** What is counted and what is wrong; the sides and the end of a piece are in piece.test.ts. */
function followPrinted(...given: Parameters<typeof verifyPiece>) {
  const { counts, problems } = verifyPiece(...given);
  return { counts, problems };
}
const follow = (...lines: string[]) => followPrinted(lines, one);
const wrong = (line: number, problem: string) => ({ line, problem });

describe('how a piece begins', () => {
  it.each([
    ['cast on', ['Cast on 1 st.'], 1],
    ['cast on, in short', ['CO 8 sts.'], 8],
    [
      'a chain joined in a round, worked into in a line of its own',
      ['Chain 24.', 'The next round is worked into the chain [24 sts].'],
      24,
    ],
    [
      'a chain whose first row tells in which chain it begins',
      ['Ch 13.', 'The next row is worked into the chain, beginning in the 2nd ch from hook [12 sts].'],
      12,
    ],
    [
      'a chain whose skipped chains count as a stitch',
      [
        'Ch 22.',
        'The next row is worked into the chain, beginning in the 4th ch from hook (the skipped ch count as 1 dc) [20 sts].',
      ],
      20,
    ],
    [
      'stitches another piece left',
      ['Take up the 12 (14, 16) sts left at the end of Back, with the right side facing.'],
      14,
    ],
    ['stitches along a last row', ['Pick up 12 (14, 16) sts along the last row of Back.'], 14],
    [
      'stitches picked up evenly',
      ['With the right side facing, pick up 30 sts evenly round the armhole.'],
      30,
    ],
  ])('%s: the rows after it have its stitches', (_name, lines, count) => {
    const { counts, problems } = followPrinted([...lines, 'Work 2 rows even.'], sizes(1));
    expect(problems).toEqual([]);
    expect(counts).toEqual([count, count]);
  });

  it('a first round may be worked into every chain', () => {
    expect(
      follow('Ch 24.', 'Round 1: sc in each ch around [24 sts].', 'Round 2: sc in each st around.'),
    ).toEqual(counted(24, 24));
  });

  it('a first row along an edge has the stitches it states', () => {
    const row = 'with the right side facing, join the yarn and work sc evenly round the armhole';
    expect(follow(`Round 1: ${row} [70 sts].`, 'Work 1 round even.')).toEqual(counted(70, 70));
    expect(follow(`Round 1: ${row}.`).problems).toEqual([
      wrong(0, 'It does not say how many stitches there are.'),
    ]);
  });

  it.each([
    [['Cast on 0 sts.'], 0, 'It does not say how many stitches there are.'],
    [['Cast on – sts.'], 0, 'It does not say how many stitches there are.'],
    [['The next round is worked into the chain.'], 0, 'It does not say how many stitches there are.'],
    [['Cast on 8 sts.', 'Cast on 9 sts.'], 1, 'The piece has begun already.'],
    [['Take up the sts left at the end of Back.'], 0, 'It does not say how many stitches there are.'],
    [['Ch 9.', 'The next row is worked into the chain.'], 1, 'It does not say in which chain to begin.'],
    [['Row 1: sc in the 2nd ch from hook and in each ch across.'], 0, 'There is no chain to work into.'],
    [
      ['Ch 9.', 'Round 1: sc in the 2nd ch from hook [9 sts].'],
      1,
      'It says 9 stitches, and following it gives 8.',
    ],
  ])('%j cannot be begun on', (lines, line, problem) => {
    expect(followPrinted(lines, one).problems[0]).toEqual(wrong(line, problem));
  });
});

describe('rows, one at a time and several', () => {
  it.each([
    ['blank lines and white space around a line are nothing', ['  ', ' Work  2   rows even. . '], [9, 9]],
    ['“more” and “evenly” change nothing', ['Work 2 more rounds evenly.'], [9, 9]],
    ['no rows at all', ['Work 0 rows even.'], []],
    ['an en dash for its rows is none', ['Work – rows even.'], []],
    ['a row by its number', ['Row 1 (RS): k2tog, k to end.', 'Row 2 (WS): purl.'], [8, 8]],
    ['rows from one number to another, each of them', ['Rows 1–3: k2tog, k to end [6 sts].'], [8, 7, 6]],
    [
      'the next row, and so many next rows',
      ['Next row: k2tog, k to end.', 'Next 2 rows: k2tog, k to end.'],
      [8, 7, 6],
    ],
    ['decreases spread over a row', ['Next row: dec 3 sts evenly across [6 sts].'], [6]],
    ['increases spread over a round', ['Next round: inc 3 sts evenly around [12 sts].'], [12]],
    ['decreases in each of some repeats', ['Next row: dec 2 sts in each of the 3 repeats [3 sts].'], [3]],
    ['chains of a round below, like any stitch', ['Next round: sc in each ch around.'], [9]],
    ['increases in the one repeat there is', ['Next row: inc 2 sts in the repeat [11 sts].'], [11]],
  ])('%s', (_name, lines, counts) => {
    expect(follow('Cast on 9 sts.', ...lines, 'Bind off all 9 sts.').counts).toEqual(counts);
    expect(follow('Cast on 9 sts.', ...lines, 'Fasten off.').problems).toEqual([]);
  });

  it.each([
    ['Row 2: knit.', 'It is called row 2, and it is row 1.'],
    ['Rows 1–0: knit.', 'It does not say how many rows it is for.'],
    ['Next 0 rows: knit.', 'It does not say how many rows it is for.'],
    ['Next 100001 rows: knit.', 'It does not say how many rows it is for.'],
    ['Work 100001 rows even.', 'More than 100000 rows are not followed.'],
    ['Next row: dec 9 sts evenly.', 'That leaves 0 stitches.'],
    ['Next row: inc 10000000 sts evenly.', 'That is more stitches than can be counted.'],
    ['Next row: gibber.', '“gibber” could not be read.'],
    ['Next row: as follows for your size or so.', '“as follows for your” could not be read.'],
    ['Knit   a  while .', '“Knit a while” could not be read.'],
    ['Next row: k8.', '1 stitch of 9 is left over at the end of the row.'],
    [`Knit ${'so '.repeat(60)}`, `“Knit ${'so '.repeat(60).slice(0, 115)}” could not be read.`],
  ])('“%s” does not come out: %s', (line, problem) => {
    expect(follow('Cast on 9 sts.', line).problems[0]).toEqual(wrong(1, problem));
  });

  it('up to 100,000 rows and ten million stitches are followed', () => {
    expect(follow('Cast on 9 sts.', 'Work 100000 rows even.').counts).toHaveLength(100_000);
    expect(follow('Cast on 9 sts.', 'Next 100000 rows: knit.').problems).toEqual([]);
    expect(follow('Cast on 9 sts.', 'Next row: inc 9999991 sts evenly.')).toEqual(counted(10_000_000));
  });

  it('what was counted is gone on with, whatever a line says it is', () => {
    expect(follow('Cast on 9 sts.', 'Next row: knit [8 sts].', 'Work 1 row even [9 sts].')).toEqual({
      counts: [9, 9],
      problems: [wrong(1, 'It says 8 stitches, and following it gives 9.')],
    });
  });

  it('a line of 24,000 characters is the longest that is read', () => {
    const longest = `Cast on 9 sts${'.'.repeat(24_000 - 13)}`;
    expect(follow(longest).problems).toEqual([]);
    expect(follow(`${longest}.`).problems).toEqual([wrong(0, 'It is too long to be read.')]);
  });

  it('of what is wrong, the first 200 are told', () => {
    expect(followPrinted(Array<string>(250).fill('Knit a while.'), one).problems).toHaveLength(200);
  });

  it.each([
    'Work 2 rows even.',
    'Work 2 rows even [9 sts].',
    'Next row: knit.',
    'Dec 1 st at each end of every row twice.',
    'Work 5 rows; of these, dec 1 st on row 1.',
    'On the next row, bind off the first 3 sts, working the other 6 sts as follows.',
  ])('“%s” needs stitches to be worked on, and is told once', (line) => {
    expect(follow(line)).toEqual({
      counts: [],
      problems: [wrong(0, 'The piece has not begun: no line says how many stitches there are.')],
    });
  });
});

describe('shaping over rows', () => {
  it.each([
    ['Dec 1 st at each end of every 2nd row twice [5 sts].', [9, 7, 7, 5]],
    ['Inc 1 st at each end of every row twice [13 sts].', [11, 13]],
    ['Dec 1 st at each end of next row, then every 2nd row once [5 sts].', [7, 7, 5]],
    ['Dec 2 sts at each end of every row twice [1 st].', [5, 1]],
    ['Work 4 rows; of these, dec 1 st at the neck edge on row 2 [8 sts].', [9, 8, 8, 8]],
    ['Work 4 rows; of these, dec 1 st at each end on rows 1, 2 and 4 [3 sts].', [7, 5, 5, 3]],
    ['Work 4 rows; of these, inc 1 st at each end on rows 1–2,4 [15 sts].', [11, 13, 13, 15]],
    ['Work 4 rounds; of these, inc 2 sts evenly on rounds 1 – 3 [15 sts].', [11, 13, 15, 15]],
    ['Work 4 rows; of these, dec 1 st on rows 4–4 [8 sts].', [9, 9, 9, 8]],
    ['Work 4 rows; of these, work even [9 sts].', [9, 9, 9, 9]],
  ])('%s', (line, counts) => {
    expect(follow('Cast on 9 sts.', line)).toEqual(counted(...counts));
  });

  it.each([
    ['Dec 1 st sometimes.', '“sometimes” does not say on which rows.'],
    ['Dec 4 sts evenly on every row 3 times.', 'It takes away more stitches than there are: 1 are left.'],
    [
      'Dec 9 sts evenly on next row, then every row once.',
      'It takes away more stitches than there are: 9 are left.',
    ],
    ['Work 4 rows; of these, dec 1 st on rows 1 and 5.', 'There is no row 5 among 4.'],
    ['Work 4 rows; of these, dec 1 st on rows 3–2.', 'There is no row 3–2 among 4.'],
    ['Work 4 rows; of these, dec 1 st on rows 0–2.', 'There is no row 0–2 among 4.'],
    ['Work 4 rows; of these, dec 1 st on rows 2–.', 'There is no row 2– among 4.'],
    ['Work 4 rows; of these, dec 1 st on row 1 and – .', 'There is no row – among 4.'],
    ['Work 4 rows; of these, work even, then not.', '“work even, then not” could not be read.'],
    ['Work 4 rows; of these, do not work even.', '“do not work even” could not be read.'],
    [
      'Work 4 rows; of these, dec some on row 1.',
      'A shaping line begins like “dec 1 st each end of every 6th row 8 times”.',
    ],
    [`Work 4 rows; of these, ${'x'.repeat(130)}.`, `“${'x'.repeat(120)}” could not be read.`],
    [
      'Work 1000000000000 rows; of these, dec 1 st on rows 1–999999999999.',
      'More than 100000 rows are not followed.',
    ],
  ])('“%s” does not come out: %s', (line, problem) => {
    expect(follow('Cast on 9 sts.', line).problems[0]).toEqual(wrong(1, problem));
  });

  it('a shaping ends where there is nothing more to take away', () => {
    expect(follow('Cast on 9 sts.', 'Dec 4 sts evenly on every 2nd row 5 times.')).toEqual({
      counts: [9, 5, 5, 1, 1],
      problems: [wrong(1, 'It takes away more stitches than there are: 1 are left.')],
    });
  });

  it('a shaping ends where no more rows can be followed', () => {
    const { counts, problems } = follow('Cast on 2 sts.', 'Inc 1 st on every row 100000 times.');
    expect(problems).toEqual([]);
    expect(counts.at(-1)).toBe(100_002);
    expect(
      follow('Cast on 2 sts.', 'Work 1 row even.', 'Inc 1 st on every row 100000 times.').problems,
    ).toEqual([]);
  });

  const rounds = ['Cast on 24 sts.', 'Dec 8 sts evenly around on every 2nd round twice [8 sts].'];

  it('the first of several rounds is worked as it is told, one stitch a repeat fewer in each after it', () => {
    expect(
      follow(
        ...rounds,
        'The first of these rounds: *k1, k2tog; rep from * around. Each one after it has 1 st fewer between the decreases.',
      ),
    ).toEqual(counted(24, 16, 16, 8));
  });

  it.each([
    ['*k2, k2tog; rep from * around', 'It gives 18 stitches, and the shaping before it 16.'],
    ['*k3, k2tog; rep from * around', 'After 4 repeats 4 stitches are left, and another takes 5.'],
  ])('a first round of %s does not come out', (work, problem) => {
    const first = `The first of these rounds: ${work}. Each one after it has 1 st fewer between the decreases.`;
    expect(follow(...rounds, first).problems).toEqual([wrong(2, problem)]);
    expect(follow('Cast on 24 sts.', first).problems).toEqual([wrong(1, 'There is no shaping before it.')]);
  });
});

describe('stitches left and added at the ends', () => {
  it.each([
    ['bind off the first 3 sts, working the other 17 sts as follows', 17],
    [
      'cast off the first 3 sts and leave the last 5 sts on a holder, working the other 12 sts as follows',
      12,
    ],
    [
      'sl st across the first 3 sts and leave the last 5 sts unworked, working the other 12 sts as follows',
      12,
    ],
    ['ss across the first 3 sts, working the other 17 sts as follows', 17],
    ['leave the last 5 sts unworked, working the other 15 sts as follows', 15],
    ['add a foundation of 3 sts at the start and 5 sts at the end, working 28 sts in all as follows', 28],
    ['cast on 3 sts at the start, working 23 sts in all as follows', 23],
    ['cast on 5 sts at the end, working 25 sts in all as follows', 25],
    ['cast off the first – sts, working the other – sts as follows', 20],
  ])('on the next row, %s', (words, count) => {
    expect(follow('Cast on 20 sts.', `On the next row, ${words}.`, 'Work 1 row even.')).toEqual(
      counted(count),
    );
  });

  it.each([
    [
      'bind off the first 3 sts, working the other 16 sts as follows',
      'It says 16 stitches, and following it gives 17.',
    ],
    ['bind off the first 3 sts', 'It does not say how many stitches are worked.'],
    ['bind off the first 20 sts, working the other 20 sts as follows', 'That leaves 0 stitches.'],
  ])('“on the next row, %s” does not come out: %s', (words, problem) => {
    expect(follow('Cast on 20 sts.', `On the next row, ${words}.`).problems).toEqual([wrong(1, problem)]);
  });
});

describe('lines for some sizes', () => {
  const start = 'Cast on 10 (12, 14) sts.';
  const row = [start, 'Next row: work as follows for your size [9 (10, 14) sts].'];

  it('each size follows its own', () => {
    expect(followPrinted([...row, 'Size S: k2tog, k to end.'], sizes(0))).toEqual(counted(9));
    expect(followPrinted([...row, 'Sizes S, M: *k2tog, k3 (4); rep from * to end. '], sizes(1))).toEqual(
      counted(10),
    );
    expect(followPrinted([...row, 'Sizes M (L): k2tog 2 (–) times, k8 (14).'], sizes(1))).toEqual(
      counted(10),
    );
    expect(followPrinted([...row, 'Size L: knit.'], sizes(2))).toEqual(counted(14));
  });

  it('several rows are followed one after another, a semicolon between them', () => {
    const lines = [
      start,
      'Shape the next 4 rows as follows for your size [8 (12, 14) sts].',
      'Size S: dec 1 st at each end of every 2nd row once ;work 2 rows even.',
      'Sizes M (L): work 4 rows even.',
    ];
    expect(followPrinted(lines, sizes(0))).toEqual(counted(10, 8, 8, 8));
    expect(followPrinted(lines, sizes(2))).toEqual(counted(14, 14, 14, 14));
    const short = [
      start,
      'Shape the next 4 rows as follows for your size.',
      'Size S: work 1 row even; work 2 rows even.',
    ];
    expect(followPrinted(short, sizes(0)).problems).toEqual([
      wrong(2, 'It says 4 rows, and following it gives 3.'),
    ]);
    const after = [start, 'Work 2 rows even.', ...lines.slice(1)];
    expect(followPrinted(after, sizes(0)).problems).toEqual([]);
  });

  it('rows can be named for each size, and the count is compared', () => {
    const lines = [
      start,
      'Work 3 rows, shaping as follows for your size; the numbers count these rows [8 (12, 16) sts].',
      'Size S: dec 1 st at each end on row 2.',
      'Size M: work even .',
      'Size L: dec 1 st at each end on row 2.',
    ];
    expect(followPrinted(lines, sizes(0))).toEqual(counted(10, 8, 8));
    expect(followPrinted(lines, sizes(1))).toEqual(counted(12, 12, 12));
    expect(followPrinted(lines, sizes(2)).problems).toEqual([
      wrong(4, 'It says 16 stitches, and following it gives 12.'),
    ]);
  });

  it('a size is told once what to do', () => {
    const twice = [...row, 'Size S: k2tog, k to end.', 'Size S: k2tog, k to end.'];
    expect(followPrinted(twice, sizes(0))).toEqual({
      counts: [9],
      problems: [wrong(3, 'This size was told already what to do here.')],
    });
  });

  it('a size that is not told says so at the next line', () => {
    const lines = [...row, 'Size S: k2tog, k to end.', 'Fasten off.'];
    expect(followPrinted(lines, sizes(1)).problems).toEqual([
      wrong(3, 'No line says what this size does here.'),
    ]);
    expect(followPrinted(lines.slice(0, 3), sizes(1)).problems).toEqual([
      wrong(2, 'No line says what this size does here.'),
    ]);
  });

  it('a list with too few numbers for its sizes is told, and followed no further', () => {
    const lines = [...row, 'Sizes S (M): k2tog, k8 (9, 10).'];
    expect(followPrinted(lines, sizes(0))).toEqual({
      counts: [],
      problems: [wrong(2, '“8 (9, 10)” has 3 numbers for 2 sizes.')],
    });
  });

  it('with an en dash for its count a line is for the other sizes, and so are the lines it announces', () => {
    const lines = [
      start,
      'Next row: k2tog, k to end [9 (–, 13) sts].',
      'Next row: work as follows for your size [8 (–, 12) sts].',
      'Sizes S (L): k2tog, k to end.',
      'Work 1 row even.',
    ];
    expect(followPrinted(lines, sizes(1))).toEqual(counted(12));
    expect(followPrinted(lines, sizes(0))).toEqual(counted(9, 8, 8));
    const texts = [...lines.slice(0, 3), 'Size M: knit.'];
    expect(followPrinted(texts, sizes(1)).problems).toEqual([
      wrong(3, 'This size has nothing to do here, and a line tells it what.'),
    ]);
    const own = ['Cast on 9 sts.', 'Next row: k2tog, k to end [– sts].', 'Size M: knit.'];
    expect(followPrinted(own, one).problems).toEqual([wrong(2, '“Size M: knit” could not be read.')]);
  });
});

describe('stitches picked up along an edge, stretch by stretch', () => {
  const edge = (count: number | string) =>
    `With the right side facing, pick up ${count} sts along the edge, as follows.`;

  it.each([
    ['along row ends', 'Front: 9 sts over 12 row ends, about 3 in every 4.'],
    ['one in each stitch', 'Neck, at the back: 9 sts, one in each st.'],
    ['over repeats', 'Repeats of the foundation: 9 sts over 3 repeats, about 3 in each.'],
    ['along a curve', 'Left neck: 9 sts, spread evenly along 15.7 cm.'],
  ])('%s', (_name, stretch) => {
    expect(follow(edge(9), stretch, 'Work 1 row even.')).toEqual(counted(9));
    expect(follow(edge(18), stretch, stretch, 'Work 1 row even.')).toEqual(counted(18));
    expect(follow(edge(10), stretch, 'Work 1 row even.')).toEqual({
      counts: [10],
      problems: [wrong(2, 'The stretches of the edge add up to 9 stitches, and 10 are picked up.')],
    });
    // Without a label it is no stretch.
    expect(follow(edge(9), stretch.slice(stretch.indexOf(': ') + 2)).problems).toHaveLength(2);
  });

  it.each([
    ['27 sts over 20 row ends, about 4 in every 3', undefined],
    ['27 sts over 20 row ends, about 3 in every 4', 'About 3 in every 4 of 20 row ends are not 27 stitches.'],
    // 40 of 40 row ends are two more than 38, and 21 of 20 are one more than 20: who follows it comes near enough.
    [
      '38 sts over 40 row ends, about 1 in every one',
      'About 1 in every 1 of 40 row ends are not 38 stitches.',
    ],
    ['39 sts over 40 row ends, about 1 in every one', undefined],
    ['100 sts over 105 row ends, about 1 in every one', undefined],
    [
      '100 sts over 106 row ends, about 1 in every one',
      'About 1 in every 1 of 106 row ends are not 100 stitches.',
    ],
    ['3 sts over 1 row end, about 1 in every 0', 'About 1 in every 0 of 1 row ends are not 3 stitches.'],
    ['141 sts over 14 repeats, about 10 in each', undefined],
    ['141 sts over 14 repeats, about 11 in each', 'About 11 in each of 14 repeats are not 141 stitches.'],
    ['141 sts over 14 repeats, about 9 in each', 'About 9 in each of 14 repeats are not 141 stitches.'],
    ['21 sts over 14 repeats, about 1 in each', undefined],
    ['5 sts over 14 repeats, about 1 in each', undefined],
    ['5 sts over 14 repeats, about 2 in each', 'About 2 in each of 14 repeats are not 5 stitches.'],
    ['20 sts over 3 row ends, about as many as lie flat', undefined],
    ['20 sts over 3 repeats, about as many as lie flat', undefined],
  ])('%s', (stretch, problem) => {
    const count = /\d+/u.exec(stretch)![0];
    const { problems } = follow(edge(count), `Edge: ${stretch}.`, 'Work 1 row even.');
    expect(problems).toEqual(problem === undefined ? [] : [wrong(1, problem)]);
  });

  it('a ratio says nothing to a size that picks up nothing along its stretch', () => {
    const lines = [
      'With the right side facing, pick up 9 (9) sts along the edge, as follows.',
      'Front: 9 (–) sts over 12 (–) row ends, about 3 (–) in every 4 (–).',
      'Repeats: – (9) sts over – (3) repeats, about – (3) in each.',
    ];
    for (const sizeIndex of [0, 1])
      expect(verifyPiece(lines, { sizes: ['S', 'M'], sizeIndex }).problems).toEqual([]);
  });

  it('what goes in the same way needs a way before it', () => {
    expect(
      follow(edge(9), 'Down the other side, in the same way: 9 sts over 12 row ends, about 3 in every 4.')
        .problems,
    ).toEqual([wrong(1, 'It is said to be like the stretch before it, and there is none.')]);
  });

  it('a first row along the edge is followed by its stretches too', () => {
    const row =
      'Row 1 (RS): with the right side facing, join the yarn and work sc along the edge, as follows [9 sts].';
    expect(follow(row, 'Neck: 9 sts, one in each st.', 'Row 2: knit.')).toEqual(counted(9, 9));
    expect(follow(row, 'Neck: 8 sts, one in each st.').problems).toEqual([
      wrong(1, 'The stretches of the edge add up to 8 stitches, and 9 are picked up.'),
    ]);
  });

  it('a stretch has a label before it, be it an empty one', () => {
    expect(follow(edge(2), '12 sts, one in each st.').problems).toHaveLength(2);
    expect(follow(edge(12), ': 12 sts, one in each st.')).toEqual(counted());
  });

  it('groups say nothing to a size that picks up nothing along their stretch', () => {
    const lines = [
      'With the right side facing, pick up 9 (12, 4) sts along the edge, as follows.',
      'Front: 9 (9, –) sts over 12 (12, –) row ends, about 3 in every 4.',
      'To come out even: (pick up 3, skip 1) 3 times.',
      'Neck: – (3, 4) sts, one in each st.',
    ];
    for (const sizeIndex of [0, 1, 2]) expect(followPrinted(lines, sizes(sizeIndex))).toEqual(counted());
  });

  it('evenly round an armhole there are no stretches to add up', () => {
    expect(follow('With the right side facing, pick up 9 sts evenly round the armhole.')).toEqual(counted());
  });

  it.each([
    [
      '9 sts over 12 row ends',
      '(2 in the next row end, skip 1) 4 times, 1 in each of the next 1 row ends, skip 3',
      9,
    ],
    ['12 sts over 12 row ends', '1 in each of the next 12 row ends', 12],
    ['24 sts over 2 row ends', '12 in each of the next 2 row ends', 24],
    ['36 sts over 36 row ends', 'Pick up 36', 36],
    ['13 sts over 12 row ends', '2 in the next row end, 1 in each of the next 11 row ends', 13],
    [
      '35 sts over 13 row ends',
      '12 in the next row end, 1 in each of the next 11 row ends, 12 in the next row end',
      35,
    ],
    ['9 sts over 12 row ends', '(pick up 3, skip 1) 3 times', 9],
    ['12 sts over 13 row ends', 'Pick up 12, skip 1', 12],
  ])('%s come out as %s', (stretch, groups, count) => {
    const lines = [edge(count), `Front: ${stretch}, about so many.`, `To come out even: ${groups}.`];
    expect(follow(...lines, 'Work 1 row even.')).toEqual(counted(count));
  });

  it.each([
    ['(pick up 2, skip 1) 4 times', 'It picks up 8 stitches, and the line above says 9.'],
    ['(pick up 3, skip 1) 4 times', 'The row takes 16 stitches, and there are 12.'],
    ['(pick up 3, skip', '“skip” could not be read.'],
  ])('to come out even, %s does not: %s', (groups, problem) => {
    const lines = [
      edge(9),
      'Front: 9 sts over 12 row ends, about 3 in every 4.',
      `To come out even: ${groups}.`,
    ];
    const [found] = follow(...lines).problems;
    expect(found!.line).toBe(2);
    if (groups.endsWith('skip')) expect(found!.problem).toMatch(/\.$/u);
    else expect(found!.problem).toBe(problem);
  });

  it('groups that are announced for some sizes belong to an edge', () => {
    const lines = ['Cast on 9 sts.', 'To come out even, as follows for your size:', 'Work 1 row even.'];
    expect(follow(...lines)).toEqual({
      counts: [9],
      problems: [wrong(2, 'No line says what this size does here.')],
    });
  });

  it('groups belong to an edge', () => {
    expect(follow('Cast on 9 sts.', 'To come out even: (pick up 3, skip 1) 3 times.').problems).toEqual([
      wrong(1, 'There is no edge to pick up along.'),
    ]);
  });

  it('groups may be told size by size; a size that picks up nothing there is told nothing', () => {
    const lines = [
      'With the right side facing, pick up 9 (12, 4) sts along the edge, as follows.',
      'Front: 9 (8, –) sts over 12 (11, –) row ends, about 3 in every 4.',
      'To come out even, as follows for your size.',
      'Size S: (pick up 3, skip 1) 3 times.',
      'Size M: (pick up 3, skip 1) 2 times, pick up 2, skip 1.',
      'Neck: – (4, 4) sts, one in each st.',
      'Work 1 row even.',
    ];
    expect(followPrinted(lines, sizes(0))).toEqual(counted(9));
    expect(followPrinted(lines, sizes(1))).toEqual(counted(12));
    expect(followPrinted(lines, sizes(2))).toEqual(counted(4));
    const untold = followPrinted([...lines.slice(0, 3), ...lines.slice(4)], sizes(0));
    expect(untold.problems[0]).toEqual(wrong(4, 'No line says what this size does here.'));
  });

  it('a stretch with too few numbers for the sizes is no stretch', () => {
    const lines = [
      'With the right side facing, pick up 9 (12, 4) sts along the edge, as follows.',
      'Front: 9 (12) sts, one in each st.',
    ];
    expect(followPrinted(lines, sizes(0)).problems).toEqual([
      wrong(1, 'The stretches of the edge add up to 0 stitches, and 9 are picked up.'),
      wrong(1, '“9 (12)” has 2 numbers for 3 sizes.'),
    ]);
  });
});

describe('how a piece ends', () => {
  it.each([
    'Fasten off.',
    'Bind off all sts.',
    'Cast off all 9 sts.',
    'Do not bind off: keep the 9 sts on the needle.',
    'Do not fasten off: keep the last 9 sts open.',
  ])('%s', (line) => {
    expect(follow('Cast on 9 sts.', line)).toEqual(counted());
    if (line.includes('9')) {
      expect(follow('Cast on 8 sts.', line).problems).toEqual([
        wrong(1, 'It says 9 stitches, and following it gives 8.'),
      ]);
    }
  });
});
