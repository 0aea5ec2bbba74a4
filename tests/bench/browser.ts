import type { Page } from 'playwright';
import { preview } from 'vite';
import { ensureBrowser, startBrowser } from '../browser/browser';
import { settled } from '../browser/desk';

/** The swatch a person changes, and a result far down from it: the width of the back at its start. */
const swatch = { cell: 'body', key: 'sts.0.count' };
const result = { cell: 'back', key: 'start_width' };
const warmUp = 5;

/**
 * Milliseconds from pressing Enter on another swatch to the frame in which the results stand on the screen, in the
 * built page on its first notebook; once for each time asked.
 */
export function keyToPaint(times: number): Promise<number[]> {
  return inPage(async (page) => {
    const taken: number[] = [];
    for (let turn = 0; turn < times + warmUp; turn++) {
      const time = await oneEdit(page, (13 + (turn % 30) * 0.1).toFixed(1));
      if (turn >= warmUp) taken.push(time);
      await settled(page);
    }
    return taken;
  });
}

/** The built page in a browser of its own, served for as long as it is used. `before` runs in it before the page does. */
export async function inPage<T>(use: (page: Page) => Promise<T>, before?: () => void): Promise<T> {
  ensureBrowser();
  const server = await preview({ logLevel: 'error', preview: { port: 0, host: '127.0.0.1' } });
  const browser = await startBrowser();
  try {
    const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
    if (before) await page.addInitScript(before);
    await page.goto(server.resolvedUrls!.local[0]!);
    await settled(page);
    return await use(page);
  } finally {
    await browser.close();
    await server.close();
  }
}

async function oneEdit(page: Page, text: string): Promise<number> {
  await page.locator(`[data-place][data-cell="${swatch.cell}"][data-key="${swatch.key}"]`).first().dblclick();
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.type(text);
  const painted = await page.evaluateHandle(watch, `tr[data-line="${result.cell} ${result.key}"]`);
  await page.keyboard.press('Enter');
  return painted.evaluate((watched) => watched.painted);
}

/** Runs in the page. The promise is wrapped so that it is not waited for before the key is pressed. */
function watch(selector: string): { painted: Promise<number> } {
  const row = document.querySelector(selector)!;
  const before = row.textContent;
  let pressed = NaN;
  addEventListener('keydown', (event) => (pressed = event.timeStamp), { capture: true, once: true });
  const painted = new Promise<number>((resolve) => {
    const observer = new MutationObserver(() => {
      if (row.textContent === before) return;
      observer.disconnect();
      requestAnimationFrame(() => {
        // A message sent in a frame arrives when that frame has been painted.
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => resolve(performance.now() - pressed);
        port2.postMessage(null);
      });
    });
    observer.observe(row, { childList: true, characterData: true, subtree: true });
  });
  return { painted };
}
