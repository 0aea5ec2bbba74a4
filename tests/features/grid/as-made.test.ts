import { render, screen } from '@testing-library/svelte';
import { tick } from 'svelte';
import { describe, expect, it, vi } from 'vitest';
import type { Notebook } from '../../../src/notebook';
import NotebookGrid from '../../../src/features/grid/NotebookGrid.svelte';
import { asMade, even, piece } from '../../../src/notebook/cell-builders';
import { fit, measure, notebookOf, swatch } from '../../engine/notebook-of';
import { workspaceWith } from '../../workspace/local-workspace';

/** Two like pieces at 14 stitches to 10 cm, in a multiple of 8 plus 3: a step of the bust is 16 stitches, 11.4 cm. */
function knitted(within: string): Notebook {
  const cells = [
    swatch('wool', 14, 12),
    measure('bust', 'length', { each: { s: 98, m: 108 } }),
    fit('back', 'bust / 2 * wool_sts'),
    piece('Back piece', 'flat', 'back', [even('Body', 'wool', 'ROWS(36)', 'main')]),
    asMade('Finished bust', 'bust', [['back_piece_start_width', 2]], within),
  ];
  return notebookOf(cells, [
    { id: 's', label: 'S' },
    { id: 'm', label: 'M' },
  ]);
}

async function open(notebook: Notebook) {
  const { workspace, settled } = workspaceWith(notebook);
  render(NotebookGrid, { workspace, folded: false, addCell: () => {} });
  await settled();
  // What the cell says is fetched beside the grid.
  await vi.dynamicImportSettled();
  await tick();
  return { workspace, settled };
}

/** What the grid says of sizes that part from the wish. */
const parted = (): string[] =>
  screen.queryAllByText(/ is wanted\.$/u).map(({ textContent }) => textContent ?? '');

describe('a measurement as made, in the grid', () => {
  const halfStep = 'STS(8) / wool_sts';

  it('stands with the wish on a line of its own, size by size', async () => {
    await open(knitted(halfStep));
    const rows = screen
      .getAllByRole('row')
      .map(({ textContent }) => textContent?.replace(/\s+/gu, ' ').trim() ?? '');
    // 67 and 75 stitches, twice.
    const made = rows.findIndex((row) => /as made.*95\.7.*107\.1/u.test(row));
    expect(made, rows.join('\n')).toBeGreaterThanOrEqual(0);
    expect(rows.slice(made + 1).find((row) => row.startsWith('Wanted'))).toMatch(/98\.0 108\.0$/u);
  });

  it('says nothing where no size parts by more than half a repeat', async () => {
    await open(knitted(halfStep));
    expect(parted()).toEqual([]);
  });

  it('says in which size it parts, and in which it does not: one only', async () => {
    // 2.3 cm in S and 0.9 in M.
    await open(knitted('CM(1)'));
    expect(parted()).toEqual(['S: Finished bust is 95.7\u00a0cm where 98.0 is wanted.']);
  });

  it('says it of each where both part, and no more once the wish is what is made', async () => {
    const { workspace, settled } = await open(knitted('CM(0.5)'));
    expect(parted()).toHaveLength(2);
    expect(workspace.do({ do: 'give', cell: 'bust', key: 'value', size: 's', value: 95.7 })).toBeUndefined();
    await settled();
    await tick();
    expect(parted()).toEqual(['M: Finished bust is 107.1\u00a0cm where 108.0 is wanted.']);
  });
});
