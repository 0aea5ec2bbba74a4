import { describe, expect, it } from 'vitest';
import { type EdgePart, usualSettings } from '../../../src/notebook';
import { even, piece, pickUp, swatch, value } from '../../../src/notebook/cell-builders';
import { linesOf, patternOf, prove } from '../../../src/pattern';
import { sourceOf } from './source-of';

/** The line of an edge of one stretch, whose stitches are fitted to a multiple. */
async function line(edge: EdgePart, multiple: number): Promise<string> {
  return (await lines(edge, multiple))[0]!;
}

/** The same, and the line that says how it comes out even. */
async function lines(edge: EdgePart, multiple: number): Promise<string[]> {
  const source = await sourceOf({
    title: 'Edge',
    settings: { ...usualSettings, craft: 'knitting' },
    sizes: [{ id: 'm', label: 'M' }],
    sections: [
      {
        id: 'all',
        label: '',
        cells: [
          swatch('Fabric', { worked: '', stitches: 20, rows: 28 }, { name: 'fabric' }),
          pickUp('Band', [edge], multiple, 0, { name: 'band' }),
          piece('Band', 'flat', 'band', [even('Band', 'fabric', 'ROWS(3)')], { name: 'worked' }),
        ],
      },
    ],
  });
  const document = patternOf(source);
  expect(prove(document, source)).toEqual({ proven: true });
  // Without how it comes out even, whoever follows it would pick up another count.
  const groups = document.parts.flatMap(linesOf).find(({ text }) => text.startsWith('To come out even'));
  if (groups) {
    const parts = document.parts.map((part) => ({
      ...part,
      blocks: part.blocks.filter((block) => block !== groups),
    }));
    expect(prove({ ...document, parts }, source), groups.text).toMatchObject({ proven: false });
  }
  return document.parts
    .flatMap(linesOf)
    .slice(1, 3)
    .map(({ text }) => text);
}

const along = (rows: number, pick: number, of: number): EdgePart => ({
  kind: 'rows',
  name: 'edge',
  label: 'Edge',
  rows: value(rows),
  pick: value(pick),
  of: value(of),
});
const repeats = (motifs: number, each: number): EdgePart => ({
  kind: 'motifs',
  name: 'edge',
  label: 'Edge',
  motifs: value(motifs),
  each: value(each),
});

describe('the ratio of an edge is one that comes to its count', () => {
  it.each([
    ['as it was asked for', 40, 3, 4, 1, '30 sts over 40 row ends, about 3 in every 4'],
    [
      'as it was asked for, when the multiple moves one stitch',
      39,
      3,
      4,
      15,
      '30 sts over 39 row ends, about 3 in every 4',
    ],
    [
      'the count’s own where the multiple moves many',
      4,
      1,
      1,
      8,
      '8 sts over 4 row ends, about 2 in every one',
    ],
    [
      'over more rows where few stitches go over many',
      60,
      1,
      30,
      1,
      '2 sts over 60 row ends, about 1 in every 30',
    ],
  ])('%s', async (_name, rows, pick, of, multiple, text) => {
    expect(await line(along(rows, pick, of), multiple)).toBe(`Edge: ${text}.`);
  });

  it('in each repeat go as many as the count comes to', async () => {
    expect(await line(repeats(14, 10), 1)).toBe('Edge: 140 sts over 14 repeats, 10 in each.');
    expect(await line(repeats(2, 1), 12)).toBe('Edge: 12 sts over 2 repeats, about 6 in each.');
  });

  it('says which repeat takes the odd stitch', async () => {
    expect(await lines(repeats(14, 10), 141)).toEqual([
      'Edge: 141 sts over 14 repeats, about 10 in each.',
      'To come out even: 11 in the next repeat, 10 in each of the next 13 repeats.',
    ]);
  });

  it('says one in each st only where there are as many stitches', async () => {
    const tops = (count: number): EdgePart => ({
      kind: 'stitches',
      name: 'edge',
      label: 'Edge',
      count: value(count),
    });
    expect(await line(tops(26), 1)).toBe('Edge: 26 sts, one in each st.');
    expect(await lines(tops(26), 25)).toEqual([
      'Edge: 25 sts over 26 sts, about 1 in every one.',
      'To come out even: pick up 25, skip 1.',
    ]);
    expect(await lines(tops(26), 27)).toEqual([
      'Edge: 27 sts over 26 sts, about 1 in every one.',
      'To come out even: 2 in the next st, 1 in each of the next 25 sts.',
    ]);
  });

  it('one is in the next, and not in each of the next 1', async () => {
    expect((await lines(along(3, 4, 3), 1))[1]).toBe(
      'To come out even: 2 in the next row end, 1 in each of the next 2 row ends.',
    );
    expect((await lines(along(2, 3, 2), 1))[1]).toBe(
      'To come out even: 1 in the next row end, 2 in the next row end.',
    );
  });
});
