import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cycles, shortestCycle } from '../../src/engine/cycles';

const from =
  (uses: readonly (readonly number[])[]) =>
  (row: number): readonly number[] =>
    uses[row] ?? [];

test('a row that uses itself is a circle of one', () => {
  expect(cycles([0], from([[0]]))).toEqual(new Map([[0, { size: 1, path: [0, 0] }]]));
});

test('rows that lead into a circle or out of it are no part of it', () => {
  const found = cycles([0, 1, 2, 3], from([[1], [2], [1, 3], []]));
  expect([...found.keys()].sort()).toEqual([1, 2]);
  expect(found.get(1)).toEqual({ size: 2, path: [1, 2, 1] });
});

test('the way round is the shortest one', () => {
  expect(shortestCycle(0, from([[1, 2], [3], [0], [0]]))).toEqual([0, 2, 0]);
});

test('a large tangle is told by its size', () => {
  const ring = Array.from({ length: 500 }, (_, row) => [(row + 1) % 500]);
  const found = cycles(ring.keys(), from(ring));
  expect(found.size).toBe(500);
  expect(found.get(7)).toEqual({ size: 500 });
});

test('a chain of 100,000 rows is followed without running out of room', () => {
  const chain = Array.from({ length: 100_000 }, (_, row) => (row === 0 ? [99_999] : [row - 1]));
  expect(cycles(chain.keys(), from(chain)).size).toBe(100_000);
});

test('a row is in a circle exactly when it can be reached from itself', () => {
  const graphs = fc.array(fc.uniqueArray(fc.nat(7), { maxLength: 3 }), { minLength: 8, maxLength: 8 });
  fc.assert(
    fc.property(graphs, (uses) => {
      const found = cycles(uses.keys(), from(uses));
      uses.forEach((_, row) => {
        const reached = new Set(uses[row]);
        for (const at of reached) for (const next of uses[at]!) reached.add(next);
        expect(found.has(row)).toBe(reached.has(row));
        const way = found.get(row)?.path;
        if (!way) return;
        expect([way[0], way.at(-1)]).toEqual([row, row]);
        way.slice(1).forEach((next, i) => expect(uses[way[i]!]).toContain(next));
      });
    }),
  );
});
