import { describe, expect, it } from 'vitest';
import { cellById, type Cell, type Entry, type Notebook, usualSettings } from '../../../src/notebook';
import { length, plain } from '../../../src/formulas';
import { blockBetween, drawnLines, lineAt, refsOf } from '../../../src/features/grid/block';
import { planPaste, rowsOf, type PastePlan } from '../../../src/features/grid/pasting';
import { edited } from '../../notebook/edited';

const measure = (id: string, entry: Entry, unit: 'length' | 'stitches' | 'percent' = 'length'): Cell => ({
  kind: 'measure',
  id,
  label: id,
  name: id,
  unit,
  entry,
});
const notebook: Notebook = {
  title: 'Sleeve',
  settings: usualSettings,
  sizes: ['s', 'm', 'l'].map((id) => ({ id, label: id.toUpperCase() })),
  sections: [
    {
      id: 'a',
      label: 'A',
      cells: [
        measure('cuff', { each: { s: 22, m: 24, l: 26 } }),
        { kind: 'note', id: 'n', label: 'Note', name: 'n', text: 'Between the lines.' },
        measure('bust', { chart: 'bust', point: 'middle' }),
        measure('hem', { value: 5 }),
        measure('half', { formula: 'cuff / 2' }),
      ],
    },
    { id: 'b', label: 'B', cells: [measure('sts', { each: { s: 40, m: 44 } }, 'stitches')] },
  ],
};
const lines = drawnLines(notebook, { isOpen: () => false, isDrawn: () => true });

function plan(text: string, at: { cell: string; size: string | null }, of = notebook): PastePlan {
  const from = drawnLines(of, { isOpen: () => false, isDrawn: () => true });
  return planPaste(text, {
    notebook: of,
    lines: from.slice(lineAt(from, { cell: at.cell, key: 'value' })),
    size: at.size,
    unitOf: ({ line }) => (line.unit === 'any' ? plain : line.unit),
  });
}
function pasted(text: string, at: { cell: string; size: string | null }, of = notebook) {
  const made = plan(text, at, of);
  const after = made.edit ? edited(of, made.edit) : of;
  const entry = (id: string) => (cellById(after, id) as { entry: Entry }).entry;
  return { ...made, entry };
}

describe('tab-separated values', () => {
  it('are rows of texts, whatever ends a line, and a last line end adds no row', () => {
    expect(rowsOf('1\t2\r\n3\t4\n')).toEqual([
      ['1', '2'],
      ['3', '4'],
    ]);
    expect(rowsOf('1\n\n3')).toEqual([['1'], [''], ['3']]);
    expect(rowsOf('5')).toEqual([['5']]);
  });

  it('may be in quotation marks with tabs within; an inch mark behind a number is none of those', () => {
    expect(rowsOf('"a\tb ""c"""\t10 1/4"')).toEqual([['a\tb "c"', '10 1/4"']]);
    expect(rowsOf('"open\t2')).toEqual([['"open', '2']]);
  });
});

describe('a block between two places', () => {
  it('is the lines and sizes between them, whichever is first', () => {
    const block = blockBetween(
      notebook,
      lines,
      { cell: 'hem', key: 'value', size: 'l' },
      { cell: 'cuff', key: 'value', size: 'm' },
    )!;
    expect(block.lines.map(({ cell }) => cell.id)).toEqual(['cuff', 'bust', 'hem']);
    expect(block.sizes.map(({ id }) => id)).toEqual(['m', 'l']);
    expect(refsOf(block)).toHaveLength(5);
  });

  it('is as wide as all sizes from a value for every size', () => {
    const at = { cell: 'hem', key: 'value', size: null };
    expect(blockBetween(notebook, lines, at, at)!.sizes).toHaveLength(3);
    expect(blockBetween(notebook, lines, at, { cell: 'n', key: 'words', size: null })).toBeUndefined();
  });

  it('passes over sections that are folded', () => {
    const shown = drawnLines(notebook, {
      isOpen: () => false,
      isDrawn: (_cell, section) => section.id !== 'a',
    });
    expect(shown.map(({ cell }) => cell.id)).toEqual(['sts']);
  });
});

