import { describe, expect, it } from 'vitest';
import { apply, cellById, type Notebook, usualSettings } from '../../src/notebook';
import { clearValues } from '../../src/notebook/clear-values';
import { measure } from '../engine/notebook-of';

const notebook: Notebook = {
  title: 'Sleeve',
  settings: usualSettings,
  sizes: [
    { id: 's', label: 'S', chart: { name: 'woman', size: 'S' } },
    { id: 'm', label: 'M', chart: { name: 'woman', size: 'M' } },
  ],
  sections: [
    {
      id: 'a',
      label: 'A',
      cells: [
        measure('cuff', 'length', { each: { s: 22, m: 24 } }),
        measure('bust', 'length', { chart: 'bust', point: 'middle', own: { m: 95 } }),
        measure('hem', 'length', { value: 5 }),
        measure('half', 'length', { formula: 'cuff / 2' }),
      ],
    },
  ],
};
const at = (cell: string, size: string | null) => ({ cell, key: 'value', size });

describe('emptying values', () => {
  it('takes out what was given, in one edit, and gives the chart its size back', () => {
    const { edit, count } = clearValues(notebook, [at('cuff', 'm'), at('bust', 'm'), at('hem', null)]);
    expect(count).toBe(3);
    expect(edit).toMatchObject({ do: 'several', what: 'emptying 3 values' });
    const applied = apply(notebook, edit!) as { notebook: Notebook };
    expect(cellById(applied.notebook, 'cuff')).toMatchObject({ entry: { each: { s: 22, m: null } } });
    expect(cellById(applied.notebook, 'bust')).toHaveProperty('entry', { chart: 'bust', point: 'middle' });
    expect(cellById(applied.notebook, 'hem')).toMatchObject({ entry: { value: null } });
  });

  it('leaves formulas, the chart’s own numbers and what is empty already', () => {
    expect(clearValues(notebook, [at('half', 's'), at('bust', 's'), at('gone', 's')])).toEqual({
      edit: undefined,
      count: 0,
    });
  });
});
