import { describe, expect, test } from 'vitest';
import { workPiece } from '../../../src/craft';
import { allCells, type Notebook } from '../../../src/notebook';
import { adaptedPullover, hatCrown, singleSleeve } from '../../../src/starters';
import { notebookFrom, markdown, patternOf, plainText, type PatternSource } from '../../../src/pattern';
import { readPattern } from '../../../src/pattern/read';
import { sourceOf } from '../write/source-of';
import { vNeck } from '../../notebooks/v-neck';

/** The counts of every row of a piece, by size. */
function rowsOf(source: PatternSource, cell: string, sizes: readonly string[]): (number[] | string)[] {
  return sizes.map((size) => {
    const plan = source.plan(size, cell);
    return 'problem' in plan ? plan.problem : workPiece(plan).map(({ count }) => count);
  });
}

const pieceCells = (notebook: Notebook) => allCells(notebook).filter((cell) => cell.kind === 'piece');

/** Writes a notebook's pattern, puts the text in, and lays the rows of both side by side. */
async function there(
  notebook: Notebook,
  write: typeof plainText,
): Promise<Record<string, { wrote: unknown; read: unknown }>> {
  const source = await sourceOf(notebook);
  const { settings } = notebook;
  const text = write(patternOf(source));
  const reading = readPattern(text, { decimal: settings.decimal });
  const again = await sourceOf(notebookFrom(reading, text, settings));
  const sizes = again.notebook.sizes.slice(0, -1).map(({ id }) => id);
  expect(reading.pattern.sizes).toEqual(notebook.sizes.map(({ label }) => label));
  return Object.fromEntries(
    pieceCells(notebook)
      .filter(({ aside }) => !aside)
      .map(({ id, label }) => {
        const printed = pieceCells(again.notebook).find((cell) => cell.label === `${label}, as printed`);
        return [
          label,
          {
            wrote: rowsOf(
              source,
              id,
              notebook.sizes.map((size) => size.id),
            ),
            read: printed ? rowsOf(again, printed.id, sizes) : 'no such piece',
          },
        ];
      }),
  );
}

describe('a pattern that is written out and put in again has the same rows in every size', () => {
  test.each([
    ['the V-neck', vNeck, plainText],
    ['the V-neck, as Markdown', vNeck, markdown],
    ['the sleeve', singleSleeve, plainText],
    ['the hat', hatCrown, plainText],
  ] as const)('%s', async (_name, make, write) => {
    for (const [piece, { wrote, read }] of Object.entries(await there(make(), write as typeof plainText))) {
      expect({ piece, rows: read }).toEqual({ piece, rows: wrote });
    }
  });

  test('the adapted pullover itself, for its maker alone: as printed, and as it was fitted again', async () => {
    const whole = adaptedPullover();
    const notebook = { ...whole, sizes: whole.sizes.slice(-1) };
    for (const [piece, { wrote, read }] of Object.entries(await there(notebook, plainText))) {
      expect({ piece, rows: read }).toEqual({ piece, rows: wrote });
    }
  });
});
