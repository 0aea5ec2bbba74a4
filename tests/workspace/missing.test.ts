import { render, screen, within } from '@testing-library/svelte';
import { describe, expect, it } from 'vitest';
import GiveOrTake from '../../src/features/accuracy/GiveOrTake.svelte';
import { missingAt } from '../../src/workspace/missing';
import { workspaceWith } from './local-workspace';
import { vNeck } from '../notebooks/v-neck';

/** The V-neck, one of the body fabric's numbers taken out. */
async function without(key: string) {
  const { workspace, settled } = workspaceWith(vNeck());
  await settled();
  workspace.do({ do: 'give', cell: 'body', key, size: null, value: null });
  await settled();
  return workspace;
}

const backStitches = { cell: 'back-sts', key: 'count' };

describe('what results wait for', () => {
  it('is the value that is empty, once, however many results wait for it', async () => {
    const workspace = await without('sts.0.count');
    expect(missingAt(workspace, [backStitches, { cell: 'back', key: 'length' }])).toEqual([
      {
        from: { cell: 'body', key: 'sts.0.count' },
        message: 'Stitches counted is empty: type a value, or = and a formula.',
        sizes: '',
      },
    ]);
  });

  it('is named by what was measured: the length that stitches or rows were counted over', async () => {
    const workspace = await without('sts.0.over');
    expect(missingAt(workspace, [backStitches])[0]!.message).toBe(
      'Length the stitches were counted over is empty: type a value, or = and a formula.',
    );
  });

  it('is nothing where all is worked, and names the sizes where it is so in some', async () => {
    const whole = workspaceWith(vNeck());
    await whole.settled();
    expect(missingAt(whole.workspace, [backStitches])).toEqual([]);
    const notebook = vNeck();
    const [first, second] = notebook.sizes;
    const each = Object.fromEntries(
      notebook.sizes.map((size) => [size.id, size === first || size === second ? null : 90]),
    );
    const sections = notebook.sections.map((section) => ({
      ...section,
      cells: section.cells.map((cell) =>
        cell.id === 'bust' && cell.kind === 'measure' ? { ...cell, entry: { each } } : cell,
      ),
    }));
    const { workspace, settled } = workspaceWith({ ...notebook, sections });
    await settled();
    expect(missingAt(workspace, [backStitches])).toMatchObject([
      { from: { cell: 'bust', key: 'value' }, sizes: `${first!.label}, ${second!.label}` },
    ]);
  });

  it('stands over the table of give or take, with the way to it', async () => {
    const workspace = await without('sts.0.count');
    render(GiveOrTake, { workspace });
    const list = within(await screen.findByRole('list', { name: 'What is missing' }));
    expect(list.getAllByRole('listitem')).toHaveLength(1);
    expect(list.getByRole('listitem').textContent).toMatch(/^Body fabric: Stitches counted is empty/);
    expect(list.getByRole('button', { name: 'Go to Body fabric' })).toBeDefined();
  });
});
