import type { BrowserContext, Page } from 'playwright';
import { expect, inject } from 'vitest';
import { opened } from './burst';
import { settled } from './desk';

/** A window on the page, once what is kept has been looked for. */
export async function windowIn(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  await opened(page, inject('address'));
  return page;
}

/** Waits until the notebook on the desk is kept. */
export async function kept(page: Page): Promise<void> {
  await page.locator('[data-standing="kept"]').waitFor();
}

/** What is shown of the hand, once the page has worked what it was told. */
export async function hand(page: Page): Promise<string> {
  await settled(page);
  const place = page.locator('[data-place][data-cell="hand"][data-key="value"]:not([data-size])').first();
  const text = async (): Promise<string> => ((await place.textContent()) ?? '').trim();
  await expect.poll(text).toMatch(/\d/);
  return text();
}

export const title = (page: Page): Promise<string> => page.getByRole('heading', { level: 1 }).innerText();
export const notice = (page: Page, words: string) => page.locator('.notice').filter({ hasText: words });

/** Opens the list of notebooks, and reads it. */
export async function listed(page: Page): Promise<string[]> {
  const folded = page.getByRole('button', { name: 'More tools' });
  if (await folded.isVisible()) await folded.click();
  await page.getByRole('button', { name: 'Notebooks', exact: true }).click();
  const dialog = page.getByRole('dialog');
  await dialog.waitFor();
  await page.waitForTimeout(150);
  return dialog.locator('ul').first().locator('button.open strong').allInnerTexts();
}

export const closeList = (page: Page): Promise<void> =>
  page.getByRole('dialog').getByRole('button', { name: 'Done' }).click();
