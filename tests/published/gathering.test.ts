import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { gather } from '../../src/craft';
import { examplesOf } from './check-file';

const examples = examplesOf(readFileSync(new URL('construction.json', import.meta.url), 'utf8'));
const published = (id: string) => examples.find((example) => example.id === id)!;

/** The rounds from a count through the published ones, found from the first count and the last alone. */
const found = (from: number, counts: number[]) => gather({ from, to: counts.at(-1)!, rounds: counts.length });

describe('rounds of “k plain, 2 together” are found from their first and last count', () => {
  const crown = published('hat-crown-leaflet-4-sizes');
  const stitches = crown.given['stitches'] as number[];
  test.each(stitches.map((from, size) => [from, (crown.expect as number[][])[size]!] as const))(
    `a crown of %s: (k8, k2tog) … (k2, k2tog) (${crown.source})`,
    (from, counts) => {
      const { steps, off } = found(from, counts);
      expect(steps.map(({ plain }) => plain)).toEqual([8, 7, 6, 5, 4, 3, 2]);
      expect(steps.map(({ count }) => count)).toEqual(counts);
      expect(off).toBe(0);
    },
  );

  const yoke = published('yoke-268-134');
  test(`a yoke of 268: (k2, k2tog), then (k1, k2tog) (${yoke.source})`, () => {
    const { yoke: from, after } = yoke.expect as { yoke: number; after: number[] };
    expect(found(from, after)).toEqual({
      steps: [
        { plain: 2, count: 201 },
        { plain: 1, count: 134 },
      ],
      off: 0,
    });
  });
});
