import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fitMotifs } from '../../src/craft/fit-motifs';
import type { MotifFit } from '../../src/craft/fit-motifs';
import { withoutHanging } from '../without-hanging';

describe('motifs in plain fabric', () => {
  test('6 motifs of 10 with 4 between and 1 at each end are 82, the nearest to 81.5', () => {
    const fits = fitMotifs({ target: 81.5, motif: 10, gap: { least: 2, most: 4 }, edge: 1, worked: 'flat' });
    expect(fits[0]).toEqual({ motifs: 6, gap: 4, count: 82, off: 0.5 });
  });

  test('in the round 7 motifs of 10 with 2 after each are 84', () => {
    const fits = fitMotifs({ target: 84, motif: 10, gap: { least: 2, most: 4 }, edge: 1, worked: 'round' });
    expect(fits.slice(0, 2)).toEqual([
      { motifs: 6, gap: 4, count: 84, off: 0 },
      { motifs: 7, gap: 2, count: 84, off: 0 },
    ]);
  });

  test('one motif alone has no gap and is offered once', () => {
    const fits = fitMotifs({ target: 12, motif: 10, gap: { least: 2, most: 9 }, edge: 1, worked: 'flat' });
    expect(fits.filter((fit) => fit.motifs === 1)).toEqual([{ motifs: 1, gap: 9, count: 12, off: 0 }]);
  });

  test('a gap that is at least 5 and at most 3 is refused', () => {
    const gap = { least: 5, most: 3 };
    expect(() => fitMotifs({ target: 80, motif: 10, gap, edge: 0, worked: 'flat' })).toThrow(
      'exchange the two',
    );
  });

  test('a million ways are tried, and more are handed back', () => {
    const wide = { motif: 1, gap: { least: 0, most: 999_990 }, edge: 0, worked: 'round' as const };
    const fits = withoutHanging(() => fitMotifs({ ...wide, target: 1e9 }));
    expect(fits.every((fit) => fit.off === 0)).toBe(true);
    expect(() => fitMotifs({ ...wide, gap: { least: 0, most: 1e9 }, target: 1e9 })).toThrow('narrow the gap');
  });
});

test('more ways than can be tried are handed back, whether gaps or motifs are what is many', () => {
  const many = { motif: 1, edge: 0, worked: 'round' as const };
  expect(() => fitMotifs({ ...many, gap: { least: 0, most: 2e6 }, target: 1e10 })).toThrow('narrow the gap');
  expect(() => fitMotifs({ ...many, gap: { least: 0, most: 2e7 }, target: 2e6 })).toThrow('narrow the gap');
});

test('motifs without a gap between them have to be told so: a gap from 0 to 0', () => {
  const close = { target: 40, motif: 10, edge: 0, worked: 'flat' as const };
  expect(fitMotifs({ ...close, gap: { least: 0, most: 0 } })[0]).toMatchObject({ motifs: 4, count: 40 });
  expect(() => fitMotifs({ ...close, gap: undefined as never })).toThrow('The least gap between motifs');
});

test('the five are those that trying every way finds', () => {
  const size = (min: number, max: number) => fc.integer({ min, max });
  fc.assert(
    fc.property(
      size(0, 800),
      size(1, 20),
      size(0, 8),
      fc.oneof(size(0, 8), size(0, 300)),
      size(0, 5),
      fc.constantFrom('flat' as const, 'round' as const),
      (quarters, motif, least, room, edge, worked) => {
        const target = quarters / 4;
        const gap = { least, most: least + room };
        const all: MotifFit[] = [];
        for (let motifs = 1; motifs <= target / motif + 8; motifs++) {
          for (let g = worked === 'flat' && motifs === 1 ? gap.most : least; g <= gap.most; g++) {
            const count =
              worked === 'flat' ? motifs * motif + (motifs - 1) * g + 2 * edge : motifs * (motif + g);
            all.push({ motifs, gap: g, count, off: count - target });
          }
        }
        all.sort((a, b) => Math.abs(a.off) - Math.abs(b.off) || b.gap - a.gap || b.count - a.count);
        expect(fitMotifs({ target, motif, gap, edge, worked })).toEqual(all.slice(0, 5));
      },
    ),
    { numRuns: 2000 },
  );
});
