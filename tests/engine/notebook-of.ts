import {
  usualSettings,
  type Cell,
  type FormulaCell,
  type Measure,
  type Notebook,
  type RepeatFit,
  type Size,
  type Swatch,
} from '../../src/notebook/document';

/** A notebook of some cells, in sizes that follow the women's chart unless told. */
export function notebookOf(
  cells: readonly Cell[],
  sizes: readonly Size[] = [{ id: 'm', label: 'M', chart: { name: 'woman', size: 'M' } }],
): Notebook {
  return {
    title: '',
    settings: usualSettings,
    sizes,
    sections: [{ id: 'all', label: '', cells }],
  };
}

/** A cell with a formula, called by its name in sentences too. */
export function formula(name: string, text: string): FormulaCell {
  return { kind: 'formula', id: name, label: name, name, formula: text };
}

export function measure(
  name: string,
  unit: Measure['unit'],
  entry: Measure['entry'] | number | null,
): Measure {
  const given = typeof entry === 'object' && entry !== null ? entry : { value: entry };
  return { kind: 'measure', id: name, label: name, name, unit, entry: given };
}

/** The count nearest to a formula that a repeat of 8 and 3 more allows, or the repeat that is given. */
export function fit(name: string, target: string, [multiple, plus] = [8, 3]): RepeatFit {
  return {
    kind: 'fit',
    id: name,
    label: name,
    name,
    counts: 'stitches',
    target: { formula: target },
    multiple: { value: multiple! },
    plus: { value: plus! },
    rule: 'nearest',
  };
}

/** A swatch with one reading of stitches and one of rows, over 10 cm. */
export function swatch(name: string, stitches: number | null, rows: number | null): Swatch {
  return {
    kind: 'swatch',
    id: name,
    label: name,
    name,
    worked: '',
    stitches: [{ count: { value: stitches }, over: { value: 10 } }],
    rows: [{ count: { value: rows }, over: { value: 10 } }],
  };
}
