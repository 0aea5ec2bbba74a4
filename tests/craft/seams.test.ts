import { expect, test } from 'vitest';
import { seamedWidth, seamAllowance } from '../../src/craft/seams';

const sewn = { seams: 2, taken: 1, stitchesPerCm: 1.4 };

test('one stitch taken by each side of two seams at 14 sts to 10 cm costs 2.9 cm', () => {
  expect(seamAllowance(sewn)).toBeCloseTo(2.857, 3);
});

test('two pieces of 75 stitches, sewn up, are 104.3 cm and not 107.1', () => {
  expect(seamedWidth({ ...sewn, stitches: [75, 75] })).toBeCloseTo(146 / 1.4, 12);
  expect(seamedWidth({ ...sewn, stitches: [75, 75], seams: 0 })).toBeCloseTo(150 / 1.4, 12);
});

test('the width and what the seams take add up to the pieces side by side', () => {
  const stitches = [75, 38, 38];
  const all =
    seamedWidth({ ...sewn, stitches, seams: 4, taken: 2 }) + seamAllowance({ ...sewn, seams: 4, taken: 2 });
  expect(all).toBeCloseTo(151 / 1.4, 12);
});

test('seams that take everything are refused', () => {
  expect(() => seamedWidth({ ...sewn, stitches: [2, 2] })).toThrow(
    'The seams take 4 stitches, and the pieces have 4',
  );
});
