import {
  deviceShelf,
  lateShelf,
  memoryShelf,
  Pen,
  sharing,
  titleApart,
  troubleOf,
  Turn,
  type Journal,
  type Part,
  type Replayed,
  type Shelf,
  type Standing,
  type Trouble,
} from '../../storage';
import { readFile, writeFile, type FileRead, type Notebook } from '../../notebook';
import { cardigan } from '../../starters/cardigan';
import type { Desk } from '../../workspace/workspace.svelte';
import { journalOf, type Ahead } from './ahead';
import {
  apartSays,
  followsSays,
  KeeperState,
  looksSays,
  newerSays,
  unreadSays,
  type Looking,
} from './keeper-state.svelte';
import { alone, findOn, openElsewhere } from './in-store';
import { forgetLink, linked, type Found, type Opening } from './opening';
import { timeOf } from './time-of';

export { timeOf } from './time-of';

/** Milliseconds in which what windows that follow are told is gathered. */
const gathered = 60;

/** Milliseconds for which a shelf that does not answer is waited for before its list is shown without the newest. */
const patience = 4000;

/**
 * Keeps what is on the desk: hands every edit to the pen, gives the turn to another window and takes it back, and says
 * how things stand. It follows the desk; the desk knows nothing of it.
 */
export class Keeper extends KeeperState {
  #pen: Pen;
  #turn: Turn;
  #telling: ReturnType<typeof setTimeout> | undefined;
  /** What is known of the notebook that is about to come on the desk. */
  #coming: Found | undefined;
  /** What was replayed for the notebook on the desk, until this window may write it. */
  #replayed: Replayed | undefined;

  /**
   * Begins to keep what is on the desk, on the device or, where the browser keeps nothing, in memory. It begins at once,
   * also where the database has not answered yet.
   *
   * @param ahead the journal of what is on the desk, which was written before the keeper was there
   */
  static of(desk: Desk, opening: Opening, ahead: Ahead): Keeper {
    let keeper: Keeper | undefined = undefined;
    let trouble: Trouble | undefined;
    const opened = deviceShelf().catch((error: unknown) => {
      trouble = opening.trouble ?? troubleOf(error);
      if (keeper) keeper.trouble = trouble;
      return memoryShelf();
    });
    keeper = new Keeper(desk, lateShelf(opened), opening, ahead);
    const own = keeper;
    void opened.then(() => {
      if (trouble) return;
      if (own.trouble === 'silent') own.trouble = undefined;
      void own.recoverOthers();
      if (opening.trouble) void own.#lookAgain();
    });
    return keeper;
  }

