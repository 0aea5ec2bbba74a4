import { describe, expect, it } from 'vitest';
import type { Cell, Notebook, Settings } from '../../../src/notebook';
import { patternOf, plainText, prove } from '../../../src/pattern';
import { even, formula, piece, swatch } from '../../../src/notebook/cell-builders';
import { notebookOf } from '../../engine/notebook-of';
import { sourceOf } from './source-of';

const band = (stitches: number): Cell =>
  piece('Band', 'flat', `STS(${stitches})`, [even('Plain', 'rib', '2'), even('Holes', 'rib', '3')]);

function garment(sts: number, holes: string, settings: Partial<Settings> = {}): Notebook {
  const fabric = swatch('Rib', { worked: '5 mm hook', stitches: 16, rows: 18 });
  const made = notebookOf([fabric, band(sts), formula('Places', holes)]);
  return { ...made, settings: { ...made.settings, ...settings } };
}

async function written(notebook: Notebook): Promise<string> {
  const source = await sourceOf(notebook);
  const document = patternOf(source);
  expect(prove(document, source)).toMatchObject({ proven: true });
  return plainText(document);
}

const along = (given: string): string => `BUTTONHOLES(band_holes_last; ${given})`;

describe('buttonholes along a stretch', () => {
  it('are written on its first row, chained over the stitches they skip, and worked into on the next', async () => {
    const text = await written(garment(86, along('STS(3); 7; STS(2)')));
    expect(text).toContain(
      'Next row (RS): sc 3, ch 2, skip 2 sts, *sc 11, ch 2, skip 2 sts; rep from * 5 more times, sc 3 [86 sts].',
    );
    expect(text).toContain(
      'On the next row, the first of those below, work 2 sc in each chain space.\nWork 2 rows even.',
    );
  });

  it('in UK terms are double crochet, and miss their stitches', async () => {
    const text = await written(garment(86, along('STS(3); 7; STS(2)'), { terms: 'UK' }));
    expect(text).toContain('dc 3, ch 2, miss 2 sts, *dc 11, ch 2, miss 2 sts; rep from * 5 more times, dc 3');
  });

  it('with gaps that are not alike come where the function puts them', async () => {
    // Of 80 stitches: after 3, holes of 3 from stitches 4, 22, 40, 57 and 75.
    const text = await written(garment(80, along('STS(3); 5; STS(3)')));
    expect(text).toContain(
      'sc 3, ch 3, skip 3 sts, *sc 15, ch 3, skip 3 sts; rep from * once more, sc 14, ch 3, skip 3 sts, sc 15, ch 3, skip 3 sts, sc 3 [80 sts]',
    );
  });

  it('of one stitch say so', async () => {
    const text = await written(garment(21, along('STS(3); 3; STS(1)')));
    expect(text).toContain('ch 1, skip 1 st, ');
    expect(text).toContain('work 1 sc in each chain space');
  });

  it('in knitting are a yarn over and a decrease', async () => {
    const text = await written(garment(86, along('STS(3); 7; STS(2)'), { craft: 'knitting' }));
    expect(text).toContain('k3, yo, k2tog, *k11, yo, k2tog; rep from * 5 more times, k3 [86 sts]');
    expect(text).not.toContain('chain space');
  });

  it('that do not fit, or lie along another piece, are not written', async () => {
    expect(await written(garment(10, along('STS(3); 7; STS(2)')))).not.toContain('skip');
    expect(await written(garment(86, 'BUTTONHOLES(STS(86); STS(3); 7; STS(2))'))).not.toContain('skip');
  });
});
