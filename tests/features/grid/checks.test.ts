import { render, screen } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { tick } from 'svelte';
import { describe, expect, it } from 'vitest';
import { type CheckCell, type Edit, type Notebook } from '../../../src/notebook';
import Checks from '../../../src/features/grid/Checks.svelte';
import NotebookGrid from '../../../src/features/grid/NotebookGrid.svelte';
import { measure, notebookOf } from '../../engine/notebook-of';
import { workspaceWith } from '../../workspace/local-workspace';
import { edited } from '../../notebook/edited';
import { blouseSleeve } from '../../notebooks/blouse-sleeve';
import { vNeck } from '../../notebooks/v-neck';

async function open(notebook: Notebook) {
  const { workspace, settled } = workspaceWith(notebook);
  const user = userEvent.setup();
  render(Checks, { workspace });
  const doing = async (edit: Edit): Promise<void> => {
    expect(workspace.do(edit)).toBeUndefined();
    await settled();
    await tick();
  };
  return { workspace, settled, user, doing };
}

/** What the line says, its spaces as they are read. */
const textOf = (): string | undefined =>
  screen.queryByRole('group', { name: 'Checks' })?.textContent.replace(/\s+/g, ' ').trim();

const sizes = ['S', 'M', 'L'].map((label) => ({ id: label.toLowerCase(), label }));
const check = (id: string, condition: string, more: Partial<CheckCell> = {}): CheckCell => ({
  kind: 'check',
  id,
  label: `Check ${id}`,
  name: id,
  condition,
  message: '',
  ...more,
});
const typed = (name: string, values: (number | null)[]) =>
  measure(name, 'stitches', {
    each: Object.fromEntries(sizes.map(({ id }, at) => [id, values[at] ?? null])),
  });

describe('the line that sums up all checks', () => {
  it('says nothing before the notebook is worked, and then that all hold', async () => {
    const { settled } = await open(vNeck());
    expect(textOf()).toBeUndefined();
    await settled();
    await tick();
    expect(textOf()).toBe('All 3 checks hold in every size.');
  });

  it('says nothing where there is nothing to check and nothing wrong', async () => {
    const { settled } = await open(notebookOf([typed('cuff', [40, 44, 48])], sizes));
    await settled();
    await tick();
    expect(textOf()).toBeUndefined();
  });

  it('tells which checks fail, in which sizes, and says so again when it is put right', async () => {
    const cells = [
      typed('cuff', [40, 44, 48]),
      check('a', 'cuff >= STS(42)'),
      check('b', 'cuff > STS(50)'),
      check('c', 'cuff > STS(10)'),
    ];
    const { settled, doing } = await open(notebookOf(cells, sizes));
    await settled();
    await tick();
    expect(textOf()).toBe('2 of 3 checks do not hold: Check a (S), Check b (every size).');
    await doing({ do: 'enter', cell: 'cuff', key: 'value', entry: { value: 52 } });
    expect(textOf()).toBe('All 3 checks hold in every size.');
    await doing({ do: 'give', cell: 'cuff', key: 'value', size: 'm', value: 41 });
    expect(textOf()).toBe('2 of 3 checks do not hold: Check a (M), Check b (M).');
  });

  it('follows a check that is added later, and one that is taken away', async () => {
    const { settled, doing } = await open(notebookOf([typed('cuff', [40, 40, 48])], sizes));
    await settled();
    const cell = check('a', 'cuff', { across: 'differ' });
    await doing({ do: 'add cell', section: 'all', at: 1, cell });
    expect(textOf()).toBe('The check does not hold: Check a (M).');
    await doing({ do: 'give', cell: 'cuff', key: 'value', size: 'm', value: 44 });
    expect(textOf()).toBe('The check holds in every size.');
    await doing({ do: 'move size', size: 'm', at: 2 });
    expect(textOf()).toBe('The check holds in every size.');
    await doing({ do: 'change', cell: { ...cell, across: 'grow' } });
    expect(textOf()).toBe('The check does not hold: Check a (M).');
    await doing({ do: 'remove cell', cell: 'a' });
    expect(textOf()).toBeUndefined();
  });

  it('counts the cells that cannot be worked, and those that wait for them', async () => {
    const cells = [
      typed('cuff', [40, null, 48]),
      { kind: 'formula' as const, id: 'f', label: 'Half', name: 'half', formula: 'cuff / 2' },
      check('a', 'half > STS(10)'),
      check('b', 'STS(2) > STS(1)'),
    ];
    const { settled, doing } = await open(notebookOf(cells, sizes));
    await settled();
    await tick();
    expect(textOf()).toBe('1 of 2 checks holds. 1 cell without a result: cuff; 2 others need it.');
    await doing({ do: 'give', cell: 'cuff', key: 'value', size: 'm', value: 44 });
    expect(textOf()).toBe('Both checks hold in every size.');
  });

  it('names the first six of many', async () => {
    const cells = [1, 2, 3, 4, 5, 6, 7, 8, 9].map((number) => check(`c${number}`, 'STS(1) > STS(2)'));
    const { settled } = await open(notebookOf(cells, sizes.slice(0, 1)));
    await settled();
    await tick();
    expect(textOf()).toBe(
      '9 of 9 checks do not hold: Check c1, Check c2, Check c3, Check c4, Check c5, Check c6 and 3 more.',
    );
  });

  it('of a size that follows no chart it says that a child’s cannot be told', async () => {
    const cells = [measure('tassels', 'number', { value: 4 }), check('a', 'tassels', { across: 'no child' })];
    const { settled } = await open(
      notebookOf(cells, [{ id: 'x', label: 'M', chart: { name: 'woman', size: 'M' } }, sizes[2]!]),
    );
    await settled();
    await tick();
    expect(textOf()).toBe('1 check cannot be told: Check a (L).');
  });

  it('goes to the check on pressing its name', async () => {
    const large = edited(blouseSleeve(), { do: 'enter', cell: 'hand', key: 'value', entry: { value: 30 } });
    const { workspace, settled, user } = await open(large);
    render(NotebookGrid, { workspace, folded: false });
    await settled();
    await user.click(await screen.findByRole('button', { name: 'Hand through the cuff' }));
    expect(workspace.selection.position).toMatchObject({ cell: 'hand-through-the-cuff', key: 'holds' });
    expect((document.activeElement as HTMLElement).dataset).toMatchObject({
      cell: 'hand-through-the-cuff',
      key: 'holds',
    });
  });
});

describe('a check across sizes in the grid', () => {
  it('shows its value in each size, and says which sizes fail', async () => {
    const notebook = notebookOf(
      [
        typed('cuff', [40, 40, 48]),
        check('a', 'cuff', { across: 'differ', message: 'No two cuffs may be alike.' }),
      ],
      sizes,
    );
    const { workspace, settled } = workspaceWith(notebook);
    await settled();
    render(NotebookGrid, { workspace, folded: false });
    expect(screen.getByRole('button', { name: 'Check a, size M: 40 sts' })).toBeDefined();
    const rows = document.querySelector('[data-cell-rows="a"]')!.textContent.replace(/\s+/g, ' ');
    expect(rows).toMatch(/M: No two cuffs may be alike\./);
    expect(workspace.do({ do: 'give', cell: 'cuff', key: 'value', size: 'm', value: 44 })).toBeUndefined();
    await settled();
    await tick();
    expect(document.querySelector('[data-cell-rows="a"]')!.textContent).toMatch(
      /has to differ from the size before; where not:/,
    );
  });
});
