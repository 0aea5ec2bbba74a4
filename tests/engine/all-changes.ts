import { allCells, type Notebook } from '../../src/notebook/document';
import { inputsOf, outputsOf } from '../../src/notebook/kinds';
import type { Results } from '../../src/engine/results';

/** Everything a reader of answers knows of a notebook, place by place and size by size. */
export function allChanges(results: Results, notebook: Notebook): Record<string, unknown> {
  const values: Record<string, unknown> = { sizes: results.sizes };
  for (const cell of allCells(notebook)) {
    for (const { key } of [...inputsOf(cell), ...outputsOf(cell)]) {
      values[`${cell.id} ${key}`] = results.unit(cell.id, key) ?? null;
      for (const { id } of notebook.sizes) {
        const number = results.number(id, cell.id, key);
        values[`${cell.id} ${key} ${id}`] =
          number ??
          results.text(id, cell.id, key) ??
          results.truth(id, cell.id, key) ??
          results.error(id, cell.id, key) ??
          'nothing';
      }
    }
  }
  return values;
}
