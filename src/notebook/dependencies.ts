import { allCells, type Notebook } from './document';
import { namesIn, sameName } from '../formulas';
import { inputsOf, outputsOf } from './kinds';
import { nameTable } from './names';
import { memoizePerCell } from './memoize-per-cell';

/** The names that the formulas of a cell use, its own included. */
const namesUsedBy = memoizePerCell<readonly string[]>((cell) => {
  const formulas = [
    ...inputsOf(cell).flatMap(({ entry }) => ('formula' in entry ? [entry.formula] : [])),
    ...outputsOf(cell).map((output) => output.formula),
  ];
  return [...new Set(formulas.flatMap(namesIn))];
});

/** Which cells each cell feeds, and which it is fed by, one step away, by id. */
export interface Dependencies {
  readonly dependents: ReadonlyMap<string, ReadonlySet<string>>;
  readonly precedents: ReadonlyMap<string, ReadonlySet<string>>;
}

/** The last notebooks that were asked about, the latest first; the history of edits keeps hundreds more. */
let cache: (readonly [of: Notebook['sections'], dependencies: Dependencies])[] = [];
const mostLinks = 4;

export function dependenciesOf(notebook: Notebook): Dependencies {
  const cached = cache.find(([of]) => of === notebook.sections);
  if (cached) return cached[1];
  const table = nameTable(notebook);
  const dependents = new Map<string, Set<string>>();
  const precedents = new Map<string, Set<string>>();
  for (const cell of allCells(notebook)) {
    dependents.set(cell.id, dependents.get(cell.id) ?? new Set());
    const sources = new Set<string>();
    for (const name of namesUsedBy(cell)) {
      const source = table.get(sameName(name))?.cell;
      if (source === undefined || source === cell.id) continue;
      sources.add(source);
      const reached = dependents.get(source) ?? new Set<string>();
      dependents.set(source, reached.add(cell.id));
    }
    precedents.set(cell.id, sources);
  }
  const made = { dependents, precedents };
  cache = [[notebook.sections, made] as const, ...cache].slice(0, mostLinks);
  return made;
}

/** Everything that depends on a cell, however far away; nearest first, the cell itself left out. */
export function downstream(notebook: Notebook, id: string): string[] {
  return reachedFrom(dependenciesOf(notebook).dependents, id);
}

/** Everything that a cell depends on, however far away; nearest first, the cell itself left out. */
export function upstream(notebook: Notebook, id: string): string[] {
  return reachedFrom(dependenciesOf(notebook).precedents, id);
}

/**
 * A cell with everything it depends on and everything that depends on it, in the order of the notebook. Two cells that
 * are both fed by a third are not in each other's chain for that.
 */
export function chainOf(notebook: Notebook, id: string): string[] {
  const chain = new Set([...upstream(notebook, id), id, ...downstream(notebook, id)]);
  return allCells(notebook)
    .map((cell) => cell.id)
    .filter((cell) => chain.has(cell));
}

function reachedFrom(links: ReadonlyMap<string, ReadonlySet<string>>, id: string): string[] {
  const reached = new Set<string>([id]);
  for (const at of reached) for (const next of links.get(at) ?? []) reached.add(next);
  reached.delete(id);
  return [...reached];
}
