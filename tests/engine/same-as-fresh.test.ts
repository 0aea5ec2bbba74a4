import fc from 'fast-check';
import { HyperFormula } from 'hyperformula';
import { expect, test, vi } from 'vitest';
import { changesBetween } from '../../src/notebook/changes';
import type { Cell, Notebook } from '../../src/notebook/document';
import { Results } from '../../src/engine/results';
import { WorkedSheet } from '../../src/engine/sheet';
import { allChanges } from './all-changes';
import { notebookOf } from './notebook-of';
import { base, cells, entries, formulas, sizes } from './random-cells';

type Edit = (notebook: Notebook) => Notebook;
const all = (notebook: Notebook): readonly Cell[] => notebook.sections[0]!.cells;
const withCells = (notebook: Notebook, changed: readonly Cell[]): Notebook => ({
  ...notebook,
  sections: [{ ...notebook.sections[0]!, cells: changed }],
});

const edits: fc.Arbitrary<Edit> = fc.oneof(
  // A cell is put in, or in the place of the one that has its id.
  {
    weight: 6,
    arbitrary: cells.map((cell): Edit => (notebook) => {
      const there = all(notebook).some(({ id }) => id === cell.id);
      return withCells(
        notebook,
        there ? all(notebook).map((old) => (old.id === cell.id ? cell : old)) : [...all(notebook), cell],
      );
    }),
  },
  {
    weight: 1,
    arbitrary: base.id.map(
      (id): Edit =>
        (notebook) =>
          withCells(
            notebook,
            all(notebook).filter((cell) => cell.id !== id),
          ),
    ),
  },
  { weight: 1, arbitrary: sizes.map((next): Edit => (notebook) => ({ ...notebook, sizes: next })) },
  // A formula or a value in the place of another, under the same name.
  {
    weight: 5,
    arbitrary: fc.tuple(base.id, formulas, entries).map(
      ([id, formula, entry]): Edit =>
        (notebook) =>
          withCells(
            notebook,
            all(notebook).map((cell) => {
              if (cell.id !== id) return cell;
              if (cell.kind === 'formula') return { ...cell, formula };
              return cell.kind === 'measure' ? { ...cell, entry } : cell;
            }),
          ),
    ),
  },
  // Another name, or two names exchanged, without the formulas following.
  {
    weight: 2,
    arbitrary: fc.tuple(base.id, base.name).map(
      ([id, name]): Edit =>
        (notebook) =>
          withCells(
            notebook,
            all(notebook).map((cell) => (cell.id === id ? { ...cell, name } : cell)),
          ),
    ),
  },
  {
    weight: 1,
    arbitrary: fc.tuple(base.id, base.id).map(([one, other]): Edit => (notebook) => {
      const [a, b] = [one, other].map((id) => all(notebook).find((cell) => cell.id === id)?.name);
      if (!a || !b) return notebook;
      return withCells(
        notebook,
        all(notebook).map((cell) =>
          cell.id === one ? { ...cell, name: b } : cell.id === other ? { ...cell, name: a } : cell,
        ),
      );
    }),
  },
  {
    weight: 1,
    arbitrary: fc.tuple(base.id, fc.constantFrom('Bust', 'Renamed')).map(
      ([id, label]): Edit =>
        (notebook) =>
          withCells(
            notebook,
            all(notebook).map((cell) => (cell.id === id ? { ...cell, label } : cell)),
          ),
    ),
  },
  {
    weight: 1,
    arbitrary: fc.constant<Edit>((notebook) => withCells(notebook, [...all(notebook)].reverse())),
  },
);

async function fresh(notebook: Notebook): Promise<Record<string, unknown>> {
  const results = new Results();
  results.apply(await new WorkedSheet().update(changesBetween(null, notebook)));
  return allChanges(results, notebook);
}

/** Makes the edits on a sheet and on nothing, and compares after each. */
async function keepsUp(
  begin: readonly Cell[],
  then: readonly Edit[],
  trip: () => void = () => {},
): Promise<void> {
  let before: Notebook | null = null;
  let notebook = notebookOf(
    [...new Map(begin.map((cell) => [cell.id, cell])).values()],
    [
      { id: 's', label: 'S' },
      { id: 'm', label: 'M', chart: { name: 'woman', size: 'M' } },
    ],
  );
  const sheet = new WorkedSheet();
  const results = new Results();
  for (const edit of [(same: Notebook) => same, ...then]) {
    notebook = edit(notebook);
    trip();
    const answer = await sheet.update(changesBetween(before, notebook));
    vi.restoreAllMocks();
    results.apply(answer);
    before = notebook;
    expect(allChanges(results, notebook)).toEqual(await fresh(notebook));
  }
}

const notebooks = fc.array(cells, { maxLength: 8 });
const sequences = fc.array(edits, { minLength: 1, maxLength: 12 });
const runs = Number(process.env['RUNS'] ?? 40);

test('after any sequence of edits every number, text, unit and trouble is that of a fresh sheet', async () => {
  await fc.assert(
    fc.asyncProperty(notebooks, sequences, (begin, then) => keepsUp(begin, then)),
    { numRuns: runs },
  );
}, 600_000);

test('so it is when HyperFormula throws in the midst of it', async () => {
  const throwOnce = (): void => {
    vi.spyOn(HyperFormula.prototype, 'setCellContents').mockImplementationOnce(() => {
      throw new Error('lost');
    });
  };
  await fc.assert(
    fc.asyncProperty(notebooks, sequences, (begin, then) => keepsUp(begin, then, throwOnce)),
    { numRuns: Math.ceil(runs / 4) },
  );
}, 600_000);
