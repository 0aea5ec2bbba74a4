import { describe, expect, test } from 'vitest';
import {
  easesIn,
  gradingInWords,
  gradingTable,
  gradingTitle,
  type Graded,
} from '../../../src/pictures/charts/grading';

const sizes = ['S', 'M', 'L'].map((label) => ({ id: label.toLowerCase(), label }));
const graded = (
  label: string,
  of: Graded['of'],
  values: (number | null)[],
  more: Partial<Graded> = {},
): Graded => ({ id: label, label, of, values, ...more });
const spec = (...measures: Graded[]) =>
  ({ sizes, measures, unit: 'cm', decimal: '.', theme: 'light' }) as const;

const bust = graded('Bust', 'body', [84, 94, 104]);

describe('a grading', () => {
  test('says what it shows', () => {
    expect(gradingTitle(spec(bust, graded('Finished bust', 'finished', [])))).toBe(
      'Bust and finished bust by size, in cm',
    );
    expect(gradingTitle({ ...spec(bust), unit: 'in' })).toBe('Bust by size, in inches');
    expect(gradingTitle(spec())).toBe('No measurement is chosen');
  });

  test('finds the ease between a finished measurement and its body', () => {
    const finished = graded('Finished bust', 'finished', [104, 114, null], { over: 'Bust' });
    expect(easesIn(spec(bust, finished)).map(({ values }) => values)).toEqual([[20, 20, null]]);
    expect(easesIn(spec(finished))).toEqual([]);
  });

  test('compares with the only body measurement where none is told, and with none of two', () => {
    const width = graded('Sleeve width', 'finished', [40, 42, 44]);
    const arm = graded('Upper arm', 'body', [28, 30, 32]);
    expect(easesIn(spec(arm, width))[0]?.values).toEqual([12, 12, 12]);
    expect(easesIn(spec(arm, bust, width))).toEqual([]);
  });

  test('an ease that is the same everywhere is said once', () => {
    expect(gradingInWords(spec(bust, graded('Finished bust', 'finished', [104, 114, 124])))).toEqual([
      'The ease of finished bust over bust is 20.0 cm in every size.',
    ]);
  });

  test('an ease that runs away is said to, with the sizes it lies between', () => {
    expect(gradingInWords(spec(bust, graded('Finished bust', 'finished', [88, 103, 118])))).toEqual([
      'The ease of finished bust over bust goes from 4.0 cm in S to 14.0 cm in L, and runs away: 10.0 cm lie between them.',
    ]);
    expect(gradingInWords(spec(bust, graded('Finished bust', 'finished', [82, 93, 104])))).toEqual([
      'The ease of finished bust over bust goes from −2.0 cm in S to 0.0 cm in L.',
    ]);
  });

  test('a size that does not grow, or shrinks, is named', () => {
    expect(gradingInWords(spec(graded('Armhole', 'finished', [20, 20.05, 21])))).toEqual([
      'Armhole does not grow from S to M.',
    ]);
    expect(gradingInWords(spec(graded('Armhole', 'finished', [20, 22, 21])))).toEqual([
      'Armhole shrinks by 1.0 cm from M to L.',
    ]);
    expect(gradingInWords(spec(graded('Band', 'finished', [4, 4, 4])))).toEqual([
      'Band is 4.0 cm in every size.',
    ]);
  });

  test('a size without a value is missing, and says why', () => {
    const cuff = graded('Cuff', 'finished', [20, null, 24], {
      problems: [undefined, 'The rib has no gauge yet.', undefined],
    });
    expect(gradingInWords(spec(cuff))).toEqual(['Cuff is missing in M: The rib has no gauge yet.']);
  });

  test('has a table with the step from size to size and the ease', () => {
    const finished = graded('Finished bust', 'finished', [104, 114, 110], { over: 'Bust' });
    const { headings, rows } = gradingTable({ ...spec(bust, finished), decimal: ',' });
    expect(headings).toEqual([
      'Size',
      'Bust',
      'Step',
      'Finished bust',
      'Step',
      'Ease, Finished bust over Bust',
    ]);
    expect(rows).toEqual([
      ['S', '84,0', '–', '104,0', '–', '20,0'],
      ['M', '94,0', '+10,0', '114,0', '+10,0', '20,0'],
      ['L', '104,0', '+10,0', '110,0', '−4,0', '6,0'],
    ]);
  });
});
