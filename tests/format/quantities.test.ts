import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  readCount,
  readGauge,
  readLength,
  readNumber,
  readPercent,
  writeGauge,
  writeFineLength,
  writeLength,
  writeNumber,
  writePercent,
} from '../../src/format/quantities';
import { withoutHanging } from '../without-hanging';

const point = { decimal: '.' } as const;
const comma = { decimal: ',' } as const;
const inCm = { unit: 'cm', decimal: '.' } as const;
const inInches = { unit: 'in', decimal: '.' } as const;

function valueOf(read: { value: number } | { problem: string }): number {
  if ('problem' in read) throw new Error(read.problem);
  return read.value;
}
function problemOf(read: { value: number } | { problem: string }): string {
  if ('value' in read) throw new Error(`was read as ${read.value}`);
  return read.problem;
}
const cm = (text: string) => valueOf(readLength(text, inCm));

describe('a length as people write it', () => {
  test.each([
    ['26', 26],
    ['26 cm', 26],
    ['26cm', 26],
    ['26 cm.', 26],
    ['  26 CM ', 26],
    ['26\u00a0cm', 26],
    ['26.5', 26.5],
    ['26,5', 26.5],
    ['.5', 0.5],
    ['26.', 26],
    ['260 mm', 26],
    ['1 m', 100],
    ['1.05 metres', 105],
    ['4 in', 10.16],
    ['4″', 10.16],
    ['4"', 10.16],
    ['4”', 10.16],
    ["4''", 10.16],
    ['4 inches', 10.16],
    ['1 inch', 2.54],
    ['1 in.', 2.54],
    ['10 1/4 in', 26.035],
    ['10-1/4"', 26.035],
    ['10 - 1/4 in', 26.035],
    ['10¼"', 26.035],
    ['10 ¼ in', 26.035],
    ['10.25in', 26.035],
    ['10,25 in', 26.035],
    ['10 1⁄4 in', 26.035],
    ['1/2 cm', 0.5],
    ['½', 0.5],
    ['3 3/8"', 8.5725],
    ['−2', -2],
    ['-2 cm', -2],
    ['–2', -2],
    ['− 2½ in', -6.35],
    ['+5', 5],
    ['-0', 0],
    ['0', 0],
  ])('%s is %d cm', (text, expected) => {
    expect(cm(text)).toBe(expected);
  });

  test('½ ¼ ¾ ⅛ ⅜ ⅝ ⅞ ⅓ ⅔ are read as the fractions they are', () => {
    const signs = ['½', '¼', '¾', '⅛', '⅜', '⅝', '⅞', '⅓', '⅔'];
    const read = signs.map((sign) => cm(`1${sign} cm`) - 1);
    const wanted = [1 / 2, 1 / 4, 3 / 4, 1 / 8, 3 / 8, 5 / 8, 7 / 8, 1 / 3, 2 / 3];
    read.forEach((value, i) => expect(value).toBeCloseTo(wanted[i]!, 15));
  });

  test('a bare number is in the unit of the notebook, a named unit wins', () => {
    expect(valueOf(readLength('10', inInches))).toBe(25.4);
    expect(valueOf(readLength('10 cm', inInches))).toBe(10);
    expect(valueOf(readLength('10', inCm))).toBe(10);
  });

  test('4⅛ in is 10.4775 cm, for all that 4.125 × 2.54 comes out a little more', () => {
    expect(4.125 * 2.54).toBeGreaterThan(10.4775);
    expect(cm('4 1/8 in')).toBe(10.4775);
    expect(cm('4.125 in')).toBe(10.4775);
  });

  test('as many decimals as were pasted are read', () => {
    expect(cm('3.14159265358979323846')).toBe(Math.PI);
    expect(cm('0000000000000000000026')).toBe(26);
    expect(cm('0.00000000000000000001')).toBe(1e-20);
  });
});

