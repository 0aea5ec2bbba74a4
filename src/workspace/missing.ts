import type { CellRef } from '../engine';
import type { Workspace } from './workspace.svelte';

/** Why there are no results: where that starts, in a sentence, and the sizes it is so in, if not in all. */
export interface Missing {
  readonly from: CellRef;
  readonly message: string;
  readonly sizes: string;
}

/**
 * What results wait for, each once, in the order they are met.
 *
 * @example missingAt(workspace, places)
 * // [{ from: the stitches of the swatch, message: 'Stitches counted is empty: type a value, …', sizes: '' }]
 */
export function missingAt(workspace: Workspace, refs: readonly CellRef[]): Missing[] {
  const found = new Map<string, { from: CellRef; message: string; sizes: Set<string> }>();
  for (const { cell, key } of refs) {
    const results = workspace.results(cell);
    for (const size of workspace.sizes) {
      const error = results.error(size.id, cell, key);
      if (!error) continue;
      const from = error.from ?? { cell, key };
      const message =
        workspace.results(from.cell).error(size.id, from.cell, from.key)?.message ?? error.message;
      const id = JSON.stringify([from.cell, from.key, message]);
      const same = found.get(id) ?? { from, message, sizes: new Set<string>() };
      same.sizes.add(size.label);
      found.set(id, same);
    }
  }
  return [...found.values()].map(({ sizes, ...rest }) => ({
    ...rest,
    sizes: sizes.size === workspace.sizes.length ? '' : [...sizes].join(', '),
  }));
}
