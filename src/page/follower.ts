import type { Notebook } from '../notebook';
import type { SheetClient } from '../sheet';
import type { Desk, Follower } from './desk.svelte';

/**
 * A sheet that works in a thread of its own, so that the page answers keys whatever is being worked. Its near end is
 * fetched beside the page, which can be read without it.
 */
export function followInWorker(desk: Desk): Follower {
  let client: SheetClient | undefined;
  let shown: Notebook | undefined;
  const started = Promise.all([import('../sheet/client'), import('./told')]).then(([sheet, { toldOn }]) => {
    desk.allResults.told = toldOn(desk);
    client = new sheet.SheetClient(
      () => new Worker(new URL('../sheet/worker.ts', import.meta.url), { type: 'module' }),
      {
        answer: (answer) => desk.take(answer),
        held: (_cells, sentence) => desk.complaints.add(sentence),
        failed: (sentence) => desk.complaints.add(sentence),
      },
    );
    if (shown) client.show(shown);
    return client;
  });
  return {
    show(notebook) {
      shown = notebook;
      client?.show(notebook);
    },
    check: async (formula, place) => (await started).check(formula, place),
    trials: async (...asked) =>
      (await import('../sheet/trials-beside')).trialsBeside(await started)(...asked),
    followWhatIfs: async (told) =>
      (await import('../sheet/what-ifs-beside')).followWhatIfs(await started, told),
    get settled() {
      return client?.settled ?? false;
    },
  };
}
