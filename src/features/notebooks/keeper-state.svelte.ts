import {
  journalled,
  recover,
  type Role,
  type NotebookStore,
  type SaveStatus,
  type StorageError,
} from '../../storage';
import type { Workspace } from '../../workspace';
import { alone, askToStay, duplicateOn, renameOn } from './in-store';
import type { Opening } from './opening';
import { Unsaved } from './unsaved.svelte';

/** Something that is looked at and is not the open notebook. */
export type Preview = { readonly at: 'link' } | { readonly at: 'state'; readonly written: number };

export const followsSays =
  'Another window is editing this notebook. Choose “Edit here instead” to change it in this one.';
export const previewSentences = {
  link: 'This notebook came in a link, to be looked at. Choose “Keep a copy” to change it.',
  state: 'This is an earlier state, to be looked at. Choose “Bring it back” to go on from it.',
};

export const apartSays = (title: string): string =>
  `Unsaved changes from another window are now in “${title}”.`;

export const unreadSays = (title: string): string =>
  `Some of the last changes to “${title}” were damaged where they were saved, and are not in it.`;

export const newerSays = (title: string): string =>
  `Some of the last changes to “${title}” were made by a newer version of this page. They are kept: reload the page to get that version.`;

/** How things stand with what is kept, for the page to show. */
export abstract class KeeperState {
  previewing: Preview | null = $state.raw(null);
  role: Role = $state('writing');
  /** Sentences that are worth telling once, the newest first. */
  message: readonly string[] = $state.raw([]);
  /** A newer version of the page is stored and waits until no window uses this one. */
  newerIsReady = $state(false);
  /** The person's own notebook, found after they went on with an example. */
  found: { readonly id: string; readonly title: string } | null = $state.raw(null);
  /** Whether the browser has no journal for this page: an edit is only safe once it is saved. */
  slow = $state(false);
  /** What was kept and cannot be opened: its text can still be saved. */
  readonly damaged: Opening['damaged'];
  readonly workspace: Workspace;
  readonly store: NotebookStore;
  /** Notebooks that were left before they were saved. */
  readonly unsaved = new Unsaved();
  /** Why what is kept does not outlive the page; undefined where it does. */
  error: StorageError | undefined = $state();
  /** How the open notebook stands with the store. */
  protected own: SaveStatus = $state.raw({ is: 'as it was' });
  readonly status: SaveStatus = $derived(this.error ? { is: 'not kept', error: this.error } : this.own);

  constructor(workspace: Workspace, store: NotebookStore, opening: Opening) {
    this.workspace = workspace;
    this.store = store;
    this.damaged = opening.damaged;
  }

  announce(sentence: string): void {
    this.message = [sentence, ...this.message.filter((one) => one !== sentence)];
  }

  untell(sentence: string): void {
    this.message = this.message.filter((one) => one !== sentence);
  }

  /** Writes now whatever is not kept yet. */
  abstract keep(): Promise<void>;

  /** Makes a copy, which stays in the store. */
  async duplicate(id: string): Promise<string | undefined> {
    if (id === this.workspace.document.id) await this.keep();
    const refused = await duplicateOn(this.store, id, this.workspace.document.id);
    if (refused === undefined) await this.askToStay();
    return refused;
  }

  async rename(id: string, title: string): Promise<string | undefined> {
    if (id !== this.workspace.document.id)
      return alone(id, () => renameOn(this.store, id, title, this.workspace.document.id));
    const refused = this.workspace.do({ do: 'retitle', title });
    if (!refused) await this.keep();
    return refused;
  }

  async bringBack(id: string): Promise<void> {
    await this.store.delete(id, null);
  }

  async forget(id: string): Promise<void> {
    await this.store.forget(id);
  }

  protected async askToStay(): Promise<void> {
    if (!this.error) await askToStay(this.store);
  }

  /** Brings into the store what the journal alone holds of notebooks that no window has open. */
  protected async recoverOthers(): Promise<void> {
    for (const [id, chains] of journalled()) {
      if (id === this.workspace.document.id || this.unsaved.of(id)) continue;
      try {
        await alone(id, async () => {
          const { apart, unread, newer } = await recover(this.store, id, chains);
          for (const title of apart) this.announce(apartSays(title));
          if (unread !== undefined) this.announce(unreadSays(unread));
          if (newer !== undefined) this.announce(newerSays(newer));
          return undefined;
        });
      } catch {
        // They stay in the journal, for the next time.
      }
    }
  }
}
