import { describe, expect, it } from 'vitest';
import { moveByKey } from '../../../src/features/pictures/move-by-key';

describe('the keys along a picture', () => {
  it('go by one with the arrows and by ten with the page keys', () => {
    expect(moveByKey('ArrowRight', 4, { last: 30 })).toBe(5);
    expect(moveByKey('ArrowLeft', 4, { last: 30 })).toBe(3);
    expect(moveByKey('PageDown', 4, { last: 30 })).toBe(14);
    expect(moveByKey('PageUp', 14, { last: 30 })).toBe(4);
  });

  it('go to the first row, which is row 1, and to the last, and never past them', () => {
    const rows = { first: 1, last: 24 };
    expect(moveByKey('Home', 12, rows)).toBe(1);
    expect(moveByKey('End', 12, rows)).toBe(24);
    expect(moveByKey('ArrowLeft', 1, rows)).toBe(1);
    expect(moveByKey('PageDown', 20, rows)).toBe(24);
  });

  it('go nowhere in a picture without a place, nor with another key', () => {
    expect(moveByKey('ArrowRight', 0, { last: -1 })).toBeUndefined();
    expect(moveByKey('toString', 0, { last: 9 })).toBeUndefined();
  });
});