describe('what is no length, and what would do', () => {
  test.each([
    '',
    '   ',
    'long',
    'cm',
    '"',
    '-',
    '.',
    '1e3',
    '10 1/4 1/2',
    '1.2.3',
    '--2',
    '2 3',
    '½½',
    '5\' 4"',
    '26\n27',
  ])('%j: type a number, such as 26 cm or 10 1/4 in', (text) => {
    expect(problemOf(readLength(text, inCm))).toBe('Type a number, such as 26 cm or 10 1/4 in.');
  });

  test('a unit that is not used here is named, with those that are', () => {
    expect(problemOf(readLength('3 yd', inCm))).toBe(
      '"yd" is no unit of length here: type mm, cm, m or in after the number.',
    );
  });

  test("5' and 5 ft are to be typed as inches", () => {
    expect(problemOf(readLength("5'", inCm))).toBe('Type feet as inches, such as 62 in.');
    expect(problemOf(readLength('5 ft', inCm))).toBe('Type feet as inches, such as 62 in.');
  });

  test('1,250 in a notebook with a decimal point could be two numbers, and 1.250 could not', () => {
    expect(problemOf(readLength('1,250', inCm))).toBe(
      '1,250 could be two numbers: type 1250, or 1.250 for the smaller one.',
    );
    expect(cm('1.250')).toBe(1.25);
    expect(cm('0,125')).toBe(0.125);
    expect(cm('1,25')).toBe(1.25);
    expect(valueOf(readLength('1,250', { unit: 'cm', decimal: ',' }))).toBe(1.25);
    expect(problemOf(readLength('10.125 in', { unit: 'cm', decimal: ',' }))).toContain('10125, or 10,125');
  });

  test('thousands are not set apart', () => {
    for (const text of ['1,234.5', '1.234,5', '1 000', "12'500"]) {
      expect(problemOf(readLength(text, inCm))).toMatch(/^Leave out the marks between thousands/);
    }
  });

  test('a fraction is less than 1 beside a whole number, and is of something', () => {
    expect(problemOf(readLength('10 5/4 in', inCm))).toBe(
      'After 10 the fraction has to be less than 1, such as 10 1/4.',
    );
    expect(problemOf(readLength('10 4/4 in', inCm))).toContain('less than 1');
    expect(problemOf(readLength('1/0', inCm))).toMatch(/not 0, such as 1\/4\.$/);
    expect(cm('5/4 cm')).toBe(1.25);
  });

  test('lengths beyond reason, and text without end, are refused', () => {
    expect(problemOf(readLength('9'.repeat(40), inCm))).toContain('check the number');
    expect(problemOf(readLength('9'.repeat(59) + 'm', inCm))).toContain('check the number');
    const refuseAll = (): void => {
      for (const text of ['9'.repeat(1e6), `1${' '.repeat(1e6)}!`, `${' '.repeat(1e6)}x`]) {
        expect(problemOf(readLength(text, inCm))).toContain('Type a number');
        expect(problemOf(readCount(text, point))).toContain('Type a whole number');
        expect(problemOf(readPercent(text, point))).toContain('Type a percentage');
      }
    };
    withoutHanging(refuseAll);
  });
});

describe('a length as the notebook shows it', () => {
  test('inches to the nearest eighth, with the fraction drawn', () => {
    const shown = (text: string) => writeLength(cm(text), inInches);
    expect(['10 1/4 in', '1/8 in', '3/8 in', '1/2 in', '5/8 in', '3/4 in', '7/8 in'].map(shown)).toEqual([
      '10¼',
      '⅛',
      '⅜',
      '½',
      '⅝',
      '¾',
      '⅞',
    ]);
    expect(shown('10.3 in')).toBe('10¼');
    expect(shown('10.96 in')).toBe('11');
    expect(shown('10 1/16 in')).toBe('10⅛');
    expect(shown('0')).toBe('0');
  });

  test('cm to the nearest tenth, always with the decimal, so that a column lines up', () => {
    expect(writeLength(26, inCm)).toBe('26.0');
    expect(writeLength(26.04, inCm)).toBe('26.0');
    expect(writeLength(26.05, inCm)).toBe('26.1');
    expect(writeLength(26.035, { unit: 'cm', decimal: ',' })).toBe('26,0');
    expect(writeLength(26, { ...inCm, trailingZero: false })).toBe('26');
    expect(writeLength(26.3, { ...inCm, trailingZero: false })).toBe('26.3');
  });

  test('cm to the nearest half, without the decimal where there is none', () => {
    const half = { ...inCm, cmStep: 0.5 } as const;
    expect([26.2, 26.25, 26.7, 26.75, -26.3].map((value) => writeLength(value, half))).toEqual([
      '26',
      '26.5',
      '26.5',
      '27',
      '−26.5',
    ]);
    expect(writeLength(26.2, { ...half, trailingZero: true })).toBe('26.0');
  });

  test('a true minus sign, and none before nothing', () => {
    expect(writeLength(-2.5, inCm)).toBe('−2.5');
    expect(writeLength(-0.01, inCm)).toBe('0.0');
    expect(writeLength(-0, inCm)).toBe('0.0');
    expect(writeLength(-26.035, inInches)).toBe('−10¼');
    expect(writeLength(-0.01, inInches)).toBe('0');
    expect(writeLength(-0.01, { ...inCm, cmStep: 0.5 })).toBe('0');
  });

  test('no number is shown as a dash', () => {
    expect(writeLength(NaN, inCm)).toBe('–');
    expect(writeLength(Infinity, inInches)).toBe('–');
    expect(writeNumber(1e300, { ...point, decimals: 2 })).toBe('–');
  });
});

