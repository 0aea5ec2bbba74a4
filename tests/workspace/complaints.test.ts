import { render, screen } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { expect, it } from 'vitest';
import Complaints from '../../src/ui/Complaints.svelte';
import { deskWith } from './local-workspace';
import { cardigan } from '../../src/starters';

const shown = (): (string | undefined)[] =>
  screen.queryAllByRole('alert').map((alert) => alert.querySelector('p')?.textContent);

it('one complaint hides no other: all are shown, the newest first, each to be closed', async () => {
  const { desk } = deskWith(cardigan());
  render(Complaints, { complaints: desk.complaints });
  desk.complaints.add('The sheet failed.');
  desk.complaint = 'That edit cannot be made.';
  await expect.poll(shown).toEqual(['That edit cannot be made.', 'The sheet failed.']);
  // An edit that succeeds takes away what earlier attempts left, and nothing else.
  desk.complaint = null;
  await expect.poll(shown).toEqual(['The sheet failed.']);
  desk.complaints.add('A part could not be fetched.');
  desk.complaints.add('The sheet failed.');
  await expect.poll(shown).toEqual(['The sheet failed.', 'A part could not be fetched.']);
  await userEvent.click(screen.getAllByRole('button', { name: 'Close' })[0]!);
  await expect.poll(shown).toEqual(['A part could not be fetched.']);
});

it('another window that takes the turn takes no undo away: what it did is one step, then come one’s own', () => {
  const { desk } = deskWith(cardigan());
  const titles = (): string => desk.notebook.title;
  desk.do({ do: 'retitle', title: 'Mine' });
  desk.follow({ ...desk.notebook, title: 'Theirs' });
  desk.follow({ ...desk.notebook, title: 'Theirs, later' });
  desk.undo();
  expect(titles()).toBe('Mine');
  desk.redo();
  expect(titles()).toBe('Theirs, later');
  desk.undo();
  desk.undo();
  expect(titles()).toBe('Saltmarsh cardigan');
});
