import { changesBetween, type Changes, type Notebook } from '../../src/notebook';
import type { Remote } from 'comlink';
import { wordAnswers } from '../../src/workspace/messages';
import { Workspace } from '../../src/workspace/workspace.svelte';
import { WorkedSheet } from '../../src/engine/sheet';
import { Trials } from '../../src/engine/trials';
import type { BackgroundQueue } from '../../src/worker/background-queue';
import type { ServedSheet } from '../../src/worker/serve';
import { followWhatIfs } from '../../src/worker/background-what-ifs';
import { inTurn } from '../../src/engine/trials-in-turn';

/** A workspace whose sheet works in the same thread, for tests of the components. */
export function workspaceWith(notebook: Notebook): { workspace: Workspace; settled(): Promise<void> } {
  const sheet = new WorkedSheet();
  const trials = inTurn(new Trials(sheet));
  let shown: Notebook | null = null;
  let newest: Notebook | null = null;
  let turn: Promise<void> = Promise.resolve();
  const whatIfs = new Map<string, WorkedSheet>();
  const served = {
    updateWhatIf(id: string, changes: Changes, hold: readonly string[]) {
      const whatIf = whatIfs.get(id) ?? new WorkedSheet();
      whatIfs.set(id, whatIf);
      return whatIf.update(changes, hold);
    },
    dropWhatIf: (id: string) => void whatIfs.delete(id),
  } as unknown as Remote<ServedSheet>;
  const lane: BackgroundQueue = {
    jobs: [],
    working: true,
    wake() {
      turn = turn.then(async () => {
        const next = () =>
          lane.jobs
            .map((source) => source({ sheet: served, notebook: newest!, isQuarantined: () => false }))
            .find((work) => work !== undefined);
        for (let work = next(); work; work = next()) await work.done;
      });
    },
  };
  const workspace = new Workspace(notebook, (owner) => ({
    show(next) {
      newest = next;
      turn = turn.then(async () => {
        const answer = await sheet.update(changesBetween(shown, next));
        shown = next;
        owner.calculation.applyAnswer(answer);
      });
      lane.wake();
    },
    trials: (...given) => turn.then(() => trials(...given)),
    followWhatIfs: (events) => Promise.resolve(followWhatIfs(lane, events)),
    check: (formula, ref) => sheet.check(formula, ref),
    get settled() {
      return shown === newest;
    },
  }));
  const settled = async (): Promise<void> => {
    for (let seen; seen !== turn;) await (seen = turn);
  };
  wordAnswers(workspace);
  return { workspace, settled };
}
