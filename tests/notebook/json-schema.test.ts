import Ajv from 'ajv/dist/2020';
import fc from 'fast-check';
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  allCells,
  fileVersion,
  kinds,
  migrated,
  migrations,
  readFile,
  writeFile,
  type Notebook,
} from '../../src/notebook';
import { starters } from '../../src/starters';
import { damagedFile } from './hostile';
import { fileSchema } from './json-schema';

const samples = new URL('samples/', import.meta.url);
const matches = new Ajv({ strict: false }).compile(fileSchema());

describe('the schema of the file', () => {
  // After a change to the file: npx vitest run --project units tests/notebook/json-schema.test.ts -u
  it('that is given away is the one that files are checked by', async () => {
    await expect(`${JSON.stringify(fileSchema(), null, 2)}\n`).toMatchFileSnapshot(
      '../../static/notebook.schema.json',
    );
  });

  it.each(starters.map((starter) => [starter.label, starter] as const))('holds for %s', (_label, starter) => {
    expect(matches(JSON.parse(writeFile(starter.make()))), JSON.stringify(matches.errors)).toBe(true);
  });

  it('refuses what is refused on opening, but for what only the whole shows', () => {
    fc.assert(
      fc.property(damagedFile, (text) => {
        const read = readFile(text);
        const valid = matches(JSON.parse(text));
        if ('notebook' in read) expect(valid, JSON.stringify(matches.errors)).toBe(true);
        else if (valid) expect(read.problem).toMatch(/same (id|name)|it has/);
      }),
      { numRuns: 400 },
    );
  });
});

/** Kinds of cell that came with a later version than the first. */
const newSince: Readonly<Record<string, number>> = { 'as made': 2 };

describe('every version of the file', () => {
  const versions = Array.from({ length: fileVersion }, (_one, at) => at + 1);

  it.each(versions)('version %i has a frozen sample with every kind of cell, which opens', (version) => {
    const text = readFileSync(new URL(`version-${version}.json`, samples), 'utf8');
    expect(JSON.parse(text)).toMatchObject({ version });
    const read = readFile(text) as { notebook: Notebook };
    expect(read).toHaveProperty('notebook');
    const since = Object.entries(newSince).flatMap(([kind, from]) => (from > version ? [kind] : []));
    const had = Object.keys(kinds).filter((kind) => !since.includes(kind));
    expect(new Set(allCells(read.notebook).map(({ kind }) => kind))).toEqual(new Set(had));
  });

  it('a file of version 1 is checked as what it was: what came later is no part of it', () => {
    const file = JSON.parse(readFileSync(new URL('version-2.json', samples), 'utf8'));
    expect(readFile(JSON.stringify(file))).toHaveProperty('notebook');
    expect(readFile(JSON.stringify({ ...file, version: 1 }))).toHaveProperty('problem');
  });

  it('the sample of version 2 loses nothing on opening and writing', () => {
    const text = readFileSync(new URL('version-2.json', samples), 'utf8');
    const read = readFile(text) as { notebook: Notebook };
    expect(JSON.parse(writeFile(read.notebook))).toEqual(JSON.parse(text));
  });

  it('the sample of version 1 loses nothing on opening and writing', () => {
    const text = readFileSync(new URL('version-1.json', samples), 'utf8');
    const read = readFile(text) as { notebook: Notebook };
    expect(JSON.parse(writeFile(read.notebook)).notebook).toEqual(JSON.parse(text).notebook);
  });

  it('has a step to the next, and a sample: none is forgotten', () => {
    expect(Object.keys(migrations).map(Number)).toEqual(versions.slice(0, -1));
    const plain = readdirSync(samples).filter((name) => !/-(?:rich|adapted)\.json$/u.test(name));
    expect(plain.sort()).toEqual(versions.map((version) => `version-${version}.json`).sort());
  });

  it('is brought to the newest one step after another', () => {
    const steps = {
      1: (file: Record<string, unknown>) => ({ ...file, path: [1] }),
      2: (file: Record<string, unknown>) => ({ ...file, path: [...(file['path'] as number[]), 2] }),
    };
    expect(migrated({ version: 1 }, 1, steps)).toEqual({ version: 3, path: [1, 2] });
    expect(migrated({ version: 2, path: [] }, 2, steps)).toEqual({ version: 3, path: [2] });
    expect(migrated({ version: 3 }, 3, steps)).toEqual({ version: 3 });
  });
});
