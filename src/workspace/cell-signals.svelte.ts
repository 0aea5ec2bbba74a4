/** How a cell stands to the one in focus: it is that cell, feeds it, or is fed by it, directly. */
export type DependencyRole = 'here' | 'feeds' | 'fed';

/** What components follow of a cell. */
class CellSignal {
  /** Goes up whenever its results are told anew. */
  results = $state(0);
  /** Goes up whenever what is edited in it changes. */
  edited = $state(0);
  role: DependencyRole | undefined = $state();
}

/** A state to a cell, so that what shows a cell looks again at what happens to that cell and to no other. */
export class CellSignals {
  readonly #cells = new Map<string, CellSignal>();
  #roles: ReadonlyMap<string, DependencyRole> = new Map();

  at(cell: string): CellSignal {
    let signal = this.#cells.get(cell);
    if (!signal) this.#cells.set(cell, (signal = new CellSignal()));
    return signal;
  }

  /** Puts how cells stand to the one in focus; those that are not named stand in no way to it. */
  setRoles(now: ReadonlyMap<string, DependencyRole>): void {
    for (const cell of this.#roles.keys()) if (!now.has(cell)) this.at(cell).role = undefined;
    for (const [cell, role] of now) this.at(cell).role = role;
    this.#roles = now;
  }
}
