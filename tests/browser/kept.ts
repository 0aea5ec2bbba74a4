import type { BrowserContext, BrowserContextOptions, Page } from 'playwright';
import { beforeEach, expect, inject } from 'vitest';
import { opened } from './burst';
import { settled } from './workspace';
import { profiles } from './visiting';

/** A profile, and windows in it. */
export interface Own {
  context: BrowserContext;
  /** A window on the page, once what is kept has been looked for. */
  open(): Promise<Page>;
  /** Another profile, which knows nothing of what this one keeps. */
  another: ReturnType<typeof profiles>;
}

/** For the tests of one file: a profile of its own to each. */
export function ownProfile(options?: BrowserContextOptions): Own {
  const another = profiles();
  const own: Partial<Own> = {};
  beforeEach(async () => {
    own.context = await another(options);
  });
  return Object.assign(own as Own, {
    another,
    async open() {
      const page = await own.context!.newPage();
      await opened(page, inject('address'));
      return page;
    },
  });
}

/** Waits until the open notebook is kept. */
export async function kept(page: Page): Promise<void> {
  await page.locator('[data-standing="kept"]').waitFor();
}

/** What is shown of the hand, once the page has worked what it was told. */
export async function hand(page: Page): Promise<string> {
  await settled(page);
  const element = page.locator('[data-place][data-cell="hand"][data-key="value"]:not([data-size])').first();
  const text = async (): Promise<string> => ((await element.textContent()) ?? '').trim();
  await expect.poll(text).toMatch(/\d/);
  return text();
}

export const title = (page: Page): Promise<string> => page.getByRole('heading', { level: 1 }).innerText();
export const notice = (page: Page, words: string) => page.locator('.notice').filter({ hasText: words });

/** Opens the list of notebooks, and reads it. */
export async function titlesInList(page: Page): Promise<string[]> {
  const folded = page.getByRole('button', { name: 'More tools' });
  if (await folded.isVisible()) await folded.click();
  await page.getByRole('button', { name: 'Notebooks', exact: true }).click();
  const dialog = page.getByRole('dialog');
  await dialog.locator('[aria-busy="false"]').waitFor();
  return dialog.locator('ul').first().locator('button.open strong').allInnerTexts();
}

export const closeList = (page: Page): Promise<void> =>
  page.getByRole('dialog').getByRole('button', { name: 'Done' }).click();
