import { describe, expect, it } from 'vitest';
import { type Cell, type Notebook, usualSettings } from '../../../src/notebook';
import { check, even, formula, piece, swatch, value } from '../../../src/notebook/cell-builders';
import { linesOf, patternOf, prove, sentencesOf } from '../../../src/pattern';
import { sourceOf } from './source-of';

const fabric = swatch('Fabric', { worked: '', stitches: 20, rows: 28 }, { name: 'fabric' });

async function written(cells: readonly Cell[], more: Partial<Notebook> = {}) {
  const notebook: Notebook = {
    title: 'A thing',
    settings: { ...usualSettings, craft: 'knitting' },
    sizes: [{ id: 'm', label: 'M' }],
    sections: [{ id: 'all', label: '', cells: [fabric, ...cells] }],
    ...more,
  };
  const source = await sourceOf(notebook);
  const document = patternOf(source);
  expect(prove(document, source)).toMatchObject({ proven: true });
  const materials = document.parts.filter(({ kind }) => kind === 'materials');
  return {
    materials: sentencesOf({ parts: materials }).map(({ text }) => text),
    lines: document.parts.flatMap(linesOf).map(({ text }) => text),
  };
}

const back = piece('Back', 'flat', 'STS(40)', [even('Body', 'fabric', 'ROWS(10)')], { ends: 'held' });
const front = piece('Front', 'flat', 'STS(40)', [even('Body', 'fabric', 'ROWS(10)')]);
const weaving = 'Tapestry needle, to weave in the ends.';
const holders = 'Stitch holders or spare yarn, to hold stitches on.';

describe('small tools are listed where the text has them in hand (common practice)', () => {
  it('a flat piece wants a needle for its ends, and nothing else', async () => {
    expect((await written([front])).materials).toEqual([weaving]);
  });

  it('a seam is sewn with the same needle', async () => {
    const other = { ...front, id: 'other', name: 'other', label: 'Other' };
    const sides = check('Sides', 'JOINS(front_rows; other_rows)', 'No.');
    expect((await written([front, other, sides])).materials).toEqual([
      'Tapestry needle, to sew the seams and weave in the ends.',
    ]);
  });

  it('what is worked in the round begins at a marker', async () => {
    const hat = piece('Hat', 'round', 'STS(40)', [even('Body', 'fabric', 'ROWS(10)')]);
    expect((await written([hat])).materials).toEqual(['Stitch marker.', weaving]);
  });

  it('a marker among the notions is not listed again', async () => {
    const hat = piece('Hat', 'round', 'STS(40)', [even('Body', 'fabric', 'ROWS(10)')]);
    const markers: Cell = {
      kind: 'notions',
      id: 'markers',
      label: 'Ring markers',
      name: 'markers',
      sites: value(4),
      every: value(1),
      startAt: value(1),
      each: value(0),
      waste: value(0),
    };
    const { materials } = await written([hat, markers]);
    expect(materials.filter((text) => /marker/iu.test(text))).toEqual(['Ring markers: 4.']);
  });

  it('stitches that are kept while another piece is worked go on a holder', async () => {
    const { materials, lines } = await written([back, front]);
    expect(lines).toContain('Do not bind off: leave the 40 sts on a holder.');
    expect(materials).toEqual([holders, weaving]);
  });

  it('stitches that are gone on with at once stay on the needle', async () => {
    const yoke = piece('Yoke', 'flat', 'back_end', [even('Body', 'fabric', 'ROWS(10)')]);
    const { materials, lines } = await written([back, yoke]);
    expect(lines).toContain('Do not bind off: keep the 40 sts on the needle.');
    expect(materials).toEqual([weaving]);
  });

  it('what is not taken up of them waits on a holder, and in crochet unworked', async () => {
    const cells = [
      back,
      formula('Neck', 'STS(28)'),
      piece('Strap', 'flat', 'back_end - neck', [even('Body', 'fabric', 'ROWS(10)')]),
    ];
    const knit = await written(cells);
    expect(knit.lines).toContain(
      'Take up 12 sts of the 40 sts left at the end of Back, leaving the others on a holder.',
    );
    expect(knit.materials).toEqual([holders, weaving]);
    const crochet = await written(cells, { settings: usualSettings });
    expect(crochet.lines).toContain(
      'Take up 12 sts of the 40 sts left at the end of Back, leaving the others unworked.',
    );
    expect(crochet.materials).toEqual([weaving]);
  });

  it('a person’s own words count', async () => {
    const hat = piece('Hat', 'round', 'STS(40)', [even('Body', 'fabric', 'ROWS(10)')]);
    const own = { template: 'Join in the round.', terms: 'US' } as const;
    const { materials } = await written([hat], { wording: { 'piece hat join': own } });
    expect(materials).toEqual([weaving]);
  });
});
