import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allCells, largestFile, mostPlaces, readFile } from '../../src/notebook';
import { handMade, hostileFile } from './hostile';

describe('a file from outside', () => {
  it.each(handMade)('%s: is refused with a sentence, or opens', (_what, text, opens) => {
    const read = readFile(text());
    expect('notebook' in read).toBe(opens);
    if ('problem' in read) expect(read.problem).toMatch(/^This .*\.$/);
  });

  it('that was damaged anyhow is refused with a sentence or opens within the limits, and touches nothing', () => {
    fc.assert(
      fc.property(hostileFile, (text) => {
        const read = readFile(text);
        if ('problem' in read) expect(read.problem.length).toBeLessThan(600);
        else expect(allCells(read.notebook).length * read.notebook.sizes.length).toBeLessThan(mostPlaces);
        expect(Object.keys(Object.prototype)).toEqual([]);
        expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
      }),
      { numRuns: 500 },
    );
  });

  it('that is larger than any notebook is not even read', () => {
    const read = readFile(' '.repeat(largestFile + 1));
    expect('problem' in read && read.problem).toContain('larger than any notebook');
  });
});
