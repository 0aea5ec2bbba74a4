import { usualSettings, type Cell, type Entry, type Notebook } from '../../src/notebook';

/** A measure called after its id, for notebooks of tests. */
export function measured(id: string, entry: Entry, unit: 'length' | 'stitches' = 'length'): Cell {
  const label = id.charAt(0).toUpperCase() + id.slice(1);
  return { kind: 'measure', id, label, name: id, unit, entry };
}

/** Three women's sizes and a handful of lines: a value per size, one from the chart, one for all sizes, a formula. */
export function small(...more: Cell[]): Notebook {
  return {
    title: 'Sleeve',
    settings: usualSettings,
    sizes: ['S', 'M', 'L'].map((size) => ({
      id: size.toLowerCase(),
      label: size,
      chart: { name: 'woman', size },
    })),
    sections: [
      {
        id: 'sleeve',
        label: 'Sleeve',
        cells: [
          measured('cuff', { each: { s: 22, m: 24, l: 26 } }),
          measured('bust', { chart: 'bust', point: 'middle' }),
          measured('hem', { value: 5 }),
          { kind: 'formula', id: 'half', label: 'Half', name: 'half', formula: 'cuff / 2' },
          ...more,
        ],
      },
    ],
  };
}
