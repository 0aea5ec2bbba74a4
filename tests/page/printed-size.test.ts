import { describe, expect, it } from 'vitest';
import { printedSize } from '../../src/page/pictures/printed-size';

describe('a picture for print', () => {
  it('of 96 px, an inch, is 300 dots wide', () => {
    expect(printedSize(96, 192)).toEqual({ width: 300, height: 600, perPx: 3.125 });
  });

  it('too large for any canvas is drawn as large as can be, in its own proportions', () => {
    const { width, height } = printedSize(1000, 20_000);
    expect(height).toBeLessThanOrEqual(16_000);
    expect(height / width).toBeCloseTo(20, 1);
  });
});
