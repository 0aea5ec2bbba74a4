import { expect, test } from 'vitest';
import { pickUp } from '../../src/craft';
import { byShape } from '../../src/words/by-shape';
import { groupWords, inBlocks, shapeOfBlocks } from '../../src/words/pick-up-groups';

test('sizes share a line only where none of them would read “in each of the next 1”', () => {
  const pairs = Array.from({ length: 40 }, (_one, rows) =>
    Array.from({ length: 40 }, (_two, more) =>
      inBlocks(pickUp({ rows: rows + 1, stitches: rows + 1 + more }).groups),
    ),
  ).flat();
  for (const places of byShape(pairs.map(shapeOfBlocks))) {
    const words = groupWords(places.map((place) => pairs[place]!));
    expect(words).not.toMatch(/in each of the next (?:[^a-z]*[ (])?1(?![0-9])/u);
  }
});
