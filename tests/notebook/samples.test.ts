import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  allCells,
  inputsOf,
  outputsOf,
  readFile,
  withWhatIf,
  writeFile,
  type Notebook,
} from '../../src/notebook';
import { plainText, patternOf, prove } from '../../src/pattern';
import { sourceOf } from '../pattern/write/source-of';
import { worked } from './worked-notebook';

/*
 * Notebooks as an earlier version saved them, frozen: whoever has one like it must find every number and every word as
 * they were. `version-1.json` is a garment whole; `version-1-rich.json` has what else a notebook can hold, and
 * `version-1-adapted.json` is one made from a printed pattern.
 *
 * What each comes to stands in `expected/`. Where a number was wrong and is mended, it is made again, and the difference
 * read line by line: `ANEW=1 npx vitest run --project units tests/notebook/samples.test.ts -u`. Results that a later version
 * adds are no difference: only those that stand there are held against it.
 */
const samples = new URL('./samples/', import.meta.url);
const names = readdirSync(samples).sort();

const opened = (name: string): Notebook => {
  const read = readFile(readFileSync(new URL(name, samples), 'utf8'));
  if ('problem' in read) throw new Error(read.problem);
  return read.notebook;
};

describe.each(names)('%s', (name) => {
  it('is worked, in every size and under each of its what-ifs, as it was', async () => {
    const notebook = opened(name);
    const plain = await numbersOf(notebook);
    const changed = await Promise.all(
      (notebook.whatIfs ?? []).map(async (whatIf) => {
        const other = await numbersOf(withWhatIf(notebook, whatIf));
        return ['', `What if: ${whatIf.name}`, ...other.filter((line) => !plain.includes(line))];
      }),
    );
    const text = known(name, [...plain, ...changed.flat(), '']).join('\n');
    await expect(text).toMatchFileSnapshot(`./expected/${name.replace(/json$/, 'numbers.txt')}`);
  });

  it('is written out as it was', async () => {
    const notebook = opened(name);
    const source = await sourceOf(notebook);
    const document = patternOf(source);
    const notes = document.notes.map(({ text }) => `Note: ${text}\n`).join('');
    const text = notes + plainText(document, { proof: prove(document, source) });
    await expect(text).toMatchFileSnapshot(`./expected/${name.replace(/json$/, 'pattern.txt')}`);
  });

  it('loses nothing on opening and saving', () => {
    const notebook = opened(name);
    expect(readFile(writeFile(notebook))).toEqual({ notebook });
  });
});

it('the rich samples of version 1 hold what a whole garment does not', () => {
  const rich = opened('version-1-rich.json');
  const cells = allCells(rich);
  expect(rich.whatIfs!.flatMap(({ changes }) => changes)).toContainEqual(
    expect.objectContaining({ cell: 'back', key: 'start' }),
  );
  expect(cells.find(({ id }) => id === 'front')!.taken).toHaveProperty('piece');
  expect(rich.wording).toHaveProperty(['piece back into']);
  expect(rich.classSheet!.results.length).toBeGreaterThan(1);
  expect(cells.some((cell) => cell.kind === 'check' && cell.condition.startsWith('JOINS('))).toBe(true);
  const stretches = cells.flatMap((cell) => (cell.kind === 'piece' ? cell.stretches : []));
  expect(new Set(stretches.map(({ kind }) => kind))).toEqual(
    new Set(['even', 'taper', 'evenly', 'eachRepeat', 'gather', 'leave', 'add', 'rows']),
  );
  expect(opened('version-1-adapted.json').adapts!.text).not.toBe('');
});

/** The lines whose names stood in what is expected already; all of them where it is made again. */
function known(name: string, lines: readonly string[]): readonly string[] {
  const expected = new URL(`./expected/${name.replace(/json$/, 'numbers.txt')}`, import.meta.url);
  if (process.env['ANEW'] || !existsSync(expected)) return lines;
  const nameOf = (line: string): string => line.slice(0, Math.max(0, line.indexOf(':')));
  const names = new Set(readFileSync(expected, 'utf8').split('\n').map(nameOf));
  return lines.filter((line) => names.has(nameOf(line)));
}

/** A line for each input and output: its name, and what it is in each size. */
async function numbersOf(notebook: Notebook): Promise<string[]> {
  const results = await worked(notebook);
  return allCells(notebook).flatMap((cell) =>
    [...inputsOf(cell), ...outputsOf(cell)].map(({ key, name }) => {
      const values = notebook.sizes.map(({ id }) => {
        const problem = results.error(id, cell.id, key)?.message;
        if (problem !== undefined) return `(${problem})`;
        const number = results.number(id, cell.id, key);
        if (number !== undefined) return String(Number(number.toPrecision(10)));
        return String(results.truth(id, cell.id, key) ?? results.text(id, cell.id, key) ?? '–');
      });
      const same = values.every((value) => value === values[0]);
      return `${name}: ${same ? values[0] : values.join(' | ')}`;
    }),
  );
}
