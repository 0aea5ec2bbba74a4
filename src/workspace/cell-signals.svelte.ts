/** How a cell stands to the one in focus: it is that cell, feeds it, or is fed by it, directly. */
export type Standing = 'here' | 'feeds' | 'fed';

/** What components follow of a cell. */
class FollowedCell {
  /** Goes up whenever its results are told anew. */
  results = $state(0);
  /** Goes up whenever what is edited in it changes. */
  edited = $state(0);
  standing: Standing | undefined = $state();
}

/** A state to a cell, so that what shows a cell looks again at what happens to that cell and to no other. */
export class Followed {
  readonly #cells = new Map<string, FollowedCell>();
  #standing: ReadonlyMap<string, Standing> = new Map();

  at(cell: string): FollowedCell {
    let followed = this.#cells.get(cell);
    if (!followed) this.#cells.set(cell, (followed = new FollowedCell()));
    return followed;
  }

  /** Puts how cells stand to the one in focus; those that are not named stand in no way to it. */
  stand(now: ReadonlyMap<string, Standing>): void {
    for (const cell of this.#standing.keys()) if (!now.has(cell)) this.at(cell).standing = undefined;
    for (const [cell, standing] of now) this.at(cell).standing = standing;
    this.#standing = now;
  }
}
