import { describe, expect, it } from 'vitest';
import { ownLine } from '../../../src/words/recount/by-size';
import { forSize } from '../../../src/words/recount/size-numbers';

describe('a line is read by one size', () => {
  it.each([
    ['sc 6 (7, 8), sc2tog', 1, 'sc 7, sc2tog'],
    ['k6 (7, 8)', 2, 'k8'],
    ['every 6th (–, 4th) row', 1, 'every – row'],
    ['[64 (68, 72) sts]', 0, '[64 sts]'],
    ['34 [36, 40] sts', 2, '40 sts'],
    ['34 (36) (40) sts', 2, '40 sts'],
    ['k6, (k2, p2) 3 times', 1, 'k6, (k2, p2) 3 times'],
  ])('%s in size %i: %s', (line, place, text) => {
    expect(forSize(line, place, 3)).toBe(text);
  });

  it('says which list has the wrong number of sizes', () => {
    expect(forSize('k6 (7), p2', 0, 3)).toEqual({ problem: '“6 (7)” has 2 numbers for 3 sizes.' });
  });

  it('finds the sizes a line is for by their labels, however they are spelt', () => {
    const sizes = ['XS', 'X', 'M (tall)', 'L, wide', '2: two'];
    expect(ownLine('Size XS: sc 6', sizes)).toEqual({ places: [0], text: 'sc 6' });
    expect(ownLine('Sizes X (M (tall), L, wide): sc 6', sizes)).toEqual({ places: [1, 2, 3], text: 'sc 6' });
    expect(ownLine('Size 2: two: sc 6', sizes)).toEqual({ places: [4], text: 'sc 6' });
    expect(ownLine('Sizes XS, X: sc 6', sizes)).toEqual({ places: [0, 1], text: 'sc 6' });
    expect(ownLine('Size S: sc 6', sizes)).toBeUndefined();
  });
});
