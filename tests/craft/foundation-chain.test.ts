import { expect, test } from 'vitest';
import { foundationChain } from '../../src/craft/foundation-chain';

test.each([
  ['75 single crochet, turning chain of 1, not counted', 75, 1, false, 76],
  ['75 half double crochet, turning chain of 2, counted', 75, 2, true, 76],
  ['75 double crochet, turning chain of 3, counted', 75, 3, true, 77],
  ['75 treble, turning chain of 4, counted', 75, 4, true, 78],
  ['75 double crochet, turning chain of 3, not counted', 75, 3, false, 78],
  ['75 stitches without a turning chain', 75, 0, false, 75],
])('%s', (_, stitches, turning, counts, chains) => {
  expect(foundationChain({ stitches, turning, counts })).toBe(chains);
});

test('a turning chain of none cannot count', () => {
  expect(() => foundationChain({ stitches: 75, turning: 0, counts: true })).toThrow(
    'A turning chain of 0 cannot count',
  );
});
