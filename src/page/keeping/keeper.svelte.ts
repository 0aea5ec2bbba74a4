import {
  deviceShelf,
  isForgotten,
  isLink,
  lockOf,
  memoryShelf,
  Pen,
  sharing,
  troubleOf,
  Turn,
  writtenOf,
  type Known,
  type KeptNotebook,
  type Part,
  type Shelf,
  type Standing,
  type Trouble,
} from '../../keeping';
import { readFile, writeFile, type FileRead, type Notebook } from '../../notebook';
import { cardigan } from '../../starters/cardigan';
import type { Desk } from '../desk.svelte';
import { linked, type Opening } from './opening';

/** Something that is looked at and is not the notebook on the desk. */
export type Looking = { readonly at: 'link' } | { readonly at: 'state'; readonly written: number };

/** Milliseconds in which what windows that follow are told is gathered. */
const gathered = 60;

const followsSays =
  'Another window is editing this notebook. Choose “Edit here instead” to change it in this one.';
const looksSays = {
  link: 'This notebook came in a link, to be looked at. Choose “Keep a copy” to change it.',
  state: 'This is an earlier state, to be looked at. Choose “Bring it back” to go on from it.',
};

/**
 * Keeps what is on the desk: hands every edit to the pen, gives the turn to another window and takes it back, and says
 * how things stand. It follows the desk; the desk knows nothing of it.
 */
export class Keeper {
  standing: Standing = $state.raw({ is: 'as it was' });
  looking: Looking | null = $state.raw(null);
  part: Part = $state('writing');
  /** A sentence that is worth telling once. */
  told: string | null = $state(null);
  /** A newer version of the page is stored and waits until no window uses this one. */
  newerIsReady = $state(false);
  /** What was kept and cannot be opened: its text can still be saved. */
  readonly damaged: Opening['damaged'];
  readonly desk: Desk;
  readonly shelf: Shelf;
  /** Why what is kept does not outlive the page; undefined where it does. */
  readonly trouble: Trouble | undefined;

  #pen: Pen;
  #turn: Turn;
  #telling: ReturnType<typeof setTimeout> | undefined;
  /** What is known of the notebook that is about to come on the desk. */
  #coming: { readonly id: string; readonly notebook: Notebook; readonly known: Known } | undefined;

  /** Begins to keep what is on the desk, on the device or, where the browser keeps nothing, in memory. */
  static async of(desk: Desk, opening: Opening): Promise<Keeper> {
    try {
      return new Keeper(desk, await deviceShelf(), opening, undefined);
    } catch (error) {
      return new Keeper(desk, memoryShelf(), opening, opening.trouble ?? troubleOf(error));
    }
  }

