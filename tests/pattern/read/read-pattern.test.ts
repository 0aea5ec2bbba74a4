import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { usualSettings } from '../../../src/notebook';
import { heronPullover } from '../../../src/starters/adapted-pullover';
import { notebookFrom, patternOf } from '../../../src/pattern';
import { readPattern, type PatternReading } from '../../../src/pattern/read';
import { sourceOf } from '../write/source-of';

const read = (text: string, decimal: '.' | ',' = '.'): PatternReading => readPattern(text, { decimal });
const inWords = ({ diagnostics }: PatternReading): string[] =>
  diagnostics.map(({ range, message }) => `${range.line}: ${message}`);
/** The invented pattern with one thing changed. */
function changed(from: string, to: string): PatternReading {
  expect(heronPullover).toContain(from);
  return read(heronPullover.replace(from, to));
}

describe('an invented pattern in nine sizes', () => {
  const { pattern, diagnostics, lines } = read(heronPullover);

  test('is read without a diagnostic, and only what is told about finishing is kept as words', () => {
    expect(diagnostics).toEqual([]);
    expect(
      lines.filter(({ text, as }) => text.trim() !== '' && as.length === 0).map(({ text }) => text),
    ).toEqual(['Sew the shoulders before the sleeves are picked up, then the side and sleeve seams.']);
  });

  test('gives its sizes, its gauge over 10 cm, its measurements and its yarn', () => {
    expect(pattern.sizes).toEqual(['XS', 'S', 'M', 'L', 'XL', '2X', '3X', '4X', '5X']);
    expect(pattern.gauges).toMatchObject([{ stitches: 2.2, rows: 3, over: '10 cm', fabric: 'stockinette' }]);
    expect(pattern.measures.map(({ of, on }) => `${on}: ${of}`)).toEqual([
      'body: bust',
      'garment: bust',
      'garment: length',
      'garment: upper arm',
      'garment: sleeve length',
    ]);
    expect(pattern.yarn).toMatchObject({
      weight: 'light',
      grams: [300, 350, 350, 400, 450, 500, 500, 550, 600],
    });
    expect(pattern.craft).toBe('knitting');
  });

  test('gives its pieces, how many of each, and the multiple they keep', () => {
    expect(pattern.pieces.map(({ label, make, start }) => [label, make, start.kind])).toEqual([
      ['Back', 1, 'new'],
      ['Front', 1, 'new'],
      ['Front shoulder', 2, 'from'],
      ['Sleeves', 2, 'picked up'],
    ]);
    expect(pattern.pieces[0]!.multiple).toMatchObject({ multiple: 4, plus: 2 });
    expect(pattern.pieces[3]!.start).toMatchObject({ pick: 3, of: 4 });
  });
});

