import { fireEvent, render, screen } from '@testing-library/svelte';
import userEvent, { type UserEvent } from '@testing-library/user-event';
import { describe, expect, it, vi } from 'vitest';
import { cellById, type Cell, type Notebook } from '../../../src/notebook';
import NotebookGrid from '../../../src/features/grid/NotebookGrid.svelte';
import { workspaceWith } from '../../workspace/local-workspace';
import { small } from '../../workspace/small-notebook';

async function open(notebook: Notebook = small()) {
  const { workspace, settled } = workspaceWith(notebook);
  await settled();
  const user = userEvent.setup();
  render(NotebookGrid, { workspace, folded: false });
  await vi.dynamicImportSettled();
  const cellNamed = (name: string | RegExp): HTMLElement => screen.getByRole('button', { name });
  const at = (name: string | RegExp): void => cellNamed(name).focus();
  const focused = (): string | null => document.activeElement?.getAttribute('aria-label') ?? null;
  const chosen = (): string[] =>
    [...document.querySelectorAll('td[aria-selected="true"]')].map((cell) => cell.textContent!.trim());
  const entry = (id: string): unknown => (cellById(workspace.notebook, id) as { entry: unknown }).entry;
  const clip = (type: 'copy' | 'cut' | 'paste', text = ''): DataTransfer => {
    const clipboardData = new DataTransfer();
    if (text) clipboardData.setData('text/plain', text);
    const event = new ClipboardEvent(type, { bubbles: true, cancelable: true, clipboardData });
    document.body.dispatchEvent(event);
    return clipboardData;
  };
  /** What reads it is fetched first. */
  const paste = async (text: string): Promise<void> => {
    clip('paste', text);
    await vi.dynamicImportSettled();
  };
  return { workspace, settled, user, cellNamed, at, focused, chosen, entry, clip, paste };
}

const fit: Cell = {
  kind: 'fit',
  id: 'sts',
  label: 'Stitches',
  name: 'sts',
  counts: 'stitches',
  target: { each: { s: 40, m: 44, l: 48 } },
  multiple: { value: 8 },
  plus: { value: 3 },
  rule: 'nearest',
};

