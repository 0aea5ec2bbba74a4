import { describe, expect, it } from 'vitest';
import { hatCrown } from '../../../src/starters';
import { patternOf, stitchChoices } from '../../../src/pattern';
import { abbreviationsIn } from '../../../src/pattern/write/abbreviations';
import { sourceOf } from './source-of';
import { blouseSleeve } from '../../notebooks/blouse-sleeve';
import { underarm } from '../../notebooks/underarm';
import { vNeck } from '../../notebooks/v-neck';

const shorts = (texts: string[], craft: 'crochet' | 'knitting', terms: 'US' | 'UK' = 'US') =>
  abbreviationsIn(texts, craft, terms).map(([short]) => short);

describe('the abbreviations of a pattern', () => {
  it('are those its instructions use, and no others', () => {
    expect(shorts(['Next row (RS): k6, k2tog, m1 [7 sts].'], 'knitting')).toEqual([
      'k',
      'k2tog',
      'm1',
      'RS',
      'sts',
    ]);
    expect(shorts(['Next row: *sc 6, sc2tog; rep from * to end.'], 'crochet')).toEqual([
      'rep',
      'sc',
      'sc2tog',
    ]);
    expect(shorts(['Next row (RS): k3, yo, k2tog, k3 [8 sts].'], 'knitting')).toContain('yo');
    expect(shorts(['Work 2 rows even.'], 'crochet')).toEqual([]);
  });

  it('mean another stitch in UK terms', () => {
    expect(abbreviationsIn(['dc 6'], 'crochet', 'US')).toEqual([['dc', 'double crochet']]);
    expect(abbreviationsIn(['tr 6'], 'crochet', 'UK')).toEqual([['tr', 'treble']]);
    expect(shorts(['On the next row, ss across the first 8 sts'], 'crochet', 'UK')).toEqual(['ss', 'sts']);
  });

  it.each([
    [vNeck(), ['ch', 'dec', 'RS', 'sc', 'st', 'sts']],
    [underarm(), ['ch', 'rep', 'RS', 'sc', 'sl st', 'st', 'sts']],
    [blouseSleeve(), ['dec', 'rep', 'sc', 'sc2tog', 'st', 'sts']],
    [hatCrown(), ['dec', 'k', 'k2tog', 'rep', 'st', 'sts']],
  ])('stand in the pattern of a starter', async (notebook, list) => {
    const part = patternOf(await sourceOf(notebook)).parts.find(({ kind }) => kind === 'abbreviations')!;
    const table = part.blocks.find((block) => block.kind === 'table')!;
    expect(table.rows.map(([short]) => short)).toEqual(list);
  });

  it('a swatch is offered stitches by the names of the notebook’s terms', () => {
    expect(stitchChoices({ craft: 'crochet', terms: 'UK' }).map(({ name }) => name)).toEqual([
      'double crochet (dc)',
      'half treble (htr)',
      'treble (tr)',
      'double treble (dtr)',
    ]);
    expect(stitchChoices({ craft: 'knitting', terms: 'UK' })[1]).toEqual({
      stitch: 'stockinette',
      name: 'stocking stitch',
    });
  });
});
