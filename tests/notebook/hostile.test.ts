import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { allCells, largestFile, mostValues, readFile, writeFile } from '../../src/notebook';
import { tooDeep } from '../../src/notebook/file-limits';
import { cardigan } from '../../src/starters';
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
        else expect(allCells(read.notebook).length * read.notebook.sizes.length).toBeLessThan(mostValues);
        expect(Object.keys(Object.prototype)).toEqual([]);
        expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
      }),
      { numRuns: 500 },
    );
  });

  it.each([
    ['opened and never closed', '['.repeat(9.8e6)],
    ['objects', '{"a":'.repeat(1.9e6)],
    ['after a text with brackets in it', `{"a":"]]]]\\"]]]","b":${'['.repeat(1e6)}`],
  ])('that goes deep, %s, is refused before it is read', (_how, text) => {
    const parse = vi.spyOn(JSON, 'parse');
    const read = readFile(text);
    expect('problem' in read && read.problem).toContain('more levels than a notebook has');
    expect(parse).not.toHaveBeenCalled();
    parse.mockRestore();
  });

  it('is not taken for deep because of brackets in its texts', () => {
    const title = '[{"\\'.repeat(40);
    const read = readFile(writeFile({ ...cardigan(), title }));
    expect('notebook' in read && read.notebook.title).toBe(title);
    expect(tooDeep('['.repeat(24) + ']'.repeat(24))).toBe(false);
    expect(tooDeep('['.repeat(25) + ']'.repeat(25))).toBe(true);
    expect(tooDeep(`[${'[],'.repeat(1000)}[]]`)).toBe(false);
  });

  it('that is larger than any notebook is not even read', () => {
    const read = readFile(' '.repeat(largestFile + 1));
    expect('problem' in read && read.problem).toContain('larger than any notebook');
  });
});
