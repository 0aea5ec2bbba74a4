import { describe, expect, test } from 'vitest';
import { workPiece } from '../../../src/craft';
import { tableFor } from '../../../src/pictures/charts/table';
import { rowsOf, sizeOf, sleeve, specOf } from './pieces';

const m = sizeOf('m', rowsOf([28, 28, 28, 26, 26]));
const l = sizeOf('l', rowsOf([30, 30, 28, 28, 28, 28]));

describe('the table of a plot', () => {
  test('has a row for every run of rows in which no size changes, and a dash where a size has ended', () => {
    const { caption, headings, rows, note } = tableFor(specOf([m, l, sizeOf('x', null, 'Missing.')]));
    expect(caption).toBe('Sleeve: stitches by row');
    expect(headings).toEqual(['Row', 'M', 'L', 'X']);
    expect(rows).toEqual([
      ['1–2', '28', '30', '–'],
      ['3', '28', '28', '–'],
      ['4–5', '26', '28', '–'],
      ['6', '–', '28', '–'],
    ]);
    expect(note).toBeNull();
  });

  test('of widths is in the unit and with the decimal sign shown', () => {
    const { caption, rows } = tableFor(specOf([m], { which: 'width', unit: 'in', decimal: ',' }));
    expect(caption).toBe('Sleeve: width in inches by row');
    expect(rows).toEqual([
      ['1–3', '7,9'],
      ['4–5', '7,3'],
    ]);
  });

  test('of a taper gives counts, changes, widths and how far each run gets from the straight line', () => {
    const plan = sleeve(70, 40, 90);
    const { headings, rows } = tableFor(
      specOf([sizeOf('m', workPiece(plan)), l], {
        which: 'taper',
        highlighted: 'm',
        stretches: plan.stretches,
      }),
    );
    expect(headings).toHaveLength(5);
    expect(rows[0]).toEqual(['1–5', '70', '0', '50.0', '1.7']);
    expect(rows[1]).toEqual(['6–11', '68', '−2', '48.6', '1.7']);
    expect(rows.at(-1)).toEqual(['92–101', '34', '0', '17.0', '–']);
  });

  test('of a taper whose plan is at hand says what is worked on each run', () => {
    const plan = sleeve(70, 40, 90);
    const { headings, rows } = tableFor(
      specOf([{ ...sizeOf('m', workPiece(plan)), plan }], { which: 'taper', highlighted: 'm' }),
    );
    expect(headings.at(-1)).toBe('Worked');
    expect(rows.map((row) => row.at(-1)).slice(0, 2)).toEqual([
      'plain',
      'decrease 2 in the round, then 5 plain',
    ]);
    expect(rows.slice(-2).map((row) => row.at(-1))).toEqual(['decrease 6, spread evenly', 'plain']);
  });

  test('starts a new row where the fabric changes the width and not the count', () => {
    const plan = sleeve(70, 40, 90);
    const { rows } = tableFor(specOf([sizeOf('m', workPiece(plan))]));
    expect(rows.slice(-2)).toEqual([
      ['91', '34'],
      ['92–101', '34'],
    ]);
  });

  test('of 10 000 even rows is one row', () => {
    expect(tableFor(specOf([sizeOf('m', rowsOf(Array<number>(10_000).fill(60)))])).rows).toEqual([
      ['1–10000', '60'],
    ]);
  });

  test('that would be too long is cut off, and says where', () => {
    const { rows, note } = tableFor(specOf([sizeOf('m', rowsOf([20, 21, 20, 21, 20]))]), 3);
    expect(rows.map(([head]) => head)).toEqual(['1', '2', '3']);
    expect(note).toBe('Rows 4 to 5 are left out here: too many of them differ to be listed.');
  });

  test('of nothing has its headings and no rows', () => {
    expect(tableFor(specOf([sizeOf('m', null)]))).toMatchObject({
      headings: ['Row', 'M'],
      rows: [],
      note: null,
    });
  });

  test('has as many strings in every row as it has headings', () => {
    for (const which of ['stitches', 'width', 'taper'] as const) {
      const { headings, rows } = tableFor(specOf([m, l], { which, highlighted: 'm' }));
      expect(rows.length).toBeGreaterThan(0);
      for (const row of rows) expect(row).toHaveLength(headings.length);
    }
  });
});
