import { describe, expect, it } from 'vitest';
import { usualSettings, type Notebook, type PieceCell } from '../../src/notebook';
import { value } from '../../src/notebook/cell-builders';
import { readPiece } from '../../src/formulas/piece-text';
import { workPiece } from '../../src/craft';
import { Worked } from './worked';

const withPiece = (stretches: PieceCell['stretches']): Notebook => ({
  title: 'Long',
  settings: usualSettings,
  sizes: [{ id: 'one', label: 'One' }],
  sections: [
    {
      id: 'all',
      label: 'All',
      cells: [
        {
          kind: 'swatch',
          id: 'fabric',
          name: 'fabric',
          label: 'Fabric',
          worked: '5 mm hook',
          stitches: [{ count: value(14), over: value(10) }],
          rows: [{ count: value(12), over: value(10) }],
        },
        {
          kind: 'piece',
          id: 'yoke',
          name: 'yoke',
          label: 'Yoke',
          worked: 'flat',
          start: value(40),
          stretches,
          ends: 'bound off',
        },
      ],
    },
  ],
});

async function rowsOf(notebook: Notebook): Promise<number[]> {
  const { results } = await new Worked().show(notebook);
  expect(results.error('one', 'yoke', 'piece')).toBeUndefined();
  return workPiece(readPiece(results.text('one', 'yoke', 'piece')!)).map(({ count }) => count);
}

describe('a piece is as long as it is', () => {
  it('100 stretches of 2 rows are 200 rows, though no formula of a person is as long as theirs', async () => {
    const stretches = Array.from({ length: 100 }, (_, at) => ({
      kind: 'even' as const,
      name: `stretch_with_a_long_name_${at}`,
      label: `Stretch ${at}`,
      fabric: 'fabric',
      rows: value(2),
    }));
    expect(await rowsOf(withPiece(stretches))).toEqual(Array(200).fill(40));
  });

  it('400 rows counted one by one come out as they were counted', async () => {
    const counts = Array.from({ length: 400 }, (_, at) => 40 + (at % 7));
    const stretches = [
      {
        kind: 'rows' as const,
        name: 'charted',
        label: 'Charted',
        fabric: 'fabric',
        counts: counts.map((count) => value(count)),
      },
    ];
    expect(await rowsOf(withPiece(stretches))).toEqual(counts);
  });
});
