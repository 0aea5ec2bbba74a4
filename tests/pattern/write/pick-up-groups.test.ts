import { expect, test } from 'vitest';
import { pickUp } from '../../../src/craft';
import { byShape } from '../../../src/pattern/write/by-shape';
import { groupWords, inBlocks, shapeOfBlocks, type Block } from '../../../src/pattern/write/pick-up-groups';

test('sizes share a line only where none of them would read “in each of the next 1”', () => {
  const pairs = Array.from({ length: 40 }, (_one, rows) =>
    Array.from({ length: 40 }, (_two, more) =>
      inBlocks(pickUp({ rows: rows + 1, stitches: rows + 1 + more }).groups),
    ),
  ).flat();
  for (const sizeIndices of byShape(pairs.map(shapeOfBlocks))) {
    const words = groupWords(sizeIndices.map((sizeIndex) => pairs[sizeIndex]!));
    expect(words).not.toMatch(/in each of the next (?:[^a-z]*[ (])?1(?![0-9])/u);
  }
});

/** The stitches that every row end takes, in working order. */
const taken = (blocks: readonly Block[]): number[] =>
  blocks.flatMap(({ groups, times }) =>
    new Array(times).fill(groups.flatMap(({ pick, times: run }) => new Array<number>(run).fill(pick))).flat(),
  );

test('an edge of which every row end takes some is picked up evenly, from its first row end to its last', () => {
  for (let rows = 1; rows <= 60; rows++) {
    for (let stitches = rows; stitches <= 2 * rows; stitches++) {
      const each = taken(inBlocks(pickUp({ rows, stitches }).groups));
      expect(each).toHaveLength(rows);
      let sum = 0;
      const off = each.map((some, at) => (sum += some) - ((at + 1) * stitches) / rows);
      expect(sum).toBe(stitches);
      // One kind of run after the other, so that it can be followed; what is left over at the end would be 6.8 off.
      expect(Math.max(...off.map(Math.abs)), `${stitches} over ${rows}`).toBeLessThanOrEqual(2.5);
    }
  }
});

test('a front edge of 79 stitches over 58 row ends is not left with a stretch that draws in', () => {
  // 21 of 58 row ends take a second stitch: 16 of them before two that take one, 5 before one; 16 · 3 + 5 · 2 = 58.
  expect(groupWords([inBlocks(pickUp({ rows: 58, stitches: 79 }).groups)])).toBe(
    '(2 in the next row end, 1 in each of the next 2 row ends) 16 times, (2 in the next row end, 1 in the next row end) 5 times',
  );
});
