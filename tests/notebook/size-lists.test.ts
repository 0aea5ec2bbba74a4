import { describe, expect, it } from 'vitest';
import { cellById, type Notebook, usualSettings } from '../../src/notebook';
import {
  asksOf,
  chartSizes,
  freshSize,
  givingTo,
  ownValues,
  withMoreSizes,
} from '../../src/notebook/size-lists';
import { cardigan } from '../../src/starters';
import { edited } from './edited';
import { measure } from '../engine/notebook-of';

const notebook: Notebook = {
  title: 'Sleeve',
  settings: usualSettings,
  sizes: [
    { id: 'medium', label: 'Medium', chart: { name: 'woman', size: 'M' } },
    { id: 'size-1', label: 'For me' },
  ],
  sections: [
    {
      id: 'a',
      label: 'A',
      cells: [
        measure('cuff', 'length', { each: { medium: 24, 'size-1': null, 'size-2': 30 } }),
        measure('bust', 'length', { chart: 'bust', point: 'middle', own: { 'size-1': 99, 'size-3': 80 } }),
        {
          kind: 'ease',
          id: 'finished',
          label: 'Finished bust',
          name: 'finished',
          by: 'length',
          body: { chart: 'bust', point: 'upper' },
          ease: { value: 10 },
        },
      ],
    },
  ],
};

describe('taking a chart', () => {
  it('twice gives the same ids', () => {
    const once = chartSizes(notebook, 'man');
    const again = chartSizes(edited(notebook, { do: 'take sizes', sizes: once }), 'man');
    expect(again).toEqual(once);
    expect(once.map((size) => size.id)).toEqual(['man-s', 'man-m', 'man-l', 'man-xl', 'man-2xl']);
  });

  it('keeps the size that follows it already, with its label and what was given for it', () => {
    const sizes = chartSizes(notebook, 'woman');
    expect(sizes).toHaveLength(9);
    expect(sizes[2]).toBe(notebook.sizes[0]);
    const after = edited(notebook, { do: 'take sizes', sizes });
    expect(cellById(after, 'cuff')).toMatchObject({ entry: { each: { medium: 24 } } });
  });

  it('of the same sizes leaves the cardigan’s sizes as they are', () => {
    expect(chartSizes(cardigan(), 'woman')).toEqual(cardigan().sizes);
  });

  it('in part takes those in the chart’s order', () => {
    expect(chartSizes(notebook, 'baby', ['12 months', '6 months']).map((size) => size.label)).toEqual([
      '6 months',
      '12 months',
    ]);
  });

  it('after the sizes there adds only those that are missing', () => {
    const sizes = withMoreSizes(notebook, chartSizes(notebook, 'woman', ['S', 'M']));
    expect(sizes.map((size) => size.id)).toEqual(['medium', 'size-1', 'woman-s']);
  });
});

describe('a size without a chart', () => {
  it('gets an id that no value in the notebook is kept under, not even of a size that was removed', () => {
    expect(freshSize(notebook, 'Aunt').id).toBe('size-4');
  });

  it('is asked for each body measure once, and for each value that is given size by size', () => {
    const asks = asksOf(notebook);
    expect(asks.map(({ label, measure }) => [label, measure])).toEqual([
      ['bust; Finished bust, body', 'bust'],
      ['cuff', undefined],
    ]);
    const size = freshSize(notebook, 'Aunt');
    const after = edited(notebook, {
      do: 'several',
      what: 'adding the size Aunt',
      edits: [{ do: 'add size', at: 2, size }, ...givingTo(size.id, [{ ask: asks[0]!, value: 102 }])],
    });
    expect(cellById(after, 'bust')).toMatchObject({ entry: { chart: 'bust', own: { [size.id]: 102 } } });
    expect(cellById(after, 'finished')).toMatchObject({ body: { chart: 'bust', own: { [size.id]: 102 } } });
  });
});

describe('the values that go with a size', () => {
  it('are those given for it alone', () => {
    expect(ownValues(notebook, 'size-1').map(({ label, value }) => [label, value])).toEqual([['bust', 99]]);
    expect(ownValues(notebook, 'medium').map(({ label, value }) => [label, value])).toEqual([['cuff', 24]]);
  });
});
