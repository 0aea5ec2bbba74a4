import { SheetClient } from '../sheet';
import type { Desk, Follower } from './desk.svelte';

/** A sheet that works in a thread of its own, so that the page answers keys whatever is being worked. */
export function followInWorker(desk: Desk): Follower {
  const client = new SheetClient(
    () => new Worker(new URL('../sheet/worker.ts', import.meta.url), { type: 'module' }),
    {
      answer: (answer) => desk.take(answer),
      held: (_cells, sentence) => (desk.complaint = sentence),
      failed: (sentence) => (desk.complaint = sentence),
    },
  );
  // Fetched when it is wanted: the page opens without it.
  return {
    show: (notebook) => client.show(notebook),
    check: (formula, place) => client.check(formula, place),
    trials: async (...asked) => (await import('../sheet/trials-beside')).trialsBeside(client)(...asked),
    followWhatIfs: async (told) => (await import('../sheet/what-ifs-beside')).followWhatIfs(client, told),
    get settled() {
      return client.settled;
    },
  };
}