describe('what is wrong is said at its place, and the rest is kept', () => {
  test('a list with the wrong number of sizes', () => {
    const reading = changed(
      '96 (98, 98, 100, 100, 102, 102, 104, 104) rows',
      '96 (98, 98, 100, 100, 102, 104, 104) rows',
    );
    expect(inWords(reading)).toEqual([
      '18: This list has 8 numbers, and the pattern has 9 sizes: 1 is missing. Correct it, or write a dash for a size that has none.',
    ]);
    const [diagnostic] = reading.diagnostics;
    expect(reading.lines[17]!.text.slice(diagnostic!.range.from, diagnostic!.range.to)).toBe(
      '96 (98, 98, 100, 100, 102, 104, 104)',
    );
    expect(reading.pattern.pieces).toHaveLength(4);
    expect(reading.lines[17]!.as).toEqual([]);
  });

  test('a cast-on that is off by one in one size: no multiple, and another count after the armholes', () => {
    const reading = changed('Cast on 98 (106, 114, 126', 'Cast on 98 (106, 115, 126');
    expect(inWords(reading).find((one) => one.startsWith('16'))).toMatch(
      /^16: Not a multiple of 4 plus 2: 115 in size M \(114 or 118 would be\)/u,
    );
    expect(inWords(reading).find((one) => one.startsWith('20'))).toMatch(
      /^20: In size M the line comes to 103, and the pattern says 102\. The other sizes agree, so a number here or above is off by one: it is probably a misprint/u,
    );
    // And it is 0.6 cm wider than the measurement says.
    expect(inWords(reading).map((one) => one.split(':')[0])).toEqual(['7', '16', '20']);
  });

  test('a shaping line that does not end on its count', () => {
    const reading = changed('row 17 (15, 9, 3, 26', 'row 17 (15, 8, 3, 26');
    expect(inWords(reading)).toEqual([
      expect.stringMatching(/^43: In size M the line comes to 52, and the pattern says 50\./u),
    ]);
  });

  test('a measurement that the counts do not give at the stated gauge', () => {
    const reading = changed('Bust: 89 (96.5, 103.5, 114.5', 'Bust: 89 (96.5, 103.5, 119.5');
    expect(inWords(reading)).toEqual([
      expect.stringMatching(
        /^7: At the stated gauge the stitches of back and front do not give this measurement in size L: .* give 114\.5 cm where 119\.5 cm is stated, 11 stitches too few\./u,
      ),
    ]);
  });

  test('seams that take the same in every size are no misprint, and are said once', () => {
    const reading = changed(
      'Bust: 89 (96.5, 103.5, 114.5, 125.5, 136.5, 143.5, 154.5, 165.5)',
      'Bust: 87 (94.5, 101.5, 112.5, 123.5, 134.5, 141.5, 152.5, 163.5)',
    );
    expect(reading.diagnostics).toMatchObject([{ kind: 'to know', range: { line: 7 } }]);
    expect(inWords(reading)[0]).toMatch(/make about 2 cm more than this in every size: seams/u);
  });

  test('4 in and 10 cm printed as if they were the same', () => {
    const reading = changed('30 rows = 10 cm', '30 rows = 4 in (10 cm)');
    expect(reading.pattern.gauges[0]!.stitches).toBeCloseTo(22 / 10.16, 12);
    expect(reading.pattern.gauges[0]!.over).toBe('4 in');
    expect(inWords(reading).find((one) => one.startsWith('12'))).toMatch(
      /^12: 4 in and 10 cm are printed as if they were the same, but 4 in are 10\.16 cm/u,
    );
  });

  test('a gauge over 4 in and another line with one over 10 cm that says otherwise', () => {
    const reading = changed(
      'Gauge: 22 sts and 30 rows = 10 cm in stockinette on 4 mm needles',
      'Gauge: 22 sts and 30 rows = 10 cm in stockinette\nGauge: 22 sts and 30 rows = 4 in in stockinette',
    );
    expect(inWords(reading)[0]).toMatch(
      /^13: This gauge is 1\.6 % looser than the one stated before it \(that is over 10 cm, this over 4 in/u,
    );
    expect(reading.pattern.gauges[0]!.stitches).toBe(2.2);
  });

  test('a list in cm and in inches at once, a length without a unit, a measurement of nobody', () => {
    expect(inWords(changed('Length: 54.5 (56, 57.5,', 'Length: 54.5 cm (56 in, 57.5,'))[0]).toMatch(
      /^8: This list mixes cm and inches/u,
    );
    expect(inWords(changed('66) cm\nUpper', '66)\nUpper'))[0]).toMatch(/^8: "Length" has no unit/u);
    expect(inWords(read('Sizes: S (M)\nBust: 90 (100) cm'))[0]).toMatch(
      /^2: Is "Bust" a measurement of the body or of the finished garment\?/u,
    );
  });

  test('the same measurement in both units, where they do not agree', () => {
    const text = (inches: string): string =>
      `Sizes: S (M)\nFinished bust: 86 (96.5) cm / ${inches} in\nGauge: 20 sts and 28 rows = 10 cm`;
    expect(inWords(read(text('34 (38)')))).toEqual([]);
    expect(inWords(read(text('34 (39)')))[0]).toMatch(/^2: The two units do not agree: 96\.5 cm and 39 in/u);
  });

  test('text that is no pattern', () => {
    const reading = read('Dear all,\nthe meeting is moved to Tuesday, at 10 (not 11).\n');
    expect(inWords(reading).at(-1) ?? '').toMatch(/Nothing here reads as a pattern/u);
    expect(reading.pattern.pieces).toEqual([]);
  });

  test('nothing at all', () => {
    expect(read('').pattern.pieces).toEqual([]);
  });
});

describe('parts of a pattern in other dress', () => {
  test('a table pasted with tabs, with bars or with spaces', () => {
    const rows = [
      ['Size', 'S', 'M', 'L'],
      ['Bust (cm)', '90', '98', '106'],
      ['Upper arm (cm)', '34', '–', '38'],
    ];
    for (const between of ['\t', ' | ', '    ']) {
      const { pattern } = read(`Finished measurements\n${rows.map((row) => row.join(between)).join('\n')}`);
      expect(pattern.sizes).toEqual(['S', 'M', 'L']);
      expect(pattern.measures.map(({ of, values }) => [of, values])).toEqual([
        ['bust', [90, 98, 106]],
        ['upper arm', [34, null, 38]],
      ]);
    }
  });

  describe('a table with a size to a row', () => {
    const under = (rows: readonly (readonly string[])[], between: string): string =>
      `Finished measurements\n${rows.map((row) => row.join(between)).join('\n')}`;
    const turned = (rows: readonly (readonly string[])[]): string[][] =>
      rows[0]!.map((_cell, column) => rows.map((row) => row[column]!));
    const numbers = ({ pattern }: PatternReading) => ({
      sizes: pattern.sizes,
      measures: pattern.measures.map(({ of, on, label, values, step }) => ({ of, on, label, values, step })),
    });

    test('says the same as the table with a size to a column', () => {
      const heads = ['Bust (cm)', 'Upper arm (cm)', 'Length in cm', 'Hem (cm)', 'Sleeve length (in)'];
      const cell = fc.oneof(
        fc.integer({ min: 1, max: 999 }).map((tenths) => String(tenths / 10)),
        fc.constantFrom('–', '17½', '17 1/2', '40'),
      );
      const table = fc
        .record({
          heads: fc.uniqueArray(fc.constantFrom(...heads.slice(1)), { maxLength: 4 }),
          sizes: fc.uniqueArray(fc.constantFrom('XS', 'S', 'M', 'L', '2X', '34', 'One up'), {
            minLength: 2,
          }),
        })
        .chain(({ heads: others, sizes }) =>
          fc
            .array(fc.array(cell, { minLength: others.length + 1, maxLength: others.length + 1 }), {
              minLength: sizes.length,
              maxLength: sizes.length,
            })
            .map((rows) => [['Size', heads[0]!, ...others], ...rows.map((row, at) => [sizes[at]!, ...row])]),
        );
      fc.assert(
        fc.property(table, fc.constantFrom('\t', ' | ', '    '), (rows, between) => {
          // A line of dashes alone is the rule under a head, in either table.
          fc.pre([...rows, ...turned(rows)].every((row) => row.slice(1).some((one) => one !== '–')));
          expect(numbers(read(under(rows, between)))).toEqual(numbers(read(under(turned(rows), between))));
        }),
        { numRuns: 200 },
      );
    });

    test('in Markdown, its corner empty, marked as read', () => {
      const reading = read(
        'Sizes: S (M, L)\n\nFinished measurements\n\n|  | Bust | Upper arm |\n|---|---|---|\n| L | 106 cm | 38 cm |\n| S | 90 cm | 34 cm |\n',
      );
      // The rows name their sizes: they may stand in another order, and need not be all.
      expect(reading.pattern.measures.map(({ of, values }) => [of, values])).toEqual([
        ['bust', [90, null, 106]],
        ['upper arm', [34, null, 38]],
      ]);
      expect(inWords(reading)).toEqual([]);
      expect(reading.lines.map(({ line, as }) => [line, as]).slice(4, 8)).toEqual([
        [5, ['the sizes']],
        [6, []],
        [7, ['a size, and its measurements']],
        [8, ['a size, and its measurements']],
      ]);
    });

    test('a column of ranges or of counts is doubted at its head, and the others are read', () => {
      const reading = read(
        'Finished measurements in cm\nSize\tBust\tUpper arm\tCuff stitches\nS\t86-90\t34\t40\nM\t91-96\t36\t42',
      );
      expect(reading.pattern.measures.map(({ of, values }) => [of, values])).toEqual([
        ['upper arm', [34, 36]],
      ]);
      expect(inWords(reading)).toEqual([
        '2: The column "Bust" is kept as it stands: give each of its sizes one number, or a dash.',
        '2: The column "Cuff stitches" is kept as it stands: counts belong to the instructions of a piece.',
      ]);
    });
  });

  describe('a piece that is worked as another', () => {
    const garment = (front: string): PatternReading =>
      read(
        `Sizes: S (M)\nGauge: 20 sts and 28 rows = 10 cm\nBack\nCast on 90 (98) sts.\nWork 100 rows even.\nBind off all sts.\n\n${front}\n\nSleeve\nCast on 40 (44) sts.\nWork 80 rows even.\nBind off all sts.`,
      );
    const counts = ({ pattern }: PatternReading) =>
      pattern.pieces.map(({ label, start }) => [label, start.count]);

    test.each(['Front\nWork as Back.', 'Front\nWork the same as given for the back', 'Front: Same as Back.'])(
      'has the same stitches and rows: %j',
      (front) => {
        const reading = garment(front);
        expect(inWords(reading)).toEqual([]);
        expect(counts(reading)).toEqual([
          ['Back', [90, 98]],
          ['Front', [90, 98]],
          ['Sleeve', [40, 44]],
        ]);
        expect(reading.pattern.pieces[1]!.stretches).toEqual(reading.pattern.pieces[0]!.stretches);
      },
    );

    test('a part of a piece that is worked as another piece has it is no piece', () => {
      const reading = garment('Front\nCast on 90 (98) sts.\nWork 60 rows even.\nArmholes\nWork as Back.');
      expect(counts(reading).map(([label]) => label)).toEqual(['Back', 'Front', 'Sleeve']);
      expect(inWords(reading)[0]).toMatch(/^12: What is worked here as Back is not read/u);
    });

    test('only in part is doubted, and the piece after it keeps its own name', () => {
      const reading = garment('Front\nWork as Back to armholes.\nWork 20 rows even.');
      expect(inWords(reading)).toEqual([
        '9: What is worked here as Back is not read: write its lines out under a heading of its own, from its first stitches on.',
      ]);
      expect(counts(reading)).toEqual([
        ['Back', [90, 98]],
        ['Sleeve', [40, 44]],
      ]);
      // Nor do its rows become rows of the back.
      expect(reading.pattern.pieces[0]!.stretches).toHaveLength(1);
    });
  });

  test('a gauge of nothing is none, and that is said', () => {
    const reading = read('Sizes: S (M)\nGauge: 0 sts and 28 rows = 10 cm\nBack\nCast on 90 (98) sts.');
    expect(reading.pattern.gauges).toEqual([]);
    expect(inWords(reading)[0]).toBe(
      '2: A gauge is more than 0: correct the stitches or the rows of this line.',
    );
  });

  test('the cap of a set-in sleeve is followed, and it is said that nothing compares it with its armhole', () => {
    const sleeve = (cap: string): string =>
      `Sizes: S (M)\nGauge: 20 sts and 28 rows = 10 cm\nSleeve\nCast on 60 (64) sts.\nWork 10 rows even.\n${cap}`;
    const shaping = 'Dec 1 st at each end of every 2nd row 10 (12) times.\nBind off all sts.';
    const reading = read(sleeve(`Bind off 4 sts at beg of next 2 rows.\n${shaping}`));
    expect(reading.pattern.pieces[0]!.stretches.map(({ kind }) => kind)).toEqual([
      'even',
      'leave',
      'even',
      'leave',
      'even',
      'taper',
    ]);
    expect(inWords(reading)).toEqual([
      '6: The cap of Sleeve begins here. It is followed and fitted row by row, but nothing here compares its edge with that of the armhole it is sewn into: measure both, from underarm to underarm, before you sew.',
    ]);
    // A sleeve that narrows from shoulder to wrist has no cap.
    expect(inWords(read(sleeve(shaping)))).toEqual([]);
  });

  test('inches with fractions, in cm', () => {
    const { pattern } = read('Sizes: S (M)\nFinished bust: 35 1/2 (39¾)"');
    expect(pattern.measures[0]!.values).toEqual([35.5 * 2.54, 39.75 * 2.54]);
  });

  test('a decimal comma where the notebook writes one', () => {
    expect(read('Sizes: S (M)\nFinished bust: 90,5 (98,5) cm', ',').pattern.measures[0]!.values).toEqual([
      90.5, 98.5,
    ]);
  });

  test('without a line of sizes they are numbered, and that is said', () => {
    const reading = read('Back\nCast on 60 (64, 68) sts.\nWork 10 rows even.\nBind off all sts.');
    expect(reading.pattern.sizes).toEqual(['1', '2', '3']);
    expect(inWords(reading)[0]).toMatch(/^2: No line names the sizes/u);
  });

  test('a length is turned into rows at the stated gauge, even ones where the piece is flat', () => {
    const { pattern } = read(
      'Sizes: S (M)\nGauge: 20 sts and 28 rows = 10 cm\nBack\nCast on 60 (64) sts.\nWork in rib for 10 rows.\nWork even until piece measures 30 (32.5) cm.\nBind off all sts.',
    );
    expect(pattern.pieces[0]!.stretches.map((one) => one.kind === 'even' && one.rows)).toEqual([
      [10, 10],
      [74, 82],
    ]);
  });

  test('a size list broken over two lines', () => {
    const { pattern } = read('Sizes: S (M, L)\nBack\nCast on 60 (64,\n68) sts.\nWork 10 rows even.');
    expect(pattern.pieces[0]!.start.count).toEqual([60, 64, 68]);
  });

  test('a row told stitch by stitch is counted by the reader that proves written patterns', () => {
    const { pattern, diagnostics } = read(
      'Sizes: S (M)\nHat\nCast on 60 (72) sts.\nWork 10 rounds even.\n*K4, k2tog; rep from * to end [50 (60) sts].',
    );
    expect(diagnostics).toEqual([]);
    expect(pattern.pieces[0]!.stretches.at(-1)).toMatchObject({ kind: 'evenly', change: [-10, -12] });
  });

  test('and one that does not come out is kept, with where it stops', () => {
    const reading = read(
      'Sizes: S (M)\nHat\nCast on 61 (72) sts.\nWork 10 rounds even.\n*K4, k2tog; rep from * to end [50 (60) sts].',
    );
    expect(inWords(reading)[0]).toMatch(
      /^5: This line is kept as it stands, since it does not come out when it is counted\. Size S: /u,
    );
  });
});

test('any text at all is read without a fault, and every place lies in the text', () => {
  const words = fc.constantFrom(
    'Cast on',
    'sts',
    '(',
    ')',
    '12',
    '14',
    ',',
    'Work',
    'rows even.',
    'Dec 1 st at each end of every',
    '6th row',
    'times',
    '[',
    ']',
    '\n',
    'Sizes: S (M)',
    '–',
    '10 cm',
    '=',
    'Bust:',
    'in',
    '½',
    '|',
    '\t',
    'Back',
    ':',
    '*',
    'k2tog',
    'rep from *',
  );
  fc.assert(
    fc.property(
      fc.oneof(
        fc.string({ maxLength: 200 }),
        fc.array(words, { maxLength: 40 }).map((list) => list.join(' ')),
      ),
      (text) => {
        const reading = read(text);
        const lines = text.split(/\r\n|\r|\n/u);
        expect(reading.lines).toHaveLength(lines.length);
        for (const { range } of reading.diagnostics) {
          expect(range.line).toBeGreaterThanOrEqual(1);
          expect(range.line).toBeLessThanOrEqual(lines.length);
          expect(range.from).toBeLessThanOrEqual(range.to);
          expect(range.to).toBeLessThanOrEqual(Math.max(lines[range.line - 1]!.length, range.from));
        }
      },
    ),
  );
});

describe('rows that are worked even on fewer stitches, or on more', () => {
  const stretchesOf = (line: string) => {
    const { pattern, diagnostics } = read(
      `Sizes: S (M)\n\nBack\nCast on 40 (44) sts.\n${line}\nBind off all sts.`,
    );
    expect(diagnostics).toEqual([]);
    expect(pattern.pieces).toHaveLength(1);
    return pattern.pieces[0]!.stretches;
  };
  const twice = (kind: 'leave' | 'add') => [
    { kind, atStart: [4, 5], atEnd: [0, 0] },
    { kind: 'even', rows: [1, 1] },
    { kind, atStart: [4, 5], atEnd: [0, 0] },
    { kind: 'even', rows: [1, 1] },
  ];

  test.each([
    ['Bind off 4 (5) sts at the start of the next 2 rows [32 (34) sts].', twice('leave')],
    [
      'Sl st across 4 (5) sts at the start of each of the next 2 rows, working the others even [32 (34) sts].',
      twice('leave'),
    ],
    ['Cast on 4 (5) sts at the start of the next 2 rows [48 (54) sts].', twice('add')],
    [
      'Next row (RS): bind off the first 4 (5) sts, then work even, leaving the last 3 sts on a holder [33 (36) sts].',
      [
        { kind: 'leave', atStart: [4, 5], atEnd: [3, 3] },
        { kind: 'even', rows: [1, 1] },
      ],
    ],
    [
      'Next row: cast on 4 (5) sts, then work even to the end, then cast on 3 sts [47 (52) sts].',
      [
        { kind: 'add', atStart: [4, 5], atEnd: [3, 3] },
        { kind: 'even', rows: [1, 1] },
      ],
    ],
    [
      'On the next row, cast on 4 (5) sts at the start, working 44 (49) sts in all as follows, that row included.\nSame row (RS): k20 (25), k2tog, k22 [43 (48) sts].',
      [
        { kind: 'add', atStart: [4, 5], atEnd: [0, 0] },
        { kind: 'evenly', change: [-1, -1] },
      ],
    ],
  ])('%s', (line, stretches) => {
    expect(stretchesOf(line)).toMatchObject(stretches);
  });
});

describe('numbers that no piece has are said at their place, and nothing is made of them', () => {
  const back = (...lines: string[]): PatternReading =>
    read(
      ['Sizes: S (M)', 'Gauge: 20 sts and 28 rows = 10 cm', 'Back', ...lines, 'Bind off all sts.'].join('\n'),
    );
  const start = ({ pattern }: PatternReading) => pattern.pieces[0]!.start.count;

  test.each([
    ['Cast on 0 (9999999999) sts.', [null, null], 'In size S it is 0; in size M it is 9999999999.'],
    ['Cast on 98 (9999999999) sts.', [98, null], 'In size M it is 9999999999.'],
    ['Cast on 40.5 (44) sts.', [null, 44], 'In size S it is 40.5.'],
    ['Cast on 0 sts.', [null, null], 'In size S it is 0; in size M it is 0.'],
  ])('%s', (line, count, text) => {
    const reading = back(line, 'Work 10 rows even.');
    expect(inWords(reading)).toEqual([
      `4: ${text} Stitches to begin on are whole numbers from 1 to 10000: correct them, or write a dash for a size that has none.`,
    ]);
    expect(start(reading)).toEqual(count);
    expect(reading.pattern.pieces[0]!.stretches).toHaveLength(1);
  });

  test.each([
    ['Work 99999999 rows even.', 'In size S it is 99999999; in size M it is 99999999.'],
    ['Work 10.5 rows even.', 'In size S it is 10.5; in size M it is 10.5.'],
    ['Inc 1 st at each end of every 2nd row 8 (9999999) times.', 'In size M it is 9999999.'],
  ])('%s', (line, text) => {
    const reading = back('Cast on 40 (44) sts.', line);
    expect(inWords(reading)).toEqual([
      `5: ${text} Stitches and rows are whole numbers up to 10000: correct this one; the line is kept as it stands.`,
    ]);
    expect(reading.pattern.pieces[0]!.stretches).toEqual([]);
  });

  test.each([
    ['Cast on 1,040 sts.', '1,040'],
    ['Cast on 980 (1,040) sts.', '1,040'],
    ['Cast on 1,040 (1,060) sts.', '1,040'],
    ['Cast on 98,106 sts.', '98,106'],
  ])('%s: a comma within a number parts nothing and joins nothing', (line, number) => {
    const reading = back(line, 'Work 10 rows even.');
    expect(inWords(reading)).toEqual([
      `4: A comma stands within “${number}”: write a number of more than 999 without one, or part two numbers with a space.`,
    ]);
    expect(start(reading)).toEqual([null, null]);
    expect(reading.pattern.pieces[0]!.stretches).toHaveLength(1);
  });

  test('commas that part the sizes are none within a number, and a count without one is read', () => {
    const reading = read(
      'Sizes: S (M, L)\nBack\nCast on 98 (106,114) sts.\nWork 1040 rows even.\nBind off all sts.',
    );
    expect(inWords(reading)).toEqual([]);
    expect(start(reading)).toEqual([98, 106, 114]);
  });

  test('rows with a comma within are kept as they stand', () => {
    const reading = back(
      'Cast on 40 (44) sts.',
      'Work 980 (1,200) rows even.',
      'Dec 4 sts evenly [1,040 sts].',
    );
    expect(inWords(reading)).toEqual([
      '5: A comma stands within “1,200”: write a number of more than 999 without one, or part two numbers with a space; the line is kept as it stands.',
    ]);
    expect(reading.pattern.pieces[0]!.stretches.map(({ kind }) => kind)).toEqual(['evenly']);
  });

  test.each([
    'Cast on -40 sts.',
    'Cast on −40 (−44) sts.',
    'Ch –40.',
    'Pick up and knit -40 sts along the neck.',
  ])('%s', (line) => {
    const reading = back(line, 'Work 10 rows even.');
    expect(inWords(reading)).toEqual([
      '4: Stitches to begin on are not less than 0: take the sign away, or write a dash alone for a size that has none.',
    ]);
    expect(start(reading)).toEqual([null, null]);
    expect(reading.pattern.pieces[0]!.stretches).toHaveLength(1);
  });

  test('fewer rows than none are kept as they stand; a dash for a size is none', () => {
    const reading = back('Cast on 40 (44) sts.', 'Work -3 rows even.', 'Work – (4) rows even.');
    expect(inWords(reading)).toEqual([
      '5: Stitches and rows are not less than 0: take the sign away, or write a dash alone for a size that has none; the line is kept as it stands.',
    ]);
    expect(reading.pattern.pieces[0]!.stretches).toHaveLength(1);
  });

  test('a piece that only begins says that its rows are missing, and its cell that it has no stretch', async () => {
    const text = 'Sizes: S (M)\nGauge: 20 sts and 28 rows = 10 cm\nBack\nCast on 40 (44) sts.\n';
    const reading = read(text);
    expect(inWords(reading)).toEqual([
      '4: Back begins here, and no rows of it are read: paste its lines too, or add its rows in the notebook.',
    ]);
    const notebook = notebookFrom(reading, text, usualSettings);
    const source = await sourceOf(notebook);
    const lacks = 'It has no stretch yet: add one, such as rows worked even.';
    expect(source.plan(notebook.sizes[0]!.id, 'back-again')).toEqual({ problem: lacks });
    expect(patternOf(source).notes[0]!.text).toBe(`Back is left out: it works out in no size. ${lacks}`);
  });

  test('a shaping on every row of none', () => {
    expect(inWords(back('Cast on 40 (44) sts.', 'Dec 1 st at each end of every 0th row 5 times.'))).toEqual([
      '5: It shapes on every 0th row, and there is none: correct that number; the line is kept as it stands.',
    ]);
  });

  test('more stitches bound off or decreased than there are', () => {
    expect(
      inWords(back('Cast on 40 (80) sts.', 'Bind off 30 sts at beg of next 2 rows.', 'Work 3 rows even.')),
    ).toEqual([
      '5: This takes more stitches than there are: in size S 40 are there, and it would leave −20. Correct the count, or the line.',
    ]);
    expect(
      inWords(back('Cast on 40 (80) sts.', 'Dec 1 st at each end of every 2nd row 25 times.')),
    ).toHaveLength(1);
  });

  test('a length of more rows than any piece has', () => {
    expect(inWords(back('Cast on 40 (44) sts.', 'Work even until piece measures 99999 cm.'))[0]).toMatch(
      /^5: .*whole numbers up to 10000/u,
    );
  });

  test('a measurement or a gauge that is none', () => {
    expect(inWords(read('Sizes: S (M)\nFinished bust: 99999999 (95) cm'))).toEqual([
      '2: A measurement is more than 0 and at most 1000 cm: correct the numbers of this line.',
    ]);
    expect(inWords(read('Sizes: S (M)\nTo fit bust: 0 (90) cm'))).toHaveLength(1);
    expect(inWords(read('Sizes: S (M)\nGauge: 99999999999 sts and 28 rows = 10 cm'))).toHaveLength(1);
  });

  test('two units that do not agree where one measurement stands for all sizes', () => {
    expect(inWords(read('Sizes: S (M)\nFinished length: 60 cm (28 in)'))).toEqual([
      '2: The two units do not agree: 60 cm and 28 in. The first is read; correct the one that is wrong.',
    ]);
    expect(inWords(read('Sizes: S (M)\nFinished length: 60 cm (23½ in)'))).toEqual([]);
  });

  test('BO is bind off', () => {
    expect(read('Sizes: S (M)\nBack\nCO 40 (44) sts.\nWork 4 rows even.\nBO all sts.').lines[4]!.as).toEqual([
      'the end of a piece',
    ]);
  });
});
