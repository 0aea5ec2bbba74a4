import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  deepestBrackets,
  longestFormula,
  namesIn,
  renameIn,
  shownFormula,
  storedFormula,
} from '../../src/formulas';
import { readCheckedFormula } from '../../src/formulas/checked-formula';
import { readFormula } from '../../src/formulas/formula';
import { withoutHanging } from '../without-hanging';

const problem = (formula: string, decimal: '.' | ',' = '.'): string => {
  const read = readCheckedFormula(formula, decimal);
  return 'problem' in read ? read.problem : '';
};
const stored = (formula: string, decimal: '.' | ',' = '.'): string => {
  const read = readCheckedFormula(formula, decimal);
  if ('problem' in read) throw new Error(read.problem);
  return storedFormula(read.tokens);
};

describe('what may be typed', () => {
  it.each([
    ['= bust × 1,1', ',', 'bust * 1.1'],
    ['=finished_bust ÷ 2 − CM(3)', '.', 'finished_bust / 2 - CM(3)'],
    ['MAX(a, b)', '.', 'MAX(a; b)'],
    ['MAX(1,5; b)', ',', 'MAX(1.5; b)'],
    ['if(a ≥ b; a; b)', '.', 'IF(a >= b; a; b)'],
    ['a ≠ b', '.', 'a <> b'],
    ['-(a) + -3%', '.', '-(a) + -3%'],
    ['.5 * größe_2', '.', '.5 * größe_2'],
    ['1.5e3', '.', '1.5e3'],
    ['PI() * CM(18)', '.', 'PI() * CM(18)'],
    ['"a ""b""" & "c"', '.', '"a ""b""" & "c"'],
  ] as const)('%s with %s for decimals is stored as %s', (typed, decimal, expected) => {
    expect(stored(typed, decimal)).toBe(expected);
  });

  it('is shown as people write it', () => {
    expect(shownFormula('bust * 1.1 / 2 - CM(3)', ',')).toBe('bust × 1,1 ÷ 2 − CM(3)');
  });

  it('reads back from how it is shown to how it is stored', () => {
    for (const formula of ['a * 1.25 - b / 2', 'IF(a <= b; a; b)', 'MAX(a; 0.5; -b) ^ 2']) {
      for (const decimal of ['.', ','] as const)
        expect(stored(shownFormula(formula, decimal), decimal)).toBe(formula);
    }
  });
});

describe('what may not', () => {
  it.each([
    ['', 'The formula is empty'],
    ['=', 'The formula is empty'],
    ['bust +', 'Something is missing after +.'],
    ['* bust', 'A value is missing before *.'],
    ['bust hips', 'An operator such as + or * is missing before hips.'],
    ['2 (bust)', 'An operator such as * is missing before the bracket.'],
    ['(bust', 'This bracket is not closed'],
    ['bust)', 'This bracket was never opened.'],
    ['()', 'Something is missing before this bracket.'],
    ['MAX(a;;b)', 'An argument of MAX is missing here.'],
    ['MAX(a;)', 'Something is missing before this bracket.'],
    ['(a; b)', '";" stands only between the arguments of a function.'],
    [
      '1,5 * a',
      'A comma stands only between the arguments of a function; decimals have a point here, as in 1.5.',
    ],
    ['a + 10 cm', 'Write CM(10) for 10 cm.'],
    ['a + 4in', 'Write IN(4) for 4 in.'],
    ['A1:A3', 'A range is not used here'],
    ['$A$1', 'Cells are called by their names here'],
    ['Sheet!a', 'Cells are called by their names here'],
    ['{1;2}', 'Lists in { } are not used here'],
    ['RAND()', 'There is no function RAND here'],
    ['INDIRECT("a")', 'There is no function INDIRECT here'],
    ['"abc', 'A text begins here and does not end'],
    ['2x', 'is neither a number nor a name'],
    ['a # b', '"#" has no place in a formula.'],
    ['CM()', 'CM takes number in its brackets; here are 0 arguments.'],
    ['CM(1; 2)', 'CM takes number in its brackets; here are 2 arguments.'],
    ['PI(1)', 'PI takes nothing in its brackets; here is 1 argument.'],
    [`${'a+'.repeat(longestFormula)}a`, `at most ${longestFormula} characters`],
    [
      `${'('.repeat(deepestBrackets + 1)}a${')'.repeat(deepestBrackets + 1)}`,
      `at most ${deepestBrackets} deep`,
    ],
  ])('%s', (formula, sentence) => {
    expect(problem(formula)).toContain(sentence);
  });

  it('500 brackets and 10,000 characters are refused', () => {
    withoutHanging(() => {
      expect(problem(`${'('.repeat(500)}a${')'.repeat(500)}`)).not.toBe('');
      expect(problem('a+'.repeat(5000))).not.toBe('');
    });
  });

  it('says where the trouble stands', () => {
    expect(readCheckedFormula('bust + WOOL(2)')).toMatchObject({ start: 7, end: 11 });
  });

  it('is asked of the grammar alone where no functions are known', () => {
    expect(readFormula('bust + WOOL(2; 3)')).toHaveProperty('tokens');
    expect(readFormula('bust + WOOL(2; )')).toMatchObject({
      problem: 'Something is missing before this bracket.',
    });
    expect(namesIn('bust + WOOL(waist)')).toEqual(['bust', 'waist']);
  });
});

it('never throws, and its tokens cover the text it read', () => {
  const piece = fc.constantFrom(
    'bust',
    '1.5',
    '(',
    ')',
    ';',
    '+',
    '*',
    'MAX',
    '"a"',
    ' ',
    ',',
    '"',
    '½',
    '𝒳',
    '\n',
    '%',
  );
  fc.assert(
    fc.property(
      fc.oneof(
        fc.string({ unit: 'binary' }),
        fc.array(piece).map((parts) => parts.join('')),
      ),
      (text) => {
        const read = readCheckedFormula(text);
        if ('problem' in read) {
          expect(read.problem).toMatch(/\.$/);
          return;
        }
        const begin = text.match(/^\s*=?/)![0].length;
        expect(read.tokens.map((token) => text.slice(token.start, token.end)).join('')).toBe(
          text.slice(begin),
        );
        // What was stored reads as itself.
        expect(stored(storedFormula(read.tokens))).toBe(storedFormula(read.tokens));
      },
    ),
    { numRuns: 3000 },
  );
});

describe('names', () => {
  it('are found whatever their case, each once, and not inside texts or functions', () => {
    expect(namesIn('Bust + bust * MAX(hips; 2) & "waist"')).toEqual(['bust', 'hips']);
  });

  it('are exchanged whole, and two can change places', () => {
    const swap = new Map([
      ['a', 'b'],
      ['b', 'a'],
    ]);
    expect(renameIn('a + b * ab - A & "a"', swap)).toBe('b + a * ab - b & "a"');
  });

  it('are left as they are in a formula that cannot be read', () => {
    expect(renameIn('a + + * b', new Map([['a', 'c']]))).toBe('a + + * b');
  });
});
