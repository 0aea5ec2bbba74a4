import type { Page } from 'playwright';
import { writeFile } from '../../src/notebook';
import { settled } from '../browser/workspace';
import { inPage } from './browser';
import { garment } from './garment';

/** The swatch a person changes, in the first notebook and in the garment alike. */
const swatch = '[data-place][data-cell="body"][data-key="sts.0.count"]';
const warmUp = 5;

/**
 * Milliseconds from pressing Enter on another swatch to the frame in which the results stand on the screen, in the
 * built page on its first notebook; once for each time asked. The result is far down from the swatch: the width of the
 * back at its start.
 */
export function keyToPaint(times: number): Promise<number[]> {
  return inPage((page) => edits(page, times, 'back start_width'));
}

export interface InGarment {
  /** From giving the file to the page to its first cells on the screen, and to the results of every size. */
  readonly readable: number;
  readonly worked: number;
  /** From the key to the painted result. */
  readonly painted: number[];
  readonly scrolled: Scrolled;
}

/** A notebook of so many cells in twelve sizes: opened as a file, all of it drawn, scrolled through, and edited. */
export function inGarment(cells: number, times: number): Promise<InGarment> {
  return inPage(async (page) => {
    const opened = await openGarment(page, cells);
    const folded = page.locator('[aria-label^="Unfold the section"]');
    while ((await folded.count()) > 0) await folded.first().click();
    await page
      .locator('[data-cell-rows]')
      .nth(cells - 1)
      .waitFor({ state: 'attached' });
    const scrolled = await scrollThrough(page);
    await page.evaluate(() => scrollTo(0, 0));
    return { ...opened, scrolled, painted: await edits(page, times, 'back_width_0 value') };
  });
}

async function openGarment(page: Page, cells: number): Promise<{ readable: number; worked: number }> {
  const times = await page.evaluateHandle(watchOpening);
  await page.setInputFiles('input[type=file]', {
    name: 'bench.notebook.json',
    mimeType: 'application/json',
    buffer: Buffer.from(writeFile(garment(cells))),
  });
  return times.evaluate((watched) => watched.opened);
}

/** Runs in the page: waits for another notebook to be painted, and for its results. */
function watchOpening(): { opened: Promise<{ readable: number; worked: number }> } {
  let given = NaN;
  addEventListener('change', () => (given = performance.now()), { capture: true, once: true });
  const painted = (): Promise<void> =>
    new Promise((resolve) => {
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => resolve();
        port2.postMessage(null);
      });
    });
  const until = async (holds: () => boolean): Promise<number> => {
    while (!holds()) await new Promise((resolve) => setTimeout(resolve, 4));
    await painted();
    return performance.now() - given;
  };
  const grid = (): HTMLElement | null => document.querySelector('main [aria-label="Bench"]');
  const opened = (async () => ({
    readable: await until(() => grid() !== null),
    worked: await until(() => document.querySelector('main')!.ariaBusy === 'false'),
  }))();
  return { opened };
}

async function edits(page: Page, times: number, line: string): Promise<number[]> {
  const taken: number[] = [];
  for (let turn = 0; turn < times + warmUp; turn++) {
    const time = await oneEdit(page, (13 + (turn % 30) * 0.1).toFixed(1), line);
    if (turn >= warmUp) taken.push(time);
    await settled(page);
  }
  return taken;
}

async function oneEdit(page: Page, text: string, line: string): Promise<number> {
  await page.locator(swatch).first().dblclick();
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.type(text);
  const painted = await page.evaluateHandle(watch, `tr[data-line="${line}"]`);
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

export interface Scrolled {
  /** Tasks of more than 50 ms, as browsers count long tasks, and the longest in ms; 0 where there was none. */
  readonly long: number;
  readonly longest: number;
}

/** Turns the wheel from the top of the page to its end, a third of a screen with every frame. */
async function scrollThrough(page: Page): Promise<Scrolled> {
  const handle = await page.evaluateHandle(() => {
    const seen: number[] = [];
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) seen.push(duration);
    }).observe({ type: 'longtask' });
    return seen;
  });
  await page.mouse.move(400, 500);
  for (let before = -1, at = 0; at !== before;) {
    before = at;
    await page.mouse.wheel(0, 300);
    at = await page.evaluate(
      () => new Promise<number>((resolve) => requestAnimationFrame(() => setTimeout(() => resolve(scrollY)))),
    );
    if (at === before)
      at = await page.evaluate(() => new Promise<number>((r) => setTimeout(() => r(scrollY), 120)));
  }
  await page.waitForTimeout(100);
  return handle.evaluate((seen) => ({ long: seen.length, longest: Math.max(0, ...seen) }));
}
