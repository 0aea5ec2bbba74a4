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

test('what passes and what does not is said with both measurements', () => {
  expect(passes({ count: 60, stitchesPerCm: 1.5, stretch: 1.4, body: 55 }).message).toBe(
    'The opening stretches to 56 cm and passes 55 cm.',
  );
  expect(passes({ count: 60, stitchesPerCm: 1.5, stretch: 1.4, body: 57 }).message).toBe(
    'The opening stretches to 56 cm, short of the 57 cm that have to pass: 62 stitches would do, or a stretchier fabric, or a fastening.',
  );
});

test('a fabric that does not give stretches 1 time its width, and none stretches a thousand times and more', () => {
  expect(stretchOf({ relaxed: 10, stretched: 10 })).toBe(1);
  expect(stretchOf({ relaxed: 1, stretched: 1000 })).toBe(1000);
  expect(() => stretchOf({ relaxed: 1, stretched: 1001 })).toThrow('not to 1001 times');
  expect(() => stretchOf({ relaxed: 10, stretched: 9.99 })).toThrow('not to 0.999 times');
});

test('an opening for next to nothing still is one stitch', () => {
  expect(passes({ count: 1, stitchesPerCm: 0.0001, stretch: 1, body: 0.000001 }).least).toBe(1);
});
