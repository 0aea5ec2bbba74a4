import type { Pen, Standing, Trouble, Turn } from '../../storage';

/** A notebook that is not on the desk and not saved yet. */
export interface NotSaved {
  readonly id: string;
  readonly title: string;
  /** Why; null while it is being saved. */
  readonly trouble: Trouble | null;
  readonly pen: Pen;
  readonly turn: Turn | null;
}

/** Notebooks that were left before they were saved. They stay here, and are tried again, until they are. */
export class Unsaved {
  all: readonly NotSaved[] = $state.raw([]);

  /** Those of which something went wrong. */
  readonly inTrouble = $derived(this.all.filter(({ trouble }) => trouble !== null));

  /** Takes a notebook over from the desk, with the turn to write it. */
  hold(pen: Pen, turn: Turn | null): void {
    if (pen.dry || pen.down) {
      pen.drop();
      turn?.close();
      return;
    }
    const { id, notebook, standing } = pen;
    const trouble = standing.is === 'not kept' ? standing.trouble : null;
    this.all = [...this.all, { id, title: notebook.title, trouble, pen, turn }];
    void pen.keep();
  }

  /** Hands a notebook back to the desk; undefined where it is not here. */
  take(id: string): NotSaved | undefined {
    const found = this.of(id);
    this.all = this.all.filter((one) => one !== found);
    return found;
  }

  of(id: string): NotSaved | undefined {
    return this.all.find((one) => one.id === id);
  }

  /** A pen that is held here says how its notebook stands. */
  stands(pen: Pen, standing: Standing): void {
    const trouble = standing.is === 'not kept' ? standing.trouble : null;
    if (trouble === null && pen.dry) this.drop(pen);
    else this.all = this.all.map((one) => (one.pen === pen ? { ...one, trouble } : one));
  }

  /** Lets a notebook go that is saved, or that another now stands for. */
  drop(pen: Pen): void {
    const found = this.all.find((one) => one.pen === pen);
    if (!found) return;
    this.all = this.all.filter((one) => one !== found);
    pen.drop();
    found.turn?.close();
  }
}
