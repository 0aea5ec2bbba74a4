import { describe, expect, test } from 'vitest';
import { finished, fitName } from '../../src/craft/ease';

const inch = 2.54;

describe('finished measurement', () => {
  test('a body of 90 cm with 8 cm of ease is 98 cm', () => {
    expect(finished(90, { length: 8 })).toBe(98);
  });

  test('10 % of ease on 90 cm is 99 cm, and −10 % is 81 cm', () => {
    expect(finished(90, { percent: 10 })).toBeCloseTo(99, 12);
    expect(finished(90, { percent: -10 })).toBeCloseTo(81, 12);
  });

  test('negative ease that leaves nothing is refused with what would work', () => {
    expect(() => finished(90, { length: -90 })).toThrow('take an ease of more than −90 cm (−100 %)');
    expect(() => finished(90, { percent: -100 })).toThrow(
      'An ease of −100 % on a body measurement of 90 cm leaves nothing',
    );
  });

  test('an ease is one or the other', () => {
    expect(() => finished(90, {} as never)).toThrow('either a length in cm or a per cent');
    expect(() => finished(90, { length: 1, percent: 1 })).toThrow('either a length in cm or a per cent');
    expect(() => finished(90, null as never)).toThrow('either a length in cm or a per cent');
    expect(() => finished(90, 8 as never)).toThrow('either a length in cm or a per cent');
    expect(() => finished(90, undefined as never)).toThrow('either a length in cm or a per cent');
  });
});

describe('the name of a fit', () => {
  const bust = 36 * inch;
  const named = (inches: number) => fitName(bust, { length: inches * inch });

  test.each([
    [-4, 'very close-fitting'],
    [-3, 'very close-fitting'],
    [0, 'close-fitting'],
    [2, 'classic'],
    [3, 'classic'],
    [4, 'loose-fitting'],
    [5, 'loose-fitting'],
    [6, 'oversized'],
    [12, 'oversized'],
  ])('%s in of ease is %s', (inches, name) => {
    expect(named(inches)).toEqual({ name, between: false });
  });

  test.each([
    [5, 'classic'],
    [10, 'loose-fitting'],
    [15, 'oversized'],
    [-10, 'very close-fitting'],
  ])('the published %s cm are the band of the inches they were rounded from, %s', (length, name) => {
    expect(fitName(bust, { length })).toEqual({ name, between: false });
  });

  test.each([
    [1.5, 'classic'],
    [0.5, 'close-fitting'],
    [-0.5, 'close-fitting'],
    [-1.5, 'very close-fitting'],
    [-2, 'very close-fitting'],
    [-6, 'very close-fitting'],
  ])('%s in of ease is in no published band; %s is the nearest', (inches, name) => {
    expect(named(inches)).toEqual({ name, between: true });
  });

  test('of two bands as near, the roomier is named', () => {
    expect(named(1)).toEqual({ name: 'classic', between: true });
    expect(named(-1)).toEqual({ name: 'close-fitting', between: true });
  });

  test('a tenth of an inch below a band still is in it, and more is not', () => {
    expect(named(1.9)).toEqual({ name: 'classic', between: false });
    expect(named(1.89).between).toBe(true);
    expect(named(3.9).name).toBe('loose-fitting');
    expect(named(3.89).name).toBe('classic');
    expect(named(-4.1).between).toBe(false);
    expect(named(-4.11).between).toBe(true);
    expect(named(0.1).between).toBe(false);
    expect(named(0.11).between).toBe(true);
  });

  test('an ease in per cent is named by what it comes to at the bust', () => {
    expect(fitName(50 * inch, { percent: 10 })).toEqual({ name: 'loose-fitting', between: false });
  });
});
