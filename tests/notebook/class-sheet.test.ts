import { describe, expect, it } from 'vitest';
import { apply, readFile, writeFile, type ClassSheet, type Notebook } from '../../src/notebook';
import { blank, lessons } from '../../src/starters';
import { edited } from './edited';

const set = (notebook: Notebook, sheet: ClassSheet | null): Notebook =>
  edited(notebook, { do: 'set class sheet', sheet });

describe('a class sheet', () => {
  it('is kept in the file, with its size, its order and how far back each working begins', () => {
    const sheet: ClassSheet = {
      size: 'one',
      results: [
        { cell: 'b', key: 'value', back: 2 },
        { cell: 'a', key: 'sts.0' },
      ],
    };
    const read = readFile(writeFile(set(blank(), sheet)));
    if ('problem' in read) throw new Error(read.problem);
    expect(read.notebook.classSheet).toEqual(sheet);
  });

  it('has a result once, where it stood first', () => {
    const twice = [
      { cell: 'a', key: 'x' },
      { cell: 'b', key: 'x' },
      { cell: 'a', key: 'x', back: 0 },
    ];
    expect(set(blank(), { results: twice }).classSheet?.results).toEqual(twice.slice(0, 2));
  });

  it('is gone from the notebook when it is taken off', () => {
    expect('classSheet' in set(lessons(), null)).toBe(false);
  });

  it('refuses more results than a class sits through', () => {
    const results = Array.from({ length: 201 }, (_, at) => ({ cell: `c${at}`, key: 'x' }));
    expect(apply(blank(), { do: 'set class sheet', sheet: { results } })).toMatchObject({
      refused: expect.stringMatching(/at most 200/),
    });
  });

  it.each([
    ['a text for a list', { results: 'all' }],
    ['a result without its cell', { results: [{ key: 'x' }] }],
    ['half a generation', { results: [{ cell: 'a', key: 'x', back: 0.5 }] }],
    ['a size that is a number', { results: [], size: 3 }],
  ])('in a file that is damaged is told: %s', (_what, classSheet) => {
    const file = writeFile({ ...blank(), classSheet } as unknown as Notebook);
    expect(readFile(file)).toMatchObject({ problem: expect.stringMatching(/damaged.*classSheet/) });
  });
});
