import type { Place } from '../engine';
import type { Desk } from './workspace.svelte';

/** Why there are no results: where that starts, in a sentence, and the sizes it is so in, if not in all. */
export interface Missing {
  readonly from: Place;
  readonly message: string;
  readonly sizes: string;
}

/**
 * What results wait for, each once, in the order they are met.
 *
 * @example missingAt(desk, places)
 * // [{ from: the stitches of the swatch, message: 'Stitches counted is empty: type a value, …', sizes: '' }]
 */
export function missingAt(desk: Desk, places: readonly Place[]): Missing[] {
  const found = new Map<string, { from: Place; message: string; sizes: Set<string> }>();
  for (const { cell, key } of places) {
    const results = desk.results(cell);
    for (const size of desk.sizes) {
      const trouble = results.trouble(size.id, cell, key);
      if (!trouble) continue;
      const from = trouble.from ?? { cell, key };
      const message =
        desk.results(from.cell).trouble(size.id, from.cell, from.key)?.message ?? trouble.message;
      const id = JSON.stringify([from.cell, from.key, message]);
      const same = found.get(id) ?? { from, message, sizes: new Set<string>() };
      same.sizes.add(size.label);
      found.set(id, same);
    }
  }
  return [...found.values()].map(({ sizes, ...rest }) => ({
    ...rest,
    sizes: sizes.size === desk.sizes.length ? '' : [...sizes].join(', '),
  }));
}
