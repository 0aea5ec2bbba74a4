import { describe, expect, it } from 'vitest';
import { placeByKey } from '../../../src/features/pictures/place-by-key';

describe('the keys along a picture', () => {
  it('go by one with the arrows and by ten with the page keys', () => {
    expect(placeByKey('ArrowRight', 4, { last: 30 })).toBe(5);
    expect(placeByKey('ArrowLeft', 4, { last: 30 })).toBe(3);
    expect(placeByKey('PageDown', 4, { last: 30 })).toBe(14);
    expect(placeByKey('PageUp', 14, { last: 30 })).toBe(4);
  });

  it('go to the first row, which is row 1, and to the last, and never past them', () => {
    const rows = { first: 1, last: 24 };
    expect(placeByKey('Home', 12, rows)).toBe(1);
    expect(placeByKey('End', 12, rows)).toBe(24);
    expect(placeByKey('ArrowLeft', 1, rows)).toBe(1);
    expect(placeByKey('PageDown', 20, rows)).toBe(24);
  });

  it('go nowhere in a picture without a place, nor with another key', () => {
    expect(placeByKey('ArrowRight', 0, { last: -1 })).toBeUndefined();
    expect(placeByKey('toString', 0, { last: 9 })).toBeUndefined();
  });
});
