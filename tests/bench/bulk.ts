import type { Notebook } from '../../src/notebook/document';
import { changesBetween } from '../../src/notebook/changes';
import { withWhatIf } from '../../src/notebook/what-if';
import { Results } from '../../src/engine/results';
import { WorkedSheet } from '../../src/engine/sheet';
import { trialNumber } from '../../src/engine/trial-results';
import { trialsOf } from '../../src/engine/trials-in-turn';
import { bustOf, garment, lastWidthOf, reswatched } from './garment';
import { plainGarment } from './plain';
import { rawEngines } from './raw';

/** Milliseconds of the same work three ways: our sheet, HyperFormula alone, the arithmetic written out in TypeScript. */
export interface Three {
  readonly ours: number;
  readonly raw: number;
  readonly plain: number;
}

/** Two results that have to be one. */
function same(found: number | undefined, plain: number): void {
  if (found === undefined || Math.abs(found - plain) > 1e-9 * plain)
    throw new Error(`The sheet gives ${found} where plain arithmetic gives ${plain}.`);
}

async function timed(work: () => unknown): Promise<number> {
  const start = performance.now();
  await work();
  return performance.now() - start;
}

/** A range of so many steps of the swatch, in twelve sizes of so many cells that depend on it, for its last width. */
export async function bulkRange(cells: number, steps: number): Promise<Three> {
  const notebook = garment(cells);
  const at = (step: number): number => 13 + step / 400;
  const work = await trialsOf(notebook);
  const last = lastWidthOf(cells);
  let found: Awaited<ReturnType<typeof work>>;
  const ours = await timed(async () => {
    found = await work({
      trials: Array.from({ length: steps }, (_, step) => [
        { cell: 'body', key: 'sts.0.count', size: null, value: at(step) },
      ]),
      wanted: [{ cell: last, key: 'value' }],
      sizes: notebook.sizes.map(({ id }) => id),
    });
  });
  const { engines, rowOf } = rawEngines(notebook);
  const row = rowOf('body', 'sts.0.count');
  const raw = await timed(() => {
    for (let step = 0; step < steps; step++)
      for (const engine of engines) engine.setCellContents({ sheet: 0, col: 0, row }, at(step));
  });
  let width = 0;
  const plain = await timed(() => {
    for (let step = 0; step < steps; step++)
      notebook.sizes.forEach((_, size) => (width = plainGarment(cells, at(step), bustOf(size)).last));
  });
  same(trialNumber(found!, steps - 1, 0, notebook.sizes.length - 1), width);
  return { ours, raw, plain };
}

/** Four what-ifs that follow edits of the swatch, each with another bust. */
export async function bulkWhatIfs(cells: number, turns: number): Promise<Three> {
  const busts = [85, 86, 87, 88];
  let notebook = garment(cells);
  const states = (of: Notebook): Notebook[] =>
    busts.map((value, at) =>
      withWhatIf(of, {
        id: `${at}`,
        name: `${at}`,
        on: true,
        changes: [{ cell: 'bust', key: 'value', size: null, value }],
      }),
    );
  let shown = states(notebook);
  const sheets = busts.map(() => ({ sheet: new WorkedSheet(), results: new Results() }));
  for (const [at, { sheet, results }] of sheets.entries())
    results.apply(await sheet.update(changesBetween(null, shown[at]!)));
  const engines = shown.map(rawEngines);
  const times = { ours: 0, raw: 0, plain: 0 };
  for (let turn = -3; turn < turns; turn++) {
    const gauge = 14 + (turn + 4) / 300;
    notebook = reswatched(notebook, gauge);
    const next = states(notebook);
    const ours = await timed(async () => {
      for (const [at, { sheet, results }] of sheets.entries())
        results.apply(await sheet.update(changesBetween(shown[at]!, next[at]!)));
    });
    shown = next;
    const raw = await timed(() => {
      for (const { engines: sizes, rowOf } of engines)
        for (const engine of sizes)
          engine.setCellContents({ sheet: 0, col: 0, row: rowOf('body', 'sts.0.count') }, gauge);
    });
    let width = 0;
    const plain = await timed(() => {
      for (const bust of busts)
        for (let size = 0; size < notebook.sizes.length; size++)
          width = plainGarment(cells, gauge, bust).last;
    });
    same(sheets.at(-1)!.results.number('s11', lastWidthOf(cells), 'value'), width);
    if (turn < 0) continue;
    times.ours += ours;
    times.raw += raw;
    times.plain += plain;
  }
  return times;
}