  private constructor(desk: Desk, shelf: Shelf, opening: Opening, trouble: Trouble | undefined) {
    this.desk = desk;
    this.shelf = shelf;
    this.trouble = trouble;
    this.damaged = opening.damaged;
    this.#pen = this.#penFor(desk.id, opening.notebook, opening.kept ?? null);
    this.#turn = this.#turnFor(desk.id);
    $effect.root(() => {
      $effect(() => {
        void desk.notebook;
        void desk.id;
        this.#notice();
      });
      $effect(() => {
        desk.readOnly = this.looking
          ? looksSays[this.looking.at]
          : this.part === 'following'
            ? followsSays
            : null;
      });
    });
    const leaving = (): void => {
      if (document.visibilityState === 'hidden') void this.#pen.keep();
    };
    document.addEventListener('visibilitychange', leaving);
    addEventListener('pagehide', () => void this.#pen.keep());
    if (opening.link) this.#lookAtLink(opening.link);
    addEventListener('hashchange', () => void linked().then((link) => link && this.#lookAtLink(link)));
    void this.#forgetOld();
  }

  #lookAtLink(link: FileRead): void {
    if ('notebook' in link) this.look(link.notebook, { at: 'link' });
    else {
      this.desk.complaint = link.problem;
      forgetLink();
    }
  }

  /** Something on the desk is another than before. */
  #notice(): void {
    if (this.desk.id !== this.#pen.id) {
      this.#goOver();
      return;
    }
    if (this.desk.lookedFrom || this.part === 'following') return;
    this.#pen.write(this.desk.notebook);
    if (this.#turn.followed && this.#telling === undefined) {
      this.#telling = setTimeout(() => {
        this.#telling = undefined;
        this.#turn.tell();
      }, gathered);
    }
  }

  /** Another notebook is on the desk: what is left of the one before is written, and this one's turn asked for. */
  #goOver(): void {
    const { id, notebook } = this.desk;
    const coming = this.#coming?.id === id ? this.#coming : undefined;
    this.#coming = undefined;
    this.looking = null;
    this.part = 'writing';
    const [pen, turn] = [this.#pen, this.#turn];
    // The turn is kept until the pen is laid down: the next window begins with all that was written.
    void pen.lay().then(() => turn.close());
    this.#pen = this.#penFor(id, coming?.notebook ?? notebook, coming?.known ?? null);
    this.#turn = this.#turnFor(id);
    if (coming) {
      this.#pen.write(notebook);
      this.shelf.setLast(id).catch(() => {});
    } else void this.#pen.begin().then(() => this.#askToStay());
  }

  #penFor(id: string, notebook: Notebook, known: Known | null): Pen {
    return new Pen(id, notebook, known, this.shelf, {
      stands: (standing) => {
        this.standing = this.trouble ? { is: 'not kept', trouble: this.trouble } : standing;
      },
      apart: (own) => {
        const title = `${own.title} (other window)`.slice(0, 200);
        this.desk.begin({ ...own, title });
        this.told =
          'Another window had changed this notebook meanwhile. What was done here is now a notebook of its own.';
      },
    });
  }

  #turnFor(id: string): Turn {
    return new Turn(id, {
      became: (part) => void this.#become(id, part),
      heard: (text) => {
        if (this.desk.id === id && this.part === 'following') this.#show(text);
      },
      finish: () => this.#pen.keep(),
      now: () => writeFile(this.desk.lookedFrom ?? this.desk.notebook),
    });
  }

  async #become(id: string, part: Part): Promise<void> {
    if (part === this.part || id !== this.desk.id) return;
    if (part === 'following') {
      this.part = part;
      // A window that slept while its turn was taken has work that is not kept yet.
      if (!this.#pen.dry) await this.#pen.keep();
      return;
    }
    // What the other window wrote is read before anything is written here.
    const found = await this.shelf.read(id).catch(() => undefined);
    if (id !== this.desk.id) return;
    const notebook = found && this.#show(found.text);
    if (found && notebook) this.#pen.takeIn(notebook, found.kept);
    this.part = part;
  }

  /** Shows what another window did; gives it back as it is on the desk now. */
  #show(text: string): Notebook | undefined {
    const read = readFile(text);
    if ('problem' in read) return undefined;
    const before = this.desk.lookedFrom ?? this.desk.notebook;
    const notebook = sharing(before, read.notebook);
    this.desk.follow(notebook);
    return notebook;
  }

  /** Takes the turn from the window that has it. */
  editHere(): Promise<void> {
    return this.#turn.take();
  }

  /** Writes now whatever is not kept yet. */
  keep(): Promise<void> {
    return this.#pen.keep();
  }

  /** Puts a notebook from the shelf on the desk; gives back why not, where it cannot be. */
  async open(id: string): Promise<string | undefined> {
    if (id === this.desk.id) {
      this.goBack();
      return undefined;
    }
    const found = await this.shelf.read(id);
    if (!found) return 'That notebook is no longer there.';
    const read = readFile(found.text);
    if ('problem' in read) return read.problem;
    this.#coming = { id, notebook: read.notebook, known: found.kept };
    this.desk.begin(read.notebook, id);
    return undefined;
  }

  /** Makes a copy, which stays on the shelf. */
  async duplicate(id: string): Promise<string | undefined> {
    if (id === this.desk.id) await this.keep();
    const found = await this.shelf.read(id);
    const read = found && readFile(found.text);
    if (!read) return 'That notebook is no longer there.';
    if ('problem' in read) return read.problem;
    const title = `${read.notebook.title.slice(0, 190)} (copy)`;
    await this.shelf.write(crypto.randomUUID(), writtenOf({ ...read.notebook, title }), 0, {
      now: Date.now(),
      remember: false,
    });
    await this.shelf.setLast(this.desk.id);
    await this.#askToStay();
    return undefined;
  }

  async rename(id: string, title: string): Promise<string | undefined> {
    if (id === this.desk.id) {
      const refused = this.desk.do({ do: 'retitle', title });
      if (!refused) await this.keep();
      return refused;
    }
    return alone(id, async () => {
      const found = await this.shelf.read(id);
      const read = found && readFile(found.text);
      if (!read) return 'That notebook is no longer there.';
      if ('problem' in read) return read.problem;
      const renamed = { ...read.notebook, title: title.trim().slice(0, 200) || 'Untitled' };
      const options = { now: Date.now(), remember: false };
      const written = await this.shelf.write(id, writtenOf(renamed), found.kept.revision, options);
      await this.shelf.setLast(this.desk.id);
      return written === null ? openElsewhere : undefined;
    });
  }

  /** Deletes a notebook so that it can be brought back. Where it is on the desk, another takes its place there. */
  async delete(id: string): Promise<string | undefined> {
    if (id !== this.desk.id) {
      return alone(id, async () => {
        await this.shelf.delete(id, Date.now());
        return undefined;
      });
    }
    if (this.part === 'following') return openElsewhere;
    await this.#pen.lay();
    await this.shelf.delete(id, Date.now());
    for (const other of await this.shelf.list()) {
      if (other.deleted === undefined && (await this.open(other.id)) === undefined) return undefined;
    }
    this.desk.begin(cardigan());
    return undefined;
  }

  async bringBack(id: string): Promise<void> {
    await this.shelf.delete(id, null);
  }

  async forget(id: string): Promise<void> {
    await this.shelf.forget(id);
  }

  /** Shows a notebook to be looked at: one from a link, or an earlier state of the one on the desk. */
  look(notebook: Notebook, looking: Looking): void {
    void this.#pen.keep();
    this.looking = looking;
    this.desk.look(looking.at === 'state' ? sharing(this.desk.notebook, notebook) : notebook);
  }

  /** Back from what is looked at to the notebook on the desk. */
  goBack(): void {
    this.desk.lookBack();
    this.looking = null;
    forgetLink();
  }

  /** Goes on from what is looked at: from a link as a notebook of its own, from an earlier state as an edit. */
  goOn(): void {
    const { looking, desk } = this;
    const notebook = desk.notebook;
    if (looking?.at === 'link') {
      forgetLink();
      desk.begin(notebook);
    }
    if (looking?.at !== 'state') return;
    this.goBack();
    this.#pen.remember();
    desk.exchange(notebook, `bringing back the state of ${timeOf(looking.written)}`);
  }

  /** Asks the browser not to clear what is kept, once there is more than one notebook to lose. */
  async #askToStay(): Promise<void> {
    if (this.trouble) return;
    try {
      const there = (await this.shelf.list()).filter(({ deleted }) => deleted === undefined);
      if (there.length > 1 && !(await navigator.storage.persisted())) await navigator.storage.persist();
    } catch {
      // A browser that cannot be asked keeps things as it does.
    }
  }

  async #forgetOld(): Promise<void> {
    try {
      const old = (await this.shelf.list()).filter((kept: KeptNotebook) => isForgotten(kept, Date.now()));
      for (const { id } of old) await this.shelf.forget(id);
    } catch {
      // What stands in the way of that shows at the next write.
    }
  }
}

/** Takes the notebook of a link that was dealt with out of the address. */
function forgetLink(): void {
  if (isLink(location.hash)) history.replaceState(null, '', location.pathname + location.search);
}

const openElsewhere = 'That notebook is being edited in another window. Do this there, or close that window.';

/** Does something to a notebook that no window writes at the moment. */
async function alone(id: string, act: () => Promise<string | undefined>): Promise<string | undefined> {
  if (!navigator.locks) return act();
  return navigator.locks.request(lockOf(id), { ifAvailable: true }, (lock) => (lock ? act() : openElsewhere));
}

/** A time of day, with the day before it where that is not today. */
export function timeOf(time: number): string {
  const then = new Date(time);
  const today = new Date().toDateString() === then.toDateString();
  return new Intl.DateTimeFormat(undefined, {
    ...(today ? {} : { day: 'numeric', month: 'short', year: 'numeric' }),
    hour: '2-digit',
    minute: '2-digit',
    hourCycle: 'h23',
  }).format(then);
}