describe('going about the grid', () => {
  it('up and down keep to the size, past a value for every size', async () => {
    const { user, at, focused } = await open();
    at(/^Bust, size M/);
    await user.keyboard('{ArrowDown}{ArrowDown}');
    expect(focused()).toMatch(/^Half, size M/);
    await user.keyboard('{ArrowUp}{ArrowUp}{ArrowUp}');
    expect(focused()).toMatch(/^Cuff, size M/);
  });

  it('Home and End go to the ends of the row, with Ctrl to those of the notebook', async () => {
    const { user, at, focused } = await open();
    at(/^Bust, size M/);
    await user.keyboard('{End}');
    expect(focused()).toMatch(/^Bust, size L/);
    await user.keyboard('{Home}');
    expect(focused()).toBe('Bust: change the label');
    await user.keyboard('{Control>}{Home}{/Control}');
    expect(focused()).toMatch(/^Section Sleeve/);
    await user.keyboard('{Control>}{End}{/Control}');
    const elements = document.querySelectorAll('[data-place]:not(:disabled)');
    expect(document.activeElement).toBe(elements[elements.length - 1]);
  });

  it('Page Up stops at the first row that has the place', async () => {
    const { user, at } = await open();
    at(/^Half, size L/);
    await user.keyboard('{PageUp}');
    expect(document.activeElement?.closest('tr')).toBe(document.querySelector('[data-section="sleeve"]'));
  });

  it('has one stop for Tab, also after an editor was left', async () => {
    const { user, at } = await open();
    const after = document.body.appendChild(document.createElement('button'));
    const stops = () => document.querySelectorAll('[data-place][tabindex="0"]');
    at(/^Cuff, size M/);
    await user.keyboard('25{Enter}');
    await user.tab();
    expect(document.activeElement).toBe(after);
    expect(stops()).toHaveLength(1);
    await user.tab({ shift: true });
    expect(document.activeElement?.getAttribute('aria-label')).toMatch(/^Cuff, size M/);
    after.remove();
  });

  it('goes on to the next size with Tab from an editor, and back with Shift Tab, and takes what was typed', async () => {
    const { user, at } = await open();
    const focused = () => document.activeElement?.getAttribute('aria-label');
    const settled = (): Promise<unknown> => new Promise((resolve) => setTimeout(resolve));
    at(/^Cuff, size S/);
    await user.keyboard('25');
    await user.tab();
    await settled();
    expect(focused()).toMatch(/^Cuff, size M/);
    await user.keyboard('27');
    await user.tab({ shift: true });
    await settled();
    expect(focused()).toBe('Cuff, size S: 25.0 cm');
    await user.keyboard('{Enter}');
    await user.keyboard('{Control>}a{/Control}wide');
    await user.tab();
    await settled();
    expect(screen.getByRole('alert').textContent).toMatch(/^Type a number/);
    expect(document.activeElement?.tagName).toBe('INPUT');
  });

  const choice = (): HTMLElement => screen.getByRole('button', { name: /^Stitches: which count is taken/ });
  const list = (): HTMLSelectElement => screen.getByRole<HTMLSelectElement>('combobox');
  /** In a browser that says which list is open, or in one that does not know the selector. */
  function say(open: () => boolean): void {
    const matches = list().matches.bind(list());
    const inWords = (selector: string): boolean => (selector === ':open' ? open() : matches(selector));
    Object.defineProperty(list(), 'matches', { value: inWords });
  }
  const press = (key: string, altKey = false): Promise<boolean> =>
    fireEvent.keyDown(document.activeElement!, { key, altKey });

  it('goes on from a choice without changing it', async () => {
    const { user, workspace, at } = await open(small(fit));
    const before = workspace.notebook;
    at(/^Stitches: which count is taken: the nearest/);
    await user.keyboard('{ArrowDown}');
    expect(document.activeElement).not.toBe(choice());
    expect(workspace.notebook).toBe(before);
  });

  it.each([
    ['Enter', (user: UserEvent) => user.keyboard('{Enter}')],
    ['F2', (user: UserEvent) => user.keyboard('{F2}')],
    ['Alt and an arrow', (user: UserEvent) => user.keyboard('{Alt>}{ArrowDown}{/Alt}')],
    ['a press', (user: UserEvent) => user.click(choice())],
  ])('opens the list of a choice with %s, and is back on the choice once it is made', async (_, opening) => {
    const { user, workspace } = await open(small(fit));
    choice().focus();
    await opening(user);
    expect(document.activeElement).toBe(list());
    await user.selectOptions(list(), 'the next up');
    expect(cellById(workspace.notebook, 'sts')).toMatchObject({ rule: 'up' });
    expect(document.activeElement).toBe(choice());
    expect(choice().textContent).toBe('the next up');
  });

  it('leaves the arrows to a list that is open, and goes on from one that was closed', async () => {
    const { user } = await open(small(fit));
    choice().focus();
    await user.keyboard('{Enter}');
    say(() => true);
    expect(await press('ArrowDown')).toBe(true);
    expect(document.activeElement).toBe(list());
    say(() => false);
    expect(await press('ArrowDown')).toBe(false);
    expect(screen.queryByRole('combobox')).toBeNull();
    expect(document.activeElement).not.toBe(choice());
  });

  it('leaves the arrows to the list until Escape, where the browser does not say whether it is open', async () => {
    const { user, workspace } = await open(small(fit));
    const before = workspace.notebook;
    choice().focus();
    await user.keyboard('{Enter}');
    say(() => {
      throw new SyntaxError('unknown selector');
    });
    expect(await press('ArrowDown')).toBe(true);
    expect(document.activeElement).toBe(list());
    await press('Escape');
    expect(document.activeElement).toBe(choice());
    expect(workspace.notebook).toBe(before);
  });
});

