import { render, screen, waitFor, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { allCells, kinds, type CellKind, type Notebook } from '../../../src/notebook';
import AddCell from '../../../src/features/grid/AddCell.svelte';
import NotebookGrid from '../../../src/features/grid/NotebookGrid.svelte';
import { vNeck } from '../../notebooks/v-neck';
import { fit, notebookOf, swatch } from '../../engine/notebook-of';
import { workspaceWith } from '../../workspace/local-workspace';

const notebook = notebookOf([
  swatch('wool', 14, 20),
  { ...fit('back_stitches', 'wool_sts * CM(50)'), label: 'Back stitches' },
]);

async function open(kind: CellKind, of: Notebook = notebook, section = 'all') {
  const { workspace, settled } = workspaceWith(of);
  await settled();
  render(NotebookGrid, { workspace, folded: false });
  const { component } = render(AddCell, { workspace });
  const user = userEvent.setup();
  component.open({ section, at: section === 'all' ? 2 : 0 }, kind);
  const dialog = within(await screen.findByRole('dialog'));
  return { workspace, settled, user, dialog, field: dialog.getByRole('textbox') };
}

describe('a cell that is added', () => {
  it.each(Object.keys(kinds) as CellKind[])(
    'has the focus on its first value that is to be typed, and says so: %s',
    async (kind) => {
      const { workspace, settled, user, field } = await open(kind);
      await user.type(field, 'New one{Enter}');
      await settled();
      expect(workspace.announcement).toBe('Added New one. Its first value waits to be typed.');
      await waitFor(() => expect(document.activeElement?.closest('[data-cell-rows]')).not.toBeNull());
      const at = document.activeElement as HTMLElement;
      expect(at.getAttribute('aria-label')).toMatch(/^New one/);
      expect(at.dataset['typed']).toBe('');
      expect(at.getAttribute('aria-label')).toMatch(/: (no|nothing|not) /);
    },
  );

  it('says beforehand what formulas will call it, where that is not its label, and why', async () => {
    const { user, field, dialog, workspace } = await open('piece');
    await user.type(field, 'Front');
    expect(dialog.queryByRole('status')?.textContent ?? '').toBe('');
    await user.clear(field);
    await user.type(field, 'Back');
    expect(dialog.getByRole('status').textContent).toBe(
      'Formulas will call it back_piece: as back it would bring back_stitches, which is “Back stitches” already.',
    );
    await user.clear(field);
    await user.type(field, 'Wool');
    expect(dialog.getByRole('status').textContent).toBe(
      'Formulas will call it wool_piece: wool is “wool: fabric” already.',
    );
    expect(workspace.notebook).toBe(notebook);
  });

  it('as made: the bust that back, fronts and bands give is suggested, and added ready filled', async () => {
    const { workspace, settled, user, dialog } = await open('as made', vNeck(), 'joins-section');
    const which = dialog.getByRole('combobox', { name: 'Which measurement?' });
    expect(
      within(which)
        .getAllByRole('option')
        .map(({ textContent }) => textContent),
    ).toEqual(['Finished bust: Back + 2 × Front + 2 × Band, worked', 'another: I fill it in']);
    await user.click(dialog.getByRole('button', { name: 'Add it' }));
    await settled();
    const cell = allCells(workspace.notebook).find(({ kind }) => kind === 'as made')!;
    expect(cell).toMatchObject({
      label: 'Finished bust, as made',
      of: [
        { width: { formula: 'back_start_width' }, times: { value: 1 } },
        { width: { formula: 'front_start_width' }, times: { value: 2 } },
        { width: { formula: 'band_worked_length' }, times: { value: 2 } },
      ],
      closes: 'edge to edge',
      wish: { formula: 'finished_bust' },
      within: { formula: '(1 * STS(back_sts_multiple) + 2 * STS(front_sts_multiple)) / body_sts / 2' },
    });
    expect(workspace.announcement).toBe('Added Finished bust, as made.');
    for (const { id } of workspace.sizes) {
      for (const key of ['made', 'difference'])
        expect(workspace.results(cell.id).number(id, cell.id, key), key).toBeDefined();
    }
  });

  it('as made: another is begun empty, and so is one where nothing can be told', async () => {
    const { workspace, settled, user, dialog } = await open('as made', vNeck(), 'joins-section');
    await user.selectOptions(dialog.getByRole('combobox'), 'another: I fill it in');
    await user.click(dialog.getByRole('button', { name: 'Add it' }));
    await settled();
    expect(allCells(workspace.notebook).find(({ kind }) => kind === 'as made')).toMatchObject({
      label: 'As made',
      of: [{ width: { value: null } }],
      wish: { value: null },
    });
  });

  it('as made: nothing is suggested where no piece is known', async () => {
    expect((await open('as made')).dialog.queryByRole('combobox')).toBeNull();
  });
});
