import { render, screen, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { flushSync } from 'svelte';
import { expect, it } from 'vitest';
import Shortcuts from '../../src/app/Shortcuts.svelte';

it('the sheet of keys lists them by topic, and closes', async () => {
  const user = userEvent.setup();
  const { component } = render(Shortcuts);
  expect(screen.queryByRole('dialog')).toBeNull();
  flushSync(() => (component as unknown as { open(): void }).open());
  expect(screen.getByRole('dialog', { name: 'Keys and touch' })).toBeDefined();
  const several = within(screen.getByRole('region', { name: 'Several values' }));
  expect(several.getAllByRole('term').length).toBe(several.getAllByRole('definition').length);
  expect(several.getByText('>')).toBeDefined();
  await user.click(screen.getByRole('button', { name: 'Back to the notebook' }));
  expect(screen.queryByRole('dialog')).toBeNull();
});
