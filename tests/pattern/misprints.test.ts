import { mkdirSync, writeFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { patternOf, proverOf, type PatternDocument, type Proof } from '../../src/pattern';
import { classes, type Misprint } from './misprints/classes';
import { misprinted } from './misprints/notebooks';
import { refsOf } from './misprints/text';
import { sourceOf } from './write/source-of';
import { withSchematic } from './write/with-schematic';

/** Misprints of one class that are tried, over all notebooks. */
const most = 60;

interface Misprinted {
  readonly name: string;
  readonly document: PatternDocument;
  prove(document: PatternDocument): Proof;
}

interface Tried {
  readonly name: string;
  readonly tried: number;
  readonly missed: readonly string[];
}

describe('a slip of a typist', () => {
  const notebooks: Misprinted[] = [];
  beforeAll(async () => {
    for (const [at, [name, make]] of misprinted.entries()) {
      const source = await sourceOf(make());
      const plain = patternOf(source);
      // Every other one as it leaves the page, with the tables of its schematic instead of the pieces' measurements.
      const document = at % 2 === 0 ? plain : withSchematic(plain, source);
      notebooks.push({ name, document, prove: proverOf(source) });
    }
  }, 120_000);

  it('is not seen where there is none, and every piece is written', () => {
    for (const { name, document, prove } of notebooks) {
      const { pieces } = document.leftOut;
      expect({ name, pieces, ...prove(document) }).toEqual({ name, pieces: [], proven: true });
    }
  });

  it('is not seen where a text is put as it was', () => {
    for (const { document, prove } of notebooks) {
      for (const span of some(refsOf(document), 15)) {
        expect(prove(span.put(span.text)), span.text).toEqual({ proven: true });
      }
    }
  }, 120_000);

  it('is found, in 99 of 100 of all classes together', () => {
    const table = classes.map(({ name, of }): Tried => {
      const share = Math.ceil(most / notebooks.length);
      const all = notebooks.flatMap(({ document, prove }) =>
        some(of(document), share).map((one: Misprint) => ({ one, prove })),
      );
      const missed = all.filter(({ one, prove }) => prove(one.document).proven);
      return { name, tried: all.length, missed: missed.map(({ one }) => one.about) };
    });
    const tried = table.reduce((sum, one) => sum + one.tried, 0);
    const missed = table.flatMap(({ name, missed }) => missed.map((about) => `${name}: ${about}`));
    report(table, missed, tried);
    expect(table.filter((one) => one.tried === 0).map(({ name }) => name)).toEqual([]);
    expect(table.length).toBeGreaterThanOrEqual(30);
    expect(tried).toBeGreaterThan(2000);
    expect(1 - missed.length / tried, missed.join('\n')).toBeGreaterThanOrEqual(0.99);
    // No class goes unread: a slip of every kind is found more often than not.
    expect(table.filter((one) => one.missed.length * 2 > one.tried).map(({ name }) => name)).toEqual([]);
  }, 300_000);
});

/** So many of a list, evenly spread over the whole of it. */
function some<T>(all: readonly T[], many: number): T[] {
  const share = Math.min(all.length, many);
  return Array.from({ length: share }, (_one, at) => all[Math.floor((at * all.length) / share)]!);
}

/** The table of classes, to be read: what was tried, what was found, and what was not. */
function report(table: readonly Tried[], missed: readonly string[], tried: number): void {
  const rows = table.map(({ name, tried, missed }) => `${name}\t${tried}\t${tried - missed.length}`);
  const sum = `in all\t${tried}\t${tried - missed.length}`;
  mkdirSync('reports', { recursive: true });
  writeFileSync(
    'reports/misprints.txt',
    `${['class\ttried\tfound', ...rows, sum, '', 'not found:', ...missed].join('\n')}\n`,
  );
}