describe('numbers', () => {
  test('with decimals, fractions and either minus', () => {
    expect(valueOf(readNumber('1,5', comma))).toBe(1.5);
    expect(valueOf(readNumber('1.5', comma))).toBe(1.5);
    expect(valueOf(readNumber('4 ½', point))).toBe(4.5);
    expect(valueOf(readNumber('−12.25', point))).toBe(-12.25);
  });

  test('what would do is said in the notebook’s own decimals', () => {
    expect(problemOf(readNumber('many', point))).toBe('Type a number, such as 12 or 1.5.');
    expect(problemOf(readNumber('12 cm', comma))).toBe('Type a number, such as 12 or 1,5.');
  });

  test('are shown to so many places, halves away from 0', () => {
    expect(writeNumber(1.005, { ...point, decimals: 2 })).toBe('1.01');
    expect(writeNumber(-1.005, { ...comma, decimals: 2 })).toBe('−1,01');
    expect(writeNumber(12345.678, { ...point, decimals: 1 })).toBe('12345.7');
    expect(writeNumber(0.04, { ...point, decimals: 1 })).toBe('0.0');
    expect(writeNumber(2.5, { ...point, decimals: 0 })).toBe('3');
    expect(writeNumber(10, { ...point, decimals: 2, trailingZero: false })).toBe('10');
    expect(writeNumber(10.5, { ...point, decimals: 2, trailingZero: false })).toBe('10.5');
    expect(writeNumber(0, { ...point, decimals: 2, trailingZero: false })).toBe('0');
  });
});

describe('gauges', () => {
  test('14 to 10 cm are 1.4 to the cm; 14 to 4 in are 14 to 10.16 cm, which is not the same', () => {
    expect(valueOf(readGauge('14', '10 cm', point))).toBe(1.4);
    expect(valueOf(readGauge('14', '4 in', point))).toBe(14 / 10.16);
    expect(writeGauge(1.4, '10 cm', point)).toBe('14');
    expect(writeGauge(1.4, '4 in', point)).toBe('14.2');
    expect(writeGauge(14 / 10.16, '4 in', point)).toBe('14');
    expect(writeGauge(14 / 10.16, '10 cm', comma)).toBe('13,8');
  });

  test('the word may stand behind it, and the decimals may be kept', () => {
    expect(valueOf(readGauge('13,5 sts', '10 cm', comma))).toBe(1.35);
    expect(valueOf(readGauge('18 rows', '10 cm', point))).toBe(1.8);
    expect(writeGauge(1.4, '10 cm', { ...point, trailingZero: true })).toBe('14.0');
    expect(writeGauge(1.3567, '10 cm', { ...point, decimals: 2 })).toBe('13.57');
  });

  test('a gauge is more than 0, and a number', () => {
    expect(problemOf(readGauge('0', '4 in', point))).toBe(
      'A gauge is more than 0: type how many there are to 4 in, such as 14.',
    );
    expect(problemOf(readGauge('−3', '10 cm', point))).toContain('more than 0');
    expect(problemOf(readGauge('tight', '10 cm', point))).toBe(
      'Type how many there are to 10 cm, such as 14.',
    );
  });
});

