import { render, screen, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { flushSync } from 'svelte';
import { describe, expect, it } from 'vitest';
import { cellById, type Notebook } from '../../../src/notebook';
import Sizes from '../../../src/features/settings/Sizes.svelte';
import { workspaceWith } from '../../workspace/local-workspace';
import { small } from '../../workspace/small-notebook';

async function open(notebook: Notebook = small()) {
  const { workspace, settled } = workspaceWith(notebook);
  await settled();
  const user = userEvent.setup();
  const { component } = render(Sizes, { workspace });
  flushSync(() => (component as unknown as { open(): void }).open());
  const press = (name: string | RegExp): Promise<void> => user.click(screen.getByRole('button', { name }));
  const labels = (): string[] => workspace.notebook.sizes.map((size) => size.label);
  const inWords = (): string => screen.getByRole('status').textContent!;
  const entry = (id: string): unknown => (cellById(workspace.notebook, id) as { entry: unknown }).entry;
  return { workspace, user, press, labels, inWords, entry };
}

describe('the sizes', () => {
  it('are renamed in place; a label cannot be empty', async () => {
    const { user, labels } = await open();
    const field = screen.getByRole('textbox', { name: 'Label of size M' });
    await user.clear(field);
    await user.type(field, '38{Enter}');
    expect(labels()).toEqual(['S', '38', 'L']);
    const other = screen.getByRole('textbox', { name: 'Label of size L' });
    await user.clear(other);
    await user.tab();
    expect((await screen.findByRole('alert')).textContent).toMatch(/needs a label/);
    expect(labels()).toEqual(['S', '38', 'L']);
  });

  it('are put in another order with their buttons, or with Alt and the arrows, the focus staying with the size', async () => {
    const { user, press, labels } = await open();
    await press('Move M before the size above');
    expect(labels()).toEqual(['M', 'S', 'L']);
    const field = screen.getByRole('textbox', { name: 'Label of size M' });
    expect(document.activeElement).toBe(field);
    await user.keyboard('{Alt>}{ArrowDown}{ArrowDown}{/Alt}');
    expect(labels()).toEqual(['S', 'L', 'M']);
    expect(document.activeElement).toBe(screen.getByRole('textbox', { name: 'Label of size M' }));
  });

  it('removed say which values go with them, and undo brings them back', async () => {
    const { press, labels, inWords, entry } = await open();
    await press('Remove M');
    expect(labels()).toEqual(['S', 'L']);
    expect(inWords()).toBe('M is removed, and with it its own value: Cuff (24.0 cm). Undo brings it back.');
    await press('Undo removing size M');
    expect(labels()).toEqual(['S', 'M', 'L']);
    expect(entry('cuff')).toMatchObject({ each: { m: 24 } });
  });

  it('one at least stays', async () => {
    const { press } = await open();
    await press('Remove S');
    await press('Remove M');
    expect(screen.getByRole('button', { name: 'Remove L' })).toHaveProperty('disabled', true);
  });
});

describe('a chart', () => {
  it('taken whole keeps the sizes that follow it, with their values', async () => {
    const { press, labels, entry } = await open();
    await press(/^Replace my sizes with the whole chart/);
    expect(labels()).toEqual(['XS', 'S', 'M', 'L', 'XL', '2X', '3X', '4X', '5X']);
    expect(entry('cuff')).toMatchObject({ each: { s: 22, m: 24, l: 26 } });
  });

  it('taken in part leaves out what is not wanted, and says what that takes away', async () => {
    const { user, press, labels, inWords } = await open();
    for (const size of ['XS', 'L', 'XL', '2X', '3X', '4X', '5X']) {
      await user.click(screen.getByRole('checkbox', { name: size }));
    }
    await press(/^Replace my sizes with these/);
    expect(labels()).toEqual(['S', 'M']);
    expect(inWords()).toBe(
      'L is removed, and with it its own value: Cuff (26.0 cm). Undo brings back what was there.',
    );
  });

  it('added twice adds its sizes once', async () => {
    const { user, press, labels, inWords } = await open();
    await user.click(screen.getByRole('radio', { name: 'Men' }));
    await press(/^Add these sizes/);
    await press(/^Add these sizes/);
    expect(labels()).toEqual(['S', 'M', 'L', 'S', 'M', 'L', 'XL', '2XL']);
    expect(inWords()).toBe('These sizes are in the notebook already.');
  });

  it('of babies and children comes with the caution, one of women does not', async () => {
    const { user } = await open();
    expect(screen.queryByText(/can strangle or choke/)).toBeNull();
    await user.click(screen.getByRole('radio', { name: 'Babies' }));
    expect(screen.getByText(/can strangle or choke/)).toBeDefined();
  });
});

describe('a person’s own measurements', () => {
  it('are asked for each measure that follows the chart and each value given per size, and are one edit', async () => {
    const { workspace, user, press, labels, inWords, entry } = await open();
    await press('Add a size of its own');
    const form = within(screen.getByRole('dialog'));
    expect(form.getAllByRole('textbox')).toHaveLength(3);
    expect(form.getByRole('textbox', { name: /called/ })).toHaveProperty('value', 'For me');
    await user.type(form.getByRole('textbox', { name: /^Bust/ }), '40 in');
    await press('Add this size');
    expect(labels()).toEqual(['S', 'M', 'L', 'For me']);
    const { id } = workspace.notebook.sizes[3]!;
    expect(entry('bust')).toEqual({ chart: 'bust', point: 'middle', own: { [id]: 101.6 } });
    expect(inWords()).toBe('For me is the last size. Still to be measured: Cuff.');
    expect(workspace.document.undoes).toBe('adding the size For me');
    workspace.document.undo();
    expect(entry('bust')).toEqual({ chart: 'bust', point: 'middle' });
  });

  it('that are no numbers stay in their field with a sentence, and nothing is added', async () => {
    const { user, press, labels } = await open();
    await press('Add a size of its own');
    const bust = screen.getByRole('textbox', { name: /^Bust/ });
    await user.type(bust, 'wide');
    await press('Add this size');
    expect(labels()).toEqual(['S', 'M', 'L']);
    expect(bust.getAttribute('aria-invalid')).toBe('true');
    expect(document.activeElement).toBe(bust);
    expect(screen.getByText(/Type a number, such as 26 cm/)).toBeDefined();
  });

  it('can be changed and taken away later', async () => {
    const { workspace, user, press, entry } = await open();
    await press('Add a size of its own');
    await user.type(screen.getByRole('textbox', { name: /^Bust/ }), '101');
    await press('Add this size');
    await press('Measurements of For me');
    const bust = screen.getByRole('textbox', { name: /^Bust/ });
    expect(bust).toHaveProperty('value', '101');
    await user.clear(bust);
    await user.type(screen.getByRole('textbox', { name: /^Cuff/ }), '25,5');
    await press('Take these');
    const { id } = workspace.notebook.sizes[3]!;
    expect(entry('bust')).toEqual({ chart: 'bust', point: 'middle' });
    expect(entry('cuff')).toMatchObject({ each: { [id]: 25.5 } });
  });
});
