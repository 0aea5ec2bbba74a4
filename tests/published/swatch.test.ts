import { describe, expect, test } from 'vitest';
import { cmPerInch, gaugeOf } from '../../src/craft';

/*
 * Source: NIST Special Publication 811, Guide for the Use of the International System of Units (2008), appendix B.8:
 * 1 in is 2.54 cm exactly; from memory. The trade writes 4 in as if it were 10 cm.
 */
describe('NIST SP 811, B.8: 1 in is 2.54 cm exactly', () => {
  test('the inch', () => {
    expect(cmPerInch).toBe(2.54);
  });

  test('9 stitches over 4 in are 2¼ to the inch, and 8.86 to 10 cm, not 9', () => {
    const { perCm } = gaugeOf([{ count: 9, over: 4 * 2.54 }]);
    expect(perCm * 2.54).toBeCloseTo(2.25, 12);
    expect(perCm * 10).toBeCloseTo(8.858, 3);
  });

  test('12 rows over 4 in are 3 to the inch', () => {
    expect(gaugeOf([{ count: 12, over: 4 * 2.54 }]).perCm * 2.54).toBeCloseTo(3, 12);
  });
});
