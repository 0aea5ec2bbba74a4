import { describe, expect, it } from 'vitest';
import { inputsOf, type Entry, type Notebook, type Size, usualSettings } from '../../src/notebook';
import {
  entering,
  filled,
  fillValues,
  onChart,
  forAll,
  givenIn,
  perSize,
  sizesAfter,
} from '../../src/notebook/fill-values';
import { edited } from './edited';
import { measure } from '../engine/notebook-of';

const s: Size = { id: 's', label: 'S', chart: { name: 'woman', size: 'S' } };
const m: Size = { id: 'm', label: 'M', chart: { name: 'woman', size: 'M' } };
const me: Size = { id: 'me', label: 'For me' };
const notebook: Notebook = {
  title: 'Sleeve',
  settings: usualSettings,
  sizes: [s, m, me],
  sections: [
    {
      id: 'a',
      label: 'A',
      cells: [
        measure('cuff', 'length', { each: { s: 22, m: 24, me: 25 } }),
        measure('bust', 'length', { chart: 'bust', point: 'middle' }),
        measure('hem', 'length', { value: 5 }),
        measure('half', 'length', { formula: 'cuff / 2' }),
      ],
    },
  ],
};
const entry = (id: string, of = notebook): Entry =>
  inputsOf(of.sections[0]!.cells.find((cell) => cell.id === id)!)[0]!.entry;
const after = (edit: ReturnType<typeof fillValues>): Notebook => edited(notebook, edit!);

describe('the value for a size', () => {
  it('is the chart’s 37 in for the bust of size M, unless M has one of its own', () => {
    expect(givenIn({ chart: 'bust', point: 'middle' }, m)).toBeCloseTo(93.98, 10);
    expect(givenIn({ chart: 'bust', point: 'middle', own: { m: 95 } }, m)).toBe(95);
    expect(givenIn({ chart: 'bust', point: 'middle' }, me)).toBeNull();
  });
});

describe('a value for each size', () => {
  it('repeats the one value for every size', () => {
    expect(perSize(notebook, { value: 5 })).toEqual({ each: { s: 5, m: 5, me: 5 } });
  });

  it('takes the chart’s numbers, and leaves a size without a chart empty', () => {
    const { each } = perSize(notebook, entry('bust')) as { each: Record<string, number | null> };
    expect(each['s']).toBeCloseTo(33 * 2.54, 10);
    expect(each['me']).toBeNull();
  });

  it('takes what a formula has worked out', () => {
    const worked = (size: string) => ({ s: 11, m: 12 })[size];
    expect(perSize(notebook, entry('half'), worked)).toEqual({ each: { s: 11, m: 12, me: null } });
  });
});

describe('one value for every size', () => {
  it('is that of the size it is asked from', () => {
    expect(forAll(notebook, entry('cuff'), 'm')).toEqual({ value: 24 });
    expect(forAll(notebook, entry('half'), 's', () => 11)).toEqual({ value: 11 });
  });

  it('stays the same entry where it is one already', () => {
    expect(forAll(notebook, entry('hem'), 'm')).toBe(entry('hem'));
  });
});

describe('filling along the sizes', () => {
  it('gives the sizes after one its value, and leaves those before it', () => {
    expect(filled(entry('cuff'), m, sizesAfter(notebook, 'm'))).toEqual({ each: { s: 22, m: 24, me: 24 } });
  });

  it('makes the chart’s value the own value of the sizes it goes to, which still follow the chart', () => {
    const next = filled(entry('bust'), m, sizesAfter(notebook, 'm'));
    expect(next).toMatchObject({ chart: 'bust', point: 'middle' });
    expect(givenIn(next, me)).toBeCloseTo(37 * 2.54, 10);
    expect(Object.keys((next as { own: object }).own)).toEqual(['me']);
  });

  it('from an empty value, of a formula or of one value for all changes nothing', () => {
    const empty: Entry = { each: { s: null, m: 24 } };
    expect(filled(empty, s, [m])).toBe(empty);
    expect(filled(entry('half'), s, [m])).toBe(entry('half'));
    expect(filled(entry('hem'), s, [m])).toBe(entry('hem'));
  });

  it('of several lines is one edit, and the lines that stay are not in it', () => {
    const refs = ['cuff', 'bust', 'hem', 'half'].map((cell) => ({ cell, key: 'value' }));
    const edit = fillValues(notebook, refs.slice(0, 1).concat(refs[2]!, refs[3]!), s, [m, me]);
    expect(edit).toMatchObject({ do: 'several', what: 'filling a value along the sizes' });
    expect(entry('cuff', after(edit))).toEqual({ each: { s: 22, m: 22, me: 22 } });
    expect(fillValues(notebook, [refs[2]!], s, [m])).toBeUndefined();
  });
});

describe('following a chart', () => {
  it('at another point keeps the own values; another measure has none', () => {
    const own: Entry = { chart: 'bust', point: 'middle', own: { me: 99 } };
    expect(onChart(own, 'bust', 'upper')).toEqual({ chart: 'bust', point: 'upper', own: { me: 99 } });
    expect(onChart(own, 'waist', 'upper')).toEqual({ chart: 'waist', point: 'upper' });
  });

  it('is an edit of its input; an input that is gone gives none', () => {
    const edit = entering(notebook, { cell: 'hem', key: 'value' }, (old) => onChart(old, 'hips', 'lower'));
    expect(edit).toEqual({
      do: 'enter',
      cell: 'hem',
      key: 'value',
      entry: { chart: 'hips', point: 'lower' },
    });
    expect(entering(notebook, { cell: 'gone', key: 'value' }, () => ({ value: 1 }))).toBeUndefined();
  });
});
