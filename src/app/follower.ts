import type { Notebook } from '../notebook';
import type { SheetClient } from '../worker';
import type { Workspace, Follower } from '../workspace/workspace.svelte';

/**
 * A sheet that works in a thread of its own, so that the page answers keys whatever is being worked. Its near end is
 * fetched beside the page, which can be read without it.
 */
export function followInWorker(workspace: Workspace): Follower {
  let client: SheetClient | undefined;
  let shown: Notebook | undefined;
  let starting: Promise<SheetClient> | undefined;
  const start = async (): Promise<SheetClient> => {
    const [sheet, { messagesOn: toldOn }] = await Promise.all([
      import('../worker/client'),
      import('../workspace/messages'),
    ]);
    workspace.allResults.messageFor = toldOn(workspace);
    client = new sheet.SheetClient(
      () => new Worker(new URL('../worker/worker.ts', import.meta.url), { type: 'module' }),
      {
        answer: (answer) => workspace.applyAnswer(answer),
        quarantined: (_cells, sentence) => workspace.complaints.add(sentence),
        comingBack: (sentence) => (workspace.announcement = sentence),
        failed: (sentence) => workspace.complaints.add(sentence),
        threw: reportError,
      },
    );
    if (shown) client.show(shown);
    return client;
  };
  /** Fetched once; where that failed, again when it is wanted again. */
  const started = (): Promise<SheetClient> =>
    (starting ??= start().catch((error: unknown) => {
      starting = undefined;
      throw error;
    }));
  return {
    show(notebook) {
      shown = notebook;
      if (client) client.show(notebook);
      else started().catch(() => (workspace.complaint = didNotLoad));
    },
    async check(formula, place) {
      const sheet = await started().catch(() => undefined);
      if (!sheet) throw new Error(didNotLoad);
      return sheet.check(formula, place);
    },
    trials: async (...asked) =>
      (await import('../worker/background-trials')).backgroundTrials(await started())(...asked),
    followWhatIfs: async (told) =>
      (await import('../worker/background-what-ifs')).followWhatIfs(await started(), told),
    get settled() {
      return client?.settled ?? false;
    },
  };
}

const didNotLoad =
  'The part of the page that calculates did not load. Is there a network? It is tried again at your next change.';
