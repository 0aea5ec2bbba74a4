import { describe, expect, it } from 'vitest';
import { allCells, apply, cellById, nameTable, namesOf, type Edit, type Notebook } from '../../src/notebook';
import { edited } from './edited';
import { vNeck } from '../notebooks/v-neck';

const start = vNeck();

const order = (notebook: Notebook, section: string): string[] =>
  notebook.sections.find(({ id }) => id === section)!.cells.map(({ id }) => id);

describe('moving a cell', () => {
  it('within its section puts it before the one that is there', () => {
    const after = edited(start, { do: 'move cell', cell: 'neck-width', section: 'across-section', at: 0 });
    expect(order(after, 'across-section')[0]).toBe('neck-width');
    expect(order(after, 'across-section').toSorted()).toEqual(order(start, 'across-section').toSorted());
  });

  it('to another section takes it out of its own, and every formula still finds it', () => {
    const after = edited(start, { do: 'move cell', cell: 'neck-width', section: 'down-section', at: 2 });
    expect(order(after, 'down-section')[2]).toBe('neck-width');
    expect(order(after, 'across-section')).not.toContain('neck-width');
    expect(nameTable(after).get('neck_width')?.cell).toBe('neck-width');
  });

  it('leaves the other sections the very same', () => {
    const after = edited(start, { do: 'move cell', cell: 'neck-width', section: 'across-section', at: 0 });
    expect(after.sections[0]).toBe(start.sections[0]);
  });
});

describe('a copy', () => {
  it('of a cell stands after it, and its formulas use its own parts', () => {
    const after = edited(start, { do: 'duplicate cell', cell: 'back', id: 'other-back' });
    expect(order(after, 'body-section')[order(start, 'body-section').indexOf('back') + 1]).toBe('other-back');
    const names = namesOf(cellById(after, 'other-back')!).map(({ name }) => name);
    expect(names).toContain('back_2_length');
    expect(nameTable(after).size).toBe(allCells(after).flatMap((cell) => namesOf(cell)).length);
  });

  it('of a section works from its own cells where the section did', () => {
    const after = edited(start, { do: 'duplicate section', section: 'across-section', id: 'second' });
    const copy = after.sections.find(({ id }) => id === 'second')!;
    expect(copy.cells).toHaveLength(order(start, 'across-section').length);
    const text = JSON.stringify(copy.cells);
    expect(text).toContain('finished_bust_2 / 2 * body_sts');
    expect(text).toContain('back_sts_2 / body_sts');
    expect(text).not.toMatch(/"formula":"finished_bust \/ 2/);
  });
});

describe('sections', () => {
  it('are added, labelled, moved and deleted', () => {
    const after = edited(
      start,
      { do: 'add section', at: 1, section: { id: 'new', label: 'New', cells: [] } },
      { do: 'relabel section', section: 'new', label: ' Trims ' },
      { do: 'move section', section: 'new', at: 0 },
      { do: 'remove section', section: 'joins-section' },
    );
    expect(after.sections[0]).toEqual({ id: 'new', label: 'Trims', cells: [] });
    expect(after.sections.map(({ id }) => id)).not.toContain('joins-section');
  });

  it('need a label', () => {
    expect(apply(start, { do: 'relabel section', section: 'joins-section', label: ' ' })).toHaveProperty(
      'refused',
    );
  });
});

describe('sizes', () => {
  it('are put in another order with their values', () => {
    const after = edited(start, { do: 'move size', size: '5x', at: 0 });
    expect(after.sizes.map(({ id }) => id)).toEqual(['5x', 'xs', 's', 'm', 'l', 'xl', '2x', '3x', '4x']);
  });

  it('are exchanged for others, and those that stay keep what was given', () => {
    const after = edited(start, {
      do: 'take sizes',
      sizes: [start.sizes[2]!, { id: 'me', label: 'For me' }],
    });
    expect(after.sizes).toHaveLength(2);
    expect(cellById(after, 'neck-width')).toBe(cellById(start, 'neck-width'));
  });

  it('are at most a hundred, at least one, and each a different one', () => {
    const many = Array.from({ length: 101 }, (_none, at) => ({ id: `s${at}`, label: `${at}` }));
    expect(apply(start, { do: 'take sizes', sizes: many })).toHaveProperty('refused');
    expect(apply(start, { do: 'take sizes', sizes: [] })).toHaveProperty('refused');
    expect(apply(start, { do: 'take sizes', sizes: [many[0]!, many[0]!] })).toHaveProperty('refused');
  });
});

describe('several edits as one', () => {
  it('are all made, or none', () => {
    const give = (value: number): Edit => ({
      do: 'give',
      cell: 'body',
      key: 'sts.0.count',
      size: null,
      value,
    });
    const both = apply(start, {
      do: 'several',
      what: 'two',
      edits: [give(15), { do: 'retitle', title: 'T' }],
    });
    expect(both).toMatchObject({ notebook: { title: 'T' } });
    expect(apply(start, { do: 'several', what: 'two', edits: [give(15), give(0)] })).toHaveProperty(
      'refused',
    );
  });
});
