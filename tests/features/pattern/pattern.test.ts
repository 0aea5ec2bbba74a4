import { render, screen, waitFor, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import type { Notebook } from '../../../src/notebook';
import Pattern from '../../../src/features/pattern/Pattern.svelte';
import { fillField, putIn, templateIn, tokenOf } from '../../../src/features/pattern/template-field';
import { blank, hatCrown, singleSleeve, starters } from '../../../src/starters';
import { workspaceWith } from '../../workspace/local-workspace';
import { vNeck } from '../../notebooks/v-neck';

async function open(notebook: Notebook) {
  const { workspace, settled } = workspaceWith(notebook);
  await settled();
  render(Pattern, { workspace });
  return { workspace, settled, user: userEvent.setup() };
}

describe('the written pattern', () => {
  it.each(starters.map(({ label, make }) => [label, make()] as const))(
    'of the starter “%s” stands, proven wherever it has pieces',
    async (_label, notebook) => {
      await open(notebook);
      const pieces = notebook.sections.some(({ cells }) => cells.some(({ kind }) => kind === 'piece'));
      await waitFor(() =>
        expect(screen.getAllByRole('status')[0]!.textContent).toMatch(
          pieces ? /Recounted in/ : /There is no piece yet/,
        ),
      );
    },
  );

  it('of a piece that cannot be worked in a size leaves that size out and tells the designer, not the maker', async () => {
    const { workspace, settled } = await open(vNeck());
    workspace.do({ do: 'give', cell: 'neck-width', key: 'value', size: 'm', value: 200 });
    await settled();
    expect(await screen.findByText('For you, not for the maker')).toBeDefined();
    const article = screen.getByRole('article');
    expect(within(article).getByText(/^Sizes XS \(S, L, XL/)).toBeDefined();
    const measured = within(article).getByRole('group', { name: 'The schematic in centimetres' });
    expect(within(measured).queryByRole('columnheader', { name: 'M' })).toBeNull();
    expect(within(measured).getByRole('columnheader', { name: 'L' })).toBeDefined();
    expect(
      within(measured).getByRole('row', { name: /Front: width at the start/ }).textContent,
    ).not.toContain('–');
  });

  it('measures a piece in one place: at the letters of its schematic', async () => {
    await open(vNeck());
    const article = screen.getByRole('article');
    const rows = within(article)
      .getAllByRole('rowheader')
      .map(({ textContent }) => textContent ?? '');
    expect(rows.filter((label) => /Front\W+width at the start/.test(label))).toHaveLength(1);
    expect(rows).toContain('Finished bust');
  });

  it('of an adapted pattern draws the pieces that are written, and not those it is compared with', async () => {
    const adapt = starters.find(({ label }) => label === 'A pattern to adapt')!;
    const { workspace } = await open(adapt.make());
    const others = workspace.notebook.sections
      .flatMap(({ cells }) => cells)
      .filter((cell) => cell.kind === 'piece' && cell.aside !== undefined);
    expect(others.length).toBeGreaterThan(0);
    const measured = within(screen.getByRole('article')).getByRole('group', { name: /^The schematic in/ });
    for (const { label } of others) expect(measured.textContent).not.toContain(label);
  });

  it('in UK terms says so', async () => {
    const { workspace } = await open(singleSleeve());
    workspace.do({ do: 'set', settings: { terms: 'UK' } });
    expect(await screen.findByText(/Written in UK terms/)).toBeDefined();
  });

  it('of one size is reworded in all of them, since a sentence is worded for every size', async () => {
    const { user } = await open(hatCrown());
    await user.selectOptions(screen.getByLabelText('Sizes'), 'women');
    const [first] = screen.getAllByRole('button', { name: /^Reword in all sizes: / });
    await user.click(first!);
    expect(screen.getByLabelText<HTMLSelectElement>('Sizes').value).toBe('all');
    expect(await screen.findByRole('textbox', { name: 'Sentence' })).toBeDefined();
  });

  it('of one size, where it has a sentence that all sizes have not, leads to where theirs stand', async () => {
    const { user, workspace } = await open(vNeck());
    await user.selectOptions(screen.getByLabelText('Sizes'), 's');
    const [own] = screen.getAllByRole('button', { name: /^Reword in all sizes: Dec 1 st at the neck/ });
    await user.click(own!);
    expect(screen.getByLabelText<HTMLSelectElement>('Sizes').value).toBe('all');
    await waitFor(() => expect(workspace.announcement).toMatch(/in other words, by size/));
    expect(screen.queryByRole('textbox', { name: 'Sentence' })).toBeNull();
    expect(document.activeElement?.className).toContain('sentence');
  });

  it('of an empty notebook is a title and no trouble', async () => {
    await open(blank());
    expect(screen.getByRole('heading', { name: 'Untitled' })).toBeDefined();
  });
});

describe('a sentence being reworded', () => {
  const slots = { rows: '45 (45, 43) more rows', count: '67 sts' };

  it('has its numbers as tokens, and is the same template when nothing was typed', () => {
    const field = document.createElement('div');
    fillField(field, 'Work {rows} even [{count}].', slots);
    expect(field.textContent).toBe('Work 45 (45, 43) more rows even [67 sts].');
    expect(field.querySelectorAll('[contenteditable="false"]')).toHaveLength(2);
    expect(templateIn(field)).toBe('Work {rows} even [{count}].');
  });

  it('takes markup for text', () => {
    const field = document.createElement('div');
    fillField(field, 'Work {rows} <b>even</b>.', slots);
    expect(field.querySelector('b')).toBeNull();
    putIn(field, '<img src=x>');
    expect(field.querySelector('img')).toBeNull();
    expect(templateIn(field)).toBe('Work {rows} <b>even</b>.<img src=x>');
  });

  it('takes a number back in that was deleted', () => {
    const field = document.createElement('div');
    fillField(field, 'Work on.', slots);
    putIn(field, tokenOf('rows', slots.rows));
    expect(templateIn(field)).toBe('Work on.{rows}');
  });
});
