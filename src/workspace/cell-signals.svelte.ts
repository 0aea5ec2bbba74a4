/** How a cell relates to the one in focus: it is that cell, feeds it, or is fed by it, directly. */
export type DependencyRole = 'here' | 'feeds' | 'fed';

/** What components follow of a cell. */
class CellSignal {
  /** Goes up whenever its results are to be read again. */
  results = $state(0);
  /** Goes up whenever what is edited in it changes. */
  edited = $state(0);
  role: DependencyRole | undefined = $state();
}

/** A signal for each cell, so that what shows a cell follows that cell and no other. */
export class CellSignals {
  readonly #cells = new Map<string, CellSignal>();
  #roles: ReadonlyMap<string, DependencyRole> = new Map();

  at(cell: string): CellSignal {
    let signal = this.#cells.get(cell);
    if (!signal) this.#cells.set(cell, (signal = new CellSignal()));
    return signal;
  }

  /** Sets how cells relate to the one in focus; a cell that is not named does not relate to it. */
  setRoles(now: ReadonlyMap<string, DependencyRole>): void {
    for (const cell of this.#roles.keys()) if (!now.has(cell)) this.at(cell).role = undefined;
    for (const [cell, role] of now) this.at(cell).role = role;
    this.#roles = now;
  }
}
