import fc from 'fast-check';
import { expect, test } from 'vitest';
import { buttonholes } from '../../src/craft/buttonholes';

test('5 buttonholes of 3 on 80 stitches with 3 at each end: gaps of 15, 15, 14, 15', () => {
  expect(buttonholes({ length: 80, ends: 3, count: 5, width: 3 })).toEqual({
    starts: [4, 22, 40, 57, 75],
    gaps: [15, 15, 14, 15],
  });
});

test('two buttonholes stand at the two ends', () => {
  expect(buttonholes({ length: 20, ends: 2, count: 2, width: 2 })).toEqual({ starts: [3, 17], gaps: [12] });
});

test('a single buttonhole stands in the middle', () => {
  expect(buttonholes({ length: 11, ends: 2, count: 1, width: 3 })).toEqual({ starts: [5], gaps: [] });
});

test('a hole may start on the first stitch', () => {
  expect(buttonholes({ length: 7, ends: 0, count: 4, width: 1 })).toEqual({
    starts: [1, 3, 5, 7],
    gaps: [1, 1, 1],
  });
});

test('9 holes of 3 do not fit on 40 with 3 at each end, 8 do', () => {
  expect(() => buttonholes({ length: 40, ends: 3, count: 9, width: 3 })).toThrow(
    '9 buttonholes of 3 with 3 at each end take at least 41 stitches, and the band has 40; 8 buttonholes would fit.',
  );
  expect(buttonholes({ length: 40, ends: 3, count: 8, width: 3 }).starts).toHaveLength(8);
  expect(() => buttonholes({ length: 6, ends: 3, count: 1, width: 2 })).toThrow('not one would fit');
});

test('whatever the band: the ends are as asked, gaps differ by at most one, and every stitch is accounted for', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 10 }),
      fc.integer({ min: 2, max: 40 }),
      fc.integer({ min: 1, max: 8 }),
      fc.integer({ min: 0, max: 900 }),
      (ends, count, width, spare) => {
        const length = 2 * ends + count * width + count - 1 + spare;
        const { starts, gaps } = buttonholes({ length, ends, count, width });
        expect(starts).toHaveLength(count);
        expect(starts[0]).toBe(ends + 1);
        expect(starts.at(-1)! + width - 1 + ends).toBe(length);
        expect(starts.slice(1).map((start, i) => start - starts[i]! - width)).toEqual(gaps);
        expect(Math.max(...gaps) - Math.min(...gaps)).toBeLessThanOrEqual(1);
        expect(Math.min(...gaps)).toBeGreaterThanOrEqual(1);
      },
    ),
    { numRuns: 3000 },
  );
});

test('the number of holes that is said to fit does fit, and one more does not', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 300 }),
      fc.integer({ min: 0, max: 20 }),
      fc.integer({ min: 1, max: 8 }),
      (length, ends, width) => {
        let message = '';
        try {
          buttonholes({ length, ends, count: 1000, width });
        } catch (error) {
          message = (error as Error).message;
        }
        const most = Number(/(\d+) buttonholes? would fit/.exec(message)?.[1] ?? 0);
        if (most > 0) expect(buttonholes({ length, ends, count: most, width }).starts).toHaveLength(most);
        expect(() => buttonholes({ length, ends, count: most + 1, width })).toThrow('at least');
      },
    ),
    { numRuns: 2000 },
  );
});

test('where one buttonhole would fit, it is said of one', () => {
  expect(() => buttonholes({ length: 5, ends: 1, count: 2, width: 3 })).toThrow(
    '2 buttonholes of 3 with 1 at each end take at least 9 stitches, and the band has 5; 1 buttonhole would fit.',
  );
  expect(() => buttonholes({ length: 4, ends: 1, count: 1, width: 3 })).toThrow(
    /^1 buttonhole of 3 .* not one/,
  );
});

test('a million buttonholes are laid out, and one more is refused', () => {
  const million = { length: 1_999_999, ends: 0, width: 1 };
  expect(buttonholes({ ...million, count: 1_000_000 }).starts.at(-1)).toBe(1_999_999);
  expect(() => buttonholes({ ...million, count: 1_000_001 })).toThrow('1000000 are the most');
});
