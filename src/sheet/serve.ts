import { expose, transfer, type Endpoint } from 'comlink';
import type { Changes } from '../notebook/changes';
import type { Answer, Checked, Place } from './answers';
import { WorkedSheet } from './sheet';

/** The sheet as it is called from another thread. */
export interface ServedSheet {
  update(changes: Changes, hold: readonly string[]): Answer;
  check(formula: string, place: Place): Checked;
}

/** Often enough for who waits to see that there is still work going on, seldom enough not to be work itself. */
const signEvery = 200;

/**
 * Serves a sheet over a message channel. Says 'ready' once, and 'working' in the midst of long work; every other
 * message is a reply.
 */
export function serve(endpoint: Endpoint): void {
  let lastSign = performance.now();
  const sheet = new WorkedSheet(() => {
    const now = performance.now();
    if (now - lastSign < signEvery) return;
    lastSign = now;
    endpoint.postMessage('working');
  });
  expose(
    {
      async update(changes: Changes, hold: readonly string[]) {
        lastSign = performance.now();
        const answer = await sheet.update(changes, hold);
        return transfer(answer, [answer.numbers.buffer as ArrayBuffer]);
      },
      check: (formula: string, place: Place) => sheet.check(formula, place),
    },
    endpoint,
  );
  endpoint.postMessage('ready');
}
