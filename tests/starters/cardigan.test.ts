import { describe, expect, test } from 'vitest';
import { workPiece, type Piece, type Row } from '../../src/craft';
import { cardigan } from '../../src/starters';
import { patternOf, prove, type PatternSource } from '../../src/pattern';
import { sourceOf } from '../pattern/write/source-of';

const crafts = ['crochet', 'knitting'] as const;
const turnedTo = (craft: (typeof crafts)[number]): Promise<PatternSource> => {
  const notebook = cardigan();
  return sourceOf({ ...notebook, settings: { ...notebook.settings, craft } });
};
const rowsOf = (source: PatternSource, size: string, piece: string): Row[] =>
  workPiece(source.plan(size, piece) as Piece);

describe.each(crafts)('the cardigan in %s', (craft) => {
  test('a right front has its neck at the right edge and its armhole at the left, a left front the other way round', async () => {
    const source = await turnedTo(craft);
    for (const { id } of source.notebook.sizes) {
      for (const [piece, neck, armhole] of [
        ['right-front', 'right', 'left'],
        ['left-front', 'left', 'right'],
      ] as const) {
        const rows = rowsOf(source, id, piece);
        const lost = (edge: 'left' | 'right') => -rows.reduce((sum, row) => sum + row.edges[edge], 0);
        const numbers = [lost(neck), lost(armhole)];
        const meant = [
          source.number(id, 'front-neck-sts', 'value'),
          source.number(id, 'underarm-sts', 'value'),
        ];
        expect([id, piece, ...numbers]).toEqual([id, piece, ...meant]);
      }
    }
  });

  test('a neckband takes up the held stitches of the neck, its slope and its straight rows', async () => {
    const source = await turnedTo(craft);
    for (const { id } of source.notebook.sizes) {
      // 14 stitches and 12 rows to 10 cm in the body, 16 stitches in the band.
      const left = ['neck-first', 'neck-second'].reduce(
        (sum, cell) => sum + source.number(id, cell, 'value')!,
        0,
      );
      // Straight up the two rows on which they are left, then aslant from one decrease to the next.
      let [edge, rise] = [left / 1.4 + 2 / 1.2, 0];
      for (const row of rowsOf(source, id, 'right-front').filter(({ stretch }) => stretch === 7)) {
        rise += 1 / 1.2;
        if (row.edges.right === 0) continue;
        edge += Math.hypot(1 / 1.4, rise);
        rise = 0;
      }
      edge += rise;
      expect([id, source.number(id, 'neck-edge', 'value')]).toEqual([id, expect.closeTo(edge, 9)]);
      const back = source.number(id, 'neck-sts', 'count')!;
      expect(source.number(id, 'neckband-sts', 'total')).toBe(2 * Math.round(edge * 1.6) + back);
    }
  });

  test('its bust is the back, both fronts and one band, since one lies on the other, as its fronts’ check has it', async () => {
    const source = await turnedTo(craft);
    for (const { id } of source.notebook.sizes) {
      const sts = ['back', 'right-front', 'left-front'].reduce(
        (sum, piece) => sum + rowsOf(source, id, piece)[0]!.count,
        0,
      );
      const band = rowsOf(source, id, 'button-band').length / 1.8;
      expect(rowsOf(source, id, 'buttonhole-band').length / 1.8).toBe(band);
      expect(source.number(id, 'bust-made', 'made')).toBeCloseTo(sts / 1.4 + band, 9);
      const [back, front] = ['back', 'right-front'].map((piece) => rowsOf(source, id, piece)[0]!.count / 1.4);
      expect(source.truth(id, 'fronts-meet', 'holds')).toBe(Math.abs(2 * front! + band - back!) <= 1.5);
    }
  });

  test('is proven as it is printed', async () => {
    const source = await turnedTo(craft);
    expect(prove(patternOf(source), source)).toEqual({ proven: true });
  });
});
