import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dropSleeveLength } from '../../src/craft/drop-sleeve';

test('75 cm from neck to wrist less half of a 60 cm back leave a sleeve of 45 cm', () => {
  expect(dropSleeveLength({ neckToWrist: 75, bodyWidth: 60 })).toBe(45);
});

test('on a dropped shoulder every 2 cm on the body take 1 cm off the sleeve', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 50, max: 100 }),
      fc.integer({ min: 30, max: 60 }),
      (neckToWrist, bodyWidth) => {
        const narrow = dropSleeveLength({ neckToWrist, bodyWidth });
        const wide = dropSleeveLength({ neckToWrist, bodyWidth: bodyWidth + 2 });
        expect(narrow - wide).toBeCloseTo(1, 12);
      },
    ),
    { numRuns: 1000 },
  );
});

test('a body that reaches the wrist leaves no sleeve, and the sentence says how wide it may be', () => {
  expect(() => dropSleeveLength({ neckToWrist: 70, bodyWidth: 140 })).toThrow(
    'A body narrower than 140 cm leaves one',
  );
});
