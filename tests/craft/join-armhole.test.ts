import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { armholeFit, joinArmhole } from '../../src/craft/join-armhole';

describe('stitches at an armhole', () => {
  test('31 rows at 3 for 4 are 23 a side, with 8 at the underarm and 2 for the seam: 56', () => {
    expect(joinArmhole({ sideRows: 31, pick: 3, of: 4, underarm: 8, seam: 2 })).toBe(56);
  });

  test('half a stitch goes up: 30 rows at 3 for 4 are 23 a side and not 22', () => {
    expect(joinArmhole({ sideRows: 30, pick: 3, of: 4, underarm: 0, seam: 0 })).toBe(46);
  });

  test('both sides are equal, so two halves never make one stitch: 2 × 7½ is 16', () => {
    expect(joinArmhole({ sideRows: 15, pick: 1, of: 2, underarm: 0, seam: 0 })).toBe(16);
  });

  test('less underarm and seam an even count is left, within a stitch of twice the ratio', () => {
    const count = fc.integer({ min: 1, max: 400 });
    fc.assert(
      fc.property(count, count, count, count, count, (sideRows, pick, of, underarm, seam) => {
        const sides = joinArmhole({ sideRows, pick, of, underarm, seam }) - underarm - seam;
        expect(sides % 2).toBe(0);
        const exact = (sideRows * pick) / of;
        expect(sides / 2 - exact).toBeGreaterThan(-0.5 - 1e-9);
        expect(sides / 2 - exact).toBeLessThanOrEqual(0.5 + 1e-9);
      }),
      { numRuns: 3000 },
    );
  });

  test('beyond 2^53 no digit is lost', () => {
    expect(
      joinArmhole({ sideRows: 999_999_999, pick: 999_999_999, of: 999_999_998, underarm: 0, seam: 0 }),
    ).toBe(2e9);
  });

  test('an armhole of nothing is refused', () => {
    expect(() => joinArmhole({ sideRows: 0, pick: 1, of: 1, underarm: 0, seam: 0 })).toThrow(
      'no stitches to join',
    );
  });
});

describe('how a sleeve lies', () => {
  test('a sleeve of 40 cm at an armhole of 36 cm flares, being 11.1 % more', () => {
    const fit = armholeFit({ count: 56, stitchesPerCm: 1.4, armhole: 36 });
    expect(fit.width).toBeCloseTo(40, 12);
    expect(fit.off).toBeCloseTo(1 / 9, 12);
    expect(fit.holds).toBe(false);
    expect(fit.message).toContain('11.1 % more: it will flare');
  });

  test('a sleeve of 40 cm at an armhole of 45 cm puckers', () => {
    expect(armholeFit({ count: 56, stitchesPerCm: 1.4, armhole: 45 }).message).toContain(
      '11.1 % less: it will pucker',
    );
  });

  test('8 % are let pass, and the limit can be moved', () => {
    expect(armholeFit({ count: 108, stitchesPerCm: 1, armhole: 100 }).holds).toBe(true);
    expect(armholeFit({ count: 109, stitchesPerCm: 1, armhole: 100 }).holds).toBe(false);
    expect(armholeFit({ count: 109, stitchesPerCm: 1, armhole: 100, within: 0.1 }).holds).toBe(true);
  });
});

describe('the least and the greatest armhole', () => {
  const none = { sideRows: 0, pick: 1, of: 1, underarm: 0, seam: 0 };

  test('is a stitch, and a million million', () => {
    expect(joinArmhole({ ...none, underarm: 1 })).toBe(1);
    expect(joinArmhole({ ...none, underarm: 1e12 })).toBe(1e12);
    expect(() => joinArmhole({ ...none, underarm: 1e12, seam: 1 })).toThrow(
      'The armhole would have 1000000000001 stitches',
    );
  });
});

test('a sleeve as wide as its armhole is said to lie flat', () => {
  expect(armholeFit({ count: 56, stitchesPerCm: 1.4, armhole: 40 }).message).toBe(
    'The sleeve is 40 cm where the armhole is 40 cm: it lies flat.',
  );
});
