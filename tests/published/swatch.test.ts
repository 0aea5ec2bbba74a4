import { describe, expect, test } from 'vitest';
import { gaugeOf } from '../../src/craft';

/* Source: The Neon Tea Party, "Understanding gauge, yarn & hook sizes" (theneonteaparty.com). */
describe('The Neon Tea Party: 9 sts x 12 rows = 4 in', () => {
  test('9 stitches over 4 in are 2¼ to the inch, and 8.86 to 10 cm, not 9', () => {
    const { perCm } = gaugeOf([{ count: 9, over: 4 * 2.54 }]);
    expect(perCm * 2.54).toBeCloseTo(2.25, 12);
    expect(perCm * 10).toBeCloseTo(8.858, 3);
  });

  test('12 rows over 4 in are 3 to the inch', () => {
    expect(gaugeOf([{ count: 12, over: 4 * 2.54 }]).perCm * 2.54).toBeCloseTo(3, 12);
  });
});
