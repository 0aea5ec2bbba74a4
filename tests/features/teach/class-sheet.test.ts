import { render, screen, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import type { Notebook } from '../../../src/notebook';
import ClassSheet from '../../../src/features/teach/ClassSheet.svelte';
import { blank, lessons } from '../../../src/starters';
import { formula, measure, notebookOf } from '../../engine/notebook-of';
import { workspaceWith } from '../../workspace/local-workspace';
import { blouseSleeve } from '../../notebooks/blouse-sleeve';
import { vNeck } from '../../notebooks/v-neck';

async function open(notebook: Notebook) {
  const { workspace, settled } = workspaceWith(notebook);
  await settled();
  render(ClassSheet, { workspace });
  return { workspace, settled, user: userEvent.setup() };
}

const answers = (): HTMLElement[] => screen.getAllByRole('button', { name: /, step \d+: / });
const covered = (): HTMLElement[] => screen.queryAllByRole('button', { name: /answer covered$/ });

describe('the class sheet', () => {
  it('shows workings with every answer covered; a click uncovers one, and covers it again', async () => {
    const { workspace, user } = await open(lessons());
    expect(covered()).toHaveLength(answers().length);
    await user.click(answers()[0]!);
    expect(
      screen.getByRole('button', { name: 'Practice swatch, stitch gauge, step 1: 18 sts / 10 cm' }),
    ).toBeDefined();
    expect(workspace.announcement).toBe('18 sts / 10 cm');
    await user.click(answers()[0]!);
    expect(covered()).toHaveLength(answers().length);
  });

  it('tells the neighbours of a count with its answer and not before', async () => {
    const { user } = await open(lessons());
    expect(screen.queryByText(/58 is below, 59 above/)).toBeNull();
    await user.click(screen.getByRole('button', { name: 'Show all' }));
    expect(covered()).toEqual([]);
    expect(screen.getByText(/58 is below, 59 above/)).toBeDefined();
    await user.click(screen.getByRole('button', { name: 'Cover all' }));
    expect(covered()).toHaveLength(answers().length);
  });

  it('names a result whose answer is still covered further up, and tells its number once that is uncovered', async () => {
    const { user } = await open(lessons());
    const width = () =>
      within(screen.getByRole('heading', { name: 'Width the scarf will have' }).closest('li')!);
    const step = () => width().getAllByRole('listitem').at(-1)!.textContent;
    expect(step()).toBe('Stitches of the scarf ÷ (Practice swatch, stitch gauge) = ');
    for (const answer of screen.getAllByRole('button', { name: /^Stitches of the scarf, step/ })) {
      await user.click(answer);
    }
    expect(step()).toBe('59 sts ÷ (Practice swatch, stitch gauge) = ');
    await user.click(screen.getByRole('button', { name: /^Practice swatch, stitch gauge, step 1/ }));
    expect(step()).toBe('59 sts ÷ (18 sts / 10 cm) = ');
  });

  it('names it in a function too: what is rounded, and the larger of two', async () => {
    const cells = [
      { ...measure('width', 'length', 41), label: 'Width' },
      { ...formula('half', 'width / 2'), label: 'Half of it' },
      { ...formula('whole', 'ROUND(half)'), label: 'To a whole one' },
      { ...formula('larger', 'MAX(half; width)'), label: 'The larger' },
    ];
    const results = ['half', 'whole', 'larger'].map((cell) => ({ cell, key: 'value' }));
    const { user } = await open({ ...notebookOf(cells), classSheet: { results } });
    const steps = (name: string) =>
      within(screen.getByRole('heading', { name }).closest('li')!)
        .getAllByRole('listitem')
        .map(({ textContent }) => textContent);
    expect(steps('To a whole one')).toEqual(['Half of it → rounded to a whole number = ']);
    expect(steps('The larger')).toEqual(['the greatest of Half of it, 41 cm = ']);
    await user.click(screen.getByRole('button', { name: /^Half of it, step 1/ }));
    expect(steps('To a whole one')).toEqual(['20.5 cm → rounded to a whole number = ']);
    expect(steps('The larger')).toEqual(['the greatest of 20.5 cm, 41 cm = ']);
  });

  it('speaks of a step that is covered by its number, in a later step of the same working', async () => {
    const results = [{ cell: 'armhole', key: 'value' }];
    const { user } = await open({ ...vNeck(), classSheet: { results, size: 'm' } });
    const steps = () => screen.getAllByRole('listitem').map(({ textContent }) => textContent.trim());
    expect(steps().at(-1)).toBe('the larger of 18.42 cm in the chart and step 1 =');
    await user.click(screen.getByRole('button', { name: 'Armhole, step 1: answer covered' }));
    expect(steps().at(-1)).toBe('the larger of 18.42 cm in the chart and 18.97 cm =');
  });

  it('heads each stretch of a piece by its name, and tells none of its counts before they are uncovered', async () => {
    const results = [{ cell: 'sleeve', key: 'piece' }];
    const { user } = await open({ ...blouseSleeve(), classSheet: { results, size: 'c4' } });
    const item = screen.getByRole('heading', { name: 'Sleeve, stretch by stretch' }).closest('li')!;
    const labels = blouseSleeve()
      .sections.flatMap(({ cells }) => cells)
      .flatMap((cell) => (cell.id === 'sleeve' && cell.kind === 'piece' ? cell.stretches : []))
      .map(({ label }) => label);
    const message = within(item);
    for (const label of labels) expect(message.getByText(label)).toBeDefined();
    expect(item.textContent).toContain('Sleeve, armhole to wrist, over');
    expect(item.textContent).not.toContain('41 rows');
    await user.click(screen.getByRole('button', { name: 'Show all' }));
    expect(item.textContent).toContain('41 rows ÷ 8');
  });

  it('says above its results, once, what a section of lessons has to say', async () => {
    await open(lessons());
    expect(screen.getAllByText(/An inch is 2\.54 cm exactly/)).toHaveLength(1);
  });

  it('follows the swatch that the class puts its own counts in', async () => {
    const { workspace, settled, user } = await open(lessons());
    await user.click(screen.getByRole('button', { name: 'Show all' }));
    workspace.do({ do: 'give', cell: 'swatch', key: 'sts.0.count', size: null, value: 20 });
    await settled();
    expect(
      await screen.findByRole('button', { name: 'Stitches of the scarf, step 1: 65 sts' }),
    ).toBeDefined();
  });

  it('is arranged: a result goes earlier, begins further back, and is taken off; undo brings it back', async () => {
    const { workspace, user } = await open(lessons());
    await user.click(screen.getByRole('button', { name: 'Choose and order' }));
    const group = (name: string) => within(screen.getByRole('group', { name }));
    await user.click(group('Width the scarf will have').getByRole('button', { name: 'earlier' }));
    expect(workspace.notebook.classSheet?.results.map(({ cell }) => cell).slice(0, 3)).toEqual([
      'swatch',
      'scarf-made',
      'scarf-sts',
    ]);
    // It is said where the result is now, and the focus has gone along with it.
    expect(workspace.announcement).toBe('Width the scarf will have is number 2 of 13 on the class sheet.');
    const focused = () => [
      document.activeElement?.closest('[role=group]')?.getAttribute('aria-label'),
      document.activeElement?.textContent,
    ];
    expect(focused()).toEqual(['Width the scarf will have', 'earlier']);
    await user.click(group('Width the scarf will have').getByRole('button', { name: 'begin further back' }));
    expect(workspace.announcement).toBe(
      'The working of Width the scarf will have begins with the cells before it.',
    );
    expect(workspace.notebook.classSheet?.results[1]).toEqual({ cell: 'scarf-made', key: 'value', back: 1 });
    await user.click(group('Width the scarf will have').getByRole('button', { name: 'take off' }));
    expect(screen.queryByRole('heading', { name: 'Width the scarf will have' })).toBeNull();
    expect(workspace.announcement).toBe('Width the scarf will have is off the class sheet.');
    expect(focused()).toEqual(['Stitches of the scarf', 'take off']);
    workspace.document.undo();
    expect(await screen.findByRole('heading', { name: 'Width the scarf will have' })).toBeDefined();
  });

  it('does not move the first result earlier, nor lose the focus over it', async () => {
    const { workspace, user } = await open(lessons());
    await user.click(screen.getByRole('button', { name: 'Choose and order' }));
    const before = workspace.notebook;
    const group = within(screen.getByRole('group', { name: 'Practice swatch, stitch gauge' }));
    const earlier = group.getByRole('button', { name: 'earlier' });
    await user.click(earlier);
    expect(workspace.notebook).toBe(before);
    expect(document.activeElement).toBe(earlier);
  });

  it('says that a result is on the sheet only where it could be put there', async () => {
    const { workspace, user } = await open(vNeck());
    workspace.document.readOnly = 'Another window has this notebook.';
    await user.click(screen.getByRole('button', { name: 'Put on the sheet' }));
    expect(workspace.announcement).toBe('Another window has this notebook.');
  });

  it('says what it is for while it is empty, and takes a result there', async () => {
    const { workspace, user } = await open(vNeck());
    expect(screen.getByText(/nothing on the class sheet yet/)).toBeDefined();
    await user.selectOptions(screen.getByLabelText('Cell'), 'armhole');
    await user.click(screen.getByRole('button', { name: 'Put on the sheet' }));
    expect(workspace.notebook.classSheet?.results).toEqual([{ cell: 'armhole', key: 'value' }]);
    const item = await screen.findByRole('heading', { name: 'Armhole' });
    expect(item.closest('li')!.textContent).toContain('the larger of');
    // What one chooses from stays, and with it the focus: the next result is put there in the same way.
    const button = screen.getByRole('button', { name: 'It is on the sheet' });
    expect(document.activeElement).toBe(button);
    expect(workspace.announcement).toBe('Armhole is on the class sheet.');
  });

  it('passes over what is no longer in the notebook, and a notebook without results has nothing to choose', async () => {
    await open({ ...blank(), classSheet: { results: [{ cell: 'gone', key: 'value' }], size: 'gone' } });
    expect(screen.getByText('Nothing in this notebook is worked out yet.')).toBeDefined();
  });
});
