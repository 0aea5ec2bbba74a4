import type { NotebookStore } from './notebook-store';

/**
 * A store that is there at once although its database has not answered yet: whatever is asked of it waits for the answer.
 * A database that never answers leaves all of it waiting; the autosaver says so.
 */
export function lateStore(opened: Promise<NotebookStore>): NotebookStore {
  return {
    list: async () => (await opened).list(),
    read: async (id) => (await opened).read(id),
    textLeft: async (id) => (await opened).textLeft(id),
    write: async (...given) => (await opened).write(...given),
    delete: async (id, at) => (await opened).delete(id, at),
    forget: async (id) => (await opened).forget(id),
    states: async (id) => (await opened).states(id),
    stateAt: async (id, at) => (await opened).stateAt(id, at),
    thin: async (id, times) => (await opened).thin(id, times),
    last: async () => (await opened).last(),
    setLast: async (id) => (await opened).setLast(id),
  };
}
