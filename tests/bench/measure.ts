import { plainMessage } from '../../src/craft';
import { unpacked } from '../../src/engine/packed-message';
import { changesBetween } from '../../src/notebook/changes';
import { allCells, type Notebook } from '../../src/notebook/document';
import { inputsOf, outputsOf } from '../../src/notebook/kinds';
import { SheetClient } from '../../src/worker/client';
import { giveOrTake } from '../../src/analysis/uncertainty/give-or-take';
import { worksByTrials } from '../../src/analysis/uncertainty/works-by-trials';
import { Results } from '../../src/engine/results';
import { WorkedSheet } from '../../src/engine/sheet';
import { Trials } from '../../src/engine/trials';
import { inTurn } from '../../src/engine/trials-in-turn';
import { threadInNode } from '../worker/thread-in-node';
import { bustOf, garment, lastWidthOf, reswatched } from './garment';
import { plainGarment } from './plain';
export { rangeTimes, whatIfTimes } from './what-ifs';
import { rawEngines } from './raw';

export { byDependents, byUnrelated } from './growth';
export { bulkRange, bulkWhatIfs } from './bulk';

/** Times of the same work done two ways, one after the other in turn, so that what else the machine does meets both. */
export interface Pairs {
  readonly ours: number[];
  readonly theirs: number[];
}

/** Another gauge at every turn: no result can be one that is remembered. */
const gaugeAt = (turn: number): number => 13 + (turn % 40) * 0.1 + turn * 1e-6;
const warmUp = 15;

/** An edit of the swatch in a notebook of so many cells: our sheet, and HyperFormula alone. */
export async function againstRaw(cells: number, turns: number): Promise<Pairs> {
  const following = await signalsOf(garment(cells));
  const { engines, rowOf } = rawEngines(garment(cells));
  const row = rowOf('body', 'sts.0.count');
  let stated = 0;
  return pairs(
    turns,
    (turn) => following.reswatch(gaugeAt(turn)),
    (turn) => {
      for (const engine of engines)
        stated += engine.setCellContents({ sheet: 0, col: 0, row }, gaugeAt(turn)).length;
      if (stated === 0) throw new Error('Nothing was worked.');
    },
  );
}

/** The same edit with cells beside it that have nothing to do with it, and without. */
export async function withUnrelated(cells: number, unrelated: number, turns: number): Promise<Pairs> {
  const [beside, alone] = [await signalsOf(garment(cells, unrelated)), await signalsOf(garment(cells))];
  return pairs(
    turns,
    (turn) => beside.reswatch(gaugeAt(turn)),
    (turn) => alone.reswatch(gaugeAt(turn)),
  );
}

/** The same edit, and the arithmetic of it written out in TypeScript. */
export async function againstPlain(cells: number, turns: number): Promise<Pairs> {
  const following = await signalsOf(garment(cells));
  const { sizes } = following.notebook;
  let sum = 0;
  const result = await pairs(
    turns,
    (turn) => following.reswatch(gaugeAt(turn)),
    (turn) => {
      sizes.forEach((_, size) => (sum += plainGarment(cells, gaugeAt(turn), bustOf(size)).sum));
    },
  );
  if (!(sum > 0)) throw new Error('Nothing was worked.');
  sizes.forEach(({ id }, size) => {
    const [ours, plain] = [
      following.results.number(id, lastWidthOf(cells), 'value'),
      plainGarment(cells, gaugeAt(turns + warmUp - 1), bustOf(size)).last,
    ];
    if (ours === undefined || Math.abs(ours - plain) > 1e-9 * plain) {
      throw new Error(`The sheet gives ${ours} where plain arithmetic gives ${plain}.`);
    }
  });
  return result;
}

/**
 * The give or take of every number of a notebook in every size, after an edit of its swatch; and in plain TypeScript
 * the arithmetic that it takes: the garment as it is, and with each of its three sources a little to either side.
 */
