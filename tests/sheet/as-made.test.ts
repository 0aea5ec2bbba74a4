import { describe, expect, test } from 'vitest';
import { asMadeSaid, measureLabel } from '../../src/notebook/as-made-said';
import { usualSettings, type AsMadeCell, type Cell, type Size } from '../../src/notebook';
import { asMade, even, piece } from '../../src/starters/cells';
import { fit, measure, notebookOf, swatch } from './notebook-of';
import { Worked } from './worked';

const sizes: Size[] = [
  { id: 's', label: 'S' },
  { id: 'm', label: 'M' },
];
const body: Cell[] = [
  swatch('wool', 14, 12),
  measure('bust', 'length', { each: { s: 98, m: 108 } }),
  fit('back', 'bust / 2 * wool_sts'),
  piece('Back piece', 'flat', 'back', [even('Body', 'wool', 'ROWS(36)', 'main')]),
];

async function made(cell: AsMadeCell) {
  const { results } = await new Worked().show(notebookOf([...body, cell], sizes));
  const number = (size: string, key: string) => results.number(size, cell.id, key);
  return { number, said: asMadeSaid(cell, sizes, usualSettings, number) };
}

describe('a measurement as made', () => {
  const within = 'STS(8) / wool_sts';

  test('is the widths of its pieces, each so many times, beside what is wanted', async () => {
    // 98 cm: half of it is 68.6 stitches, so 67; 108 cm: 75.6, so 75. Two of each.
    const { number, said } = await made(
      asMade('Finished bust', 'bust', [['back_piece_start_width', 2]], within),
    );
    expect(number('s', 'made')).toBeCloseTo((2 * 67) / 1.4, 9);
    expect(number('s', 'difference')).toBeCloseTo((2 * 67) / 1.4 - 98, 9);
    expect(number('m', 'made')).toBeCloseTo((2 * 75) / 1.4, 9);
    expect(said).toEqual([]);
  });

  test('seams and overlaps take of it', async () => {
    const { number } = await made(
      asMade('Finished bust', 'bust', [['back_piece_start_width', 2]], within, {
        closes: 'seamed',
        less: 'SEAMSTAKE(2; STS(1); wool_sts)',
      }),
    );
    expect(number('s', 'made')).toBeCloseTo((2 * 67 - 4) / 1.4, 9);
  });

  test('edge to edge nothing is taken, whatever stood there before', async () => {
    const cell = asMade('Finished bust', 'bust', [['back_piece_start_width', 2]], within, { less: 'CM(9)' });
    expect((await made(cell)).number('s', 'made')).toBeCloseTo((2 * 67) / 1.4, 9);
  });

  test('further from what is wanted than its step, it says so', async () => {
    const { said } = await made(asMade('Finished bust', 'bust', [['back_piece_start_width', 2]], 'CM(1)'));
    expect(said).toEqual(['S: Finished bust is 95.7\u00a0cm where 98.0 is wanted.']);
  });

  test('is printed without saying that it is as made', () => {
    expect(measureLabel('Finished bust, as made')).toBe('Finished bust');
    expect(measureLabel('Bust as made')).toBe('Bust');
    expect(measureLabel('As made')).toBe('As made');
  });
});

test('a repeat far wider than its piece is told of once, where it stands', async () => {
  const notebook = notebookOf(
    [
      ...body.map((cell): Cell =>
        cell.id === 'back' ? ({ ...cell, multiple: { value: 500 } } as Cell) : cell,
      ),
    ],
    sizes,
  );
  const worked = await new Worked().show(notebook);
  const troubles = sizes.map(({ id }) => worked.results.trouble(id, 'back', 'count')?.message);
  expect(new Set(troubles)).toEqual(
    new Set([
      'The least that this repeat allows is 503, more than twice what is wanted: take a smaller repeat.',
    ]),
  );
});
