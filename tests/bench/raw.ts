import { HyperFormula } from 'hyperformula';
import { allCells, type Notebook } from '../../src/notebook/document';
import { engineSettings } from '../../src/engine/engine-functions';
import { linked, reading } from '../../src/engine/resolve-names';
import { Names } from '../../src/engine/names';
import { isProblem, plansOf } from '../../src/engine/slot';

/** HyperFormula alone: one engine for each size, the same formulas with direct references, no more. */
export function rawEngines(notebook: Notebook): {
  engines: HyperFormula[];
  rowOf(cell: string, key: string): number;
} {
  const plans = allCells(notebook).flatMap(plansOf);
  const names = new Names();
  plans.forEach((plan, row) => names.add(plan.name, row));
  const engines = notebook.sizes.map((size) => {
    const rows = plans.map(({ entry }) => {
      if ('value' in entry) return [entry.value];
      if ('each' in entry) return [entry.each[size.id]];
      if (!('formula' in entry)) return [null];
      const read = reading(entry.formula);
      const link = isProblem(read) ? read : linked(read, names);
      if (isProblem(link)) throw new Error(`${entry.formula}: ${link.problem}`);
      return [`=${link.text}`];
    });
    return HyperFormula.buildFromArray(rows as (string | number)[][], engineSettings);
  });
  return {
    engines,
    rowOf: (cell, key) => plans.findIndex(({ ref }) => ref.cell === cell && ref.key === key),
  };
}