describe('a block of values', () => {
  it('is chosen with Shift and the arrows, over the lines between', async () => {
    const { user, at, chosen, focused, workspace } = await open();
    at(/^Cuff, size M/);
    await user.keyboard('{Shift>}{ArrowRight}{ArrowDown}{ArrowDown}{/Shift}');
    expect(chosen()).toHaveLength(5);
    expect(focused()).toMatch(/^Hem/);
    expect(workspace.announcement).toBe('2 sizes on 3 lines chosen.');
    await user.keyboard('{Escape}');
    expect(chosen()).toEqual([]);
  });

  it('is gone when the focus goes elsewhere', async () => {
    const { user, at, chosen } = await open();
    at(/^Cuff, size S/);
    await user.keyboard('{Shift>}{End}{/Shift}');
    expect(chosen()).toHaveLength(3);
    await user.keyboard('{ArrowDown}');
    expect(chosen()).toEqual([]);
  });

  it('is emptied with Delete as one edit; what is worked out stays', async () => {
    const { user, at, entry, workspace } = await open();
    at(/^Cuff, size M/);
    await user.keyboard('{Shift>}{ArrowDown}{ArrowDown}{ArrowDown}{/Shift}{Delete}');
    expect(entry('cuff')).toEqual({ each: { s: 22, m: null, l: 26 } });
    expect(entry('bust')).toEqual({ chart: 'bust', point: 'middle' });
    expect(entry('hem')).toEqual({ value: null });
    expect(workspace.document.undoes).toBe('emptying 2 values');
    workspace.document.undo();
    expect(entry('cuff')).toEqual({ each: { s: 22, m: 24, l: 26 } });
  });

  it('fills its first size into the others with >', async () => {
    const { user, at, entry } = await open();
    at(/^Cuff, size S/);
    await user.keyboard('{Shift>}{ArrowRight}{ArrowDown}{/Shift}>');
    expect(entry('cuff')).toEqual({ each: { s: 22, m: 22, l: 26 } });
    expect(Object.keys((entry('bust') as { own: object }).own)).toEqual(['m']);
  });

  it('of one place fills all sizes after it', async () => {
    const { user, at, entry } = await open();
    at(/^Cuff, size S/);
    await user.keyboard('>');
    expect(entry('cuff')).toEqual({ each: { s: 22, m: 22, l: 22 } });
  });

  it('is still marked where a line is drawn again', async () => {
    const { user, at, chosen, workspace } = await open();
    at(/^Cuff, size S/);
    await user.keyboard('{Shift>}{ArrowDown}{ArrowDown}{/Shift}');
    expect(chosen()).toHaveLength(3);
    workspace.do({ do: 'enter', cell: 'hem', key: 'value', entry: { each: { s: 5, m: 6, l: 7 } } });
    await new Promise((resolve) => setTimeout(resolve));
    expect(chosen().map((text) => text.split(' ')[0])).toEqual(['22.0', expect.stringMatching(/^83/), '5.0']);
  });
});

describe('copy and paste', () => {
  it('copies a block as it is shown, tab-separated and as a table', async () => {
    const { user, at, clip } = await open();
    at(/^Cuff, size M/);
    await user.keyboard('{Shift>}{ArrowRight}{ArrowDown}{/Shift}');
    const copied = clip('copy');
    expect(copied.getData('text/plain')).toBe('24.0\t26.0\n94.0\t104.1');
    expect(copied.getData('text/html')).toContain('<tr><td>24.0</td><td>26.0</td></tr>');
  });

  it('pastes what was copied here to its last digit', async () => {
    const { workspace, settled, user, at, clip, entry, paste } = await open();
    workspace.do({ do: 'give', cell: 'cuff', key: 'value', size: 's', value: 26.0351 });
    await settled();
    at(/^Cuff, size S/);
    const text = clip('copy').getData('text/plain');
    expect(text).toBe('26.0');
    await user.keyboard('{ArrowRight}');
    await paste(text);
    expect(entry('cuff')).toEqual({ each: { s: 26.0351, m: 26.0351, l: 26 } });
  });

  it('pastes a block from elsewhere as one edit and says what was left out', async () => {
    const { workspace, at, entry, paste } = await open();
    at(/^Cuff, size M/);
    await paste('25\t27\t29\n95\t105\n');
    expect(entry('cuff')).toEqual({ each: { s: 22, m: 25, l: 27 } });
    expect(entry('bust')).toMatchObject({ own: { m: 95, l: 105 } });
    expect(workspace.complaint).toBe('4 values pasted; 1 was left out: 1 is beyond the last size.');
    expect(workspace.document.undoes).toBe('pasting 4 values');
    workspace.document.undo();
    expect(entry('bust')).toEqual({ chart: 'bust', point: 'middle' });
  });

  it('pastes from the first corner of a chosen block', async () => {
    const { user, at, entry, paste } = await open();
    at(/^Cuff, size L/);
    await user.keyboard('{Shift>}{ArrowLeft}{/Shift}');
    await paste('30\t31');
    expect(entry('cuff')).toEqual({ each: { s: 22, m: 30, l: 31 } });
  });

  it('pastes a list in brackets as a value for each size', async () => {
    const { at, entry, paste } = await open();
    at(/^Cuff, size M/);
    await paste('20 (21, 22½)');
    expect(entry('cuff')).toEqual({ each: { s: 20, m: 21, l: 22.5 } });
  });

  it('cut takes out what was given, and the paste puts it back', async () => {
    const { at, clip, entry, paste } = await open();
    at(/^Cuff, size M/);
    const text = clip('cut').getData('text/plain');
    expect(entry('cuff')).toEqual({ each: { s: 22, m: null, l: 26 } });
    await paste(text);
    expect(entry('cuff')).toEqual({ each: { s: 22, m: 24, l: 26 } });
  });

  it('leaves the clipboard alone while text is typed', async () => {
    const { workspace, user, at, paste } = await open();
    at(/^Cuff, size M/);
    const before = workspace.notebook;
    await user.keyboard('{Enter}');
    await paste('99');
    expect(workspace.notebook).toBe(before);
  });
});
