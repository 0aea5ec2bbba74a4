import fc from 'fast-check';
import { expect, test } from 'vitest';
import { narrowMotifs } from '../../src/craft/narrow-motifs';

const panel = { motifs: 6, motif: 10, gap: 4, least: 2, edge: 1 };

test('flat, 6 motifs lose a stitch from each of 5 gaps: 82 becomes 77, a repeat of 14 becomes 13', () => {
  expect(narrowMotifs({ ...panel, worked: 'flat' })).toEqual({ taken: 5, gap: 3, repeat: 13, count: 77 });
});

test('in the round they lose one from each of 6: 84 becomes 78', () => {
  expect(narrowMotifs({ ...panel, worked: 'round' })).toEqual({ taken: 6, gap: 3, repeat: 13, count: 78 });
});

test('a gap at its least is left alone', () => {
  expect(() => narrowMotifs({ ...panel, gap: 2, worked: 'flat' })).toThrow('start with a gap of 3 or more');
});

test('what is taken out is what the count falls by', () => {
  const size = fc.integer({ min: 1, max: 60 });
  fc.assert(
    fc.property(
      size,
      size,
      size,
      size,
      fc.constantFrom('flat' as const, 'round' as const),
      (motifs, motif, gap, edge, worked) => {
        const plan = narrowMotifs({ motifs, motif, gap, least: 0, edge, worked });
        const before =
          worked === 'flat' ? motifs * motif + (motifs - 1) * gap + 2 * edge : motifs * (motif + gap);
        expect(before - plan.count).toBe(plan.taken);
      },
    ),
    { numRuns: 1000 },
  );
});
