import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CraftError } from '../../src/craft/craft-error';
import { spaceEvenly } from '../../src/craft/space-evenly';

const sum = (list: number[]) => list.reduce((total, one) => total + one, 0);
const apart = (list: number[]) => (list.length === 0 ? 0 : Math.max(...list) - Math.min(...list));

describe('in the round', () => {
  test('30 to 20 is (1 plain, 2 together) ten times', () => {
    expect(spaceEvenly({ from: 30, to: 20, worked: 'round' })).toEqual({
      kind: 'decrease',
      shapings: 10,
      plain: [1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 0],
    });
  });

  test('20 to 23 has segments that end at 7, 13 and 20', () => {
    expect(spaceEvenly({ from: 20, to: 23, worked: 'round' })).toEqual({
      kind: 'increase',
      shapings: 3,
      plain: [7, 6, 7, 0],
    });
  });

  test('the share at the ends makes no difference where there are no ends', () => {
    const half = spaceEvenly({ from: 47, to: 40, worked: 'round', ends: 'half' });
    expect(spaceEvenly({ from: 47, to: 40, worked: 'round', ends: 'whole' })).toEqual(half);
  });
});

describe('flat', () => {
  test('20 to 18 with half gaps: of 8 plain beside each decrease 4 stand before it', () => {
    expect(spaceEvenly({ from: 20, to: 18, worked: 'flat' }).plain).toEqual([4, 8, 4]);
  });

  test('of an odd number of plain stitches the smaller half stands before a decrease, the greater before an increase', () => {
    expect(spaceEvenly({ from: 18, to: 16, worked: 'flat' }).plain).toEqual([3, 7, 4]);
    expect(spaceEvenly({ from: 18, to: 20, worked: 'flat' }).plain).toEqual([5, 9, 4]);
  });

  test('40 to 44 with whole gaps is an increase between sections of 8', () => {
    expect(spaceEvenly({ from: 40, to: 44, worked: 'flat', ends: 'whole' })).toEqual({
      kind: 'increase',
      shapings: 4,
      plain: [8, 8, 8, 8, 8],
    });
  });

  test('a row doubled has an increase after every stitch and none before the first', () => {
    for (const ends of ['half', 'whole'] as const) {
      expect(spaceEvenly({ from: 4, to: 8, worked: 'flat', ends }).plain).toEqual([1, 1, 1, 1, 0]);
    }
  });

  test('a row halved is nothing but decreases', () => {
    for (const ends of ['half', 'whole'] as const) {
      expect(spaceEvenly({ from: 8, to: 4, worked: 'flat', ends }).plain).toEqual([0, 0, 0, 0, 0]);
    }
  });

  test('half gaps at the ends unless told', () => {
    expect(spaceEvenly({ from: 55, to: 48, worked: 'flat' })).toEqual(
      spaceEvenly({ from: 55, to: 48, worked: 'flat', ends: 'half' }),
    );
    expect(spaceEvenly({ from: 55, to: 48, worked: 'flat' })).not.toEqual(
      spaceEvenly({ from: 55, to: 48, worked: 'flat', ends: 'whole' }),
    );
  });
});

test('no change is the whole row plain', () => {
  expect(spaceEvenly({ from: 60, to: 60, worked: 'flat' })).toEqual({
    kind: 'none',
    shapings: 0,
    plain: [60],
  });
});

describe('what one row has no room for', () => {
  test('20 to 8: only 10 decreases fit, and the other 2 need another row', () => {
    expect(() => spaceEvenly({ from: 20, to: 8, worked: 'flat' })).toThrow(
      'One row of 20 stitches has room for 10 decreases, which end it on 10; going from 20 to 8 takes 12. Put the other 2 into another row, or work 3 or more together.',
    );
  });

  test('20 to 41: only 20 increases fit, and the other 1 needs another row', () => {
    expect(() => spaceEvenly({ from: 20, to: 41, worked: 'round' })).toThrow(
      /room for 20 increases, which end it on 40; .*takes 21\. Put the other 1 into another row, or make 2 or more/,
    );
  });

  test('more than a million increases in one row are not laid out', () => {
    expect(() => spaceEvenly({ from: 1_000_001, to: 2_000_002, worked: 'round' })).toThrow(
      '1000001 shapings in one row are more than can be laid out; 1000000 are the most.',
    );
  });

  test('21 to 10 is one decrease too many, 21 to 11 is not', () => {
    expect(() => spaceEvenly({ from: 21, to: 10, worked: 'flat' })).toThrow(CraftError);
    expect(spaceEvenly({ from: 21, to: 11, worked: 'flat' }).shapings).toBe(10);
  });
});

