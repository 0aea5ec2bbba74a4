import { describe, expect, it } from 'vitest';
import { advance, allCells, begin, cellById, inputsOf, redo, undo, type Notebook } from '../../src/notebook';
import { edited, refusal } from './edited';
import { vNeck } from '../notebooks/v-neck';

const start = vNeck();

const entryOf = (notebook: Notebook, cell: string, key: string): unknown =>
  inputsOf(cellById(notebook, cell)!).find((input) => input.key === key)!.entry;

describe('an edit', () => {
  it('shares every cell it did not touch with the notebook before', () => {
    const after = edited(start, { do: 'give', cell: 'band-width', key: 'value', size: 'm', value: 5 });
    const same = allCells(after).filter((cell) => allCells(start).includes(cell));
    expect(same).toHaveLength(allCells(start).length - 1);
  });

  it('leaves the notebook before as it was', () => {
    const before = JSON.stringify(start);
    edited(
      start,
      { do: 'rename', cell: 'bust', name: 'chest' },
      { do: 'remove cell', cell: 'neck-width' },
      { do: 'remove size', size: 'm' },
    );
    expect(JSON.stringify(start)).toBe(before);
  });
});

describe('giving a value', () => {
  it.each([-94, 96_000])('a bust of %d cm is a slip, and is refused with a question', (value) => {
    expect(refusal(start, { do: 'give', cell: 'bust', key: 'value', size: 'm', value })).toBe(
      'Bust must be between 0 cm and 1000 cm: is the unit right?',
    );
    // What is chosen, and not measured, may be anything.
    edited(start, { do: 'give', cell: 'neck-width', key: 'value', size: 'm', value });
  });

  it('for one size leaves the others', () => {
    const after = edited(start, { do: 'give', cell: 'neck-width', key: 'value', size: 'm', value: 25 });
    expect(entryOf(after, 'neck-width', 'value')).toMatchObject({ each: { xs: 17, m: 25 } });
  });

  it('for one size where all had the same keeps it for the others', () => {
    const after = edited(start, { do: 'give', cell: 'finished-bust', key: 'ease', size: 'l', value: 24 });
    expect(entryOf(after, 'finished-bust', 'ease')).toMatchObject({ each: { m: 20, l: 24 } });
  });

  it('for one size of a chart is that size’s own, and giving nothing goes back to the chart', () => {
    const own = edited(start, { do: 'give', cell: 'bust', key: 'value', size: 'm', value: 97 });
    expect(entryOf(own, 'bust', 'value')).toEqual({ chart: 'bust', point: 'middle', own: { m: 97 } });
    const back = edited(own, { do: 'give', cell: 'bust', key: 'value', size: 'm', value: null });
    expect(entryOf(back, 'bust', 'value')).toEqual({ chart: 'bust', point: 'middle' });
  });

  it('to a swatch is for every size, since it is one swatch', () => {
    const after = edited(start, { do: 'give', cell: 'body', key: 'sts.0.count', size: 'm', value: 15 });
    expect(entryOf(after, 'body', 'sts.0.count')).toEqual({ value: 15 });
  });

  it.each([
    ['a gauge of no stitches', 'body', 'sts.0.count', 0, 'Stitches counted must be more than 0.'],
    ['a gauge of fewer than none', 'body', 'sts.0.count', -3, 'Stitches counted must be more than 0.'],
    ['half a stitch in a repeat', 'back-sts', 'multiple', 7.5, 'Multiple of must be a whole number.'],
    ['a repeat over nothing', 'back-sts', 'multiple', 0, 'Multiple of must be at least 1.'],
    ['no number', 'neck-width', 'value', NaN, 'Width of the neck must be a number.'],
  ])('%s is refused with a sentence', (_what, cell, key, value, sentence) => {
    expect(refusal(start, { do: 'give', cell, key, size: null, value })).toBe(sentence);
  });
});

describe('a name', () => {
  it('changes in every formula that uses it, and in what the cell’s parts are called', () => {
    const after = edited(start, { do: 'rename', cell: 'body', name: 'shell' });
    const text = JSON.stringify(after);
    expect(text).toContain('finished_bust / 2 * shell_sts');
    expect(text).toContain('ROUNDCOUNT(armhole * shell_rows');
    expect(text).toContain('"fabric":"shell"');
    expect(text).not.toMatch(/\bbody_(sts|rows)\b/);
  });

  it('leaves cells alone that do not use it', () => {
    const after = edited(start, { do: 'rename', cell: 'neck-width', name: 'neck_across' });
    expect(cellById(after, 'back')).toBe(cellById(start, 'back'));
  });

  it.each([
    ['hips!', 'cannot be a name'],
    ['2sleeves', 'cannot be a name'],
    ['', 'cannot be a name'],
    ['BUST', 'is taken by "Bust"'],
    ['back_length', 'is taken by "Back: length"'],
    ['a'.repeat(65), 'at most 64 characters'],
  ])('%s is refused', (name, sentence) => {
    expect(refusal(start, { do: 'rename', cell: 'neck-width', name })).toContain(sentence);
  });

  it('may be that of a function, which is one only before a bracket', () => {
    const after = edited(start, { do: 'rename', cell: 'bust', name: 'max' });
    expect(JSON.stringify(after)).toContain('"formula":"max"');
  });

  it('may change its case alone', () => {
    const after = edited(start, { do: 'rename', cell: 'bust', name: 'Bust' });
    expect(JSON.stringify(after)).toContain('"formula":"Bust"');
  });
});

describe('cells and sizes', () => {
  it('a formula taken over stays through a rename and can be given back', () => {
    const taken = edited(start, {
      do: 'take over',
      cell: 'back-sts',
      key: 'count',
      formula: 'back_sts_wanted + 1',
    });
    const renamed = edited(taken, { do: 'rename', cell: 'back-sts', name: 'across' });
    expect(cellById(renamed, 'back-sts')?.taken).toEqual({ count: 'across_wanted + 1' });
    expect(edited(taken, { do: 'take over', cell: 'back-sts', key: 'count', formula: null })).toEqual(start);
  });

  it('the last size cannot be removed', () => {
    const one = { ...start, sizes: start.sizes.slice(0, 1) };
    expect(refusal(one, { do: 'remove size', size: 'xs' })).toContain('at least one size');
  });

  it('a cell cannot stand twice, nor become another kind', () => {
    const cell = cellById(start, 'neck-width')!;
    expect(refusal(start, { do: 'add cell', section: 'swatches', at: 0, cell })).toContain('already');
    const other = { ...cellById(start, 'body')!, id: 'neck-width', name: 'x' };
    expect(refusal(start, { do: 'change', cell: other })).toContain('keeps its kind');
  });
});

describe('undo and redo', () => {
  it('go back and forward through the very same notebooks', () => {
    const one = edited(start, { do: 'give', cell: 'body', key: 'sts.0.count', size: null, value: 15 });
    const two = edited(one, { do: 'retitle', title: 'Another' });
    const history = advance(advance(begin(start), one, 'one'), two, 'two');
    expect(undo(history).now).toBe(one);
    expect(undo(undo(history)).now).toBe(start);
    expect(undo(undo(undo(history))).now).toBe(start);
    expect(redo(redo(undo(undo(history))))).toEqual(history);
    expect(redo(advance(undo(history), start, 'back')).future).toEqual([]);
  });
});
