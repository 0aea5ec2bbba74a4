import fc from 'fast-check';
import type { Browser, Page } from 'playwright';
import { afterAll, afterEach, beforeAll, beforeEach, expect, inject, it } from 'vitest';
import { startBrowser } from '../browser/browser';
import { opened } from '../browser/burst';
import { settled, type } from '../browser/workspace';
import { given, watch } from '../browser/hostile-files';
import { hostileFile } from '../notebook/hostile';

const inABatch = 500;
const batches = 20;

let browser: Browser;
let page: Page;
let wrong: string[];
const figures = { files: 0, opened: 0, slowest: 0 };

beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(async () => {
  await browser.close();
  const { files, opened: open, slowest } = figures;
  console.log(
    `${files} hostile files: ${open} opened, ${files - open} refused; the slowest took ${Math.round(slowest)} ms.`,
  );
});
beforeEach(async () => {
  page = await (await browser.newContext({ viewport: { width: 1280, height: 900 } })).newPage();
  wrong = watch(page, inject('address')).wrong;
  await opened(page, inject('address'));
});
afterEach(() => page.context().close());

it.each(Array.from({ length: batches }, (_one, at) => at + 1))(
  'files %i of 20 batches of 500: each refused or opened, nothing lost, no dialog, script or request',
  async (batch) => {
    await type(page, 'hand', 'value', '21.5');
    await page.locator('[data-standing="kept"]').waitFor();
    for (const [at, text] of fc.sample(hostileFile, { seed: batch, numRuns: inABatch }).entries()) {
      const began = performance.now();
      if (await given(page, `${batch}-${at}.json`, text)) figures.opened++;
      figures.files++;
      figures.slowest = Math.max(figures.slowest, performance.now() - began);
    }
    expect(await page.evaluate(() => 'ran' in window || 'polluted' in {})).toBe(false);
    expect(wrong).toEqual([]);
    await page.getByRole('button', { name: 'Notebooks', exact: true }).click();
    await page.getByRole('dialog').locator('ul').first().locator('button.open').last().click();
    await settled(page);
    const hand = page.locator('[data-place][data-cell="hand"][data-key="value"]:not([data-size])').first();
    await expect.poll(async () => (await hand.textContent())?.trim()).toBe('21.5');
  },
);
