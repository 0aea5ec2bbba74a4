import fc from 'fast-check';
import { expect, test } from 'vitest';
import { checkJoins } from '../../src/craft/joins';
import type { Join } from '../../src/craft/types';

const join = (by: Join['by'], ...counts: number[]): Join => ({
  name: 'Shoulder',
  by,
  sides: counts.map((count, i) => ({ name: ['back', 'front', 'yoke'][i] ?? `side ${i}`, count })),
});

test('21 stitches meet 21 stitches', () => {
  expect(checkJoins([join('stitch', 21, 21)])).toEqual([
    { name: 'Shoulder', holds: true, message: 'Shoulder matches: 21 stitches on every side.' },
  ]);
});

test('21 against 19 is said with both counts', () => {
  expect(checkJoins([join('stitch', 21, 19)])).toEqual([
    {
      name: 'Shoulder',
      holds: false,
      message: 'Shoulder does not match stitch for stitch: back has 21 stitches, front 19, which is 2 fewer.',
    },
  ]);
});

test('a seam row for row speaks of rows', () => {
  expect(checkJoins([join('row', 1, 3)])[0]!.message).toBe(
    'Shoulder does not match row for row: back has 1 row, front 3, which is 2 more.',
  );
});

test('one of three sides that differs is enough, and the others are said to agree', () => {
  expect(checkJoins([join('stitch', 21, 21, 24)])[0]).toMatchObject({
    holds: false,
    message: expect.stringContaining('front 21, the same; yoke 24, which is 3 more.'),
  });
});

test('a join needs two sides, and counts are whole', () => {
  expect(() => checkJoins([join('stitch', 21)])).toThrow('The sides of Shoulder are missing: 2 or more');
  expect(() => checkJoins([join('stitch', 21, 20.5)])).toThrow(
    'The count of front in Shoulder has to be a whole',
  );
});

test('no joins, nothing to say', () => {
  expect(checkJoins([])).toEqual([]);
});

test('a join holds where all its counts are the same and only there, and every count of one that fails is named', () => {
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: 0, max: 4 }), { minLength: 2, maxLength: 4 }),
      fc.constantFrom('stitch' as const, 'row' as const),
      (counts, by) => {
        const [result] = checkJoins([join(by, ...counts)]);
        expect(result!.holds).toBe(new Set(counts).size === 1);
        if (!result!.holds) {
          expect(counts.every((count) => new RegExp(`\\b${count}\\b`).test(result!.message))).toBe(true);
        }
      },
    ),
    { numRuns: 2000 },
  );
});

test('one stitch and one row are said as one', () => {
  const textOf = (by: Join['by'], count: number) => checkJoins([join(by, count, count)])[0]!.message;
  expect(textOf('stitch', 1)).toBe('Shoulder matches: 1 stitch on every side.');
  expect(textOf('row', 1)).toBe('Shoulder matches: 1 row on every side.');
  expect(textOf('row', 2)).toBe('Shoulder matches: 2 rows on every side.');
});

test('a join and a side without a name are called a join and a side', () => {
  const sides = [{ count: 3 }, { count: 4 }];
  expect(checkJoins([{ by: 'row', sides } as never])).toEqual([
    {
      name: 'A join',
      holds: false,
      message: 'A join does not match row for row: a side has 3 rows, a side 4, which is 1 more.',
    },
  ]);
  expect(() => checkJoins([undefined as never])).toThrow('What A join is matched by has to be');
  expect(() => checkJoins([{ name: 'Hem', by: 'row', sides: [undefined, undefined] } as never])).toThrow(
    'The count of a side in Hem has to be a number; it is missing.',
  );
});
