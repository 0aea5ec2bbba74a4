import { render, screen, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { allCells, type Notebook, type WhatIf } from '../../../src/notebook';
import { linesOf, type ValueLine } from '../../../src/workspace/lines';
import ValueCell from '../../../src/features/grid/ValueCell.svelte';
import AskWhatIf from '../../../src/features/what-if/AskWhatIf.svelte';
import Strip from '../../../src/features/what-if/Strip.svelte';
import WhatIfs from '../../../src/features/what-if/WhatIfs.svelte';
import { blank } from '../../../src/starters';
import { workspaceWith } from '../../workspace/local-workspace';
import { small } from '../../workspace/small-notebook';
import { until } from '../../until';

const wider: WhatIf = {
  id: 'wider',
  name: 'Wider cuff',
  on: true,
  changes: [{ cell: 'cuff', key: 'value', size: null, value: 30 }],
};
const withWhatIfs = (...whatIfs: WhatIf[]): Notebook => ({ ...small(), whatIfs });

async function shown(notebook: Notebook) {
  const { workspace, settled } = workspaceWith(notebook);
  await settled();
  const user = userEvent.setup();
  const rendered = render(WhatIfs, { workspace });
  await settled();
  const table = (name: string): Promise<HTMLElement> => screen.findByRole('region', { name });
  const differences = async (): Promise<(string | undefined)[][]> => {
    const region = await table('Every value that is not what it is in the notebook, in its order');
    return within(region)
      .getAllByRole('row')
      .map((row) =>
        [...row.querySelectorAll('th, td')].map((one) => one.textContent?.replace(/\s+/g, ' ').trim()),
      );
  };
  return { workspace, settled, user, differences, rendered };
}

describe('what-ifs side by side', () => {
  it('every value that is not what it is stands with its difference, signed, size by size', async () => {
    const { differences } = await shown(withWhatIfs(wider));
    await until(async () => expect((await differences()).length).toBe(6));
    expect(await differences()).toEqual([
      ['Result', 'S', 'M', 'L'],
      ['Sleeve'],
      ['Cuff cm', '22.0', '24.0', '26.0'],
      ['A Wider cuff', '30.0 +8.0', '30.0 +6.0', '30.0 +4.0'],
      ['Half cm', '11.0', '12.0', '13.0'],
      ['A Wider cuff', '15.0 +4.0', '15.0 +3.0', '15.0 +2.0'],
    ]);
  });

  it('an edit of the notebook flows into them', async () => {
    const { workspace, settled, differences } = await shown(withWhatIfs(wider));
    workspace.do({ do: 'enter', cell: 'half', key: 'value', entry: { formula: 'cuff / 4' } });
    await settled();
    await until(async () => expect((await differences())[5]?.[1]).toBe('7.5 +2.0'));
  });

  it('making one the notebook leaves no what-if, and undo brings it back', async () => {
    const { workspace, user, settled } = await shown(withWhatIfs(wider));
    await user.click(await screen.findByRole('button', { name: 'make it the notebook' }));
    await settled();
    expect(workspace.notebook.whatIfs).toBeUndefined();
    expect(workspace.allResults.number('s', 'half', 'value')).toBe(15);
    workspace.document.undo();
    expect(workspace.notebook.whatIfs).toEqual([wider]);
  });

  it('a notebook of its own has its changes and a title of its own', async () => {
    const { workspace, user } = await shown(withWhatIfs(wider));
    await user.click(await screen.findByRole('button', { name: 'a notebook of its own' }));
    expect(workspace.notebook.title).toBe('Sleeve, Wider cuff');
    expect(workspace.notebook.whatIfs).toBeUndefined();
    expect(allCells(workspace.notebook)[0]).toMatchObject({ entry: { value: 30 } });
  });

  it('is switched off and on, renamed and deleted', async () => {
    const { workspace, user } = await shown(withWhatIfs(wider));
    await user.click(screen.getByRole('checkbox', { name: 'on' }));
    expect(workspace.notebook.whatIfs![0]!.on).toBe(false);
    expect(await screen.findByText(/All what-ifs are off/)).toBeTruthy();
    await user.click(screen.getByRole('checkbox', { name: 'on' }));
    await user.click(screen.getByRole('button', { name: 'Wider cuff' }));
    await user.clear(await screen.findByRole('textbox', { name: 'Name of the what-if' }));
    await user.keyboard('Looser{Enter}');
    expect(workspace.notebook.whatIfs![0]!.name).toBe('Looser');
    await user.click(screen.getByRole('button', { name: 'delete' }));
    expect(workspace.notebook.whatIfs).toBeUndefined();
  });

  it('a fifth that was refused says so no longer once there is room for it', async () => {
    const five = ['a', 'b', 'c', 'd', 'e'].map((id) => ({ ...wider, id, name: id, on: id !== 'e' }));
    const { user, settled } = await shown(withWhatIfs(...five));
    const switches = screen.getAllByRole('checkbox', { name: 'on' });
    await user.click(switches[4]!);
    expect(screen.getByRole('alert').textContent).toContain('switch one off first');
    await user.click(switches[0]!);
    await settled();
    expect(screen.queryByRole('alert')).toBeNull();
    await user.click(switches[4]!);
    expect(screen.queryByRole('alert')).toBeNull();
  });

  it('one whose cell was deleted says so, and what to do, and does not become the notebook', async () => {
    const { workspace, user, settled } = await shown(withWhatIfs(wider));
    workspace.do({ do: 'remove cell', cell: 'cuff' });
    await settled();
    expect(await screen.findByText(/The cell this changes is no longer in the notebook: undo/)).toBeTruthy();
    await user.click(screen.getByRole('button', { name: 'make it the notebook' }));
    expect((await screen.findByRole('alert')).textContent).toContain('no longer in the notebook');
    await user.click(screen.getByRole('button', { name: /^take out the value that is gone/ }));
    expect(workspace.notebook.whatIfs![0]!.changes).toEqual([]);
  });

  it('one on which nothing depends says that nothing is different', async () => {
    const notebook = withWhatIfs({ ...wider, changes: [] });
    await shown(notebook);
    expect(await screen.findByText(/No result changes/)).toBeTruthy();
  });

  it('an empty list teaches how to make one', async () => {
    await shown(small());
    expect(screen.getByText(/A what-if is other values beside the notebook/)).toBeTruthy();
  });
});

describe('a first what-if', () => {
  it('is one press away, and is then no longer offered', async () => {
    const { workspace, user, differences } = await shown(
      small({
        kind: 'ease',
        id: 'finished',
        label: 'Finished bust',
        name: 'finished',
        by: 'length',
        body: { formula: 'bust' },
        ease: { value: 10 },
      }),
    );
    await user.click(screen.getByRole('button', { name: 'Finished bust, 5 cm more ease' }));
    expect(workspace.notebook.whatIfs).toMatchObject([{ name: 'Finished bust, 5 cm more ease', on: true }]);
    await until(async () => expect((await differences()).length).toBeGreaterThan(3));
    expect([...document.querySelectorAll('.ready button')].map((one) => one.textContent)).toEqual([
      'Finished bust, 5 cm less ease',
    ]);
    expect(document.activeElement?.tagName).toBe('SUMMARY');
  });

  it('of an empty notebook says what the notebook needs first', async () => {
    await shown(blank());
    expect(screen.getByText(/give it a swatch or a measure on the\s+leaf first/)).toBeTruthy();
    expect(screen.queryByRole('button', { name: 'What if …' })).toBeNull();
  });
});

describe('a what-if is made from a value', () => {
  async function askWhatIf(key: string, cell = 'cuff', size: string | null = null) {
    const { workspace, settled } = workspaceWith(small());
    await settled();
    HTMLDialogElement.prototype.showModal ??= function (this: HTMLDialogElement) {
      this.open = true;
    };
    workspace.selection.whatIfDraft = { cell, key, size };
    const user = userEvent.setup();
    render(AskWhatIf, { workspace });
    const field = screen.getAllByRole<HTMLInputElement>('textbox', { hidden: true })[0]!;
    return { workspace, settled, user, field };
  }

  it('by the key w on it', async () => {
    const { workspace, settled } = workspaceWith(small());
    await settled();
    const line = linesOf(workspace.cell('cuff')!, false).find(
      (one): one is ValueLine => one.line !== 'words',
    )!;
    render(ValueCell, { workspace, cell: 'cuff', line, size: 'm', called: 'Cuff, size M' });
    screen.getByRole('button', { name: /^Cuff, size M/ }).focus();
    await userEvent.setup().keyboard('w');
    expect(workspace.selection.whatIfDraft).toEqual({ cell: 'cuff', key: 'value', size: 'm' });
  });

  it('with the value typed and Enter; it is named after what it changes', async () => {
    const { workspace, user, field } = await askWhatIf('value');
    await user.clear(field);
    await user.type(field, '30{Enter}');
    await until(() => expect(workspace.notebook.whatIfs).toHaveLength(1));
    expect(workspace.notebook.whatIfs![0]).toMatchObject({
      name: 'Cuff 30.0 cm',
      on: true,
      changes: [{ cell: 'cuff', key: 'value', size: null, value: 30 }],
    });
    expect(allCells(workspace.notebook)).toEqual(allCells(small()));
  });

  it('instead of a result, as a formula of the right unit', async () => {
    const { workspace, user, field } = await askWhatIf('value', 'half');
    expect(field.value).toBe('=cuff ÷ 2');
    await user.clear(field);
    await user.type(field, '=cuff ÷ 3{Enter}');
    await until(() => expect(workspace.notebook.whatIfs).toHaveLength(1));
    expect(workspace.notebook.whatIfs![0]!.changes[0]).toMatchObject({ formula: 'cuff / 3' });
  });

  it('and what cannot be typed there says so', async () => {
    const { workspace, user, field } = await askWhatIf('value');
    await user.clear(field);
    await user.type(field, 'wide{Enter}');
    expect((await screen.findByRole('alert', { hidden: true })).textContent).toContain('Type a number');
    expect(workspace.notebook.whatIfs).toBeUndefined();
  });
});

describe('the strip', () => {
  it('names the what-ifs that are on, switches them off, and leads to them', async () => {
    const { workspace, settled } = workspaceWith(
      withWhatIfs(wider, { ...wider, id: 'other', name: 'Other', on: false }),
    );
    await settled();
    const user = userEvent.setup();
    render(Strip, { workspace });
    const strip = screen.getByRole('region', { name: 'What-ifs that are on' });
    expect(within(strip).getAllByRole('listitem')).toHaveLength(1);
    await user.click(within(strip).getByRole('button', { name: 'Side by side' }));
    expect(workspace.view.current).toBe('what-ifs');
    await user.click(within(strip).getByRole('button', { name: 'Switch Wider cuff off' }));
    expect(workspace.notebook.whatIfs![0]!.on).toBe(false);
  });
});