describe('whatever the counts', () => {
  const row = fc
    .record({
      from: fc.oneof(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 1, max: 2000 })),
      part: fc.double({ min: 0, max: 1, noNaN: true }),
      kind: fc.constantFrom('decrease' as const, 'increase' as const),
      worked: fc.constantFrom('flat' as const, 'round' as const),
      ends: fc.constantFrom('half' as const, 'whole' as const),
    })
    .map(({ from, part, kind, worked, ends }) => {
      const room = kind === 'decrease' ? Math.floor(from / 2) : from;
      const shapings = Math.round(room * part);
      return { from, to: kind === 'decrease' ? from - shapings : from + shapings, worked, ends };
    });

  test('the row uses exactly the stitches it starts from and ends on exactly the count asked for', () => {
    fc.assert(
      fc.property(row, ({ from, to, worked, ends }) => {
        const { kind, shapings, plain } = spaceEvenly({ from, to, worked, ends });
        expect(plain).toHaveLength(shapings + 1);
        expect(plain.every((gap) => Number.isInteger(gap) && gap >= 0)).toBe(true);
        const [used, made] = kind === 'decrease' ? [2, 1] : [0, kind === 'increase' ? 1 : 0];
        expect(sum(plain) + shapings * used).toBe(from);
        expect(sum(plain) + shapings * made).toBe(to);
      }),
      { numRuns: 5000 },
    );
  });

  test('gaps differ by at most one, half gaps and the gap at a round join counted whole', () => {
    fc.assert(
      fc.property(row, ({ from, to, worked, ends }) => {
        const { shapings, plain } = spaceEvenly({ from, to, worked, ends });
        if (shapings === 0) return;
        const inner = plain.slice(1, -1);
        const [first, last] = [plain[0]!, plain.at(-1)!];
        if (worked === 'round') {
          expect(last).toBe(0);
          expect(apart(plain.slice(0, -1))).toBeLessThanOrEqual(1);
        } else if (ends === 'whole') {
          expect(apart(plain)).toBeLessThanOrEqual(1);
        } else {
          expect(apart(inner)).toBeLessThanOrEqual(1);
          expect(apart([...inner, first + last])).toBeLessThanOrEqual(1);
          expect(Math.abs(first - last)).toBeLessThanOrEqual(2);
        }
      }),
      { numRuns: 5000 },
    );
  });

  test('segment i of a round ends at i · from / k, to the nearest stitch', () => {
    fc.assert(
      fc.property(row, ({ from, to }) => {
        const { kind, shapings, plain } = spaceEvenly({ from, to, worked: 'round' });
        let end = 0;
        for (let i = 1; i <= shapings; i++) {
          end += plain[i - 1]! + (kind === 'decrease' ? 2 : 0);
          expect(end).toBe(Math.floor((2 * i * from + shapings) / (2 * shapings)));
        }
      }),
      { numRuns: 3000 },
    );
  });

  test('flat half gaps are the same segments as in the round, with the shaping in their middle', () => {
    fc.assert(
      fc.property(row, ({ from, to }) => {
        const round = spaceEvenly({ from, to, worked: 'round' });
        const flat = spaceEvenly({ from, to, worked: 'flat', ends: 'half' });
        let before = 0;
        for (let i = 0; i < round.shapings; i++) {
          const neighbours = round.plain[i]!;
          const own = flat.plain[i]! - before;
          expect(own).toBe(
            round.kind === 'decrease' ? Math.floor(neighbours / 2) : Math.ceil(neighbours / 2),
          );
          before = neighbours - own;
        }
        if (round.shapings > 0) expect(flat.plain.at(-1)).toBe(before);
      }),
      { numRuns: 3000 },
    );
  });

  test('an increase always has a plain stitch since the one before it', () => {
    fc.assert(
      fc.property(row, ({ from, to, worked, ends }) => {
        const { kind, plain } = spaceEvenly({ from, to, worked, ends });
        if (kind === 'increase') expect(Math.min(...plain.slice(0, -1))).toBeGreaterThanOrEqual(1);
      }),
      { numRuns: 3000 },
    );
  });

  test('every increase of a plan undone by a decrease leads back to the count it began with', () => {
    fc.assert(
      fc.property(row, ({ from, to, worked, ends }) => {
        fc.pre(to > from);
        const back = spaceEvenly({ from: to, to: from, worked, ends });
        expect(back).toMatchObject({ kind: 'decrease', shapings: to - from });
      }),
      { numRuns: 2000 },
    );
  });

  test('a row of a million shapings is laid out exactly', () => {
    const { plain } = spaceEvenly({ from: 1_000_000_000, to: 999_000_000, worked: 'round' });
    expect(plain).toHaveLength(1_000_001);
    expect(sum(plain)).toBe(998_000_000);
  });
});
