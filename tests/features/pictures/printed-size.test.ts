import { describe, expect, it } from 'vitest';
import { printedSize } from '../../../src/features/pictures/printed-size';

describe('a picture for print', () => {
  it('of 96 px, an inch, is 300 dots wide', () => {
    expect(printedSize(96, 192)).toEqual({ width: 300, height: 600, dpi: 300 });
  });

  it('too large for any canvas is drawn as large as can be, in its own proportions', () => {
    const { width, height, dpi } = printedSize(1000, 20_000);
    expect(height).toBeLessThanOrEqual(16_000);
    expect(height / width).toBeCloseTo(20, 1);
    expect(height / dpi).toBeCloseTo(20_000 / 96, 1);
  });
});
