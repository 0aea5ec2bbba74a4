import { render, screen, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { describe, expect, it, vi } from 'vitest';
import { allCells, cellById, freshCell, kinds, type Notebook } from '../../../src/notebook';
import { goTo } from '../../../src/ui/focus';
import NotebookGrid from '../../../src/features/grid/NotebookGrid.svelte';
import { workspaceWith } from '../../workspace/local-workspace';
import { measured, small } from '../../workspace/small-notebook';
import { until } from '../../until';
import { vNeck } from '../../notebooks/v-neck';

/** The field that is being typed in, once it is there. */
async function openField(): Promise<HTMLInputElement> {
  await until(() => expect(document.activeElement).toBeInstanceOf(HTMLInputElement));
  return document.activeElement as HTMLInputElement;
}

async function open(notebook: Notebook = vNeck()) {
  const { workspace, settled } = workspaceWith(notebook);
  await settled();
  const user = userEvent.setup();
  render(NotebookGrid, { workspace, folded: false });
  await vi.dynamicImportSettled();
  await until(() => expect(workspace.view.drawing).toBe(false));
  const cellNamed = (name: string | RegExp): HTMLElement => screen.getByRole('button', { name });
  const retype = async (name: string | RegExp, text: string): Promise<void> => {
    cellNamed(name).focus();
    await user.keyboard('{Enter}');
    await user.clear(await openField());
    await user.keyboard(text);
  };
  return { workspace, settled, user, cellNamed, retype };
}

describe('a value', () => {
  it('is changed with Enter, and what depends on it follows without pressing anything', async () => {
    const { settled, user, retype, cellNamed } = await open();
    expect(cellNamed('Back stitches, size M: 83 sts')).toBeDefined();
    await retype('Body fabric, stitches counted: 14 sts', '15');
    await user.keyboard('{Enter}');
    await settled();
    // 37 in and 20 cm of ease, halved, at 15 sts to 10 cm: 85.5, and 83 is the nearest multiple of 8 plus 3.
    expect(
      await screen.findByRole('button', { name: 'Back stitches, wanted, size M: 85.5 sts' }),
    ).toBeDefined();
    expect(cellNamed('Back stitches, size M: 83 sts')).toBeDefined();
    expect(cellNamed('Back stitches, size L: 91 sts')).toBeDefined();
  });

  it('is left as it was with Escape', async () => {
    const { workspace, user, retype, cellNamed } = await open();
    const before = workspace.notebook;
    await retype('Width of the neck, size M: 17.5 cm', '99');
    await user.keyboard('{Escape}');
    expect(workspace.notebook).toBe(before);
    expect(cellNamed('Width of the neck, size M: 17.5 cm')).toBeDefined();
  });

  it('of the body that no chart comes near stands, and is asked about for its size until it is mended', async () => {
    const { workspace, user, retype } = await open(
      small(measured('waist', { each: { s: 64, m: 74, l: 84 } })),
    );
    expect(screen.queryByText(/Measurements here are in cm/u)).toBeNull();
    await retype('Waist, size M: 74.0 cm', '7.4');
    await user.keyboard('{Enter}');
    const question = await screen.findByText(/Is the waist 7\.4 cm\? Measurements here are in cm/u);
    expect(question.textContent.trim()).toMatch(/^M: Is the waist/u);
    expect(cellById(workspace.notebook, 'waist')).toMatchObject({ entry: { each: { m: 7.4 } } });
    await retype('Waist, size M: 7.4 cm', '74');
    await user.keyboard('{Enter}');
    await until(() => expect(screen.queryByText(/Measurements here are in cm/u)).toBeNull());
  });

  it('that is no number stays in the editor with a sentence, and nothing is changed', async () => {
    const { workspace, user, retype } = await open();
    const before = workspace.notebook;
    await retype('Width of the neck, size M: 17.5 cm', 'wide');
    await user.keyboard('{Enter}');
    expect((await screen.findByRole('alert')).textContent).toMatch(/Type a number, such as 26 cm/);
    expect(screen.getByRole('textbox')).toHaveProperty('value', 'wide');
    expect(workspace.notebook).toBe(before);
  });

  it('left empty says on the cells after it what is missing', async () => {
    const { settled, user, retype } = await open();
    await retype('Width of the neck, size M: 17.5 cm', '{Backspace}');
    await user.keyboard('{Enter}');
    await settled();
    const shoulder = document.querySelector<HTMLElement>('[data-cell-rows="shoulder-sts"]')!;
    expect(await within(shoulder).findByText(/Needs Width of the neck/)).toBeDefined();
  });
});

describe('a formula', () => {
  it('that cannot be is refused in its editor, and taken when it is put right', async () => {
    const { workspace, settled, user, retype } = await open();
    await retype(/^Formula of Body length/, 'back_waist_length + 14');
    await user.keyboard('{Enter}');
    expect((await screen.findByRole('alert')).textContent).toMatch(/14 of what/);
    await user.clear(await openField());
    await user.keyboard('back_waist_length + CM(10){Enter}');
    await settled();
    expect(cellById(workspace.notebook, 'body-length')).toHaveProperty(
      'formula',
      'back_waist_length + CM(10)',
    );
  });

  it('of a result can be taken over, and given back by leaving nothing', async () => {
    const { workspace, settled, user, retype, cellNamed } = await open();
    await user.click(cellNamed('Back stitches: all that is worked out, and how'));
    await retype(/^Formula of Back stitches: = FITREPEAT/, 'back_sts_wanted');
    await user.keyboard('{Enter}');
    await settled();
    expect(await screen.findByRole('button', { name: 'Back stitches, size M: 79.8 sts' })).toBeDefined();
    await retype(/^Formula of Back stitches: = back_sts_wanted/, '{Backspace}');
    await user.keyboard('{Enter}');
    await settled();
    expect(cellById(workspace.notebook, 'back-sts')?.taken).toBeUndefined();
  });
});

describe('a name', () => {
  it('that is taken is refused; a free one changes the formulas in the grid', async () => {
    const { settled, user, retype, cellNamed } = await open();
    await user.click(cellNamed('Bust: all that is worked out, and how'));
    await retype(/^Bust is called bust/, 'neck_width');
    await user.keyboard('{Enter}');
    expect((await screen.findByRole('alert')).textContent).toMatch(/is taken by "Width of the neck"/);
    await user.clear(await openField());
    await user.keyboard('chest{Enter}');
    await settled();
    expect(cellNamed('Formula of Finished bust, body: = chest')).toBeDefined();
  });
});

describe('by keyboard', () => {
  it('arrows go from place to place, along a row and between rows', async () => {
    const { user, cellNamed } = await open();
    cellNamed('Bust, size M: 94.0 cm').focus();
    await user.keyboard('{ArrowRight}');
    expect(document.activeElement).toBe(cellNamed('Bust, size L: 104.1 cm'));
    await user.keyboard('{Home}');
    expect(document.activeElement).toBe(cellNamed('Bust: change the label'));
    expect(document.querySelectorAll('[data-place][tabindex="0"]')).toHaveLength(1);
  });

  it('a digit begins typing over the value', async () => {
    const { settled, user, cellNamed } = await open();
    cellNamed('Bust, size M: 94.0 cm').focus();
    await user.keyboard('97{Enter}');
    await settled();
    expect(await screen.findByRole('button', { name: 'Bust, size M: 97.0 cm' })).toBeDefined();
    expect(cellNamed('Bust, size L: 104.1 cm')).toBeDefined();
  });
});

it('every kind of cell has its lines', async () => {
  const notebook: Notebook = {
    ...vNeck(),
    sections: [
      ...vNeck().sections,
      {
        id: 'more',
        label: 'More',
        cells: [
          { kind: 'note', id: 'n', label: 'Note', name: 'note', text: 'Try it <b>on</b>.' },
          freshCell(vNeck(), 'notions', 'Tassels', 'tassels'),
          freshCell(vNeck(), 'spacing', 'Yoke', 'yoke'),
          freshCell(vNeck(), 'as made', 'Made', 'made'),
        ],
      },
    ],
  };
  await open(notebook);
  const shown = new Map<string, string>();
  for (const cell of allCells(notebook)) {
    const rows = document.querySelector(`[data-cell-rows="${cell.id}"]`);
    shown.set(cell.kind, (shown.get(cell.kind) ?? '') + (rows?.textContent?.trim() ?? ''));
  }
  expect([...shown.keys()].toSorted()).toEqual(Object.keys(kinds).toSorted());
  for (const [kind, text] of shown) expect(text, kind).not.toBe('');
  expect(screen.getByText('Try it <b>on</b>.')).toBeDefined();
});

it('no field stands in the grid before something is edited: the browser would lay all of it out to fill it in', async () => {
  const { workspace } = await open();
  for (const cell of allCells(workspace.notebook)) workspace.view.toggle(cell.id);
  await vi.dynamicImportSettled();
  expect(screen.getAllByRole('button', { name: /^Section of/ }).length).toBeGreaterThan(10);
  const fields = () => screen.getByRole('grid').querySelectorAll('input, select, textarea');
  expect(fields()).toHaveLength(0);
  screen.getByRole('button', { name: 'How Back is worked: flat' }).click();
  expect(fields()).toHaveLength(1);
});

it('a flat piece says which side its first row is on, and one in the round has no other', async () => {
  const { workspace, user, settled, cellNamed } = await open();
  const side = () => screen.queryByRole('button', { name: /^First row of Back/ });
  const back = () =>
    allCells(workspace.notebook).find(({ label, kind }) => kind === 'piece' && label === 'Back')!;
  const before = back();
  await user.click(cellNamed('First row of Back: right side'));
  await user.selectOptions(screen.getByLabelText('First row of Back'), 'wrong side');
  await settled();
  const { id } = back();
  expect(back()).toMatchObject({ startsOn: 'WS' });
  expect(workspace.results(id).text('m', id, 'piece')).toContain('"startsOn":"WS"');
  await user.click(cellNamed('First row of Back: wrong side'));
  await user.selectOptions(screen.getByLabelText('First row of Back'), 'right side');
  expect(back()).toEqual({ ...before, startsOn: 'RS' });
  await settled();
  expect(workspace.results(id).text('m', id, 'piece')).not.toContain('startsOn');
  await user.click(cellNamed('How Back is worked: flat'));
  await user.selectOptions(screen.getByLabelText('How Back is worked'), 'in the round');
  expect(side()).toBeNull();
});

describe('a large notebook', () => {
  /** So many cells, each of one size. */
  const large = (cells: number): Notebook => {
    const { sizes, settings } = vNeck();
    const all = Array.from({ length: cells }, (_, at) => ({
      ...freshCell(vNeck(), 'note', `Note ${at}`, `note-${at}`),
      name: `note_${at}`,
    }));
    return { title: 'Large', sizes, settings, sections: [{ id: 'all', label: 'All', cells: all }] };
  };
  const drawn = (): number => document.querySelectorAll('[data-cell-rows]').length;

  it('is drawn as far as a person reads at once, and to its end right after', async () => {
    const { workspace } = workspaceWith(large(300));
    render(NotebookGrid, { workspace, folded: false });
    expect(drawn()).toBeGreaterThan(20);
    expect(drawn()).toBeLessThan(60);
    await until(() => expect(drawn()).toBe(300));
  });

  it('is drawn to its end at once where a person goes to a cell further down', async () => {
    const { workspace } = workspaceWith(large(300));
    render(NotebookGrid, { workspace, folded: false });
    goTo(workspace, { cell: 'note-299', key: '' });
    expect(drawn()).toBe(300);
    await until(() => expect(document.activeElement).toHaveProperty('dataset.cell', 'note-299'));
  });
});
