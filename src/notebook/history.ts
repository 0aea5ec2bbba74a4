import type { Notebook } from './document';

interface Step {
  readonly notebook: Notebook;
  /** What led away from this state: "the change to Bust". */
  readonly what: string;
}

/** A notebook and the states it can go back and forward to. Plain data, never changed in place. */
export interface History {
  readonly now: Notebook;
  readonly past: readonly Step[];
  readonly future: readonly Step[];
}

const longest = 500;

/** A history that begins here: there is nothing to undo. */
export function begin(notebook: Notebook): History {
  return { now: notebook, past: [], future: [] };
}

/** The history after an edit: what was undone before can no longer be redone. */
export function advance(history: History, notebook: Notebook, what: string): History {
  if (notebook === history.now) return history;
  const past = [...history.past, { notebook: history.now, what }].slice(-longest);
  return { now: notebook, past, future: [] };
}

/** The history one edit back; the same where there is none. */
export function undo(history: History): History {
  const step = history.past.at(-1);
  if (!step) return history;
  return {
    now: step.notebook,
    past: history.past.slice(0, -1),
    future: [...history.future, { notebook: history.now, what: step.what }],
  };
}

/** The history with the edit made again that was undone last; the same where there is none. */
export function redo(history: History): History {
  const step = history.future.at(-1);
  if (!step) return history;
  return {
    now: step.notebook,
    past: [...history.past, { notebook: history.now, what: step.what }],
    future: history.future.slice(0, -1),
  };
}

const elsewhere = 'the changes made in another window';

/**
 * The history after changes that were made in another window. All of them together are one step, and what can be undone
 * from before stays; where nothing can, there is none from them either.
 */
export function withElsewhere(history: History, notebook: Notebook): History {
  if (notebook === history.now || history.past.length === 0) return { ...history, now: notebook };
  if (history.past.at(-1)!.what === elsewhere) return { ...history, now: notebook, future: [] };
  return advance(history, notebook, elsewhere);
}
