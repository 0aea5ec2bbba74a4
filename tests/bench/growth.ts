import { changesBetween } from '../../src/notebook/changes';
import { usualSettings, type Cell, type Notebook } from '../../src/notebook/document';
import { Results } from '../../src/engine/results';
import { WorkedSheet } from '../../src/engine/sheet';
import { rawEngines } from './raw';

/** One edit's milliseconds, ours and of HyperFormula alone, in a notebook of one size. */
export interface Cost {
  /** Cells that depend on what is edited, or cells that have nothing to do with it. */
  readonly cells: number;
  readonly ours: number;
  readonly raw: number;
}

const girth = (cm: number): Cell => ({
  kind: 'measure',
  id: 'girth',
  label: 'Girth',
  name: 'girth',
  unit: 'length',
  entry: { value: cm },
});

function formula(name: string, text: string): Cell {
  return { kind: 'formula', id: name, label: name, name, formula: text };
}

/** A girth, so many cells that are worked from it, and so many that are worked from another length. */
function notebookOf(dependents: number, unrelated: number): Notebook {
  const other: Cell = { ...girth(80), id: 'other', label: 'Other', name: 'other' } as Cell;
  const cells = [
    girth(90),
    other,
    ...Array.from({ length: dependents }, (_, i) => formula(`near_${i}`, `girth / 2 + CM(${(i % 9) + 1})`)),
    ...Array.from({ length: unrelated }, (_, i) => formula(`far_${i}`, `other * 1.01 - CM(${i % 3})`)),
  ];
  return {
    title: 'Growth',
    settings: usualSettings,
    sizes: [{ id: 'one', label: 'One size' }],
    sections: [{ id: 'all', label: 'All', cells }],
  };
}

/** What one edit of a length costs with 1 to 10,000 cells worked from it. */
export function byDependents(turns: number): Promise<Cost[]> {
  return costs([1, 10, 100, 1000, 9990], turns, (cells) => notebookOf(cells, 0));
}

/** What one edit with a hundred cells worked from it costs beside 0 to 10,000 that are not. */
export function byUnrelated(turns: number): Promise<Cost[]> {
  return costs([0, 1000, 3000, 9890], turns, (cells) => notebookOf(100, cells));
}

async function costs(
  sizes: readonly number[],
  turns: number,
  notebook: (cells: number) => Notebook,
): Promise<Cost[]> {
  const found: Cost[] = [];
  for (const cells of sizes) found.push({ cells, ...(await costOf(notebook(cells), turns)) });
  return found;
}

/** The medians of both, taken in turn so that what else the machine does meets both. */
async function costOf(first: Notebook, turns: number): Promise<{ ours: number; raw: number }> {
  const sheet = new WorkedSheet();
  const results = new Results();
  results.apply(await sheet.update(changesBetween(null, first)));
  const { engines, rowOf } = rawEngines(first);
  const row = rowOf('girth', 'value');
  const times = { ours: [] as number[], raw: [] as number[] };
  let notebook = first;
  for (let turn = -5; turn < turns; turn++) {
    const cm = 90 + (turn + 6) / 7;
    const [section] = notebook.sections;
    const next = { ...notebook, sections: [{ ...section!, cells: section!.cells.with(0, girth(cm)) }] };
    const begun = performance.now();
    results.apply(await sheet.update(changesBetween(notebook, next)));
    const between = performance.now();
    for (const engine of engines) engine.setCellContents({ sheet: 0, col: 0, row }, cm);
    const end = performance.now();
    notebook = next;
    if (turn < 0) continue;
    times.ours.push(between - begun);
    times.raw.push(end - between);
  }
  const middle = (list: number[]): number => list.sort((a, b) => a - b)[list.length >> 1]!;
  return { ours: middle(times.ours), raw: middle(times.raw) };
}
