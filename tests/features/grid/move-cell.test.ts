import { fireEvent, render, screen } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { describe, expect, it, vi } from 'vitest';
import { allCells } from '../../../src/notebook';
import NotebookGrid from '../../../src/features/grid/NotebookGrid.svelte';
import { until } from '../../until';
import { workspaceWith } from '../../workspace/local-workspace';
import { measured, small } from '../../workspace/small-notebook';

async function open() {
  const { workspace, settled } = workspaceWith(
    small(measured('hip', { value: 100 }), measured('waist', { value: 80 }), {
      kind: 'formula',
      id: 'ease',
      label: 'Ease',
      name: 'ease',
      formula: 'waist + CM(4)',
    }),
  );
  await settled();
  const user = userEvent.setup();
  render(NotebookGrid, { workspace, folded: false });
  await vi.dynamicImportSettled();
  const label = (name: string): HTMLElement =>
    screen.getByRole('button', { name: `${name}: change the label` });
  const order = (): string[] =>
    allCells(workspace.notebook)
      .map((cell) => cell.label)
      .filter((one) => ['Hip', 'Waist', 'Ease'].includes(one));
  return { workspace, user, label, order };
}

describe('a cell', () => {
  it('moves down and up with Alt and the arrows on its label, and keeps the focus', async () => {
    const { user, label, order, workspace } = await open();
    label('Hip').focus();
    await user.keyboard('{Alt>}{ArrowDown}{/Alt}');
    expect(order()).toEqual(['Waist', 'Hip', 'Ease']);
    expect(workspace.announcement).toBe('Hip moved down.');
    await until(() => expect(document.activeElement).toBe(label('Hip')));
    await user.keyboard('{Alt>}{ArrowUp}{/Alt}');
    expect(order()).toEqual(['Hip', 'Waist', 'Ease']);
  });

  it('that nothing uses is deleted with Delete on its label; one that is used is asked about', async () => {
    const { user, label, order, workspace } = await open();
    label('Hip').focus();
    await user.keyboard('{Delete}');
    expect(order()).toEqual(['Waist', 'Ease']);
    label('Waist').focus();
    await user.keyboard('{Delete}');
    expect(order()).toEqual(['Waist', 'Ease']);
    expect(workspace.selection.pendingDeletion).toBe('waist');
  });

  it('that is dragged is put before or after the one it is dropped on', async () => {
    const { workspace, label, order } = await open();
    const dropOn = (name: string, clientY: number) =>
      fireEvent(label(name), new MouseEvent('drop', { bubbles: true, clientY }));
    workspace.selection.dragging = 'hip';
    // Every line is at 0 here: what is below that is in the lower half of it.
    await dropOn('Ease', 1);
    expect(order()).toEqual(['Waist', 'Ease', 'Hip']);
    expect(workspace.selection.dragging).toBeNull();
    workspace.selection.dragging = 'hip';
    await dropOn('Waist', -1);
    expect(order()).toEqual(['Hip', 'Waist', 'Ease']);
  });
});
