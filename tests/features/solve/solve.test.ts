import { render, screen, waitFor, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { tick } from 'svelte';
import { describe, expect, it } from 'vitest';
import type { CheckCell, Notebook } from '../../../src/notebook';
import Solve from '../../../src/features/solve/Solve.svelte';
import { formula, measure, notebookOf } from '../../engine/notebook-of';
import { workspaceWith } from '../../workspace/local-workspace';
import { blouseSleeve } from '../../notebooks/blouse-sleeve';

async function open(notebook: Notebook, ref?: { cell: string; key: string }) {
  const { workspace, settled } = workspaceWith(notebook);
  await settled();
  if (ref) workspace.selection.position = { ...ref, size: null };
  const user = userEvent.setup();
  render(Solve, { workspace });
  await tick();
  const type = async (label: string | RegExp, text: string): Promise<void> => {
    const field = screen.getByLabelText(label);
    await user.clear(field);
    await user.type(field, text);
  };
  return { workspace, settled, user, type };
}

const sum = async (): Promise<string> =>
  (await screen.findByRole('region', { name: 'What was found' }))
    .querySelector('.sum')!
    .textContent.replace(/\s+/g, ' ')
    .trim();
const textOf = (): string => screen.getByRole('status').textContent.replace(/\s+/g, ' ').trim();
const rows = (): string[][] =>
  within(screen.getByRole('table'))
    .getAllByRole('row')
    .slice(1)
    .map((row) =>
      [...row.querySelectorAll('th, td')].map((cell) => cell.textContent.replace(/\s+/g, ' ').trim()),
    );

const sizes = ['S', 'M', 'L'].map((label) => ({ id: label.toLowerCase(), label }));
const check = (id: string, condition: string): CheckCell => ({
  kind: 'check',
  id,
  label: `Check ${id}`,
  name: id,
  condition,
  message: '',
});
/** A back of whole stitches from a bust of its own in each size and an ease for all. */
const plainBack = (): Notebook =>
  notebookOf(
    [
      measure('bust', 'length', { each: { s: 80, m: 90, l: 100 } }),
      measure('ease', 'length', 10),
      measure('cuff', 'length', 20),
      formula('back', 'ROUNDCOUNT((bust + ease) / CM(2))'),
    ],
    sizes,
  );

describe('work back', () => {
  it('opens on the result in focus, and finds the ease for its count in the middle size', async () => {
    await open(plainBack(), { cell: 'back', key: 'value' });
    // 50 of (90 + ease) / 2: from 9 up to, not with, 11; the other sizes are 10 cm away.
    expect(await sum()).toMatch(/^10 cm serves 1 of 3 sizes, as does all from 9 to 11 cm\. It fails S, L\./);
  });
});

describe('the stretches', () => {
  it('stand in a table, size by size, the nearest where none gives the wish', async () => {
    const { type } = await open(plainBack(), { cell: 'back', key: 'value' });
    await sum();
    await type('the amount', '47');
    await waitFor(() => expect(rows()[0]?.[1]).toBe('13 to 15'));
    const texts = rows();
    expect(texts[0]!.slice(0, 3)).toEqual(['S', '13 to 15', '47']);
    expect(texts[1]!.slice(0, 3)).toEqual(['M', '3 to 5', '47']);
    expect(texts[2]!.slice(0, 3)).toEqual(['L', '0 to 1', '50, above']);
  });

  it('are taken by pressing one: undo brings back what was there', async () => {
    const { workspace, user, type, settled } = await open(plainBack(), { cell: 'back', key: 'value' });
    await sum();
    await type('the amount', '52');
    await waitFor(() => expect(rows()[1]?.[1]).toBe('13 to 15'));
    await user.click(screen.getByRole('button', { name: /^14 cm, for size M/ }));
    await settled();
    expect(workspace.results('ease').number('m', 'ease', 'value')).toBe(14);
    expect(workspace.document.undoes).toBe('the change to ease');
  });

  it('of a value of its own in each size are taken for one size, or for all', async () => {
    const { workspace, user, settled } = await open(plainBack(), { cell: 'back', key: 'value' });
    await sum();
    await user.selectOptions(screen.getByLabelText('Which'), 'bust');
    const one = await screen.findByRole('button', { name: /^90 cm, in size S$/ });
    await user.click(one);
    await settled();
    expect(workspace.results('bust').number('s', 'bust', 'value')).toBe(90);
    expect(workspace.results('bust').number('l', 'bust', 'value')).toBe(100);
    await user.click(await screen.findByRole('button', { name: /^Take 90 cm in every size/ }));
    await settled();
    expect(workspace.results('bust').number('l', 'bust', 'value')).toBe(90);
  });
});

describe('what cannot be', () => {
  it('bounds the wrong way round, no step, a million of them, and no number are told', async () => {
    const { type } = await open(plainBack(), { cell: 'back', key: 'value' });
    await sum();
    await type(/^from/, '50');
    expect(textOf()).toMatch(/wrong way round/);
    await type(/^from/, '0');
    await type(/^by/, '0');
    expect(textOf()).toMatch(/A step has to be more than 0/);
    await type(/^by/, '0.00002');
    expect(textOf()).toMatch(/1 000 000 steps, and the most is 10 000: take a wider step/);
    await type(/^by/, 'some');
    expect(textOf()).toMatch(/Type a number/);
    expect(screen.queryByRole('region', { name: 'What was found' })).toBeNull();
  });

  it('a wish no value can meet is told, with what to try', async () => {
    const { type } = await open(plainBack(), { cell: 'back', key: 'value' });
    await sum();
    await type('the amount', '900');
    await waitFor(async () => expect(await sum()).toMatch(/^No value in this range does it\./));
  });

  it('an input the result does not depend on is told, and the others stand first in the list', async () => {
    const { user } = await open(plainBack(), { cell: 'back', key: 'value' });
    await sum();
    await user.selectOptions(screen.getByLabelText('Which'), 'cuff');
    expect(textOf()).toBe(
      'back does not depend on cuff: choose a value that feeds it; they stand first in the list.',
    );
    const options = within(screen.getByLabelText('Which')).getAllByRole('option');
    expect(options.map((option) => option.textContent)).toEqual(['bust', 'ease', 'cuff']);
  });

  it('a result in trouble says what the trouble is', async () => {
    const notebook = notebookOf([measure('a', 'length', 4), formula('b', 'SQRT(0 - a / CM(1) - 1)')], sizes);
    const { type } = await open(notebook, { cell: 'b', key: 'value' });
    expect(textOf()).toMatch(/^b has no result: .+ Mend that first, or type/);
    await type('the amount', '3');
    await type('give or take', '0.1');
    expect(await sum()).toMatch(/^Nothing can be worked between these bounds: .+ Try other bounds/);
  });

  it('a notebook with no check has none that could hold', async () => {
    const { user } = await open(plainBack(), { cell: 'back', key: 'value' });
    await user.selectOptions(screen.getByLabelText('gives'), 'All checks hold');
    expect(textOf()).toMatch(/There is no check in this notebook/);
  });
});

describe('all checks hold', () => {
  it('where one holds from below and the other from above, between them', async () => {
    const notebook = notebookOf(
      [measure('ease', 'length', 10), check('a', 'ease >= CM(4.5)'), check('b', 'ease <= CM(7.25)')],
      sizes.slice(0, 1),
    );
    const { user } = await open(notebook);
    await user.selectOptions(screen.getByLabelText('gives'), 'All checks hold');
    expect(await sum()).toMatch(/^5 cm gives it, as does all from 4\.5 to 7\.25 cm\./);
  });

  it('a check that looks across the sizes is looked at across them', async () => {
    const notebook = notebookOf(
      [
        measure('ease', 'length', 30),
        measure('bust', 'length', { each: { s: 80, m: 90, l: 100 } }),
        formula('back', 'MAX(bust + ease; CM(105))'),
        { ...check('a', 'back'), across: 'grow' },
      ],
      sizes,
    );
    const { user } = await open(notebook);
    await user.selectOptions(screen.getByLabelText('gives'), 'All checks hold');
    await waitFor(async () => expect(await sum()).toMatch(/from 15(\.0\d*)? to 60 cm/));
  }, 20_000);

  it('of the blouse sleeve, from its own swatch', async () => {
    const { user } = await open({ ...blouseSleeve(), sizes: blouseSleeve().sizes.slice(2, 4) });
    await user.selectOptions(screen.getByLabelText('gives'), 'All checks hold');
    await user.selectOptions(screen.getByLabelText('Which'), 'Sleeve fabric: stitches counted');
    expect(await sum()).toMatch(/serves every size|serves 1 of 2 sizes/);
  });
});
