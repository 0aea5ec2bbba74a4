import { describe, expect, it } from 'vitest';
import { ownLine } from '../../../src/pattern/verify/by-size';
import { forSize } from '../../../src/pattern/verify/size-numbers';

describe('a line is read by one size', () => {
  it.each([
    ['sc 6 (7, 8), sc2tog', 1, 'sc 7, sc2tog'],
    ['k6 (7, 8)', 2, 'k8'],
    ['every 6th (–, 4th) row', 1, 'every – row'],
    ['[64 (68, 72) sts]', 0, '[64 sts]'],
    ['34 [36, 40] sts', 2, '40 sts'],
    ['34 (36) (40) sts', 2, '40 sts'],
    ['k6, (k2, p2) 3 times', 1, 'k6, (k2, p2) 3 times'],
  ])('%s in size %i: %s', (line, sizeIndex, text) => {
    expect(forSize(line, sizeIndex, 3)).toBe(text);
  });

  it('says which list has the wrong number of sizes', () => {
    expect(forSize('k6 (7), p2', 0, 3)).toEqual({ problem: '“6 (7)” has 2 numbers for 3 sizes.' });
  });

  it('finds the sizes a line is for by their labels, however they are spelt', () => {
    const sizes = ['XS', 'X', 'M (tall)', 'L, wide', '2: two'];
    expect(ownLine('Size XS: sc 6', sizes)).toEqual({ sizeIndices: [0], text: 'sc 6' });
    expect(ownLine('Sizes X (M (tall), L, wide): sc 6', sizes)).toEqual({
      sizeIndices: [1, 2, 3],
      text: 'sc 6',
    });
    expect(ownLine('Size 2: two: sc 6', sizes)).toEqual({ sizeIndices: [4], text: 'sc 6' });
    expect(ownLine('Sizes XS, X: sc 6', sizes)).toEqual({ sizeIndices: [0, 1], text: 'sc 6' });
    expect(ownLine('Size S: sc 6', sizes)).toBeUndefined();
  });

  it.each([
    ['Sizes XS and X: sc 6', [0, 1], 'sc 6'],
    ['Sizes XS, X, M: sc 6', [0, 1, 2], 'sc 6'],
    ['Sizes XS,  X and  M: sc 6', [0, 1, 2], 'sc 6'],
    ['Sizes XS(X,M): sc 6', [0, 1, 2], 'sc 6'],
    ['Size   X only: sc 6', [1], 'sc 6'],
    ['Size X  only :sc 6', [1], 'sc 6'],
    ['Size XS: (sc 2, inc) 3 times', [0], '(sc 2, inc) 3 times'],
    ['Size X: k2, p2', [1], 'k2, p2'],
    ['Size M: row 2: k2', [2], 'row 2: k2'],
  ])('“%s” is for its sizes, and what follows the colon is theirs', (line, sizeIndices, text) => {
    expect(ownLine(line, ['XS', 'X', 'M'])).toEqual({ sizeIndices, text });
  });

  it.each([
    ['no size', 'Sizes : sc 6'],
    ['sizes against their order', 'Sizes M (XS): sc 6'],
    ['a size twice', 'Sizes XS (XS): sc 6'],
    ['a bracket that is not closed', 'Sizes XS (X: sc 6'],
    ['words between the sizes', 'Sizes XS (X or so, M): sc 6'],
    ['words before the colon', 'Sizes XS (X) work: sc 6'],
    ['words before the sizes', 'For sizes XS: sc 6'],
  ])('a line with %s is for no size of its own', (_what, line) => {
    expect(ownLine(line, ['XS', 'X', 'M'])).toBeUndefined();
  });

  it('takes the longest label that stands there, whichever comes first, and none that is empty', () => {
    expect(ownLine('Size XS: sc 6', ['X', 'XS'])).toEqual({ sizeIndices: [1], text: 'sc 6' });
    expect(ownLine('Size S: sc 6', ['S', 'S'])).toEqual({ sizeIndices: [0], text: 'sc 6' });
    expect(ownLine('Size : sc 6', ['', 'S'])).toBeUndefined();
  });
});
