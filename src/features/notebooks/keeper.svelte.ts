import {
  deviceStore,
  lateStore,
  memoryStore,
  Autosaver,
  shareStructure,
  titleApart,
  storageErrorOf,
  WriteLock,
  type Journal,
  type Role,
  type Replayed,
  type NotebookStore,
  type SaveStatus,
  type StorageError,
} from '../../storage';
import { readFile, writeFile, type FileRead, type Notebook } from '../../notebook';
import { cardigan } from '../../starters';
import type { Workspace } from '../../workspace';
import { journalOf, type Ahead } from './ahead';
import {
  apartSays,
  followsSays,
  KeeperState,
  previewSentences,
  newerSays,
  unreadSays,
  type Preview,
} from './keeper-state.svelte';
import { alone, findOn, openElsewhere } from './in-store';
import { forgetLink, linked, type Found, type Opening } from './opening';
import { timeOf } from './time-of';

export { timeOf } from './time-of';

/** Milliseconds in which what windows that follow are told is gathered. */
const gathered = 60;

/** Milliseconds for which a store that does not answer is waited for before its list is shown without the newest. */
const shownWithin = 4000;

/**
 * Saves the open notebook: hands every edit to the autosaver, gives the turn to another window and takes it back, and says
 * how things stand. It follows the workspace; the workspace knows nothing of it.
 */
export class Keeper extends KeeperState {
  #autosaver: Autosaver;
  #lock: WriteLock;
  #timer: ReturnType<typeof setTimeout> | undefined;
  /** What is known of the notebook that is about to be opened. */
  #coming: Found | undefined;
  /** What was replayed for the open notebook, until this window may write it. */
  #replayed: Replayed | undefined;

  /**
   * Begins to save the open notebook, on the device or, where the browser keeps nothing, in memory. It begins at once,
   * also where the database has not answered yet.
   *
   * @param ahead the journal of the open notebook, which was written before the keeper was there
   */
  static of(workspace: Workspace, opening: Opening, ahead: Ahead): Keeper {
    let keeper: Keeper | undefined = undefined;
    let problem: StorageError | undefined;
    const opened = deviceStore().catch((error: unknown) => {
      problem = opening.error ?? storageErrorOf(error);
      if (keeper) keeper.error = problem;
      return memoryStore();
    });
    keeper = new Keeper(workspace, lateStore(opened), opening, ahead);
    const own = keeper;
    void opened.then(() => {
      if (problem) return;
      if (own.error === 'silent') own.error = undefined;
      void own.recoverOthers();
      if (opening.error) void own.#checkAgain();
    });
    return keeper;
  }