export async function uncertaintyAgainstPlain(cells: number, turns: number): Promise<Pairs> {
  const sheet = new WorkedSheet();
  const trials = inTurn(new Trials(sheet));
  let notebook = garment(cells);
  await sheet.update(changesBetween(null, notebook));
  const sizes = notebook.sizes.map(({ id }) => id);
  const wanted = allCells(notebook).flatMap((cell) =>
    [...inputsOf(cell), ...outputsOf(cell)].map(({ key }) => ({ cell: cell.id, key, isLength: false })),
  );
  const works = worksByTrials(trials, sizes);
  let sum = 0;
  const result = await pairs(
    turns,
    async (turn) => {
      const before = notebook;
      notebook = reswatched(notebook, gaugeAt(turn));
      await sheet.update(changesBetween(before, notebook));
      const found = await giveOrTake({ notebook, sizes, wanted, works });
      sum += found.at(-1)![0]!.u;
    },
    (turn) => {
      for (const [stitches, bust] of [
        [0, 0],
        [-1, 0],
        [1, 0],
        [-2, 0],
        [2, 0],
        [0, -1],
        [0, 1],
      ] as const) {
        const gauge = gaugeAt(turn) * (1 + stitches * 1e-4);
        sizes.forEach((_, size) => (sum += plainGarment(cells, gauge, bustOf(size) * (1 + bust * 1e-4)).sum));
      }
    },
  );
  if (!(sum > 0)) throw new Error('Nothing was worked.');
  return result;
}

/** Milliseconds from showing an edited notebook to its results, through a thread. */
export async function throughThread(file: string, cells: number, turns: number): Promise<number[]> {
  let answered = (): void => {};
  const results = new Results();
  const client = new SheetClient(() => threadInNode(file), {
    answer: (answer) => {
      results.apply(answer);
      answered();
    },
    quarantined: (_, sentence) => {
      throw new Error(sentence);
    },
  });
  let notebook = garment(cells);
  const whole = (): boolean => results.sizes.length === notebook.sizes.length;
  const answer = (): Promise<void> => new Promise((resolve) => (answered = resolve));
  client.show(notebook);
  while (!whole()) await answer();
  const times: number[] = [];
  for (let turn = 0; turn < turns + warmUp; turn++) {
    notebook = reswatched(notebook, gaugeAt(turn));
    const start = performance.now();
    client.show(notebook);
    await answer();
    if (turn >= warmUp) times.push(performance.now() - start);
  }
  client.stop();
  return times;
}

/** Milliseconds from starting a thread for a notebook to the results of its first size, and of all. */
export async function opening(
  file: string,
  cells: number,
  times: number,
): Promise<{ first: number[]; all: number[] }> {
  const taken = { first: [] as number[], all: [] as number[] };
  for (let i = 0; i < times; i++) {
    const notebook = garment(cells);
    const results = new Results();
    await new Promise<void>((resolve) => {
      const start = performance.now();
      const client = new SheetClient(() => threadInNode(file), {
        answer: (answer) => {
          results.apply(answer);
          const list = results.sizes.length === notebook.sizes.length ? taken.all : taken.first;
          list.push(performance.now() - start);
          if (list === taken.first) return;
          client.stop();
          resolve();
        },
        quarantined: (_, sentence) => {
          throw new Error(sentence);
        },
      });
      client.show(notebook);
    });
  }
  return taken;
}

/** A sheet in this thread that follows a notebook, results and all. */
async function signalsOf(first: Notebook) {
  const sheet = new WorkedSheet();
  const results = new Results();
  const opened = await sheet.update(changesBetween(null, first));
  if (opened.errors.length > 0) throw new Error(plainMessage(unpacked(opened.errors[0]![2].message)));
  results.apply(opened);
  const following = {
    notebook: first,
    results,
    async reswatch(stitches: number): Promise<void> {
      const next = reswatched(following.notebook, stitches);
      results.apply(await sheet.update(changesBetween(following.notebook, next)));
      following.notebook = next;
    },
  };
  return following;
}

async function pairs(
  turns: number,
  ours: (turn: number) => Promise<void>,
  theirs: (turn: number) => void | Promise<void>,
): Promise<Pairs> {
  const times: Pairs = { ours: [], theirs: [] };
  for (let turn = 0; turn < turns + warmUp; turn++) {
    const start = performance.now();
    await ours(turn);
    const between = performance.now();
    await theirs(turn);
    const end = performance.now();
    if (turn < warmUp) continue;
    times.ours.push(between - start);
    times.theirs.push(end - between);
  }
  return times;
}
