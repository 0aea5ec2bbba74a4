import { Journal } from '../../storage';
import type { Workspace } from '../../workspace';
import type { Found, Opening } from './opening';

/** The journal of a notebook as it was found. */
export function journalOf({ id, notebook, kept, replayed }: Found): Journal {
  const made = replayed && Object.keys(replayed.made).length > 0 ? replayed.made : undefined;
  return new Journal(id, notebook, { revision: kept?.revision ?? 0, replayed: made });
}

/**
 * Writes edits ahead from the first moment of the page on, before what keeps the notebook has been fetched, and where it
 * cannot be fetched at all.
 */
export class Ahead {
  journal: Journal;

  constructor(workspace: Workspace, opened: Opening) {
    this.journal = journalOf({ ...opened, id: workspace.document.id });
  }

  note(workspace: Workspace): void {
    if (workspace.document.previewedFrom) return;
    if (workspace.document.id !== this.journal.notebook) {
      this.journal = new Journal(workspace.document.id, workspace.notebook, { revision: 0 });
      this.journal.note(workspace.notebook, true);
    }
    this.journal.note(workspace.notebook);
  }

  /** Whether leaving the page now would lose an edit. */
  get atRisk(): boolean {
    return this.journal.pending && !this.journal.complete;
  }
}
