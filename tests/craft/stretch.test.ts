import fc from 'fast-check';
import { expect, test } from 'vitest';
import { passes, stretchOf } from '../../src/craft/stretch';

test('60 stitches at 15 to 10 cm that stretch 1.4 times open to 56 cm: too little for a head of 57, 62 would do', () => {
  const neck = passes({ count: 60, stitchesPerCm: 1.5, stretch: 1.4, body: 57 });
  expect(neck.opening).toBeCloseTo(56, 12);
  expect(neck.holds).toBe(false);
  expect(neck.least).toBe(62);
  expect(neck.message).toContain('short of the 57 cm');
});

test('exactly as wide as the head passes it', () => {
  expect(passes({ count: 60, stitchesPerCm: 1.5, stretch: 1.4, body: 56 }).holds).toBe(true);
});

test('the fewest stitches pass, and one fewer does not', () => {
  const tenths = (min: number, max: number) => fc.integer({ min, max }).map((n) => n / 10);
  fc.assert(
    fc.property(tenths(5, 40), tenths(10, 25), tenths(150, 1200), (stitchesPerCm, stretch, body) => {
      const least = passes({ count: 1, stitchesPerCm, stretch, body }).least;
      expect(passes({ count: least, stitchesPerCm, stretch, body }).holds).toBe(true);
      if (least > 1) expect(passes({ count: least - 1, stitchesPerCm, stretch, body }).holds).toBe(false);
    }),
    { numRuns: 2000 },
  );
});

test('a swatch of 10 cm that pulls out to 14 stretches 1.4 times; one that shrinks is measured wrong', () => {
  expect(stretchOf({ relaxed: 10, stretched: 14 })).toBe(1.4);
  expect(() => stretchOf({ relaxed: 14, stretched: 10 })).toThrow('measure it relaxed first');
});
