import { cleanup, render, screen } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { beforeEach, expect, it } from 'vitest';
import Adapt from '../../../src/features/adapt/Adapt.svelte';
import { cardigan } from '../../../src/starters';
import { workspaceWith } from '../../workspace/local-workspace';

beforeEach(() => localStorage.clear());

const text = (): HTMLTextAreaElement => screen.getByLabelText('The pattern’s text');

it('a pattern that was put in, and corrected, is there when the view is opened again', async () => {
  const { workspace } = workspaceWith(cardigan());
  render(Adapt, { workspace });
  await userEvent.click(text());
  await userEvent.paste('Sizes: S (M, L)');
  await userEvent.type(text(), ' and XL');
  cleanup();
  render(Adapt, { workspace });
  expect(text().value).toBe('Sizes: S (M, L) and XL');
});

it('stays with its own notebook, and goes once it is that of the notebook', async () => {
  const { workspace } = workspaceWith(cardigan());
  render(Adapt, { workspace });
  await userEvent.click(text());
  await userEvent.paste('Sizes: S (M, L)');
  cleanup();
  const first = workspace.document.id;
  workspace.document.begin(cardigan());
  render(Adapt, { workspace });
  expect(text().value).toBe('');
  cleanup();
  workspace.document.begin(cardigan(), first);
  render(Adapt, { workspace });
  expect(text().value).toBe('Sizes: S (M, L)');
  await userEvent.clear(text());
  cleanup();
  render(Adapt, { workspace });
  expect(text().value).toBe('');
  expect(localStorage).toHaveLength(0);
});
