import fc from 'fast-check';
import { expect, test } from 'vitest';
import { notionsFor } from '../../src/craft/notions';

test('a cord of 30 cm at every fourth of 60 eyelets from the second: 15 cords, 4.725 m with 5 % waste', () => {
  expect(notionsFor({ sites: 60, everyNth: 4, startAt: 2, lengthEach: 30, waste: 0.05 })).toEqual({
    pieces: 15,
    metres: 4.725,
  });
});

test('every site from the first, and no waste, unless told', () => {
  expect(notionsFor({ sites: 12, everyNth: 1, lengthEach: 25 })).toEqual({ pieces: 12, metres: 3 });
});

test('a step beyond the end leaves one piece', () => {
  expect(notionsFor({ sites: 5, everyNth: 10, lengthEach: 100 })).toEqual({ pieces: 1, metres: 1 });
});

test('the first piece cannot sit beyond the last site', () => {
  expect(() => notionsFor({ sites: 5, everyNth: 1, startAt: 6, lengthEach: 10 })).toThrow(
    'site 6, and there are 5: start at site 5 or before',
  );
});

test('waste typed as a per cent is refused', () => {
  expect(() => notionsFor({ sites: 5, everyNth: 1, lengthEach: 10, waste: 5 })).toThrow('0.05 for 5 %');
});

test('pieces are the sites that are met walking the edge in steps', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 500 }),
      fc.integer({ min: 1, max: 40 }),
      fc.integer({ min: 1, max: 500 }),
      fc.integer({ min: 1, max: 200 }),
      fc.integer({ min: 0, max: 100 }),
      (sites, everyNth, startAt, lengthEach, waste) => {
        fc.pre(startAt <= sites);
        let met = 0;
        for (let site = startAt; site <= sites; site += everyNth) met++;
        const notions = notionsFor({ sites, everyNth, startAt, lengthEach, waste: waste / 100 });
        expect(notions.pieces).toBe(met);
        expect(notions.metres).toBeCloseTo((met * lengthEach * (100 + waste)) / 10_000, 8);
      },
    ),
    { numRuns: 3000 },
  );
});

test('a single piece may go to the last site, and as much again may be lost in cutting', () => {
  expect(notionsFor({ sites: 5, everyNth: 1, startAt: 5, lengthEach: 100, waste: 1 })).toEqual({
    pieces: 1,
    metres: 2,
  });
});
