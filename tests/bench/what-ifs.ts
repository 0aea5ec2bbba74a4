import type { Notebook, WhatIf } from '../../src/notebook/document';
import { allCells } from '../../src/notebook/document';
import { SheetClient } from '../../src/worker/client';
import { Results } from '../../src/engine/results';
import { backgroundTrials } from '../../src/worker/background-trials';
import { followWhatIfs } from '../../src/worker/background-what-ifs';
import { cardigan } from '../../src/starters/cardigan';
import { threadInNode } from '../worker/thread-in-node';
import { garment, lastWidthOf, reswatched } from './garment';

const warmUp = 10;

/** A client in a thread, and when its notebook and its what-ifs were answered last. */
function following(file: string) {
  const results = new Results();
  const whatIfs = new Map<string, Results>();
  const received: { what: string; at: number }[] = [];
  let wake = (): void => {};
  const hear = (what: string): void => {
    received.push({ what, at: performance.now() });
    wake();
  };
  const client = new SheetClient(() => threadInNode(file), {
    answer(answer) {
      results.apply(answer);
      hear('notebook');
    },
    quarantined: (_, sentence) => {
      throw new Error(sentence);
    },
  });
  followWhatIfs(client, {
    answer(id, answer) {
      const of = whatIfs.get(id) ?? new Results();
      whatIfs.set(id, of);
      of.apply(answer);
      hear(id);
    },
    gone: (id) => void whatIfs.delete(id),
    failed: (_id, sentence) => {
      throw new Error(sentence);
    },
  });
  /** When so many of a kind have been heard since a place in what was heard. */
  async function until(from: number, what: string, times = 1): Promise<number> {
    for (;;) {
      const found = received.slice(from).filter((one) => one.what === what)[times - 1];
      if (found) return found.at;
      await new Promise<void>((resolve) => (wake = resolve));
    }
  }
  return { client, results, whatIfs, received, until };
}

function whatIf(id: string, bust: number): WhatIf {
  return {
    id,
    name: id,
    on: true,
    changes: [{ cell: 'bust', key: 'value', size: null, value: bust }],
  };
}

export interface WhatIfTimes {
  /** Milliseconds from switching a what-if on to all its results. */
  readonly opening: readonly number[];
  /** Milliseconds from the answer of the notebook to that of its one what-if, and of the edit of the notebook before it. */
  readonly later: { readonly ours: readonly number[]; readonly theirs: readonly number[] };
  /** Milliseconds from an edit to the results of the notebook itself, with four what-ifs on. */
  readonly four: readonly number[];
  /** The same where the edit comes while the what-ifs are still at work on the one before. */
  readonly typing: readonly number[];
}

/** What-ifs of a notebook of so many cells in twelve sizes, all of which depend on its swatch. */
export async function whatIfTimes(file: string, cells: number, turns: number): Promise<WhatIfTimes> {
  const { client, results, whatIfs, received, until } = following(file);
  const last = lastWidthOf(cells);
  let notebook: Notebook = garment(cells);
  let gauge = 13;
  client.show(notebook);
  await until(0, 'notebook', 2);
  const edited = (): Notebook => {
    gauge += 0.0137;
    return { ...reswatched(notebook, gauge), ...(notebook.whatIfs ? { whatIfs: notebook.whatIfs } : {}) };
  };

  const opening: number[] = [];
  for (let turn = 0; turn < 5; turn++) {
    const { whatIfs: _off, ...off } = notebook;
    client.show(off);
    await until(received.length, 'notebook');
    notebook = { ...off, whatIfs: [whatIf(`w${turn}`, 97)] };
    const from = received.length;
    const start = performance.now();
    client.show(notebook);
    opening.push((await until(from, `w${turn}`)) - start);
  }

  const later = { ours: [] as number[], theirs: [] as number[] };
  for (let turn = 0; turn < turns + warmUp; turn++) {
    notebook = edited();
    const from = received.length;
    const start = performance.now();
    client.show(notebook);
    const own = await until(from, 'notebook');
    const answered = await until(from, 'w4');
    if (turn < warmUp) continue;
    later.ours.push(answered - own);
    later.theirs.push(own - start);
  }
  if (whatIfs.get('w4')!.number('s11', last, 'value') === undefined) throw new Error('Nothing was worked.');

  async function quiet(): Promise<void> {
    for (let before = -1; before !== received.length;) {
      before = received.length;
      await new Promise((resolve) => setTimeout(resolve, 80));
    }
  }
  const ids = ['a', 'b', 'c', 'd'];
  notebook = { ...notebook, whatIfs: ids.map((id, at) => whatIf(id, 85 + at)) };
  let from = received.length;
  client.show(notebook);
  for (const id of ids) await until(from, id);
  await quiet();
  const four: number[] = [];
  const typing: number[] = [];
  for (let turn = 0; turn < turns + warmUp; turn++) {
    for (const times of [four, typing]) {
      notebook = edited();
      from = received.length;
      const start = performance.now();
      client.show(notebook);
      const own = await until(from, 'notebook');
      if (turn >= warmUp) times.push(own - start);
      // The next comes in the midst of the what-ifs, or when all is quiet.
      if (times === four) await new Promise((resolve) => setTimeout(resolve, 5));
      else await quiet();
    }
  }
  const before = results.number('s11', last, 'value');
  if (before === undefined || before === whatIfs.get('a')!.number('s11', last, 'value')) {
    throw new Error('A what-if gives what the notebook gives.');
  }
  client.stop();
  return { opening, later, four, typing };
}

/** Milliseconds for so many steps of the ease of the first notebook, in all its sizes, with the counts of its fits. */
export async function rangeTimes(file: string, steps: number, times: number): Promise<number[]> {
  const { client, until } = following(file);
  const notebook = cardigan();
  client.show(notebook);
  await until(0, 'notebook', 2);
  const ease = allCells(notebook).find(({ kind }) => kind === 'ease')!;
  const wanted = allCells(notebook).flatMap((cell) =>
    cell.kind === 'fit' ? ['count', 'off'].map((key) => ({ cell: cell.id, key })) : [],
  );
  const taken: number[] = [];
  for (let turn = 0; turn < times; turn++) {
    const trials = Array.from({ length: steps }, (_, at) => [
      { cell: ease.id, key: 'ease', size: null, value: 10 + at * 0.1 + turn * 1e-3 },
    ]);
    const start = performance.now();
    const { done, numbers } = await backgroundTrials(client)({
      trials,
      wanted,
      sizes: notebook.sizes.map(({ id }) => id),
    });
    taken.push(performance.now() - start);
    if (done !== steps || numbers.some(Number.isNaN)) throw new Error('Not every step was worked.');
  }
  client.stop();
  return taken;
}
