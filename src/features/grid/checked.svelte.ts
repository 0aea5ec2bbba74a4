import { checkHolds, inputsOf, outputsOf, type Cell, type Size } from '../../notebook';
import type { CellRef } from '../../engine';
import type { Workspace } from '../../workspace';

/** What a cell comes to for the line that sums up the notebook. */
export interface Checked {
  readonly cell: Cell;
  /** Of a check: the sizes where it fails, and those where it cannot be told. */
  readonly failing: readonly Size[];
  readonly untold: readonly Size[];
  /** The first place of the cell that cannot be worked for a reason of its own. */
  readonly problemAt?: CellRef;
  /** Nothing is wrong in the cell, but it waits for another. */
  readonly waits: boolean;
}

/** A cell looked at whenever its own results change, and not when others' do. */
export class CheckedCell {
  readonly #workspace: Workspace;
  readonly #cell: Cell;
  readonly #sizes: () => readonly Size[];

  constructor(workspace: Workspace, cell: Cell, sizes: () => readonly Size[]) {
    this.#workspace = workspace;
    this.#cell = cell;
    this.#sizes = sizes;
  }

  readonly now: Checked = $derived.by(() => ({ cell: this.#cell, ...this.#held(), ...this.#troubled() }));

  #held(): Pick<Checked, 'failing' | 'untold'> {
    const cell = this.#cell;
    if (cell.kind !== 'check') return { failing: [], untold: [] };
    const sizes = this.#sizes();
    const results = this.#workspace.results(cell.id);
    const held = sizes.map((_size, at) =>
      checkHolds(cell, sizes, at, {
        valueOf: (size) => results.number(size, cell.id, 'holds') ?? results.text(size, cell.id, 'holds'),
        truthOf: (size) => results.truth(size, cell.id, 'holds'),
      }),
    );
    return {
      failing: sizes.filter((_size, at) => held[at] === false),
      untold: sizes.filter((_size, at) => held[at] === undefined),
    };
  }

  #troubled(): Pick<Checked, 'problemAt' | 'waits'> {
    const cell = this.#cell;
    const results = this.#workspace.results(cell.id);
    let waits = false;
    for (const { key } of [...inputsOf(cell), ...outputsOf(cell)]) {
      for (const size of this.#sizes()) {
        const error = results.error(size.id, cell.id, key);
        if (!error) continue;
        if (!error.from) return { problemAt: { cell: cell.id, key }, waits: false };
        waits ||= error.from.cell !== cell.id;
      }
    }
    return { waits };
  }
}
