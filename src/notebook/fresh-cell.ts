import type { Cell, CellKind, Notebook } from './document';
import { firstFabric, freshStretch } from './fresh';
import type { Kind } from './kind';
import { kinds } from './kinds';
import { nameFrom, withFreeName } from './names';

/** A new cell of a kind, under a name that is free, in the fabric that the notebook has if it needs one. */
export function freshCell(notebook: Notebook, kind: CellKind, label: string, id: string): Cell {
  const called = label.trim() || kinds[kind].label;
  const made = (kinds[kind] as unknown as Kind).fresh({ id, label: called, name: nameFrom(called) });
  const fabric = firstFabric(notebook);
  if (made.kind === 'piece')
    return withFreeName(notebook, { ...made, stretches: [freshStretch(made, 'even', fabric)] });
  if (made.kind === 'yarn')
    return withFreeName(notebook, { ...made, uses: [{ area: { value: null }, fabric }] });
  return withFreeName(notebook, made);
}
