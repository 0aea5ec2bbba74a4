import type { Notebook } from '../notebook';
import type { SheetClient } from '../worker';
import type { Workspace, Follower } from '../workspace';
import { loadSheetClient, loadBackgroundTrials, loadBackgroundWhatIfs } from '../worker/lazy';
import { loadMessages } from '../workspace/lazy';

/**
 * A sheet that works in a thread of its own, so that the page answers keys whatever is being worked. Its near end is
 * fetched beside the page, which can be read without it.
 */
export function followInWorker(workspace: Workspace): Follower {
  let client: SheetClient | undefined;
  let shown: Notebook | undefined;
  let starting: Promise<SheetClient> | undefined;
  const start = async (): Promise<SheetClient> => {
    const [sheet, { wordAnswers }] = await Promise.all([loadSheetClient(), loadMessages()]);
    wordAnswers(workspace);
    client = new sheet.SheetClient(sheet.startThread, {
      answer: (answer) => workspace.calculation.applyAnswer(answer),
      quarantined: (_cells, sentence) => workspace.complaints.add(sentence),
      comingBack: (sentence) => (workspace.announcement = sentence),
      failed: (sentence) => workspace.complaints.add(sentence),
      threw: reportError,
    });
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
    async check(formula, ref) {
      const sheet = await started().catch(() => undefined);
      if (!sheet) throw new Error(didNotLoad);
      return sheet.check(formula, ref);
    },
    trials: async (...given) => (await loadBackgroundTrials()).backgroundTrials(await started())(...given),
    followWhatIfs: async (events) => (await loadBackgroundWhatIfs()).followWhatIfs(await started(), events),
    get settled() {
      return client?.settled ?? false;
    },
  };
}

const didNotLoad =
  'The part of the page that calculates did not load. Is there a network? It is tried again at your next change.';
