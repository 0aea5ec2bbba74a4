import { lastWrittenFirst, type EarlierState, type KeptNotebook } from './stored-notebook';
import type { NotebookStore } from './notebook-store';
import { newestFirst } from './snapshot-retention';

/** A store that is gone with the page, for where the browser keeps nothing: the work goes on all the same. */
export function memoryStore(): NotebookStore {
  const notebooks = new Map<string, { kept: KeptNotebook; text: string }>();
  const states = new Map<string, Map<number, { state: EarlierState; text: string }>>();
  let last: string | undefined;
  let writes = 0;
  return {
    list: async () => lastWrittenFirst([...notebooks.values()].map(({ kept }) => kept)),
    read: async (id) => notebooks.get(id),
    textLeft: async (id) => notebooks.get(id)?.text,
    async write(id, { text, ...what }, over, { now, remember }) {
      const before = notebooks.get(id);
      if ((before?.kept.revision ?? 0) !== over) return null;
      if (before && remember) {
        const { changed, order = 0, cells, sizes } = before.kept;
        const own = states.get(id) ?? new Map<number, { state: EarlierState; text: string }>();
        let at = changed;
        while (own.has(at)) at++;
        states.set(id, own.set(at, { state: { notebook: id, at, order, cells, sizes }, text: before.text }));
      }
      const kept = {
        id,
        ...what,
        made: before?.kept.made ?? now,
        changed: now,
        revision: over + 1,
        order: ++writes,
      };
      notebooks.set(id, { kept, text });
      last = id;
      return kept.revision;
    },
    async delete(id, at) {
      const found = notebooks.get(id);
      if (!found) return;
      const { deleted: _before, ...kept } = found.kept;
      notebooks.set(id, { ...found, kept: at === null ? kept : { ...kept, deleted: at } });
    },
    async forget(id) {
      notebooks.delete(id);
      states.delete(id);
    },
    states: async (id) => newestFirst([...(states.get(id)?.values() ?? [])].map(({ state }) => state)),
    stateAt: async (id, at) => states.get(id)?.get(at)?.text,
    async thin(id, times) {
      for (const at of times) states.get(id)?.delete(at);
    },
    last: async () => last,
    async setLast(id) {
      last = id;
    },
  };
}
