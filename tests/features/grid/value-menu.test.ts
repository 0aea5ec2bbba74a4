import { render, screen } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { cellById, type Notebook } from '../../../src/notebook';
import { linesOf, type ValueLine } from '../../../src/workspace/lines';
import ValueMenu from '../../../src/features/grid/ValueMenu.svelte';
import { workspaceWith } from '../../workspace/local-workspace';
import { measured, small } from '../../workspace/small-notebook';

async function open(id: string, size: string | null, notebook: Notebook = small()) {
  const { workspace, settled } = workspaceWith(notebook);
  await settled();
  const user = userEvent.setup();
  const cell = cellById(workspace.notebook, id)!;
  const line = linesOf(cell, false).find((one): one is ValueLine => one.line !== 'words')!;
  render(ValueMenu, { workspace, cell, line, size });
  const entry = (): unknown => (cellById(workspace.notebook, id) as { entry: unknown }).entry;
  const items = (): string[] => screen.getAllByRole('menuitem').map((item) => item.textContent!.trim());
  const start = async (): Promise<void> => {
    screen.getByRole('button', { name: /: this value/ }).focus();
    await user.keyboard('{Enter}');
  };
  return { workspace, user, entry, items, start };
}

describe('what can stand on a value line', () => {
  it('where each size has its value: one for all, filling, a chart, a formula', async () => {
    const { start, items } = await open('cuff', 'm');
    await start();
    expect(items()).toEqual([
      'Same in all sizes that of M',
      'Copy to larger sizes after M',
      'From a body chart…',
      'What if … W',
      'Use a formula',
    ]);
    expect(document.activeElement?.textContent).toMatch(/^Same in all sizes/);
  });

  it('does not offer a chart for stitches, nor filling from the last size', async () => {
    const notebook = small(measured('sts', { each: { s: 40, m: 44, l: 48 } }, 'stitches'));
    const { start, items } = await open('sts', 'l', notebook);
    await start();
    expect(items()).toEqual(['Same in all sizes that of L', 'What if … W', 'Use a formula']);
  });

  it('is nothing on a result', async () => {
    const notebook = small({
      kind: 'ease',
      id: 'fin',
      label: 'Finished',
      name: 'fin',
      by: 'length',
      body: { value: 90 },
      ease: { value: 4 },
    });
    await open('fin', 'm', notebook);
    expect(screen.queryByRole('button')).toBeNull();
  });
});

describe('choosing', () => {
  it('one value for every size takes that of the size, and the focus goes back', async () => {
    const { workspace, user, start, entry } = await open('cuff', 'm');
    await start();
    await user.keyboard('{Enter}');
    expect(entry()).toEqual({ value: 24 });
    expect(screen.queryByRole('menu')).toBeNull();
    expect(document.activeElement?.getAttribute('aria-haspopup')).toBe('menu');
    expect(workspace.document.undoes).toBe('the change to Cuff');
  });

  it('a value for each size keeps what a formula has worked out', async () => {
    const { user, start, entry } = await open(
      'quarter',
      'm',
      small(measured('quarter', { formula: 'cuff / 4' })),
    );
    await start();
    await user.click(screen.getByRole('menuitem', { name: 'Different in each size' }));
    expect(entry()).toEqual({ each: { s: 5.5, m: 6, l: 6.5 } });
  });

  it('to fill along gives the sizes after it the value', async () => {
    const { user, start, entry } = await open('cuff', 's');
    await start();
    await user.keyboard('{ArrowDown}{Enter}');
    expect(entry()).toEqual({ each: { s: 22, m: 22, l: 22 } });
  });

  it('a chart is a measure of it, then a point of its range', async () => {
    const { user, start, entry } = await open('cuff', 'm');
    await start();
    await user.click(screen.getByRole('menuitem', { name: 'From a body chart…' }));
    await user.click(screen.getByRole('menuitemradio', { name: 'Upper arm' }));
    expect(entry()).toEqual({ chart: 'upperArm', point: 'middle' });
  });

  it('the upper end of the range keeps following the same measure', async () => {
    const { user, start, entry } = await open('bust', 'm');
    await start();
    await user.click(screen.getByRole('menuitem', { name: 'From a body chart…' }));
    const now = screen.getByRole('menuitemradio', { name: 'Bust or chest' });
    expect(now.getAttribute('aria-checked')).toBe('true');
    expect(document.activeElement).toBe(now);
    await user.click(screen.getByRole('menuitemradio', { name: /^Upper end/ }));
    expect(entry()).toEqual({ chart: 'bust', point: 'upper' });
  });

  it('a formula begins one in the place', async () => {
    const { workspace, user, start } = await open('cuff', 'm');
    await start();
    await user.keyboard('{End}{Enter}');
    expect(workspace.selection.editing).toMatchObject({
      cell: 'cuff',
      key: 'value',
      what: 'formula',
      begin: '= ',
    });
  });

  it('nothing, with Escape, changes nothing', async () => {
    const { workspace, user, start } = await open('cuff', 'm');
    const before = workspace.notebook;
    await start();
    await user.keyboard('{ArrowUp}{Escape}');
    expect(workspace.notebook).toBe(before);
    expect(screen.queryByRole('menu')).toBeNull();
  });
});
