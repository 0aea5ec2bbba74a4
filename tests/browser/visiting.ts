import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright';
import { afterAll, beforeAll, beforeEach, expect, inject } from 'vitest';
import { startBrowser } from './browser';
import { settled } from './workspace';

type Begin<T> = (options?: BrowserContextOptions) => Promise<T>;

/**
 * For the tests of one file: a browser that they share, and profiles in it that have kept nothing yet. Each goes with the
 * test it was made in, or with the file.
 */
export function profiles(): Begin<BrowserContext> {
  let browser: Browser;
  let ofTest: BrowserContext[] | undefined;

  beforeAll(async () => {
    browser = await startBrowser();
  });
  afterAll(() => browser?.close());
  beforeEach(() => {
    const made: BrowserContext[] = (ofTest = []);
    return async () => {
      ofTest = undefined;
      await Promise.all(made.map((context) => context.close()));
    };
  });

  return async (options) => {
    const context = await browser.newContext({
      viewport: { width: 1280, height: 900 },
      // Storing the page for use without a network is work beside every first visit: only its own tests ask for it.
      serviceWorkers: 'block',
      ...options,
    });
    // However slow the machine is: the limit is there for what never comes.
    context.setDefaultTimeout(120_000);
    ofTest?.push(context);
    return context;
  };
}

/**
 * For the tests of one file: first visits of the built page, each in a profile of its own, with the results worked out.
 * What the page writes to the console as an error fails the test.
 */
export function visiting(): Begin<Page> {
  const profile = profiles();
  const complaints: string[] = [];
  beforeEach(() => () => {
    expect(complaints.splice(0)).toEqual([]);
  });

  return async (options) => {
    const page = await (await profile(options)).newPage();
    page.on('pageerror', (error) => complaints.push(error.message));
    page.on('console', (message) => {
      if (message.type() === 'error') complaints.push(message.text());
    });
    await page.goto(inject('address'));
    await settled(page);
    return page;
  };
}