  private constructor(desk: Desk, shelf: Shelf, opening: Opening, ahead: Ahead) {
    super(desk, shelf, opening);
    const asOpened = desk.id === opening.id || opening.id === undefined;
    this.#pen = this.#penOn(
      { ...(asOpened ? opening : { notebook: desk.lookedFrom ?? desk.notebook }), id: desk.id },
      ahead.journal,
    );
    this.own = this.#pen.standing;
    this.#replayed = asOpened ? opening.replayed : undefined;
    this.#turn = this.#turnFor(desk.id);
    desk.isUnsaved = () => !this.#pen.dry && !this.#pen.down && this.standing.is === 'not kept';
    this.#watch();
    if (opening.link) this.#lookAtLink(opening.link);
    if (opening.late) this.#awaitLate(opening.late);
  }

  /** The notebook on the desk, also while another is looked at. */
  get #notebook(): Notebook {
    return this.desk.lookedFrom ?? this.desk.notebook;
  }

  #watch(): void {
    const { desk } = this;
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
    document.addEventListener('visibilitychange', () => {
      if (document.visibilityState === 'hidden') void this.#pen.keep();
    });
    addEventListener('pagehide', () => void this.#pen.keep());
    addEventListener('hashchange', () => void linked().then((link) => link && this.#lookAtLink(link)));
  }

  /** Whether leaving the page now would lose something: it is neither on the shelf nor in the journal. */
  get atRisk(): boolean {
    return this.#pen.atRisk || this.unsaved.all.some(({ pen }) => pen.atRisk);
  }

  #lookAtLink(link: FileRead): void {
    if ('notebook' in link) this.look(link.notebook, { at: 'link' });
    else {
      this.desk.complaints.add(link.problem);
      forgetLink();
    }
  }

  /** The person went on with an example before the store answered: what it answers must neither be lost nor mixed in. */
  #awaitLate(late: Promise<Opening>): void {
    const began = this.desk.id;
    this.trouble = 'silent';
    void late.then((found) => {
      if (this.trouble === 'silent') this.trouble = found.trouble;
      if (found.id !== undefined) this.#comesBack({ ...found, id: found.id }, began);
    });
  }

  /** It could not be read what was open last, and now the store is there: it is looked for once more. */
  async #lookAgain(): Promise<void> {
    const began = this.desk.id;
    const id = await this.shelf.last().catch(() => undefined);
    const found = id === undefined ? undefined : await findOn(this.shelf, id).catch(() => undefined);
    if (found && 'notebook' in found && found.kept?.deleted === undefined) this.#comesBack(found, began);
  }

  /** The person's own notebook is found after all: it opens, or is offered where they have gone on with another. */
  #comesBack(found: Found, began: string): void {
    if (found.id === this.desk.id) return;
    const untouched = this.desk.id === began && !this.#pen.hasOwnEdits && this.standing.is !== 'kept';
    if (untouched && this.looking === null) this.#put(found);
    else this.found = { id: found.id, title: found.notebook.title };
  }

  /** Something on the desk is another than before. */
  #notice(): void {
    if (this.desk.id !== this.#pen.id) {
      this.#goOver();
      return;
    }
    if (this.desk.lookedFrom || this.part === 'following') return;
    this.#pen.write(this.desk.notebook);
    this.slow ||= this.#pen.withoutJournal;
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
    const [pen, turn] = [this.#pen, this.#turn];
    if (this.part === 'following' && !pen.hasOwnEdits) {
      pen.drop();
      turn.close();
    }
    // The turn is kept until all is written: the next window begins with that.
    else this.unsaved.hold(pen, turn);
    const back = this.unsaved.take(id);
    this.part = back?.turn?.part ?? 'writing';
    this.#pen = back?.pen ?? this.#penOn(coming ?? { id, notebook });
    this.own = this.#pen.standing;
    this.#replayed = back ? undefined : coming?.replayed;
    this.#turn = back?.turn ?? this.#turnFor(id);
    if (back) return;
    if (coming) {
      this.#pen.write(notebook);
      this.shelf.setLast(id).catch(() => {});
    } else void this.#pen.begin().then(() => this.askToStay());
  }

  /** A pen for a notebook as it was found; it waits for the turn. */
  #penOn(found: Found, journal: Journal = journalOf(found)): Pen {
    const { id, notebook, kept, stored, replayed } = found;
    let pen: Pen | undefined = undefined;
    const told = {
      stands: (standing: Standing) => pen && this.#stands(pen, standing),
      apart: () => pen && void this.#passed(pen),
    };
    const known = kept ?? null;
    const made: Pen = (pen = new Pen(id, stored ?? notebook, known, this.shelf, told, journal));
    made.wait();
    if (!replayed) return made;
    made.replaces(replayed.keys);
    if (!stored) made.unwritten();
    made.write(notebook);
    return made;
  }

  #stands(pen: Pen, standing: Standing): void {
    if (pen === this.#pen) this.own = standing;
    else {
      this.unsaved.stands(pen, standing);
      // The one saved now was left; the page opens again with the one on the desk.
      if (standing.is === 'kept') this.shelf.setLast(this.desk.id).catch(() => {});
    }
  }

  /** Another window has written what a pen was about to write: what was done here stands apart, unless it is in there. */
  async #passed(pen: Pen): Promise<void> {
    const found = await findOn(this.shelf, pen.id).catch(() => undefined);
    const here = pen === this.#pen && pen.id === this.desk.id;
    const all = found && 'notebook' in found && pen.isIn(found.kept?.edits);
    if (!all) this.#setApart(pen, here);
    else if (here) this.#takeOver(found);
    else this.unsaved.drop(pen);
  }

  #setApart(pen: Pen, here: boolean): void {
    const own = pen.notebook;
    const notebook = { ...own, title: titleApart(own.title) };
    if (here) this.desk.begin(notebook, crypto.randomUUID(), true);
    else this.#adopt(notebook);
    pen.forgetJournal();
    pen.drop();
    this.unsaved.drop(pen);
    this.tell(
      'Another window had changed this notebook meanwhile. What was done here is now a separate notebook.',
    );
  }

  /** Keeps a notebook that is not on the desk. */
  #adopt(notebook: Notebook): void {
    const pen = this.#penOn({ id: crypto.randomUUID(), notebook });
    pen.goOn();
    pen.unwritten();
    void pen.begin();
    this.unsaved.hold(pen, null);
  }

  #turnFor(id: string): Turn {
    return new Turn(id, {
      became: (part) => void this.#become(id, part),
      heard: (text) => {
        const read = this.desk.id === id && this.part === 'following' && readFile(text);
        if (read && 'notebook' in read) this.desk.follow(sharing(this.#notebook, read.notebook));
      },
      finish: () => this.#pen.keep(),
      now: () => writeFile(this.#notebook),
    });
  }

  async #become(id: string, part: Part): Promise<void> {
    if (id !== this.desk.id) {
      const left = this.unsaved.of(id)?.pen;
      if (part === 'writing') left?.goOn();
      else if (left && !left.hasOwnEdits) this.unsaved.drop(left);
      return;
    }
    if (part === 'following') {
      this.part = part;
      const pen = this.#pen;
      if (!pen.hasOwnEdits) return;
      // What was done before it was known that another window writes; or by a window that slept while its turn was taken.
      if (pen.waits) this.#setApart(pen, true);
      else await pen.keep();
      return;
    }
    if (this.part === 'writing') {
      // The first to have it open.
      this.#writes();
      return;
    }
    // What the other window wrote is read before anything is written here.
    const found = await findOn(this.shelf, id).catch(() => undefined);
    if (id !== this.desk.id) return;
    if (found && 'notebook' in found) this.#takeOver(found);
    this.part = part;
    this.#writes();
  }

  /** Goes on from what the shelf and the journal hold of the notebook on the desk. */
  #takeOver(found: Found): void {
    const notebook = sharing(this.#notebook, found.notebook);
    const stored = found.stored === found.notebook ? notebook : found.stored;
    this.#pen.drop();
    this.#pen = this.#penOn({ ...found, notebook, stored });
    this.own = this.#pen.standing;
    this.desk.follow(notebook);
    this.#replayed = found.replayed;
    if (this.#turn.part === 'writing') this.#writes();
  }

  /** This window writes the notebook on the desk. */
  #writes(): void {
    const replayed = this.#replayed;
    this.#replayed = undefined;
    for (const own of replayed?.apart ?? []) {
      const title = titleApart(own.title);
      this.#adopt({ ...own, title });
      this.tell(apartSays(title));
    }
    if (replayed?.unread) this.tell(unreadSays(this.#pen.notebook.title));
    if (replayed?.newer) this.tell(newerSays(this.#pen.notebook.title));
    this.#pen.goOn();
  }

  /** Takes the turn from the window that has it. */
  editHere(): Promise<void> {
    return this.#turn.take();
  }

  /** Writes now whatever is not kept yet; a shelf that does not answer is not waited for without end. */
  async keep(): Promise<void> {
    let timer: ReturnType<typeof setTimeout> | undefined;
    const enough = new Promise<void>((resolve) => (timer = setTimeout(resolve, patience)));
    await Promise.race([this.#pen.keep(), enough]);
    clearTimeout(timer);
  }

  /** Puts a notebook from the shelf on the desk; gives back why not, where it cannot be. */
  async open(id: string): Promise<string | undefined> {
    if (id === this.desk.id) {
      this.goBack();
      return undefined;
    }
    const left = this.unsaved.of(id);
    if (left) {
      this.desk.begin(left.pen.notebook, id);
      return undefined;
    }
    const found = await findOn(this.shelf, id);
    if (!found) return 'That notebook is no longer there.';
    if ('problem' in found) return found.problem;
    this.#put(found);
    return undefined;
  }

  #put(found: Found, sure = false): void {
    this.#coming = found;
    if (this.found?.id === found.id) this.found = null;
    this.desk.begin(found.notebook, found.id, sure);
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
    await this.keep();
    await this.shelf.delete(id, Date.now());
    // What it is deleted with is what was last saved.
    this.#pen.drop();
    this.#pen.forgetJournal();
    for (const other of await this.shelf.list()) {
      if (other.deleted === undefined && (await this.open(other.id)) === undefined) return undefined;
    }
    this.desk.begin(cardigan(), crypto.randomUUID(), true);
    return undefined;
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
      return;
    }
    if (looking?.at !== 'state') return;
    this.goBack();
    this.#pen.remember();
    desk.exchange(notebook, `bringing back the state of ${timeOf(looking.written)}`);
  }
}
