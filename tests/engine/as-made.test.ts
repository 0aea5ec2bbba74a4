import { describe, expect, test } from 'vitest';
import { asMadeMessage, measureLabel } from '../../src/notebook/as-made-message';
import {
  inputsOf,
  outputsOf,
  usualSettings,
  type AsMadeCell,
  type Cell,
  type Size,
} from '../../src/notebook';
import { asMade, even, formula, piece } from '../../src/notebook/cell-builders';
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
  return { number, texts: asMadeMessage(cell, sizes, usualSettings, number) };
}

describe('a measurement as made', () => {
  const within = 'STS(8) / wool_sts';

  test('is the widths of its pieces, each so many times, beside what is wanted', async () => {
    // 98 cm: half of it is 68.6 stitches, so 67; 108 cm: 75.6, so 75. Two of each.
    const { number, texts } = await made(
      asMade('Finished bust', 'bust', [['back_piece_start_width', 2]], within),
    );
    expect(number('s', 'made')).toBeCloseTo((2 * 67) / 1.4, 9);
    expect(number('s', 'difference')).toBeCloseTo((2 * 67) / 1.4 - 98, 9);
    expect(number('m', 'made')).toBeCloseTo((2 * 75) / 1.4, 9);
    expect(texts).toEqual([]);
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
    const { texts } = await made(asMade('Finished bust', 'bust', [['back_piece_start_width', 2]], 'CM(1)'));
    expect(texts).toEqual(['S: Finished bust is 95.7\u00a0cm where 98.0 is wanted.']);
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
  const problems = sizes.map(({ id }) => worked.results.error(id, 'back', 'count')?.message);
  expect(new Set(problems)).toEqual(
    new Set([
      'The least that this repeat allows is 503, more than twice what is wanted: take a smaller repeat.',
    ]),
  );
});

describe('a repeat far wider than its half', () => {
  const nine = ['XS', 'S', 'M', 'L', 'XL', '2X', '3X', '4X', '5X'].map((label) => ({ id: label, label }));
  const bust = { each: Object.fromEntries(nine.map(({ id }, at) => [id, 90 + 10 * at])) };
  const halves = (back: number, front: number): Cell[] => [
    swatch('wool', 14, 12),
    measure('bust', 'length', bust),
    formula('Back', `FITTOGETHER(1; bust * wool_sts; STS(11); 1; ${back}; 3; 2; ${front}; 3)`),
    formula('Front', `FITTOGETHER(2; bust * wool_sts; STS(11); 1; ${back}; 3; 2; ${front}; 3)`),
    formula('Front width', 'front / wool_sts'),
    piece('Front piece', 'flat', 'front', [even('Body', 'wool', 'ROWS(36)', 'main')]),
  ];
  const inWords = async (cells: Cell[]) => {
    const { results } = await new Worked().show(notebookOf(cells, nine));
    return cells.flatMap((cell) =>
      [...inputsOf(cell), ...outputsOf(cell)].flatMap(({ key }) => {
        const own = nine.flatMap(({ id }) => {
          const error = results.error(id, cell.id, key);
          return error && !error.from ? [error.message] : [];
        });
        return [...new Set(own)].map((message) => [cell.id, message]);
      }),
    );
  };
  const complaint = (least: number) =>
    `The least that this repeat allows is ${least}, more than twice what is wanted: take a smaller repeat.`;

  test('of the back is told of once for all sizes, on the back and not on the front', async () => {
    expect(await inWords(halves(500, 8))).toEqual([['back', complaint(503)]]);
  });

  test('of the fronts is told of on the front, and once', async () => {
    expect(await inWords(halves(8, 300))).toEqual([['front', complaint(303)]]);
  });

  test('is none where both can be met', async () => {
    expect(await inWords(halves(8, 8))).toEqual([]);
  });

  test('of a foundation chain is told of too', async () => {
    const chain = (multiple: number) =>
      formula(
        'Chain row',
        `FITCHAIN(bust / 2 * wool_sts; ${multiple}; 4; "nearest"; STS(1); "does not count")`,
      );
    const body = halves(8, 8).slice(0, 2);
    expect(await inWords([...body, chain(500)])).toEqual([['chain-row', complaint(503)]]);
    expect(await inWords([...body, chain(8)])).toEqual([]);
  });
});
