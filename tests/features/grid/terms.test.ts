import { fireEvent, render, screen } from '@testing-library/svelte';
import { tick } from 'svelte';
import { expect, it } from 'vitest';
import type { Settings } from '../../../src/notebook';
import NotebookGrid from '../../../src/features/grid/NotebookGrid.svelte';
import { hatCrown } from '../../../src/starters';
import { workspaceWith } from '../../workspace/local-workspace';

async function open(settings: Partial<Settings>) {
  const hat = hatCrown();
  const sections = hat.sections.map((section) => ({
    ...section,
    cells: section.cells.filter(({ id }) => ['rib', 'hat'].includes(id)),
  }));
  const { workspace, settled } = workspaceWith({
    ...hat,
    sections,
    settings: { ...hat.settings, ...settings },
  });
  await settled();
  render(NotebookGrid, { workspace, folded: false });
  const swatch = () => document.querySelector('[data-cell-rows="rib"]')!.textContent;
  const ends = async () => {
    const name = /last stitches of Hat/;
    await fireEvent.click(screen.getByRole('button', { name }));
    const list = screen.getByRole('combobox', { name });
    const offered = [...list.querySelectorAll('option')].map((option) => option.textContent);
    await fireEvent.keyDown(list, { key: 'Escape' });
    return offered;
  };
  return { workspace, swatch, ends };
}

it('a knitter in the US reads gauge and bound off; in the UK, tension and cast off', async () => {
  const { workspace, swatch, ends } = await open({ craft: 'knitting', terms: 'US' });
  expect(swatch()).toContain('gauge');
  expect(await ends()).toEqual(['bound off', 'held']);
  workspace.do({ do: 'set', settings: { terms: 'UK' } });
  await tick();
  expect(swatch()).toContain('tension');
  expect(swatch()).not.toContain('gauge');
  expect(await ends()).toEqual(['cast off', 'held']);
});

it('crochet is fastened off', async () => {
  const { ends } = await open({ craft: 'crochet', terms: 'UK' });
  expect(await ends()).toEqual(['fastened off', 'held']);
});
