import { render, screen, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { describe, expect, it, vi } from 'vitest';
import type { Cell } from '../../../src/notebook';
import Range from '../../../src/features/range/Range.svelte';
import { fit, swatch } from '../../engine/notebook-of';
import { workspaceWith } from '../../workspace/local-workspace';
import { measured, small } from '../../workspace/small-notebook';
import { until } from '../../until';

// There is no canvas to draw on here, and no letters that come later; what is drawn is read in the browser.
Object.assign(document, { fonts: { ready: Promise.resolve() } });
vi.mock('../../../src/pictures/charts/range-plot', () => ({
  drawRange: () => ({ update: () => {}, pointAt: () => {}, data: () => {}, close: () => {} }),
}));

const cuff = { ...fit('sts', 'hem / CM(1) * STS(2)', [4, 0]), label: 'Cuff stitches' };

async function opened(...more: Cell[]) {
  const { workspace, settled } = workspaceWith(small(cuff, ...more));
  await settled();
  workspace.selection.position = { cell: 'hem', key: 'value', size: null };
  render(Range, { workspace });
  const user = userEvent.setup();
  const type = async (label: RegExp, text: string): Promise<void> => {
    const field = screen.getByRole<HTMLInputElement>('textbox', { name: label });
    await user.clear(field);
    await user.type(field, text);
  };
  return { workspace, settled, user, type };
}

describe('a range of a value', () => {
  it('begins around where it stands, with the repeat fit that it feeds, and lists the whole repeats', async () => {
    const { workspace, user, settled } = await opened();
    await screen.findByText(/^Whole repeats: Cuff stitches/);
    expect(screen.getByRole<HTMLInputElement>('textbox', { name: /^Start, cm/ }).value).toBe('0.5');
    // Two stitches to a cm, so that a multiple of 4 comes out even every 2 cm.
    const every = screen.getByText(/In every size at/);
    expect(
      within(every)
        .getAllByRole('button')
        .map((one) => one.textContent),
    ).toEqual(['2 cm', '4 cm', '6 cm', '8 cm', '10 cm', '12 cm', '14 cm']);
    await user.click(within(every).getByRole('button', { name: '8 cm' }));
    await settled();
    expect(workspace.allResults.number('m', 'hem', 'value')).toBe(8);
    workspace.document.undo();
    await settled();
    expect(workspace.allResults.number('m', 'hem', 'value')).toBe(5);
  });

  it('gives the whole repeat of a size to that size alone', async () => {
    const { workspace, user, settled } = await opened();
    await screen.findByText(/^Whole repeats: Cuff stitches/);
    await user.click(screen.getByRole('button', { name: '8.0 cm, for 16 in size S: take it' }));
    await settled();
    expect(['s', 'm', 'l'].map((size) => workspace.allResults.number(size, 'hem', 'value'))).toEqual([
      8, 5, 5,
    ]);
  });

  it('shows every step in numbers, and a value there can be taken', async () => {
    const { user, type, workspace, settled } = await opened();
    await type(/^Start/, '1');
    await type(/^End/, '3');
    await type(/^Step/, '1');
    await screen.findByText(/^Whole repeats: Cuff stitches/);
    await user.click(screen.getByText('As a table'));
    await until(() => expect(screen.getAllByRole('row')).toHaveLength(4));
    const cells = screen
      .getAllByRole('row')
      .map((row) => [...row.children].map((one) => one.textContent?.trim()));
    expect(cells[0]!.slice(1)).toEqual(['S', 'M', 'L']);
    expect(cells[2]).toEqual(['2 cm', '4 *', '4 *', '4 *']);
    await user.click(screen.getByRole('button', { name: '3 cm' }));
    await settled();
    expect(workspace.allResults.number('m', 'hem', 'value')).toBe(3);
  });

  it('says of a value that nothing depends on what to do', async () => {
    await opened(measured('loose', { value: 3 }));
    await userEvent.setup().selectOptions(screen.getByLabelText('What moves'), 'Loose');
    expect(await screen.findByText(/Nothing depends on Loose: choose a result/)).toBeTruthy();
  });

  it('says of a result that the value does not reach what to do', async () => {
    const { user } = await opened();
    await user.selectOptions(screen.getByLabelText('Show as well'), 'Half');
    expect(await screen.findByText(/Half does not depend on Hem here/)).toBeTruthy();
  });

  it('begins with what the value moves, not with what else hangs on its cell', async () => {
    const { user } = await opened(
      { ...swatch('body', 14, 12), label: 'Body' },
      { ...fit('back', 'hem * body_sts', [1, 0]), label: 'Back stitches' },
      measured('long', { formula: 'ROWS(9) / body_rows' }),
    );
    await user.selectOptions(screen.getByLabelText('What moves'), 'Body: rows counted');
    expect(await screen.findByRole('heading', { name: 'Long by Body: rows counted' })).toBeTruthy();
    expect(screen.queryByText(/does not depend/)).toBeNull();
    expect(screen.queryByRole('heading', { name: /^Back stitches by/ })).toBeNull();
  });

  it('of stitches that were chosen goes in whole stitches, and not below one', async () => {
    await opened(
      measured('edge', { value: 8 }, 'stitches'),
      measured('twice', { formula: '2 * edge' }, 'stitches'),
    );
    await userEvent.setup().selectOptions(screen.getByLabelText('What moves'), 'Edge');
    const typed = [/^Start/, /^End/, /^Step/].map(
      (label) => screen.getByRole<HTMLInputElement>('textbox', { name: label }).value,
    );
    expect(typed).toEqual(['1', '28', '1']);
  });

  it('says that a step which was cleared is to be typed, and where a step goes beyond the end', async () => {
    const { user, type } = await opened();
    await user.clear(screen.getByRole('textbox', { name: /^Start/ }));
    expect((await screen.findByRole('alert')).textContent).toContain('Type a number');
    await type(/^Start/, '1');
    await type(/^Step/, '100');
    expect((await screen.findByRole('alert')).textContent).toContain('goes beyond the end');
  });

  it('says why no step gives a result, and what to do', async () => {
    const { type } = await opened();
    await type(/^Start/, '-9');
    await type(/^End/, '-3');
    expect(await screen.findByText(/^No step gives Cuff stitches\. .+ Choose another range/)).toBeTruthy();
    await type(/^End/, '20');
    expect(await screen.findByText(/^Where the line is broken off/)).toBeTruthy();
  });

  it('says what is wrong with a step of 0', async () => {
    const { type } = await opened();
    await type(/^Step/, '0');
    expect((await screen.findByRole('alert')).textContent).toContain('never arrives');
  });
});
