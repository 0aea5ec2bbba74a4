import { describe, expect, it } from 'vitest';
import { type EdgePart, usualSettings } from '../../src/notebook';
import { even, piece, pickUp, swatch, value } from '../../src/starters/cells';
import { linesOf, patternOf, prove } from '../../src/words';
import { sourceOf } from './source-of';

/** The line of an edge of one stretch, whose stitches are fitted to a multiple. */
async function line(edge: EdgePart, multiple: number): Promise<string> {
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
  return document.parts.flatMap(linesOf)[1]!.text;
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
    expect(await line(repeats(14, 10), 1)).toBe('Edge: 140 sts over 14 repeats, about 10 in each.');
    expect(await line(repeats(2, 1), 12)).toBe('Edge: 12 sts over 2 repeats, about 6 in each.');
  });
});