describe('percentages', () => {
  test('10 and 10 % are a tenth, and are shown as 10', () => {
    expect(valueOf(readPercent('10', point))).toBe(0.1);
    expect(valueOf(readPercent('10 %', point))).toBe(0.1);
    expect(valueOf(readPercent('12,5%', comma))).toBe(0.125);
    expect(valueOf(readPercent('−5 %', point))).toBe(-0.05);
    expect(writePercent(0.1, point)).toBe('10');
    expect(writePercent(0.125, comma)).toBe('12,5');
    expect(writePercent(-0.05, point)).toBe('−5');
    expect(writePercent(1 / 3, { ...point, decimals: 2 })).toBe('33.33');
  });

  test('7 % is 0.07, for all that 0.07 × 100 is a little more than 7', () => {
    expect(0.07 * 100).not.toBe(7);
    expect(valueOf(readPercent('7', point))).toBe(0.07);
    expect(writePercent(0.07, { ...point, decimals: 0 })).toBe('7');
  });

  test('what would do', () => {
    expect(problemOf(readPercent('some', comma))).toBe('Type a percentage, such as 10 or 12,5 %.');
  });
});

describe('counts', () => {
  test('whole numbers, with or without their word', () => {
    expect(
      ['24', '24 sts', '24 rows', '1 stitch', '24.0', '0'].map((text) => valueOf(readCount(text, point))),
    ).toEqual([24, 24, 24, 1, 24, 0]);
  });

  test('24.5 is not one: 24 or 25', () => {
    expect(problemOf(readCount('24.5', point))).toBe('A count is a whole number: type 24 or 25.');
    expect(problemOf(readCount('24½', point))).toBe('A count is a whole number: type 24 or 25.');
  });

  test('0 or more unless told; the plus of a repeat may be less', () => {
    expect(problemOf(readCount('−1', point))).toBe('A count here is 0 or more: type 0, or a greater number.');
    expect(valueOf(readCount('−1', { ...point, least: -Infinity }))).toBe(-1);
    expect(problemOf(readCount('−1.5', { ...point, least: -Infinity }))).toContain('type −2 or −1.');
    expect(problemOf(readCount('0', { ...point, least: 1 }))).toContain('1 or more');
  });

  test('a few and 1,250 are no counts', () => {
    expect(problemOf(readCount('a few', point))).toBe('Type a whole number, such as 12.');
    expect(problemOf(readCount('1,250', point))).toContain('type 1250');
  });
});

