import { describe, expect, it } from 'vitest';
import { apply, readFile, writeFile, type Edit, type Notebook } from '../../../src/notebook';
import { singleSleeve } from '../../../src/starters';
import { even, piece, swatch } from '../../../src/notebook/cell-builders';
import { patternOf, prove, reword, sentencesOf, slotsOf, wrongTemplate } from '../../../src/pattern';
import { sourceOf } from './source-of';
import { edited } from '../../notebook/edited';

const key = 'piece sleeve cuff';

function reworded(notebook: Notebook, edit: Edit | { refused: string }): Notebook {
  if ('refused' in edit) throw new Error(edit.refused);
  return edited(notebook, edit);
}
const textOf = async (notebook: Notebook) =>
  sentencesOf(patternOf(await sourceOf(notebook))).find((sentence) => sentence.key === key)!;

describe('a sentence in words of one’s own', () => {
  it('keeps its numbers live', async () => {
    const notebook = singleSleeve();
    const document = patternOf(await sourceOf(notebook));
    const worded = reworded(notebook, reword(document, key, 'Rib: work {rows} even.'));
    expect((await textOf(worded)).text).toBe('Rib: work 7 more rows even.');
    const longer = reworded(worded, { do: 'give', cell: 'cuff-length', key: 'value', size: null, value: 8 });
    expect((await textOf(longer)).text).toBe('Rib: work 9 more rows even.');
    const back = reworded(longer, reword(patternOf(await sourceOf(longer)), key, null));
    expect(back).not.toHaveProperty('wording');
    expect((await textOf(back)).text).toBe('Work 9 more rows even.');
  });

  it('is not told with the rows beside it, which are told as one otherwise and may be reworded as one', async () => {
    const rows = (name: string) => even(name, 'fabric', 'ROWS(4)');
    const notebook: Notebook = {
      ...singleSleeve(),
      sections: [
        {
          id: 'all',
          label: '',
          cells: [
            swatch('Fabric', { worked: '', stitches: 15, rows: 12 }, { name: 'fabric' }),
            piece(
              'Scarf',
              'flat',
              'STS(20)',
              ['one', 'two', 'three'].map((name) => ({ ...rows(name), label: '' })),
            ),
          ],
        },
      ],
    };
    const inWords = async (of: Notebook) => {
      const source = await sourceOf(of);
      expect(prove(patternOf(source), source)).toEqual({ proven: true });
      return sentencesOf(patternOf(source)).filter(({ text }) => /\beven(?:ly)?\b/u.test(text));
    };
    const evens = (of: Awaited<ReturnType<typeof inWords>>) =>
      of.slice(1).map(({ key: at, text }) => [at, text]);
    expect(evens(await inWords(notebook))).toEqual([['piece scarf one to three', 'Work 11 more rows even.']]);
    const own = { template: 'Work {rows} evenly.', terms: 'US' } as const;
    expect(evens(await inWords({ ...notebook, wording: { 'piece scarf one to three': own } }))).toEqual([
      ['piece scarf one to three', 'Work 11 more rows evenly.'],
    ]);
    expect(
      evens(
        await inWords({
          ...notebook,
          wording: { 'piece scarf two': { ...own, template: 'Work {rows} even.' } },
        }),
      ),
    ).toEqual([
      ['piece scarf one', 'Work 3 more rows even.'],
      ['piece scarf two', 'Work 4 rows even.'],
      ['piece scarf three', 'Work 4 rows even.'],
    ]);
  });

  it('that the recount cannot follow is not proven, and it says where', async () => {
    const notebook = singleSleeve();
    const document = patternOf(await sourceOf(notebook));
    const source = await sourceOf(
      reworded(notebook, reword(document, key, 'Carry on in rib for {rows}, humming.')),
    );
    const proof = prove(patternOf(source), source);
    expect(proof).toMatchObject({
      proven: false,
      where: [
        { key, size: 'M' },
        { key, size: 'For me' },
      ],
    });
  });

  it('follows the terms of the notebook', async () => {
    const notebook = singleSleeve();
    const into = 'piece sleeve into';
    const document = patternOf(await sourceOf(notebook));
    const sentence = sentencesOf(document).find((one) => one.key === into)!;
    const worded = reworded(
      notebook,
      reword(document, into, sentence.template.replace('{row}', '{row} sc all along')),
    );
    const uk = reworded(worded, { do: 'set', settings: { terms: 'UK' } });
    const text = sentencesOf(patternOf(await sourceOf(uk))).find((one) => one.key === into)!.text;
    expect(text).toContain('Row 1 (RS) dc all along: dc in the 2nd ch');
  });

  it('is left out with a note once its numbers are others', async () => {
    const notebook: Notebook = {
      ...singleSleeve(),
      wording: { [key]: { template: 'Work {rows} even and {hum}.', terms: 'US' } },
    };
    const document = patternOf(await sourceOf(notebook));
    expect(document.notes).toEqual([
      {
        text: 'Your wording “Work {rows} even and {hum}.” no longer has the numbers this sentence needs, so the notebook’s own stands.',
        about: { key },
      },
    ]);
    expect((await textOf(notebook)).text).toBe('Work 7 more rows even.');
  });

  it.each([
    ['Work even.', ['rows'], 'This wording leaves out {rows}: put it where the number belongs.'],
    ['Work {rows}.', ['rows', 'count'], 'This wording leaves out {count}: put it where the number belongs.'],
    ['Work {rows} {stitches}.', ['rows'], 'This sentence has no {stitches}; there is {rows}.'],
    ['Work {rows}.', [], 'This sentence has no {rows}.'],
    [
      'Work {rows} {.',
      ['rows'],
      'Braces stand only round the name of a number, as in {rows}, and a sentence is one line.',
    ],
    ['  ', [], 'A sentence cannot be empty: write one, or go back to the notebook’s own.'],
    ['x'.repeat(2001), [], 'A sentence has at most 2000 characters; this one has 2001.'],
  ])('%s with %j: %s', (template, names, problem) => {
    expect(wrongTemplate(template, names)).toBe(problem);
  });

  it('finds its slots', () => {
    expect(slotsOf('{next}: {work} [{count}].')).toEqual(['next', 'work', 'count']);
    expect(wrongTemplate('{count} {rows}', ['rows', 'count'])).toBeUndefined();
  });

  it('is kept in the file, within limits', () => {
    const wording = { [key]: { template: 'Rib: {rows}.', terms: 'UK' as const } };
    const kept = readFile(writeFile({ ...singleSleeve(), wording }));
    expect(kept).toMatchObject({ notebook: { wording } });
    for (const wrong of [
      { [key]: { template: '', terms: 'UK' } },
      { [key]: { template: 'x'.repeat(2001), terms: 'UK' } },
      { [key]: { template: 'x', terms: 'FR' } },
      { [key]: 'x' },
    ]) {
      expect(
        readFile(writeFile({ ...singleSleeve(), wording: wrong } as unknown as Notebook)),
      ).toHaveProperty('problem');
    }
    expect(
      apply(singleSleeve(), { do: 'reword', key, wording: { template: 'x'.repeat(2001), terms: 'US' } }),
    ).toEqual({
      refused: 'A sentence has at most 2000 characters: make it shorter.',
    });
  });
});
