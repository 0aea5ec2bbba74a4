import fc from 'fast-check';
import type { Browser, Page } from 'playwright';
import { afterAll, afterEach, beforeAll, beforeEach, expect, inject, it } from 'vitest';
import { startBrowser } from '../browser/browser';
import { opened } from '../browser/burst';
import { settled, type } from '../browser/desk';
import { given, watch } from '../browser/hostile-files';
import { hostileFile } from '../notebook/hostile';

const inABatch = 500;
const batches = 20;
/** Milliseconds within which a file has to be refused or opened. */
const soon = 2000;

let browser: Browser;
let page: Page;
let wrong: string[];
const figures = { files: 0, opened: 0, slowest: 0, late: 0 };

beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(async () => {
  await browser.close();
  const { files, opened: open, slowest, late } = figures;
  console.log(
    `${files} hostile files: ${open} opened, ${files - open} refused; the slowest took ${Math.round(slowest)} ms, ${late} more than ${soon} ms.`,
  );
});
beforeEach(async () => {
  page = await (await browser.newContext({ viewport: { width: 1280, height: 900 } })).newPage();
  wrong = watch(page, inject('address')).wrong;
  await opened(page, inject('address'));
});
afterEach(() => page.context().close());

it.each(Array.from({ length: batches }, (_one, at) => at + 1))(
  'files %i of 20 batches of 500: each refused or opened within 2 s, nothing lost, no dialog, script or request',
  async (batch) => {
    await type(page, 'hand', 'value', '21.5');
    await page.locator('[data-standing="kept"]').waitFor();
    const late: string[] = [];
    for (const [at, text] of fc.sample(hostileFile, { seed: batch, numRuns: inABatch }).entries()) {
      const { opened: open, took } = await given(page, `${batch}-${at}.json`, text);
      figures.files++;
      if (open) figures.opened++;
      if (took > soon) late.push(`${batch}-${at}: ${Math.round(took)} ms`);
      figures.slowest = Math.max(figures.slowest, took);
    }
    figures.late += late.length;
    expect(late).toEqual([]);
    expect(await page.evaluate(() => 'ran' in window || 'polluted' in {})).toBe(false);
    expect(wrong).toEqual([]);
    await page.getByRole('button', { name: 'Notebooks', exact: true }).click();
    await page.getByRole('dialog').locator('ul').first().locator('button.open').last().click();
    await settled(page);
    const hand = page.locator('[data-place][data-cell="hand"][data-key="value"]:not([data-size])').first();
    await expect.poll(async () => (await hand.textContent())?.trim()).toBe('21.5');
  },
);
