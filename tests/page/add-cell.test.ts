import { render, screen, waitFor, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { kinds, type CellKind, type Notebook } from '../../src/notebook';
import AddCell from '../../src/page/dialogs/AddCell.svelte';
import Leaf from '../../src/page/leaf/Leaf.svelte';
import { fit, notebookOf, swatch } from '../sheet/notebook-of';
import { deskWith } from './desk';

const notebook = notebookOf([
  swatch('wool', 14, 20),
  { ...fit('back_stitches', 'wool_sts * CM(50)'), label: 'Back stitches' },
]);

async function open(kind: CellKind, of: Notebook = notebook) {
  const { desk, settled } = deskWith(of);
  await settled();
  render(Leaf, { desk, folded: false });
  const { component } = render(AddCell, { desk });
  const user = userEvent.setup();
  component.open({ section: 'all', at: 2 }, kind);
  const dialog = within(await screen.findByRole('dialog'));
  return { desk, settled, user, dialog, field: dialog.getByRole('textbox') };
}

describe('a cell that is added', () => {
  it.each(Object.keys(kinds) as CellKind[])(
    'has the focus on its first value that is to be typed, and says so: %s',
    async (kind) => {
      const { desk, settled, user, field } = await open(kind);
      await user.type(field, 'New one{Enter}');
      await settled();
      expect(desk.said).toBe('Added New one. Its first value waits to be typed.');
      await waitFor(() => expect(document.activeElement?.closest('[data-cell-rows]')).not.toBeNull());
      const at = document.activeElement as HTMLElement;
      expect(at.getAttribute('aria-label')).toMatch(/^New one/);
      expect(at.dataset['typed']).toBe('');
      expect(at.getAttribute('aria-label')).toMatch(/: (no|nothing|not) /);
    },
  );

  it('says beforehand what formulas will call it, where that is not its label, and why', async () => {
    const { user, field, dialog, desk } = await open('piece');
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
    expect(desk.notebook).toBe(notebook);
  });
});
