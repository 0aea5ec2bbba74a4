import { describe, expect, it } from 'vitest';
import { allCells, type Notebook } from '../../src/notebook';
import { hatCrown } from '../../src/starters/hat-crown';
import { singleSleeve } from '../../src/starters/single-sleeve';
import { starters } from '../../src/starters';
import { asMade, formula } from '../../src/notebook/cell-builders';
import { patternOf, prove, type PatternDocument, type PatternSource } from '../../src/pattern';
import { sourceOf } from './write/source-of';

const toAdapt = starters.find(({ label }) => label === 'A pattern to adapt')!.make;

/** The rows of the table of finished measurements. */
function measurementsOf({ parts }: PatternDocument): readonly (readonly string[])[] {
  return parts.flatMap(({ blocks }) =>
    blocks.flatMap((block) =>
      block.kind === 'table' && block.key === 'measurements table' ? block.rows : [],
    ),
  );
}

/** The document with 0.1 more in a column of a row of that table. */
function misprinted(document: PatternDocument, label: string, column: number): PatternDocument {
  return {
    ...document,
    parts: document.parts.map((part) => ({
      ...part,
      blocks: part.blocks.map((block) =>
        block.kind === 'table' && block.key === 'measurements table'
          ? {
              ...block,
              rows: block.rows.map((row) =>
                row[0] === label
                  ? row.map((text, at) => (at === column ? (Number(text) + 0.1).toFixed(1) : text))
                  : row,
              ),
            }
          : block,
      ),
    })),
  };
}

/** A source whose number of a measurement as made is a centimetre off in one size: the text is written by it. */
function mistaken(source: PatternSource, cell: string, size: string): PatternSource {
  return {
    ...source,
    number: (at, of, key) => {
      const number = source.number(at, of, key);
      return number !== undefined && at === size && of === cell && key === 'made' ? number + 1 : number;
    },
  };
}

const printed = [
  ['the cuff of the sleeve', singleSleeve, 'Round of the cuff'],
  ['the top of the sleeve', singleSleeve, 'Width at the underarm'],
  ['the round of the hat', hatCrown, 'Round of the hat'],
  ['the bust of a pattern fitted again', toAdapt, 'Finished bust'],
] as const satisfies readonly (readonly [string, () => Notebook, string])[];

describe('a measurement as made is worked from the rows of its pieces', () => {
  it.each(printed)('%s: a changed number is found, in its size', async (_what, make, label) => {
    const source = await sourceOf(make());
    const document = patternOf(source);
    expect(prove(document, source)).toEqual({ proven: true });
    const row = measurementsOf(document).find(([name]) => name === label)!;
    for (let column = 1; column < row.length; column++) {
      const proof = prove(misprinted(document, label, column), source);
      expect(proof).toMatchObject({
        proven: false,
        where: [{ piece: 'Finished measurements', problem: expect.stringContaining(`“${label}”`) }],
      });
      if (!proof.proven && document.sizes.length > 1)
        expect(proof.where[0]!.size).toBe(document.sizes[column - 1]!.label);
    }
  });

  it.each(printed)('%s: a wrong number of the notebook is found too', async (_what, make, label) => {
    const source = await sourceOf(make());
    const cell = allCells(source.notebook).find((one) => one.label === `${label}, as made`)!;
    const wrong = mistaken(source, cell.id, source.notebook.sizes.at(-1)!.id);
    expect(prove(patternOf(wrong), wrong)).toMatchObject({
      proven: false,
      where: [{ problem: expect.stringContaining(`“${label}”`) }],
    });
  });
});

it('is followed through formulas to the rows', async () => {
  const notebook = singleSleeve();
  const through: Notebook = {
    ...notebook,
    sections: notebook.sections.map((section) =>
      section.id === 'sleeve-section'
        ? {
            ...section,
            cells: [
              ...section.cells.filter(({ kind }) => kind !== 'as made'),
              formula('Flat', 'sleeve_cuff_last / rib_sts'),
              formula('Sewn', 'flat - SEAMSTAKE(1; seam_sts; rib_sts)'),
              asMade('Round of the cuff', 'cuff', [['sewn', 1]], 'CM(1)', { name: 'cuff_made' }),
            ],
          }
        : section,
    ),
  };
  const source = await sourceOf(through);
  expect(prove(patternOf(source), source)).toEqual({ proven: true });
  const sewn = allCells(through).find(({ name }) => name === 'sewn')!.id;
  const made = allCells(through).find(({ name }) => name === 'cuff_made')!.id;
  const number: PatternSource['number'] = (size, cell, key) => {
    const value = source.number(size, cell, key);
    return value !== undefined && (cell === sewn || (cell === made && key !== 'wish')) ? value + 1 : value;
  };
  expect(prove(patternOf({ ...source, number }), { ...source, number }).proven).toBe(false);
});

it('one that comes to nothing leaves the wish in its place, and the text is proven', async () => {
  const notebook = singleSleeve();
  const broken: Notebook = {
    ...notebook,
    sections: notebook.sections.map((section) => ({
      ...section,
      cells: section.cells.map((cell) =>
        cell.kind === 'as made' && cell.label.startsWith('Round of the cuff')
          ? { ...cell, of: [{ width: { value: null }, times: { value: 1 } }] }
          : cell,
      ),
    })),
  };
  const source = await sourceOf(broken);
  const document = patternOf(source);
  expect(measurementsOf(document).find(([label]) => label === 'Round of the cuff')).toEqual([
    'Round of the cuff',
    '17.5',
    '18.5',
  ]);
  expect(prove(document, source)).toEqual({ proven: true });
});
