import { describe, expect, it } from 'vitest';
import { usualSettings, type Notebook, type Settings } from '../../../src/notebook';
import { even, piece, swatch, value } from '../../../src/notebook/cell-builders';
import { patternOf, prove, sentencesOf } from '../../../src/pattern';
import { printedGauge } from '../../../src/pattern/write/parts/gauge';
import { sourceOf } from './source-of';

const inches: Settings = { ...usualSettings, length: 'in', gaugeOver: '4 in' };

/** What a pattern of one fabric says of its gauge and its tools. */
async function linesOf(
  worked: string,
  settings: Settings,
  own: Partial<ReturnType<typeof swatch>> = {},
): Promise<{ gauge: string[]; materials: string[]; piece: string[] }> {
  const notebook: Notebook = {
    title: 'Scarf',
    settings,
    sizes: [{ id: 'one', label: 'One size' }],
    sections: [
      {
        id: 'cells',
        label: 'Cells',
        cells: [
          { ...swatch('Fabric', { worked, stitches: 14, rows: 12 }, { name: 'fabric' }), ...own } as never,
          piece('Scarf', 'flat', 'STS(40)', [even('Body', 'fabric', 'ROWS(10)')]),
        ],
      },
    ],
  };
  const source = await sourceOf(notebook);
  const document = patternOf(source);
  expect(prove(document, source)).toEqual({ proven: true });
  const of = (kind: string): string[] =>
    sentencesOf({ ...document, parts: document.parts.filter((part) => part.kind === kind) }).map(
      ({ text }) => text,
    );
  return { gauge: of('gauge'), materials: of('materials'), piece: of('piece') };
}

describe('a gauge as it is printed', () => {
  it.each([
    // 14 × 1.016 = 14.224 and 16 × 1.016 = 16.256: to the nearest half 14 and 16½.
    [14, '14'],
    [16, '16.5'],
    [12, '12'],
    [25, '25.5'],
  ])('%d over 10 cm is %s over 4 in, and says that it was rounded', (count, text) => {
    expect(printedGauge(count / 10, inches, false)).toEqual({ text, isRounded: true });
  });

  it('what was counted over 4 in is printed as it was counted', () => {
    expect(printedGauge(15 / 10.16, inches, true)).toEqual({ text: '15', isRounded: false });
    expect(printedGauge(15.25 / 10.16, inches, true)).toEqual({ text: '15.25', isRounded: false });
  });

  it('over 10 cm nothing is rounded to a half, and less than a quarter is not rounded to none', () => {
    expect(printedGauge(1.43, usualSettings, false)).toEqual({ text: '14.3', isRounded: false });
    expect(printedGauge(0.02, inches, false).isRounded).toBe(false);
  });

  it('a swatch counted over 10 cm says both, one counted over 4 in its own counts alone', async () => {
    expect((await linesOf('6.5 mm hook', inches)).gauge).toEqual([
      'Fabric: 14 sts and 12 rows to 4 in, exactly 14 sts and 12 rows to 10 cm (6.5 mm hook).',
    ]);
    const over = (cm: number, sts: number, rows: number) =>
      ({
        stitches: [{ count: value(sts), over: value(cm) }],
        rows: [{ count: value(rows), over: value(cm) }],
      }) as never;
    expect((await linesOf('6.5 mm hook', inches, over(10, 16, 25))).gauge).toEqual([
      'Fabric: 16.5 sts and 25.5 rows to 4 in, exactly 16 sts and 25 rows to 10 cm (6.5 mm hook).',
    ]);
    expect((await linesOf('6.5 mm hook', inches, over(10.16, 15.25, 13))).gauge).toEqual([
      'Fabric: 15.25 sts and 13 rows to 4 in (6.5 mm hook).',
    ]);
    expect((await linesOf('6.5 mm hook', usualSettings)).gauge).toEqual([
      'Fabric: 14 sts and 12 rows to 10 cm (6.5 mm hook).',
    ]);
  });
});

describe('the tools of a knitted pattern', () => {
  const knitting: Settings = { ...usualSettings, craft: 'knitting' };

  it('are needles, though the swatch still names the hook it was crocheted with', async () => {
    const { materials, gauge, piece: lines } = await linesOf('6.5 mm hook, flat', knitting);
    expect(materials).toContain('Needles in the size that gives the gauge, for Fabric.');
    expect([...materials, ...gauge, ...lines].join(' ')).not.toMatch(/hook/iu);
    expect(gauge).toEqual(['Fabric: 14 sts and 12 rows to 10 cm (flat).']);
  });

  it('are a hook too where a fabric is crocheted by its stitch or its words', async () => {
    const hook = '4 mm hook, for Fabric, or the size that gives the gauge.';
    expect((await linesOf('4 mm hook', knitting, { stitch: 'sc' } as never)).materials).toContain(hook);
    expect((await linesOf('4 mm hook', knitting, { label: 'Crochet edging' } as never)).materials).toContain(
      '4 mm hook, for Crochet edging, or the size that gives the gauge.',
    );
  });

  it('are what the swatch says everywhere else', async () => {
    expect((await linesOf('6.5 mm hook, flat', usualSettings)).materials).toContain(
      '6.5 mm hook, flat, for Fabric, or the size that gives the gauge.',
    );
    expect((await linesOf('4 mm needles', knitting)).materials).toContain(
      '4 mm needles, for Fabric, or the size that gives the gauge.',
    );
  });
});
