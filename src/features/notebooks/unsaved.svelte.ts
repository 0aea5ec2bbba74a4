import type { Autosaver, SaveStatus, StorageError, WriteLock } from '../../storage';

/** A notebook that is neither open nor saved yet. */
export interface NotSaved {
  readonly id: string;
  readonly title: string;
  /** Why; null while it is being saved. */
  readonly error: StorageError | null;
  readonly autosaver: Autosaver;
  readonly lock: WriteLock | null;
}

/** Notebooks that were left before they were saved. They stay here, and are tried again, until they are. */
export class Unsaved {
  all: readonly NotSaved[] = $state.raw([]);

  /** Those of which something went wrong. */
  readonly failing = $derived(this.all.filter(({ error }) => error !== null));

  /** Takes a notebook over from the workspace, with the turn to write it. */
  hold(autosaver: Autosaver, turn: WriteLock | null): void {
    if (autosaver.isSaved || autosaver.down) {
      autosaver.drop();
      turn?.close();
      return;
    }
    const { id, notebook, status } = autosaver;
    const error = status.is === 'not kept' ? status.error : null;
    this.all = [...this.all, { id, title: notebook.title, error, autosaver, lock: turn }];
    void autosaver.keep();
  }

  /** Hands a notebook back to the workspace; undefined where it is not here. */
  remove(id: string): NotSaved | undefined {
    const found = this.of(id);
    this.all = this.all.filter((one) => one !== found);
    return found;
  }

  of(id: string): NotSaved | undefined {
    return this.all.find((one) => one.id === id);
  }

  /** An autosaver that is held here says how its notebook stands. */
  holds(autosaver: Autosaver, status: SaveStatus): void {
    const error = status.is === 'not kept' ? status.error : null;
    if (error === null && autosaver.isSaved) this.drop(autosaver);
    else this.all = this.all.map((one) => (one.autosaver === autosaver ? { ...one, error } : one));
  }

  /** Lets a notebook go that is saved, or that another now stands for. */
  drop(autosaver: Autosaver): void {
    const found = this.all.find((one) => one.autosaver === autosaver);
    if (!found) return;
    this.all = this.all.filter((one) => one !== found);
    autosaver.drop();
    found.lock?.close();
  }
}