describe('there and back', () => {
  const decimal = fc.constantFrom('.' as const, ',' as const);
  const unit = fc.constantFrom('cm' as const, 'in' as const);
  const length = fc.double({ min: -400, max: 400, noNaN: true });
  const close = (a: number, b: number, step: number) => Math.abs(a - b) <= step / 2 + 1e-9;

  test('a length that is shown reads back to within half of the step it is shown in', () => {
    fc.assert(
      fc.property(
        length,
        unit,
        decimal,
        fc.constantFrom(0.1 as const, 0.5 as const),
        (stored, unit, decimal, cmStep) => {
          const shown = writeLength(stored, { unit, decimal, cmStep });
          const back = valueOf(readLength(shown, { unit, decimal }));
          expect(close(back, stored, unit === 'in' ? 2.54 / 8 : cmStep)).toBe(true);
          // What has been shown once is shown the same again.
          expect(writeLength(back, { unit, decimal, cmStep })).toBe(shown);
        },
      ),
      { numRuns: 5000 },
    );
  });

  test('a length typed in tenths of a cm or eighths of an inch is shown as it was typed', () => {
    fc.assert(
      fc.property(fc.integer({ min: -4000, max: 4000 }), decimal, (steps, decimal) => {
        const typed = (steps / 10).toFixed(1).replace('.', decimal);
        const metric = { unit: 'cm', decimal } as const;
        expect(writeLength(valueOf(readLength(typed, metric)), metric)).toBe(
          typed.replace('-', '−').replace(/^−(0.0)$/, '$1'),
        );
        const inches = { unit: 'in', decimal } as const;
        const typedEighths = `${steps < 0 ? '-' : ''}${Math.floor(Math.abs(steps) / 8)} ${Math.abs(steps) % 8}/8`;
        const shown = writeLength(valueOf(readLength(typedEighths, inches)), inches);
        expect(valueOf(readLength(shown, inches))).toBe((steps * 254) / 800 + 0);
      }),
      { numRuns: 3000 },
    );
  });

  test('a decimal number of inches is read as the number of cm nearest to it, whatever its decimals', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 99_999 }), fc.integer({ min: 0, max: 4 }), (digits, decimals) => {
        const text = (digits / 10 ** decimals).toFixed(decimals);
        // 254 × the digits, with the point two places further left, is the product in decimals.
        const exact = Number(`${digits * 254}e-${decimals + 2}`);
        expect(valueOf(readLength(`${text} in`, inCm))).toBe(exact);
      }),
      { numRuns: 3000 },
    );
  });

  test('numbers, percentages and gauges read back to within half a step', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -5000, max: 5000, noNaN: true }),
        fc.integer({ min: 0, max: 4 }),
        decimal,
        fc.constantFrom('10 cm' as const, '4 in' as const),
        (stored, decimals, decimal, over) => {
          const step = 10 ** -decimals;
          const shown = writeNumber(stored, { decimal, decimals });
          expect(close(valueOf(readNumber(shown, { decimal })), stored, step)).toBe(true);
          const percent = writePercent(stored / 100, { decimal, decimals });
          expect(close(valueOf(readPercent(percent, { decimal })) * 100, stored, step)).toBe(true);
          const perCm = Math.abs(stored) / 1000 + 0.2;
          const gauge = writeGauge(perCm, over, { decimal, decimals });
          const back = valueOf(readGauge(gauge, over, { decimal }));
          expect(close(back * 10.16, perCm * 10.16, 1.016 * step)).toBe(true);
        },
      ),
      { numRuns: 3000 },
    );
  });

  test('whatever is typed is either read as a number or answered with a sentence', () => {
    const typed = fc.oneof(
      fc.string({ maxLength: 12 }),
      fc.string({ unit: fc.constantFrom(...'0123456789.,-−/ ½¼"\'cmin%'), maxLength: 12 }),
    );
    fc.assert(
      fc.property(typed, decimal, unit, (text, decimal, unit) => {
        const reads = [
          readLength(text, { unit, decimal }),
          readNumber(text, { decimal }),
          readCount(text, { decimal }),
          readPercent(text, { decimal }),
          readGauge(text, '4 in', { decimal }),
        ];
        for (const read of reads) {
          if ('value' in read) expect(Number.isFinite(read.value)).toBe(true);
          else expect(read.problem).toMatch(/^["A-Z0-9].*\.$/s);
        }
      }),
      { numRuns: 5000 },
    );
  });
});

describe('a short length that is left between two', () => {
  const inCm = { unit: 'cm', decimal: '.' } as const;
  const inInches = { unit: 'in', decimal: '.' } as const;

  test('is told to the hundredth where a tenth would be more than a twentieth off: 4 in are 0.16 cm more than 10 cm', () => {
    expect([0.16, -0.16, 0.05, 0.96, 0.83, 0.5].map((cm) => writeFineLength(cm, inCm))).toEqual([
      '0.16',
      '−0.16',
      '0.05',
      '1.0',
      '0.8',
      '0.5',
    ]);
    expect(writeFineLength(0.16, { unit: 'cm', decimal: ',' })).toBe('0,16');
    expect(writeFineLength(0.16, inInches)).toBe('0.063');
    expect(writeFineLength(0.75 * 2.54, inInches)).toBe('¾');
  });

  test('is told as every length is where it is longer than that, and where it is next to nothing', () => {
    expect([26.035, 1.04, 0, 0.004, -1e-12].map((cm) => writeFineLength(cm, inCm))).toEqual([
      '26.0',
      '1.0',
      '0.0',
      '0.0',
      '0.0',
    ]);
    expect(writeFineLength(26.035, inInches)).toBe('10¼');
  });
});
