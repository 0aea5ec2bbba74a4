import type { Notebook } from './document';
import { nameTable, type Named } from './names';

const tables = new WeakMap<Notebook, ReadonlyMap<string, Named>>();

/** All names of a notebook, looked up once for as long as the notebook is the same. */
export function tableOf(notebook: Notebook): ReadonlyMap<string, Named> {
  let table = tables.get(notebook);
  if (!table) tables.set(notebook, (table = nameTable(notebook)));
  return table;
}
