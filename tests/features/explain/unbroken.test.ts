import { describe, expect, it } from 'vitest';
import { unbroken, unbrokenFormula } from '../../../src/features/explain/unbroken';

const lines = (text: string) => unbroken([{ text }]).map((runs) => runs.map(({ text }) => text).join(''));

describe('a step that is longer than its line', () => {
  it('breaks before an operator, and keeps a number with its unit', () => {
    expect(lines('54 rows × 10 sts / 7 rows')).toEqual(['54 rows', '× 10 sts / 7 rows']);
    expect(lines('(13.33 cm)² + (26 sts ÷ (14 sts / 10 cm) ÷ 2)²')).toEqual([
      '(13.33 cm)²',
      '+ (26 sts',
      '÷ (14 sts / 10 cm)',
      '÷ 2)²',
    ]);
  });

  it('breaks between words as words do', () => {
    expect(lines('nearest multiple of 8 + 3')).toEqual(['nearest', 'multiple', 'of', '8', '+ 3']);
  });

  it('keeps what it begins from with its arrow, and a name whole', () => {
    expect(lines('58.5 sts → nearest')).toEqual(['58.5 sts →', 'nearest']);
    expect(unbroken([{ text: 'Stitches of the scarf', named: true }, { text: ' ÷ 2' }])).toEqual([
      [{ text: 'Stitches of the scarf', named: true }],
      [{ text: '÷ 2' }],
    ]);
  });

  it('keeps a struck unit a run of its own within its number', () => {
    expect(
      unbroken([{ text: '102' }, { text: ' ' }, { text: 'cm', cancels: true }, { text: ' × 14' }]),
    ).toEqual([[{ text: '102' }, { text: ' ' }, { text: 'cm', cancels: true }], [{ text: '× 14' }]]);
  });
});

describe('a formula that is longer than its line', () => {
  it('breaks between what is given to its function; a function inside it stays whole, and so does a text', () => {
    expect(unbrokenFormula('PIECE("a; (b"; 43; EVENROWS(44; body); f(x))')).toEqual([
      'PIECE("a; (b";',
      '43;',
      'EVENROWS(44; body);',
      'f(x))',
    ]);
    expect(unbrokenFormula('bust / 2 * body_sts')).toEqual(['bust / 2 * body_sts']);
  });
});
