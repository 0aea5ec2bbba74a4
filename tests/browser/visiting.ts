import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright';
import { afterAll, beforeAll, beforeEach, expect, inject } from 'vitest';
import { startBrowser } from './browser';
import { settled } from './desk';

export type Visit = (options?: BrowserContextOptions) => Promise<Page>;

/**
 * For the tests of one file: a browser that they share, and visits of the built page in it. Each visit is a first
 * one, in a context of its own, and has its results. It ends with the test it was made in, or with the file.
 * What the page writes to the console as an error fails the test.
 */
export function visiting(): Visit {
  let browser: Browser;
  let ofTest: BrowserContext[] | undefined;
  const complaints: string[] = [];

  beforeAll(async () => {
    browser = await startBrowser();
  });
  afterAll(() => browser?.close());

  beforeEach(() => {
    const contexts: BrowserContext[] = (ofTest = []);
    return async () => {
      ofTest = undefined;
      await Promise.all(contexts.map((context) => context.close()));
      expect(complaints.splice(0)).toEqual([]);
    };
  });

  return async (options) => {
    const context = await browser.newContext({
      viewport: { width: 1280, height: 900 },
      // Storing the page for use without a network is work beside every first visit; tests/browser/keeping has it.
      serviceWorkers: 'block',
      ...options,
    });
    ofTest?.push(context);
    const page = await context.newPage();
    page.on('pageerror', (error) => complaints.push(error.message));
    page.on('console', (message) => {
      if (message.type() === 'error') complaints.push(message.text());
    });
    await page.goto(inject('address'));
    await settled(page);
    return page;
  };
}
