import { afterAll, beforeAll, expect, inject, it } from 'vitest';
import type { Browser } from 'playwright';
import { startBrowser } from '../browser/browser';
import { numbers, settled } from '../browser/workspace';

/*
 * A thread that does not get to run while the starter opens. It is not the thread that is stopped here: what it says,
 * and what is said to it, is kept back. To the page that is the same, since it knows the thread by nothing else: the
 * thread has begun, was asked, and is silent. Every thread that is started is kept from the page as long, as on a
 * machine that is busy with something else. In every second visit a thread is not even heard to have begun.
 */
const visits = Number(process.env['STARVED_VISITS'] ?? 100);
const starvedFor = Number(process.env['STARVED_MS'] ?? 10_000);

let browser: Browser;
const figures = { visits: 0, threads: 0, falseWords: 0 };

beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(async () => {
  await browser.close();
  console.log(
    `${figures.visits} visits with threads starved for ${starvedFor} ms: ${figures.falseWords} false words; ${figures.threads} threads were started in all.`,
  );
});

/** Keeps back what goes to and fro between the page and its threads. */
function starve({ ms, begins }: { ms: number; begins: boolean }): void {
  const own = Worker;
  const seen = { threads: 0, words: [] as string[] };
  Object.assign(window, { starved: seen, Worker: Starved });
  function Starved(url: URL, options: WorkerOptions): EventTarget {
    seen.threads++;
    const real = new own(url, options);
    const near = new EventTarget();
    const back: (() => void)[] = [];
    let free = false;
    const or = (act: () => void): void => void (free ? act() : back.push(act));
    const release = (): void => {
      free = true;
      for (const act of back.splice(0)) act();
    };
    real.addEventListener('message', (event) => {
      const received = (): void => void near.dispatchEvent(new MessageEvent('message', { data: event.data }));
      if (event.data === 'ready') {
        setTimeout(release, ms);
        if (begins) {
          received();
          return;
        }
      }
      or(received);
    });
    return Object.assign(near, {
      postMessage: (data: unknown, transfer: Transferable[]) => or(() => real.postMessage(data, transfer)),
      terminate: () => real.terminate(),
    });
  }
  const check = (): void => {
    const text = document.body?.innerText ?? '';
    const found = /takes too long|left out for now|too slow|broke while/i.exec(text);
    if (found) seen.words.push(found[0]);
  };
  new MutationObserver(check).observe(document, { childList: true, characterData: true, subtree: true });
}

async function visited(begins?: boolean) {
  const context = await browser.newContext({
    viewport: { width: 1280, height: 900 },
    serviceWorkers: 'block',
  });
  context.setDefaultTimeout(300_000);
  const page = await context.newPage();
  if (begins !== undefined) await page.addInitScript(starve, { ms: starvedFor, begins });
  await page.goto(inject('address'));
  await settled(page);
  const lines = await page.$$eval('tr[data-line]', (rows) =>
    rows.map((row) => row.getAttribute('data-line')!),
  );
  const results: Record<string, number[]> = {};
  for (const line of lines) {
    const [cell, key] = line.split(' ');
    results[line] = await numbers(page, cell!, key!);
  }
  const seen =
    begins === undefined
      ? { threads: 1, words: [] }
      : await page.evaluate(
          () => (window as unknown as { starved: { threads: number; words: string[] } }).starved,
        );
  const complaints = await page.locator('.complaint').allInnerTexts();
  await context.close();
  return { results, words: [...seen.words, ...complaints], threads: seen.threads };
}

it(`${visits} visits of the starter whose threads are starved: no false word, and every result right afterwards`, async () => {
  const right = (await visited()).results;
  expect(Object.values(right).flat().filter(Number.isFinite).length).toBeGreaterThan(100);
  for (let visit = 0; visit < visits; visit++) {
    const { results, words, threads } = await visited(visit % 2 === 0);
    figures.visits++;
    figures.threads += threads;
    figures.falseWords += words.length;
    expect(words, `visit ${visit + 1}`).toEqual([]);
    expect(results, `visit ${visit + 1}`).toEqual(right);
  }
}, 14_400_000);
