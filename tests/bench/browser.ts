import type { Page } from 'playwright';
import { preview } from 'vite';
import { ensureBrowser, startBrowser } from '../browser/browser';
import { settled } from '../browser/workspace';

/** The built page in a browser of its own, served for as long as it is used. `before` runs in it before the page does. */
export function inPage<T>(use: (page: Page) => Promise<T>, before?: () => void): Promise<T> {
  return served(async (page, address) => {
    if (before) await page.addInitScript(before);
    await page.goto(address);
    await settled(page);
    return use(page);
  });
}

/** A window with nothing in it yet and the address of the built page, served for as long as it is used. */
export async function served<T>(use: (page: Page, address: string) => Promise<T>): Promise<T> {
  ensureBrowser();
  const server = await preview({ logLevel: 'error', preview: { port: 0, host: '127.0.0.1' } });
  const browser = await startBrowser();
  try {
    const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
    return await use(page, server.resolvedUrls!.local[0]!);
  } finally {
    await browser.close();
    await server.close();
  }
}
