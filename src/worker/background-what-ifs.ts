import { changesBetween, nothingChanged, withWhatIf, type Notebook, type WhatIf } from '../notebook';
import type { Answer } from '../engine';
import type { BackgroundQueue, BackgroundState, EndedBecause } from './background-queue';

/** Who is told of the what-ifs of a notebook. */
export interface WhatIfEvents {
  /** What changed in a what-if; the first answer of each begins with its first slot. */
  answer(whatIf: string, answer: Answer): void;
  /** A what-if is not worked any more. */
  gone(whatIf: string): void;
  /** A what-if takes too long, or broke down twice as it is; it is tried again when it is changed. */
  failed(whatIf: string, sentence: string): void;
}

/**
 * Has the thread of a client work the what-ifs that are on, each in a sheet of its own, after the notebook itself and
 * after every edit of it.
 *
 * @returns ends it
 */
export function followWhatIfs(client: BackgroundQueue, events: WhatIfEvents): () => void {
  let thread: object | undefined;
  const shown = new Map<string, Notebook>();
  /** What-ifs that are not tried again as they are. */
  const hung = new Map<string, WhatIf>();
  /** What-ifs that broke down once as they are. */
  const broken = new Map<string, WhatIf>();
  const made = new Map<WhatIf, { from: Notebook; to: Notebook }>();

  const asItWouldBe = (notebook: Notebook, whatIf: WhatIf): Notebook => {
    const known = made.get(whatIf);
    if (known && known.from.sections === notebook.sections && known.from.sizes === notebook.sizes)
      return known.to;
    const to = withWhatIf(notebook, whatIf);
    made.set(whatIf, { from: notebook, to });
    return to;
  };

  const source = ({ sheet, notebook, isQuarantined }: BackgroundState) => {
    if (thread !== sheet) shown.clear();
    thread = sheet;
    const on = notebook.whatIfs?.filter((whatIf) => whatIf.on) ?? [];
    for (const whatIf of made.keys()) if (!on.includes(whatIf)) made.delete(whatIf);
    for (const id of shown.keys()) {
      if (on.some((whatIf) => whatIf.id === id)) continue;
      shown.delete(id);
      void sheet.dropWhatIf(id);
      events.gone(id);
    }
    for (const whatIf of on) {
      if (hung.get(whatIf.id) === whatIf) continue;
      const to = asItWouldBe(notebook, whatIf);
      const changes = changesBetween(shown.get(whatIf.id) ?? null, to);
      const first = !shown.has(whatIf.id);
      shown.set(whatIf.id, to);
      if (!first && nothingChanged(changes)) continue;
      const hold = changes.put.filter(isQuarantined).map((cell) => cell.id);
      const answered = sheet.updateWhatIf(whatIf.id, changes, hold) as Promise<Answer>;
      const broke = (): void => {
        shown.delete(whatIf.id);
        if (broken.get(whatIf.id) === whatIf) {
          hung.set(whatIf.id, whatIf);
          events.failed(whatIf.id, whatIfBrokeDown(whatIf.name));
        }
        broken.set(whatIf.id, whatIf);
      };
      return {
        done: answered.then(
          (answer) => {
            broken.delete(whatIf.id);
            events.answer(whatIf.id, answer);
          },
          () => {
            // Half of what changed may be in it: it is built again, and not brought on from there.
            void sheet.dropWhatIf(whatIf.id);
            broke();
          },
        ),
        ended(why: EndedBecause) {
          if (why === 'broke down') broke();
          if (why !== 'took too long') return;
          hung.set(whatIf.id, whatIf);
          events.failed(whatIf.id, whatIfTookTooLong(whatIf.name));
        },
      };
    }
    return undefined;
  };

  // Before trials, which may be long.
  client.jobs.unshift(source);
  client.wake();
  return () => {
    client.jobs.splice(client.jobs.indexOf(source), 1);
    const sheet = thread as BackgroundState['sheet'] | undefined;
    if (client.working) for (const id of shown.keys()) void sheet?.dropWhatIf(id);
  };
}

function whatIfTookTooLong(name: string): string {
  return `"${name}" takes too long to calculate. Change it to try again.`;
}

function whatIfBrokeDown(name: string): string {
  return `Something broke while calculating "${name}". Your notebook is safe. Change it to try again.`;
}
