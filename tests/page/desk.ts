import { changesBetween, type Notebook } from '../../src/notebook';
import { Desk } from '../../src/page/desk.svelte';
import { WorkedSheet } from '../../src/sheet/sheet';
import { Trials } from '../../src/sheet/trials';
import { inTurn } from '../../src/sheet/trials-in-turn';

/** A desk whose sheet works in the same thread, for tests of the components. */
export function deskWith(notebook: Notebook): { desk: Desk; settled(): Promise<void> } {
  const sheet = new WorkedSheet();
  const trials = inTurn(new Trials(sheet));
  let shown: Notebook | null = null;
  let newest: Notebook | null = null;
  let turn: Promise<void> = Promise.resolve();
  const desk = new Desk(notebook, (owner) => ({
    show(next) {
      newest = next;
      turn = turn.then(async () => {
        const answer = await sheet.update(changesBetween(shown, next));
        shown = next;
        owner.take(answer);
      });
    },
    trials: (...asked) => turn.then(() => trials(...asked)),
    check: (formula, place) => sheet.check(formula, place),
    get settled() {
      return shown === newest;
    },
  }));
  return { desk, settled: () => turn };
}
