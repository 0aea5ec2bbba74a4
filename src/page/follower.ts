import { SheetClient } from '../sheet';
import type { Desk, Follower } from './desk.svelte';

/** A sheet that works in a thread of its own, so that the page answers keys whatever is being worked. */
export function followInWorker(desk: Desk): Follower {
  return new SheetClient(
    () => new Worker(new URL('../sheet/worker.ts', import.meta.url), { type: 'module' }),
    {
      answer: (answer) => desk.take(answer),
      held: (_cells, sentence) => (desk.complaint = sentence),
      failed: (sentence) => (desk.complaint = sentence),
    },
  );
}