describe('pasting', () => {
  it('goes across the sizes and down the value lines, past what is only words', () => {
    const { entry, says, edit } = pasted('23\t25\n95\t96', { cell: 'cuff', size: 'm' });
    expect(entry('cuff')).toEqual({ each: { s: 22, m: 23, l: 25 } });
    expect(entry('bust')).toEqual({ chart: 'bust', point: 'middle', own: { m: 95, l: 96 } });
    expect(says).toBe('4 values pasted.');
    expect(edit).toMatchObject({ do: 'several', what: 'pasting 4 values' });
  });

  it('reads each number in the unit of its line', () => {
    const inches = {
      ...notebook,
      settings: { ...notebook.settings, length: 'in' as const, decimal: ',' as const },
    };
    const { entry } = pasted('10 1/4\t9½"\t26,5 cm', { cell: 'cuff', size: 's' }, inches);
    expect(entry('cuff')).toEqual({ each: { s: 26.035, m: 24.13, l: 26.5 } });
  });

  it('takes what it can and says with counts what it left out', () => {
    const { entry, taken, left, says } = pasted('20\t21\t22\t23\n90\twide\n5\t6\t7\n11\t12\n', {
      cell: 'cuff',
      size: 's',
    });
    expect([taken, left]).toEqual([7, 4]);
    expect(entry('hem')).toEqual({ each: { s: 5, m: 6, l: 7 } });
    expect(entry('half')).toEqual({ formula: 'cuff / 2' });
    expect(says).toBe(
      '7 values pasted; 4 were left out: 1 is beyond the last size, 1 is no number ("wide"), 2 are worked out by a formula.',
    );
  });

  it('refuses half a stitch and takes the whole ones beside it', () => {
    const { entry, says } = pasted('41\t42.5\t48', { cell: 'sts', size: 's' });
    expect(entry('sts')).toEqual({ each: { s: 41, m: 44, l: 48 } });
    expect(says).toMatch(/^2 values pasted; 1 was left out: 1 is no value for its line \(/);
  });

  it('longer than the notebook says how many have no line', () => {
    const { says } = pasted('41\n42\n43', { cell: 'sts', size: 's' });
    expect(says).toBe('1 value pasted; 2 were left out: 2 are below the last line they could stand on.');
  });

  it('a million lines long is said to have no line for most of them', () => {
    const { entry, says } = pasted('7\n'.repeat(990_000), { cell: 'sts', size: 's' });
    expect(entry('sts')).toEqual({ each: { s: 7, m: 44 } });
    expect(says).toBe(
      '1 value pasted; 989999 were left out: 989999 are below the last line they could stand on.',
    );
  });

  it('of nothing but words changes nothing', () => {
    const { edit, says } = plan('size\tchest', { cell: 'cuff', size: 's' });
    expect(edit).toBeUndefined();
    expect(says).toBe('0 values pasted; 2 were left out: 2 are no numbers ("size").');
    expect(plan('', { cell: 'cuff', size: 's' }).says).toBe('There is no value to paste.');
  });

  it('of a table with labels before its lines keeps every value in its size', () => {
    const { entry, says } = pasted('Cuff\tcm\t21\t23\t25\nBust\tcm\t80\t\t100', { cell: 'cuff', size: 's' });
    expect(entry('cuff')).toEqual({ each: { s: 21, m: 23, l: 25 } });
    expect(entry('bust')).toEqual({ chart: 'bust', point: 'middle', own: { s: 80, l: 100 } });
    expect(says).toBe('5 values pasted.');
  });

  it('of a table under headings begins with its first line of numbers', () => {
    const { entry, says } = pasted('small\tmiddle\tlarge\n21\t23\t25', { cell: 'cuff', size: 's' });
    expect(entry('cuff')).toEqual({ each: { s: 21, m: 23, l: 25 } });
    expect(says).toBe('3 values pasted.');
  });

  it('under the names of sizes goes to those sizes, wherever it is put, and leaves out the others', () => {
    const { entry, says } = pasted('\tXS\tL\ts\nCuff\t19\t27\t21', { cell: 'cuff', size: 'm' });
    expect(entry('cuff')).toEqual({ each: { s: 21, m: 24, l: 27 } });
    expect(says).toBe('2 values pasted; 1 was left out: 1 is under no size of this notebook.');
    expect(pasted('M\n6', { cell: 'hem', size: null }).entry('hem')).toEqual({ each: { s: 5, m: 6, l: 5 } });
  });

  it('takes names of sizes that are numbers for names only where all of them are over values', () => {
    const sized = { ...notebook, sizes: ['34', '36', '38'].map((id) => ({ id, label: id })) };
    const at = { cell: 'cuff', size: '34' };
    const empty = edited(sized, { do: 'give', cell: 'cuff', key: 'value', size: '34', value: 1 });
    expect(pasted('34\t36\t38\n21\t23\t25', at, empty).entry('cuff')).toMatchObject({
      each: { 34: 21, 36: 23, 38: 25 },
    });
    expect(pasted('34\t36\t38', at, empty).entry('cuff')).toMatchObject({
      each: { 34: 34, 36: 36, 38: 38 },
    });
    expect(pasted('34\t36\t40\n21\t23\t25', at, empty).entry('cuff')).toMatchObject({
      each: { 34: 34, 36: 36, 38: 40 },
    });
  });

  it('with a gap leaves the value that stands there', () => {
    expect(pasted('20\t\t30', { cell: 'cuff', size: 's' }).entry('cuff')).toEqual({
      each: { s: 20, m: 24, l: 30 },
    });
  });

  it('one value on one for every size is for every size; one that is the same in all sizes, too', () => {
    expect(pasted('6', { cell: 'hem', size: null }).entry('hem')).toEqual({ value: 6 });
    expect(pasted('6\t6\t6', { cell: 'hem', size: 's' }).entry('hem')).toEqual({ value: 6 });
    expect(pasted('5\t5', { cell: 'hem', size: 's' }).edit).toBeUndefined();
  });

  it('down a column changes a value for every size only for the size of the column', () => {
    const { entry } = pasted('90\n6', { cell: 'bust', size: 'm' });
    expect(entry('hem')).toEqual({ each: { s: 5, m: 6, l: 5 } });
  });

  it('of a list in brackets is a value for each size, wherever it is put', () => {
    for (const [list, size] of [
      ['76 (80, 84)', 's'],
      ['76 [80: 84]', 'm'],
      ['76 (80) 84', 's'],
      ['76 (80-84) cm', null],
      ['76 {80/84}', 's'],
      ['Cuff: 76 (80, 84) cm', 'l'],
      ['Cuff\t76 (80,84)', 's'],
    ] as const) {
      const { entry, says } = pasted(list, { cell: 'cuff', size });
      expect([list, entry('cuff')]).toEqual([list, { each: { s: 76, m: 80, l: 84 } }]);
      expect(says).toBe('3 values pasted.');
    }
  });

  it('of lists below each other goes down the lines, each in its unit, a dash a gap', () => {
    const { entry, says } = pasted('Cuff: 8 (9, 10½) in\n84 (–, 94)', { cell: 'cuff', size: 's' });
    expect(entry('cuff')).toEqual({ each: { s: 20.32, m: 22.86, l: 26.67 } });
    expect(entry('bust')).toEqual({ chart: 'bust', point: 'middle', own: { s: 84, l: 94 } });
    expect(says).toBe('5 values pasted.');
    expect(pasted('40 (44, 48) sts', { cell: 'sts', size: 's' }).entry('sts')).toEqual({
      each: { s: 40, m: 44, l: 48 },
    });
  });

  it('of lists under a heading begins with the first of them', () => {
    const { entry, says } = pasted('Measurements\nCuff: 20 (21, 22)\nBust\t84 (90, 94) cm', {
      cell: 'cuff',
      size: 'm',
    });
    expect(entry('cuff')).toEqual({ each: { s: 20, m: 21, l: 22 } });
    expect(entry('bust')).toMatchObject({ own: { s: 84, m: 90, l: 94 } });
    expect(says).toBe('6 values pasted.');
  });

  it('of a list for another number of sizes leaves its line as it is, and the next ones get theirs', () => {
    const { entry, says } = pasted('Cuff: 20 (21)\nBust: 84 (90, 94)', { cell: 'cuff', size: 's' });
    expect(entry('cuff')).toEqual({ each: { s: 22, m: 24, l: 26 } });
    expect(entry('bust')).toMatchObject({ own: { s: 84, m: 90, l: 94 } });
    expect(says).toBe('3 values pasted; 1 was left out: 1 is a list for another number of sizes (20 (21)).');
  });

  it('of a list in a notebook with decimal commas keeps them apart', () => {
    const commas = { ...notebook, settings: { ...notebook.settings, decimal: ',' as const } };
    const at = { cell: 'cuff', size: 's' };
    expect(pasted('22,5 (24, 25,5)', at, commas).entry('cuff')).toEqual({
      each: { s: 22.5, m: 24, l: 25.5 },
    });
    // 80,84 is one number here, so there are two values for three sizes.
    expect(pasted('76 (80,84)', at, commas).edit).toBeUndefined();
  });

  it('of a list that is no value for each size changes nothing and says so', () => {
    const at = { cell: 'cuff', size: 's' };
    expect(pasted('76 (80, 84, 88)', at)).toMatchObject({
      edit: undefined,
      says: '0 values pasted; 1 was left out: 1 is a list for another number of sizes (76 (80, 84, 88)).',
    });
    expect(pasted('76 (80)\n76 (80)', at).says).toContain('2 are lists for another number of sizes');
    for (const unread of [
      '76 (80,5, 84)',
      '76 cm (30 in, 84)',
      '76 (small, large)',
      '76 (80, 84) or so',
      '76 (80',
      '(80, 84)',
      '76 (80, 84'.repeat(200),
    ]) {
      expect([unread, pasted(unread, at).edit]).toEqual([unread, undefined]);
    }
    expect(pasted('40 (44, 48) rows', { cell: 'sts', size: 's' }).says).toContain(
      'Stitches are counted here',
    );
    expect(pasted('6 (7, 8)', { cell: 'half', size: null }).says).toContain('3 are worked out by a formula');
  });

  it('what was copied here keeps every digit, where it is of the same unit', () => {
    const exact = { value: 26.0351, unit: length, written: undefined };
    const onto = { notebook, size: 's', unitOf: () => length, exact: () => exact };
    expect(planPaste('26.0', { ...onto, lines }).edit).toMatchObject({ edits: [{ value: 26.0351 }] });
    const counts = { ...onto, lines: lines.slice(-1), unitOf: () => ({ stitch: 1 }) };
    expect(planPaste('26', counts).edit).toMatchObject({ edits: [{ cell: 'sts', value: 26 }] });
  });
});
