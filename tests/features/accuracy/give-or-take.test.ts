import { render, screen, waitFor, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { tick } from 'svelte';
import { describe, expect, it } from 'vitest';
import { cellById, type Measure, type Notebook } from '../../../src/notebook';
import CellUncertainty from '../../../src/features/accuracy/CellUncertainty.svelte';
import GiveOrTake from '../../../src/features/accuracy/GiveOrTake.svelte';
import { formula, measure, notebookOf, swatch } from '../../engine/notebook-of';
import { workspaceWith } from '../../workspace/local-workspace';
import { vNeck } from '../../notebooks/v-neck';

const width = (): Notebook =>
  notebookOf([
    swatch('body', 14, 12),
    measure('around', 'stitches', 146),
    measure('bust', 'length', 94),
    formula('width', 'around / body_sts'),
    formula('half', 'bust / 2'),
  ]);

async function open(notebook: Notebook, ref?: { cell: string; key: string }) {
  const { workspace, settled } = workspaceWith(notebook);
  await settled();
  if (ref) workspace.selection.position = { ...ref, size: null };
  const user = userEvent.setup();
  render(GiveOrTake, { workspace });
  await tick();
  return { workspace, settled, user };
}

const row = async (label: string): Promise<string[]> => {
  const named = await screen.findByRole('button', { name: label });
  return [...named.closest('tr')!.querySelectorAll('td:not(.unit)')].map((cell) =>
    cell.textContent.replace(/\s+/g, ' ').trim(),
  );
};
const looked = async (): Promise<string> =>
  (await screen.findByRole('region', { name: 'What it comes from' })).textContent.replace(/\s+/g, ' ').trim();

describe('give or take', () => {
  it('shows 146 stitches at 14 to 10 cm as 104.3 ± 4.3 cm, about 19 times in 20', async () => {
    await open(width(), { cell: 'width', key: 'value' });
    expect(await row('width')).toEqual(['104.3 ± 4.3']);
    const text = await looked();
    expect(text).toContain('width: 104.3 ± 4.3 cm (about 19 times in 20)');
    expect(text).toContain('98 % body, stitch gauge');
    expect(text).toContain('2 % The tape, on the finished piece');
    expect(text).toMatch(/To halve it, count 1\d more stitches: \d\d over \d\d\.\d cm instead of 14/);
  });

  it('a tape that is read more closely leaves less in doubt, and one that cannot be is refused', async () => {
    const { user, settled } = await open(width(), { cell: 'half', key: 'value' });
    expect(await row('half')).toEqual(['47.0 ± 0.3']);
    const field = screen.getByLabelText(/A tape is read to within/);
    await user.clear(field);
    await user.type(field, '2{Enter}');
    field.dispatchEvent(new Event('change', { bubbles: true }));
    await settled();
    await waitFor(async () => expect(await row('half')).toEqual(['47.0 ± 1.1']));
    await user.clear(field);
    await user.type(field, '-1');
    field.dispatchEvent(new Event('change', { bubbles: true }));
    expect((await screen.findByRole('alert')).textContent).toMatch(/0 or more/);
  });

  it('a length that was chosen is exact', async () => {
    const { user, workspace, settled } = await open(width(), { cell: 'half', key: 'value' });
    await row('half');
    await user.click(screen.getByLabelText('bust'));
    await settled();
    expect((cellById(workspace.notebook, 'bust') as Measure).chosen).toBe(true);
    await waitFor(async () => expect(await row('half')).toEqual(['47.0']));
    expect(await looked()).toContain('You chose this, so it is exact.');
  });

  it('shows the results a person chooses, and says so where none is', async () => {
    const { user } = await open(width());
    await row('half');
    await user.click(screen.getByLabelText('half'));
    await waitFor(() => expect(screen.queryByRole('button', { name: 'half' })).toBeNull());
    await user.click(screen.getByRole('button', { name: 'None' }));
    expect(screen.getByText(/No result is chosen/)).toBeDefined();
    await user.click(screen.getByRole('button', { name: 'The usual ones' }));
    expect(await row('half')).toEqual(['47.0 ± 0.3']);
  });

  it('of a notebook without results says what to do', async () => {
    await open(notebookOf([measure('bust', 'length', 94)]));
    expect(screen.getByText(/There is no result here to be sure of yet: add a swatch/)).toBeDefined();
  });

  it('of the V-neck shows the bust as worked in nine sizes, and the chance of another count beside a count', async () => {
    const { user } = await open(vNeck());
    const bust = await row('Bust as worked');
    expect(bust).toHaveLength(9);
    for (const each of bust) expect(each).toMatch(/^\d+\.\d ± [3-7]\.\d$/);
    // 145 stitches of back and fronts in XS at 1.4 to the cm, and two bands of five rows.
    const backs = await row('Back stitches');
    expect(backs[0]).toMatch(/^67 \d+ %$/);
    await user.click(screen.getByRole('button', { name: 'Bust as worked' }));
    await user.selectOptions(screen.getByLabelText('Size'), 'M');
    const text = await looked();
    expect(text).toMatch(/Bust as worked, size M: \d+\.\d ± \d\.\d cm \(about 19 times in 20\)/);
    expect(text).toMatch(/Body fabric, stitch gauge/);
    expect(text).toMatch(/To halve it, count \d+ more stitches/);
    await user.click(screen.getByRole('button', { name: 'Back stitches' }));
    expect(await looked()).toMatch(/A count that was settled on.*another allowed count: \d+ %/);
  });
});

describe('under a cell', () => {
  it('stands the give or take of what it works out, in the size in focus', async () => {
    const { workspace, settled } = workspaceWith(vNeck());
    await settled();
    workspace.selection.position = { cell: 'back', key: 'start_width', size: 'xs' };
    render(CellUncertainty, { workspace, cell: workspace.cell('back')! });
    const panel = screen.getByRole('region', { name: 'Give or take of Back' });
    await waitFor(() => expect(panel.textContent).toMatch(/width at the start, size XS: 47\.9 ± 2\.0 cm/));
    expect(within(panel).getAllByText('Body fabric, row gauge').length).toBeGreaterThan(0);
  });

  it('of a cell that works nothing out says that there is nothing', async () => {
    const { workspace, settled } = workspaceWith(width());
    await settled();
    render(CellUncertainty, { workspace, cell: workspace.cell('bust')! });
    expect(await screen.findByText(/Nothing is worked out here/)).toBeDefined();
  });
});
