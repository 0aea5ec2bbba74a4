import { render, screen } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { expect, it } from 'vitest';
import Complaints from '../../src/ui/Complaints.svelte';
import { workspaceWith } from './local-workspace';
import { cardigan } from '../../src/starters';

const shown = (): (string | undefined)[] =>
  screen.queryAllByRole('alert').map((alert) => alert.querySelector('p')?.textContent);

it('one complaint hides no other: all are shown, the newest first, each to be closed', async () => {
  const { workspace } = workspaceWith(cardigan());
  render(Complaints, { complaints: workspace.complaints });
  workspace.complaints.add('The sheet failed.');
  workspace.complaint = 'That edit cannot be made.';
  await expect.poll(shown).toEqual(['That edit cannot be made.', 'The sheet failed.']);
  // An edit that succeeds takes away what earlier attempts left, and nothing else.
  workspace.complaint = null;
  await expect.poll(shown).toEqual(['The sheet failed.']);
  workspace.complaints.add('A part could not be fetched.');
  workspace.complaints.add('The sheet failed.');
  await expect.poll(shown).toEqual(['The sheet failed.', 'A part could not be fetched.']);
  await userEvent.click(screen.getAllByRole('button', { name: 'Close' })[0]!);
  await expect.poll(shown).toEqual(['A part could not be fetched.']);
});

it('another window that takes the turn takes no undo away: what it did is one step, then come one’s own', () => {
  const { workspace } = workspaceWith(cardigan());
  const titles = (): string => workspace.notebook.title;
  workspace.do({ do: 'retitle', title: 'Mine' });
  workspace.document.follow({ ...workspace.notebook, title: 'Theirs' });
  workspace.document.follow({ ...workspace.notebook, title: 'Theirs, later' });
  workspace.document.undo();
  expect(titles()).toBe('Mine');
  workspace.document.redo();
  expect(titles()).toBe('Theirs, later');
  workspace.document.undo();
  workspace.document.undo();
  expect(titles()).toBe('Saltmarsh cardigan');
});
