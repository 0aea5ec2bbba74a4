import { render, screen, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { expect, it } from 'vitest';
import { allCells, readyChecks, type CheckCell, type Notebook } from '../../../src/notebook';
import AddCheck from '../../../src/features/grid/AddCheck.svelte';
import { measure, notebookOf, swatch } from '../../engine/notebook-of';
import { workspaceWith } from '../../workspace/local-workspace';
import { blouseSleeve } from '../../notebooks/blouse-sleeve';
import { vNeck } from '../../notebooks/v-neck';

async function open(notebook: Notebook, at?: string) {
  const { workspace, settled } = workspaceWith(notebook);
  await settled();
  if (at) workspace.selection.position = { cell: at, key: 'value', size: null };
  const user = userEvent.setup();
  const { component } = render(AddCheck, { workspace });
  await component.open();
  const dialog = within(screen.getByRole('dialog', { name: 'Add a check' }));
  const enterCheck = (name: RegExp) => user.click(dialog.getByRole('radio', { name }));
  const choose = (name: string, option: string) =>
    user.selectOptions(dialog.getByRole('combobox', { name }), option);
  const added = async (): Promise<CheckCell> => {
    const before = allCells(workspace.notebook);
    await user.click(dialog.getByRole('button', { name: 'Add this check' }));
    await settled();
    return allCells(workspace.notebook).find((cell) => !before.includes(cell)) as CheckCell;
  };
  return { workspace, user, dialog, enterCheck, choose, added };
}

it('every ready-made check is offered, with a line on what it is for', async () => {
  const { dialog } = await open(vNeck());
  expect(dialog.getAllByRole('radio')).toHaveLength(readyChecks.length);
  expect(
    dialog.getByRole('radio', { name: /The hand fits through the cuff.*stretch over the hand/ }),
  ).toBeDefined();
});

it('a hand through a cuff is asked for its cuff, its rib and the hand, and added after the cell in focus', async () => {
  const { workspace, enterCheck, dialog, added } = await open(blouseSleeve(), 'cuff-sts');
  await enterCheck(/The hand fits through the cuff/);
  expect(dialog.getByRole('combobox', { name: 'Stitches of the cuff' })).toHaveProperty('value', 'cuff_sts');
  expect(dialog.getByRole('combobox', { name: 'Hand, round the knuckles' })).toHaveProperty('value', 'hand');
  const cell = await added();
  expect(cell).toMatchObject({
    kind: 'check',
    // The sleeve has a check of this label already.
    name: 'hand_through_the_cuff_2',
    condition: 'PASSES(cuff_sts; rib_sts; rib_stretch; hand)',
  });
  const sleeves = workspace.notebook.sections.find(({ cells }) => cells.includes(cell))!;
  expect(sleeves.cells.indexOf(cell)).toBe(sleeves.cells.findIndex(({ id }) => id === 'cuff-sts') + 1);
  expect(workspace.announcement).toBe('Added the check Hand through the cuff.');
  expect(workspace.document.undoes).toBeDefined();
  expect(screen.queryByRole('dialog')).toBeNull();
});

it('a survey’s hand can be taken instead of the notebook’s, and is named as such', async () => {
  const { enterCheck, choose, added } = await open(blouseSleeve());
  await enterCheck(/The hand fits through the cuff/);
  await choose('Hand, round the knuckles', '23.0 cm: 95 of 100 men of a survey');
  const cell = await added();
  expect(cell.condition).toBe('PASSES(cuff_sts; rib_sts; rib_stretch; CM(23))');
  expect(cell.note).toMatch(/ANSUR II/);
});

it('with no cell in focus the check comes at the end of the last section', async () => {
  const { workspace, enterCheck, choose, added } = await open(vNeck());
  await enterCheck(/Neighboring sizes differ/);
  await choose('Which count', 'Front stitches');
  const cell = await added();
  expect(cell).toMatchObject({ across: 'differ', condition: 'front_sts' });
  expect(workspace.notebook.sections.at(-1)!.cells.at(-1)).toBe(cell);
});

it('the other edge of a join offers only what is counted as the first', async () => {
  const { enterCheck, choose, dialog, added } = await open(vNeck());
  await enterCheck(/Joined edges match/);
  await choose('One edge', 'Rows to the underarm');
  const other = dialog.getByRole('combobox', { name: 'The other edge' });
  const names = within(other)
    .getAllByRole('option')
    .map((option) => (option as HTMLOptionElement).value);
  expect(names).toContain('back_rows');
  expect(names).not.toContain('back_sts');
  await choose('The other edge', 'Rows of the armhole');
  expect((await added()).condition).toBe('JOINS(lower_rows; armhole_rows)');
});

it('what a check needs and the notebook lacks is said, and nothing can be added', async () => {
  const { enterCheck, dialog } = await open(
    notebookOf([measure('cuff', 'stitches', 40), swatch('rib', 18, 24)]),
  );
  await enterCheck(/The hand fits through the cuff/);
  expect(dialog.getByText(/No swatch says how far it stretches/)).toBeDefined();
  expect(dialog.getByRole('button', { name: 'Add this check' })).toHaveProperty('disabled', true);
  await enterCheck(/No notions on children’s garments/);
  expect(dialog.getByText(/has no notions/)).toBeDefined();
});

it('leaving it changes nothing', async () => {
  const { workspace, user, dialog } = await open(vNeck());
  const before = workspace.notebook;
  await user.click(dialog.getByRole('button', { name: 'Cancel' }));
  expect(workspace.notebook).toBe(before);
  expect(screen.queryByRole('dialog')).toBeNull();
});
