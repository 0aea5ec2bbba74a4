import type { WhatIf } from '../../notebook';
import { Results } from '../../engine';
import type { Workspace } from '../../workspace';

/** The results of the what-ifs that are on, as they arrive. */
export class WorkedWhatIfs {
  readonly #results = new Map<string, Results>();
  readonly #failures = new Map<string, string>();
  /** Goes up with everything that arrives. */
  version = $state(0);

  constructor(workspace: Workspace) {
    void workspace.calculation.followWhatIfs({
      answer: (id, answer) => {
        let results = this.#results.get(id);
        if (!results) this.#results.set(id, (results = new Results()));
        results.messageFor = workspace.allResults.messageFor;
        results.apply(answer);
        this.#failures.delete(id);
        this.version++;
      },
      gone: (id) => {
        this.#results.delete(id);
        this.version++;
      },
      failed: (id, sentence) => {
        this.#results.delete(id);
        this.#failures.set(id, sentence);
        this.version++;
      },
    });
  }

  /** Why a what-if is not worked; undefined where it is. */
  failureOf(id: string): string | undefined {
    void this.version;
    return this.#failures.get(id);
  }

  /** The results of a what-if; undefined until they arrive. */
  of(id: string): Results | undefined {
    return this.#results.get(id);
  }
}

const known = new WeakMap<Workspace, WorkedWhatIfs>();

/** What-ifs are worked from the first time that someone asks for them. */
export function workedWhatIfs(workspace: Workspace): WorkedWhatIfs {
  let worked = known.get(workspace);
  if (!worked) known.set(workspace, (worked = new WorkedWhatIfs(workspace)));
  return worked;
}

/** A what-if that is on, with the letter that stands for it in tables and pictures. */
export interface LetteredWhatIf {
  readonly whatIf: WhatIf;
  readonly letter: string;
}

export function onIn(whatIfs: readonly WhatIf[] | undefined): LetteredWhatIf[] {
  return (whatIfs ?? [])
    .filter(({ on }) => on)
    .map((whatIf, at) => ({ whatIf, letter: String.fromCharCode(65 + at) }));
}
