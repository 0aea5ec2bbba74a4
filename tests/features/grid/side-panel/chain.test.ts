import { render, screen, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { tick } from 'svelte';
import { describe, expect, it } from 'vitest';
import Chain from '../../../../src/features/grid/side-panel/Chain.svelte';
import NotebookGrid from '../../../../src/features/grid/NotebookGrid.svelte';
import { formula, measure, notebookOf } from '../../../engine/notebook-of';
import { workspaceWith } from '../../../workspace/local-workspace';

/** The width of a back is bust and ease, halved; a neck comes of the back; a cuff has to do with none of them. */
const cells = [
  measure('bust', 'length', 94),
  measure('ease', 'length', 20),
  measure('cuff', 'length', 24),
  formula('back', '(bust + ease) / 2'),
  formula('neck', 'back / 3'),
  formula('opening', 'neck + CM(2)'),
];

async function open() {
  const { workspace, settled } = workspaceWith(notebookOf(cells));
  await settled();
  const user = userEvent.setup();
  render(NotebookGrid, { workspace, folded: false });
  render(Chain, { workspace });
  const go = async (cell: string): Promise<void> => {
    document.querySelector<HTMLElement>(`[data-place][data-cell="${cell}"][data-key=""]`)!.focus();
    await tick();
  };
  const entries = (name: 'Fed by' | 'Feeds'): string[] => {
    const list = screen.queryByRole('list', { name });
    return list
      ? within(list)
          .getAllByRole('listitem')
          .map((item) => item.textContent.trim())
      : [];
  };
  return { workspace, user, go, entries };
}

const at = (): string | undefined => (document.activeElement as HTMLElement).dataset['cell'];
const shownCells = (): string[] =>
  [...document.querySelectorAll<HTMLElement>('[data-cell-rows]')].map((rows) => rows.dataset['cellRows']!);
const link = (cell: string): string | undefined =>
  document.querySelector<HTMLElement>(`[data-cell-rows="${cell}"]`)?.dataset['link'];

describe('the chain of the cell in focus', () => {
  it('the back is fed by bust and ease and feeds the neck, and one more further on', async () => {
    const { go, entries } = await open();
    expect(screen.queryByRole('navigation')).toBeNull();
    await go('back');
    expect(entries('Fed by')).toEqual(['bust', 'ease']);
    expect(entries('Feeds')).toEqual(['neck', 'and 1 further on']);
    await go('opening');
    expect(entries('Fed by')).toEqual(['neck', 'and 3 further back']);
    expect(screen.getByText('nothing')).toBeDefined();
  });

  it('is marked in the margin, one step either way', async () => {
    const { go } = await open();
    await go('back');
    expect(cells.map(({ id }) => link(id))).toEqual([
      'feeds',
      'feeds',
      undefined,
      undefined,
      'fed',
      undefined,
    ]);
    await go('cuff');
    expect(cells.map(({ id }) => link(id))).toEqual(cells.map(() => undefined));
  });

  it('is gone along by pressing what is listed', async () => {
    const { user, go } = await open();
    await go('back');
    await user.click(screen.getByRole('button', { name: 'neck' }));
    expect(at()).toBe('neck');
  });
});

describe('by keyboard', () => {
  it('Alt and the left arrow goes to what feeds a cell, and Alt and the right arrow back again', async () => {
    const { user, go } = await open();
    await go('back');
    await user.keyboard('{Alt>}{ArrowLeft}{/Alt}');
    expect(at()).toBe('bust');
    await user.keyboard('{Alt>}{ArrowRight}{ArrowRight}{ArrowRight}{/Alt}');
    expect(at()).toBe('opening');
  });

  it('Shift as well goes on to the next of those that feed the same', async () => {
    const { user, go } = await open();
    await go('back');
    await user.keyboard('{Alt>}{ArrowLeft}{Shift>}{ArrowRight}{/Shift}{/Alt}');
    expect(at()).toBe('ease');
    await user.keyboard('{Alt>}{Shift>}{ArrowLeft}{/Shift}{/Alt}');
    expect(at()).toBe('bust');
  });

  it('goes back the way it came where several cells feed the same', async () => {
    const { workspace, user, go } = await open();
    await go('ease');
    await user.keyboard('{Alt>}{ArrowRight}{ArrowLeft}{/Alt}');
    expect(at()).toBe('ease');
    await user.keyboard('{Alt>}{ArrowLeft}{/Alt}');
    expect(at()).toBe('ease');
    expect(workspace.announcement).toBe('Nothing feeds ease.');
  });
});

describe('only the chain', () => {
  it('leaves in the grid what feeds a cell, itself and what it feeds, and says so', async () => {
    const { user, go } = await open();
    await go('neck');
    await user.click(screen.getByRole('button', { name: 'Only this chain' }));
    expect(shownCells()).toEqual(['bust', 'ease', 'back', 'neck', 'opening']);
    expect(screen.getByText(/Only the chain of neck is shown/)).toBeDefined();
    expect(screen.getByRole('button', { name: 'Only this chain' }).getAttribute('aria-pressed')).toBe('true');
    await user.click(screen.getByRole('button', { name: 'Show all' }));
    expect(shownCells()).toEqual(cells.map(({ id }) => id));
  });

  it('follows the formulas: a cell that is fed by it from now on comes to be shown', async () => {
    const { workspace, user, go } = await open();
    await go('neck');
    await user.click(screen.getByRole('button', { name: 'Only this chain' }));
    expect(
      workspace.do({ do: 'enter', cell: 'cuff', key: 'value', entry: { formula: 'neck' } }),
    ).toBeUndefined();
    await tick();
    expect(shownCells()).toContain('cuff');
  });

  it('is left where one goes to a cell that is not in it', async () => {
    const { user, go } = await open();
    await go('ease');
    await user.click(screen.getByRole('button', { name: 'Only this chain' }));
    expect(shownCells()).not.toContain('bust');
    await go('back');
    await user.click(screen.getByRole('button', { name: 'bust' }));
    expect(at()).toBe('bust');
    expect(shownCells()).toEqual(cells.map(({ id }) => id));
  });

  it('is all there is again once its cell is deleted', async () => {
    const { workspace, user, go } = await open();
    await go('opening');
    await user.click(screen.getByRole('button', { name: 'Only this chain' }));
    expect(workspace.do({ do: 'remove cell', cell: 'opening' })).toBeUndefined();
    await tick();
    expect(shownCells()).toEqual(['bust', 'ease', 'cuff', 'back', 'neck']);
    expect(screen.queryByRole('navigation')).toBeNull();
  });
});