  private constructor(workspace: Workspace, store: NotebookStore, opening: Opening, ahead: Ahead) {
    super(workspace, store, opening);
    const asOpened = workspace.document.id === opening.id || opening.id === undefined;
    this.#autosaver = this.#autosaverFor(
      {
        ...(asOpened ? opening : { notebook: workspace.document.previewedFrom ?? workspace.notebook }),
        id: workspace.document.id,
      },
      ahead.journal,
    );
    this.own = this.#autosaver.status;
    this.#replayed = asOpened ? opening.replayed : undefined;
    this.#lock = this.#lockFor(workspace.document.id);
    workspace.document.isUnsaved = () =>
      !this.#autosaver.isSaved && !this.#autosaver.down && this.status.is === 'not kept';
    this.#watch();
    if (opening.link) this.#previewLink(opening.link);
    if (opening.late) this.#awaitLate(opening.late);
  }

  /** The open notebook, also while another is looked at. */
  get #notebook(): Notebook {
    return this.workspace.document.previewedFrom ?? this.workspace.notebook;
  }

  #watch(): void {
    const { workspace } = this;
    $effect.root(() => {
      $effect(() => {
        void workspace.notebook;
        void workspace.document.id;
        this.#notice();
      });
      $effect(() => {
        workspace.document.readOnly = this.previewing
          ? previewSentences[this.previewing.at]
          : this.role === 'following'
            ? followsSays
            : null;
      });
    });
    document.addEventListener('visibilitychange', () => {
      if (document.visibilityState === 'hidden') void this.#autosaver.keep();
    });
    addEventListener('pagehide', () => void this.#autosaver.keep());
    addEventListener('hashchange', () => void linked().then((link) => link && this.#previewLink(link)));
  }

  /** Whether leaving the page now would lose something: it is neither in the store nor in the journal. */
  get atRisk(): boolean {
    return this.#autosaver.atRisk || this.unsaved.all.some(({ autosaver }) => autosaver.atRisk);
  }

  #previewLink(link: FileRead): void {
    if ('notebook' in link) this.preview(link.notebook, { at: 'link' });
    else {
      this.workspace.complaints.add(link.problem);
      forgetLink();
    }
  }

  /** The person went on with an example before the store answered: what it answers must neither be lost nor mixed in. */
  #awaitLate(late: Promise<Opening>): void {
    const began = this.workspace.document.id;
    this.error = 'silent';
    void late.then((found) => {
      if (this.error === 'silent') this.error = found.error;
      if (found.id !== undefined) this.#comesBack({ ...found, id: found.id }, began);
    });
  }

  /** It could not be read what was open last, and now the store is there: it is looked for once more. */
  async #checkAgain(): Promise<void> {
    const began = this.workspace.document.id;
    const id = await this.store.last().catch(() => undefined);
    const found = id === undefined ? undefined : await findOn(this.store, id).catch(() => undefined);
    if (found && 'notebook' in found && found.kept?.deleted === undefined) this.#comesBack(found, began);
  }

  /** The person's own notebook is found after all: it opens, or is offered where they have gone on with another. */
  #comesBack(found: Found, began: string): void {
    if (found.id === this.workspace.document.id) return;
    const untouched =
      this.workspace.document.id === began && !this.#autosaver.hasOwnEdits && this.status.is !== 'kept';
    if (untouched && this.previewing === null) this.#put(found);
    else this.found = { id: found.id, title: found.notebook.title };
  }

  /** The open notebook is another than before. */
  #notice(): void {
    if (this.workspace.document.id !== this.#autosaver.id) {
      this.#goOver();
      return;
    }
    if (this.workspace.document.previewedFrom || this.role === 'following') return;
    this.#autosaver.write(this.workspace.notebook);
    this.slow ||= this.#autosaver.withoutJournal;
    if (this.#lock.isFollowed && this.#timer === undefined) {
      this.#timer = setTimeout(() => {
        this.#timer = undefined;
        this.#lock.broadcast();
      }, gathered);
    }
  }

  /** Another notebook is open: what is left of the one before is written, and this one's turn asked for. */
  #goOver(): void {
    const { id, notebook } = this.workspace.document;
    const coming = this.#coming?.id === id ? this.#coming : undefined;
    this.#coming = undefined;
    this.previewing = null;
    const [autosaver, turn] = [this.#autosaver, this.#lock];
    if (this.role === 'following' && !autosaver.hasOwnEdits) {
      autosaver.drop();
      turn.close();
    }
    // The turn is kept until all is written: the next window begins with that.
    else this.unsaved.hold(autosaver, turn);
    const back = this.unsaved.remove(id);
    this.role = back?.lock?.role ?? 'writing';
    this.#autosaver = back?.autosaver ?? this.#autosaverFor(coming ?? { id, notebook });
    this.own = this.#autosaver.status;
    this.#replayed = back ? undefined : coming?.replayed;
    this.#lock = back?.lock ?? this.#lockFor(id);
    if (back) return;
    if (coming) {
      this.#autosaver.write(notebook);
      this.store.setLast(id).catch(() => {});
    } else void this.#autosaver.begin().then(() => this.askToStay());
  }

  /** An autosaver for a notebook as it was found; it waits for the turn. */
  #autosaverFor(found: Found, journal: Journal = journalOf(found)): Autosaver {
    const { id, notebook, kept, stored, replayed } = found;
    let autosaver: Autosaver | undefined = undefined;
    const events = {
      statusChanged: (status: SaveStatus) => autosaver && this.#statusChanged(autosaver, status),
      apart: () => autosaver && void this.#passed(autosaver),
    };
    const known = kept ?? null;
    const made: Autosaver = (autosaver = new Autosaver(
      id,
      stored ?? notebook,
      known,
      this.store,
      events,
      journal,
    ));
    made.wait();
    if (!replayed) return made;
    made.replaces(replayed.keys);
    if (!stored) made.unwritten();
    made.write(notebook);
    return made;
  }

  #statusChanged(autosaver: Autosaver, status: SaveStatus): void {
    if (autosaver === this.#autosaver) this.own = status;
    else {
      this.unsaved.holds(autosaver, status);
      // The one saved now was left; the page opens again with the open one.
      if (status.is === 'kept') this.store.setLast(this.workspace.document.id).catch(() => {});
    }
  }

  /** Another window has written what an autosaver was about to write: what was done here stands apart, unless it is in there. */
  async #passed(autosaver: Autosaver): Promise<void> {
    const found = await findOn(this.store, autosaver.id).catch(() => undefined);
    const here = autosaver === this.#autosaver && autosaver.id === this.workspace.document.id;
    const all = found && 'notebook' in found && autosaver.isIn(found.kept?.edits);
    if (!all) this.#setApart(autosaver, here);
    else if (here) this.#acquireLock(found);
    else this.unsaved.drop(autosaver);
  }

  #setApart(autosaver: Autosaver, here: boolean): void {
    const own = autosaver.notebook;
    const notebook = { ...own, title: titleApart(own.title) };
    if (here) this.workspace.document.begin(notebook, crypto.randomUUID(), true);
    else this.#adopt(notebook);
    autosaver.forgetJournal();
    autosaver.drop();
    this.unsaved.drop(autosaver);
    this.announce(
      'Another window had changed this notebook meanwhile. What was done here is now a separate notebook.',
    );
  }

  /** Saves a notebook that is not open. */
  #adopt(notebook: Notebook): void {
    const autosaver = this.#autosaverFor({ id: crypto.randomUUID(), notebook });
    autosaver.goOn();
    autosaver.unwritten();
    void autosaver.begin();
    this.unsaved.hold(autosaver, null);
  }

  #lockFor(id: string): WriteLock {
    return new WriteLock(id, {
      became: (part) => void this.#setRole(id, part),
      received: (text) => {
        const read = this.workspace.document.id === id && this.role === 'following' && readFile(text);
        if (read && 'notebook' in read)
          this.workspace.document.follow(shareStructure(this.#notebook, read.notebook));
      },
      finish: () => this.#autosaver.keep(),
      now: () => writeFile(this.#notebook),
    });
  }

  async #setRole(id: string, part: Role): Promise<void> {
    if (id !== this.workspace.document.id) {
      const left = this.unsaved.of(id)?.autosaver;
      if (part === 'writing') left?.goOn();
      else if (left && !left.hasOwnEdits) this.unsaved.drop(left);
      return;
    }
    if (part === 'following') {
      this.role = part;
      const autosaver = this.#autosaver;
      if (!autosaver.hasOwnEdits) return;
      // What was done before it was known that another window writes; or by a window that slept while its turn was taken.
      if (autosaver.waits) this.#setApart(autosaver, true);
      else await autosaver.keep();
      return;
    }
    if (this.role === 'writing') {
      // The first to have it open.
      this.#writes();
      return;
    }
    // What the other window wrote is read before anything is written here.
    const found = await findOn(this.store, id).catch(() => undefined);
    if (id !== this.workspace.document.id) return;
    if (found && 'notebook' in found) this.#acquireLock(found);
    this.role = part;
    this.#writes();
  }

  /** Goes on from what the store and the journal hold of the open notebook. */
  #acquireLock(found: Found): void {
    const notebook = shareStructure(this.#notebook, found.notebook);
    const stored = found.stored === found.notebook ? notebook : found.stored;
    this.#autosaver.drop();
    this.#autosaver = this.#autosaverFor({ ...found, notebook, stored });
    this.own = this.#autosaver.status;
    this.workspace.document.follow(notebook);
    this.#replayed = found.replayed;
    if (this.#lock.role === 'writing') this.#writes();
  }

  /** This window writes the open notebook. */
  #writes(): void {
    const replayed = this.#replayed;
    this.#replayed = undefined;
    for (const own of replayed?.apart ?? []) {
      const title = titleApart(own.title);
      this.#adopt({ ...own, title });
      this.announce(apartSays(title));
    }
    if (replayed?.unread) this.announce(unreadSays(this.#autosaver.notebook.title));
    if (replayed?.newer) this.announce(newerSays(this.#autosaver.notebook.title));
    this.#autosaver.goOn();
  }

  /** Takes the turn from the window that has it. */
  editHere(): Promise<void> {
    return this.#lock.acquire();
  }

  /** Writes now whatever is not kept yet; a store that does not answer is not waited for without end. */
  async keep(): Promise<void> {
    let timer: ReturnType<typeof setTimeout> | undefined;
    const enough = new Promise<void>((resolve) => (timer = setTimeout(resolve, shownWithin)));
    await Promise.race([this.#autosaver.keep(), enough]);
    clearTimeout(timer);
  }

  /** Opens a notebook of the store; gives back why not, where it cannot be. */
  async open(id: string): Promise<string | undefined> {
    if (id === this.workspace.document.id) {
      this.goBack();
      return undefined;
    }
    const left = this.unsaved.of(id);
    if (left) {
      this.workspace.document.begin(left.autosaver.notebook, id);
      return undefined;
    }
    const found = await findOn(this.store, id);
    if (!found) return 'That notebook is no longer there.';
    if ('problem' in found) return found.problem;
    this.#put(found);
    return undefined;
  }

  #put(found: Found, sure = false): void {
    this.#coming = found;
    if (this.found?.id === found.id) this.found = null;
    this.workspace.document.begin(found.notebook, found.id, sure);
  }

  /** Deletes a notebook so that it can be brought back. Where it is open, another takes its place there. */
  async delete(id: string): Promise<string | undefined> {
    if (id !== this.workspace.document.id) {
      return alone(id, async () => {
        await this.store.delete(id, Date.now());
        return undefined;
      });
    }
    if (this.role === 'following') return openElsewhere;
    await this.keep();
    await this.store.delete(id, Date.now());
    // What it is deleted with is what was last saved.
    this.#autosaver.drop();
    this.#autosaver.forgetJournal();
    for (const other of await this.store.list()) {
      if (other.deleted === undefined && (await this.open(other.id)) === undefined) return undefined;
    }
    this.workspace.document.begin(cardigan(), crypto.randomUUID(), true);
    return undefined;
  }

  /** Shows a notebook to be looked at: one from a link, or an earlier state of the one that is open. */
  preview(notebook: Notebook, preview: Preview): void {
    void this.#autosaver.keep();
    this.previewing = preview;
    this.workspace.document.preview(
      preview.at === 'state' ? shareStructure(this.workspace.notebook, notebook) : notebook,
    );
  }

  /** Back from what is looked at to the open notebook. */
  goBack(): void {
    this.workspace.document.exitPreview();
    this.previewing = null;
    forgetLink();
  }

  /** Goes on from what is looked at: from a link as a notebook of its own, from an earlier state as an edit. */
  goOn(): void {
    const { previewing: preview, workspace } = this;
    const notebook = workspace.notebook;
    if (preview?.at === 'link') {
      forgetLink();
      workspace.document.begin(notebook);
      return;
    }
    if (preview?.at !== 'state') return;
    this.goBack();
    this.#autosaver.remember();
    workspace.document.exchange(notebook, `bringing back the state of ${timeOf(preview.written)}`);
  }
}
