import fc from 'fast-check';
import { cpSync, mkdtempSync, readFileSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Papa from 'papaparse';
import { preview } from 'vite';
import type { Browser, BrowserContext, Page } from 'playwright';
import { afterAll, beforeAll, beforeEach, describe, expect, inject, it, onTestFinished } from 'vitest';
import { startBrowser } from './browser';
import { killedInABurst, opened } from './burst';
import { begin, settled, shown, type } from './desk';
import { handMade, hostileFile } from '../notebook/hostile';
import { answered, given, watch } from './hostile-files';
import { newProfile, removeProfile, startOn } from './profile';

let browser: Browser;
let context: BrowserContext;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(async () => {
  await browser?.close();
});
beforeEach(async () => {
  context = await browser.newContext({ viewport: { width: 1280, height: 900 } });
  return () => context.close();
});

async function open(where = ''): Promise<Page> {
  const page = await context.newPage();
  await opened(page, inject('address') + where);
  return page;
}

/** Waits until the notebook on the desk is kept. */
async function kept(page: Page): Promise<void> {
  await page.locator('[data-standing="kept"]').waitFor();
}

/** What is shown of the hand, once the page has worked what it was told. */
async function hand(page: Page): Promise<string> {
  await settled(page);
  const place = page.locator('[data-place][data-cell="hand"][data-key="value"]:not([data-size])').first();
  const text = async (): Promise<string> => ((await place.textContent()) ?? '').trim();
  await expect.poll(text).toMatch(/\d/);
  return text();
}
const title = (page: Page): Promise<string> => page.getByRole('heading', { level: 1 }).innerText();
const notice = (page: Page, words: string) => page.locator('.notice').filter({ hasText: words });

/** The list of notebooks, as it is read. */
async function listed(page: Page): Promise<string[]> {
  const folded = page.getByRole('button', { name: 'More tools' });
  if (await folded.isVisible()) await folded.click();
  await page.getByRole('button', { name: 'Notebooks', exact: true }).click();
  const dialog = page.getByRole('dialog');
  await dialog.waitFor();
  await page.waitForTimeout(150);
  const titles = await dialog.locator('ul').first().locator('button.open strong').allInnerTexts();
  return titles;
}
const done = (page: Page): Promise<void> =>
  page.getByRole('dialog').getByRole('button', { name: 'Done' }).click();

describe('every edit is kept', () => {
  it('through the death of the browser in a burst of edits, twice: all that was made more than a second before', async () => {
    const at = { profile: newProfile(), address: inject('address') };
    let running = await startOn(at.profile);
    onTestFinished(async () => {
      await running.kill();
      removeProfile(at.profile);
    });
    await opened(running.page, at.address);
    for (const from of [100, 200]) {
      const { burst, running: next } = await killedInABurst(running, at, from, 25);
      running = next;
      expect(burst.due).toBeGreaterThan(from);
      expect(burst.held).toBeGreaterThanOrEqual(burst.due);
      expect(burst.held).toBeLessThanOrEqual(burst.made);
    }
  });

  it('a first visit begins with the jacket, the next with what was open last', async () => {
    const page = await open();
    expect(await title(page)).toBe('Slipway jacket');
    expect(await listed(page)).toEqual([]);
    await done(page);
    await type(page, 'hand', 'value', '21.5');
    await kept(page);
    await page.reload();
    await settled(page);
    expect(await hand(page)).toBe('21.5');
    await begin(page, 'Hat crown');
    await kept(page);
    await page.reload();
    await settled(page);
    expect(await title(page)).toBe('A hat with eight wedges');
  });
});

describe('the list of notebooks', () => {
  it('has what was kept, to open, rename, duplicate, and delete with undo', async () => {
    const page = await open();
    await type(page, 'hand', 'value', '21.5');
    await kept(page);
    await begin(page, 'Blank');
    await kept(page);
    const dialog = page.getByRole('dialog');
    expect(await listed(page)).toEqual(['Untitled', 'Slipway jacket']);

    await dialog.getByRole('button', { name: 'Duplicate Slipway jacket' }).click();
    await dialog.getByText('Made a copy of Slipway jacket.').waitFor();
    await dialog.getByRole('button', { name: 'Rename Slipway jacket (copy)' }).click();
    await page.keyboard.press('ControlOrMeta+a');
    await page.keyboard.type('Harbour jacket');
    await page.keyboard.press('Enter');
    await dialog.getByText('Renamed.').waitFor();
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.getAttribute('aria-label')))
      .toBe('Rename Harbour jacket');
    await dialog.getByRole('button', { name: 'Delete Untitled', exact: true }).click();
    await dialog.getByText('Deleted Untitled.').waitFor();
    // What was on the desk is gone from it: the notebook changed last takes its place.
    expect(await title(page)).toBe('Harbour jacket');
    await dialog.getByRole('button', { name: 'Undo' }).click();
    await dialog.getByText('Untitled is back.').waitFor();
    await dialog.getByRole('button', { name: /^Slipway jacket/ }).click();
    await settled(page);
    await expect.poll(() => title(page)).toBe('Slipway jacket');
    expect(await hand(page)).toBe('21.5');
    expect((await listed(page)).sort()).toEqual(['Harbour jacket', 'Slipway jacket', 'Untitled']);
  });

  it('keeps earlier states, to look at and to bring back, which undo takes back too', async () => {
    const page = await open();
    const noon = new Date('2026-03-02T12:00:00').getTime();
    for (const [minutes, value] of [
      [0, '21'],
      [7, '22'],
      [14, '23'],
    ] as const) {
      await page.clock.setFixedTime(noon + minutes * 60_000);
      await type(page, 'hand', 'value', value);
      await kept(page);
      await page
        .getByText(`12:${String(minutes).padStart(2, '0')}`)
        .first()
        .waitFor();
    }
    await page.getByRole('button', { name: 'Earlier states' }).click();
    const states = page.getByRole('dialog').locator('ul button');
    await states.first().waitFor();
    expect(await states.locator('strong').allInnerTexts()).toEqual(
      ['12:07', '12:00'].map((at) => expect.stringContaining(at)),
    );
    await states.last().click();
    await notice(page, 'as it was at').waitFor();
    await settled(page);
    await expect.poll(() => hand(page)).toBe('21.0');
    // Looked at, it cannot be changed.
    await type(page, 'hand', 'value', '30');
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: 'Go to what it is now' }).click();
    await expect.poll(() => hand(page)).toBe('23.0');

    await page.getByRole('button', { name: 'Earlier states' }).click();
    await states.last().click();
    await page.getByRole('button', { name: 'Bring it back' }).click();
    await expect.poll(() => hand(page)).toBe('21.0');
    await kept(page);
    await page.keyboard.press('ControlOrMeta+z');
    await expect.poll(() => hand(page)).toBe('23.0');
  });
});

describe('two windows on one notebook', () => {
  it('one writes and the other follows live, takes over when asked, and when the first is closed', async () => {
    const first = await open();
    await type(first, 'hand', 'value', '21');
    await kept(first);
    const second = await open();
    await notice(second, 'being edited in another window').waitFor();
    await type(first, 'hand', 'value', '22');
    await expect.poll(() => hand(second)).toBe('22.0');
    // What is typed in the window that follows changes nothing.
    await type(second, 'hand', 'value', '40');
    await second.getByText('Another window is editing this notebook').first().waitFor();
    await second.keyboard.press('Escape');
    expect(await hand(second)).toBe('22.0');

    await type(first, 'hand', 'value', '23');
    await second.getByRole('button', { name: 'Edit here instead' }).click();
    await notice(first, 'being edited in another window').waitFor();
    await notice(second, 'being edited in another window').waitFor({ state: 'detached' });
    await expect.poll(() => hand(second)).toBe('23.0');
    await type(second, 'hand', 'value', '24');
    await expect.poll(() => hand(first)).toBe('24.0');
    await kept(second);

    await second.close();
    await notice(first, 'being edited in another window').waitFor({ state: 'detached' });
    await type(first, 'hand', 'value', '25');
    await kept(first);
    await first.reload();
    await settled(first);
    await expect.poll(() => hand(first)).toBe('25.0');
  });

  it('a window that slept while its turn was taken overwrites nothing: its work becomes a notebook of its own', async () => {
    const first = await open();
    await type(first, 'hand', 'value', '21');
    await kept(first);
    const second = await open();
    await notice(second, 'being edited in another window').waitFor();
    // The first window sleeps before what it did last is kept.
    await type(first, 'hand', 'value', '77');
    const asleep = first.evaluate(() => {
      const until = Date.now() + 4000;
      while (Date.now() < until);
    });
    await second.getByRole('button', { name: 'Edit here instead' }).click();
    await notice(second, 'being edited in another window').waitFor({ state: 'detached' });
    await type(second, 'hand', 'value', '31');
    await kept(second);
    await asleep;
    await notice(first, 'now a notebook of its own').waitFor();
    expect([await title(first), await hand(first)]).toEqual(['Slipway jacket (other window)', '77.0']);
    await second.reload();
    await settled(second);
    expect((await listed(second)).sort()).toEqual(['Slipway jacket', 'Slipway jacket (other window)']);
    await second
      .getByRole('dialog')
      .getByRole('button', { name: /^Slipway jacket(?! \()/ })
      .click();
    await expect.poll(() => hand(second)).toBe('31.0');
  });
});

/** What a person gets where the browser keeps nothing: it is said, the work goes on, and can be saved. */
async function goesOnInMemory(page: Page, says: RegExp): Promise<void> {
  await page.getByRole('alert').filter({ hasText: says }).waitFor();
  await type(page, 'hand', 'value', '21.5');
  await settled(page);
  expect(await hand(page)).toBe('21.5');
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save it now' }).click(),
  ]);
  expect(readFileSync(await file.path(), 'utf8')).toContain('"value": 21.5');
  // Another notebook is begun: the one before is still there, in memory.
  await begin(page, 'Blank');
  expect(await listed(page)).toContain('Slipway jacket');
  await page
    .getByRole('dialog')
    .getByRole('button', { name: /^Slipway jacket/ })
    .click();
  await expect.poll(() => hand(page)).toBe('21.5');
}

describe('where the browser does not keep', () => {
  it('because it is denied: the work goes on in memory, is said not to be kept, and can be saved', async () => {
    await context.addInitScript(() => {
      IDBFactory.prototype.open = () => {
        throw new DOMException('Denied.', 'SecurityError');
      };
    });
    await goesOnInMemory(await open(), /keeps nothing for this page/);
  });

  it('because what it kept is damaged: the same', async () => {
    // As a browser answers whose files of the database are damaged beyond repair.
    await context.addInitScript(() => {
      IDBFactory.prototype.open = () => {
        const request = new EventTarget() as IDBOpenDBRequest;
        Object.defineProperty(request, 'error', {
          value: new DOMException('Internal error.', 'UnknownError'),
        });
        setTimeout(() => {
          request.onerror?.(new Event('error'));
          request.dispatchEvent(new Event('error'));
        });
        return request;
      };
    });
    await goesOnInMemory(await open(), /cannot be read or written/);
  });

  it('because the device is full: the same, and it is kept as soon as there is room again', async () => {
    const page = await open();
    const devtools = await context.newCDPSession(page);
    const { origin } = new URL(inject('address'));
    await devtools.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1 });
    await type(page, 'hand', 'value', '21.5');
    await page
      .getByRole('alert')
      .filter({ hasText: /no room left/ })
      .waitFor();
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save it now' }).click(),
    ]);
    expect(readFileSync(await file.path(), 'utf8')).toContain('"value": 21.5');
    await type(page, 'hand', 'value', '22.5');
    expect(await hand(page)).toBe('22.5');
    await devtools.send('Storage.overrideQuotaForOrigin', { origin });
    await type(page, 'hand', 'value', '23.5');
    await kept(page);
    await page.reload();
    await settled(page);
    expect(await hand(page)).toBe('23.5');
  });

  it('a notebook that was damaged where it is kept is not opened and not written over, and can be saved', async () => {
    const page = await open();
    await type(page, 'hand', 'value', '20');
    await kept(page);
    await page.evaluate(
      () =>
        new Promise<void>((resolve) => {
          const request = indexedDB.open('easewright');
          request.onsuccess = () => {
            const write = request.result.transaction('texts', 'readwrite');
            const texts = write.objectStore('texts');
            texts.getAllKeys().onsuccess = (event) => {
              const [id] = (event.target as IDBRequest<string[]>).result;
              texts.put('{"format":"easewright notebook","version":1,"notebook":{"title":3}}', id);
            };
            write.oncomplete = () => resolve();
          };
        }),
    );
    await page.reload();
    await settled(page);
    await page
      .getByRole('alert')
      .filter({ hasText: 'Slipway jacket, which was open last, could not be opened' })
      .waitFor();
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save what is left of it' }).click(),
    ]);
    expect(readFileSync(await file.path(), 'utf8')).toContain('"title":3');
    await type(page, 'hand', 'value', '24');
    await kept(page);
    expect(await listed(page)).toHaveLength(2);
  });
});

describe('a file from outside', () => {
  it('hostile anyhow is refused or opens, and nothing of the open work is lost; no dialog, script or request', async () => {
    const page = await context.newPage();
    const { wrong } = watch(page, inject('address'));
    await opened(page, inject('address'));
    await type(page, 'hand', 'value', '21.5');
    await kept(page);
    for (const [at, [what, text, opens]] of handMade.entries()) {
      expect((await given(page, `made ${at}.json`, text())).opened, what).toBe(opens);
    }
    const folder = mkdtempSync(join(tmpdir(), 'easewright-'));
    onTestFinished(() => rmSync(folder, { recursive: true }));
    const large = join(folder, 'large.json');
    writeFileSync(large, '{"format":"easewright notebook",');
    truncateSync(large, 100e6);
    await page.setInputFiles('input[type=file]', large);
    expect(await answered(page, 'large.json')).toBe(false);

    let openedOnes = 0;
    for (const [at, text] of fc.sample(hostileFile, { seed: 9, numRuns: 60 }).entries()) {
      if ((await given(page, `fuzzed ${at}.json`, text)).opened) openedOnes++;
    }
    expect(openedOnes).toBeGreaterThan(5);
    expect(openedOnes).toBeLessThan(60);
    expect(await page.evaluate(() => 'ran' in window || 'polluted' in {})).toBe(false);
    expect(wrong).toEqual([]);
    await listed(page);
    await page
      .getByRole('dialog')
      .getByRole('button', { name: /^Slipway jacket.*61|^Slipway jacket/ })
      .last()
      .click();
    await expect.poll(() => hand(page)).toBe('21.5');
  }, 120_000);
});

describe('a notebook goes from one to another', () => {
  it('made in one profile it opens in another, from a file and from a link; the link shows it first', async () => {
    await context.grantPermissions(['clipboard-read', 'clipboard-write']);
    const page = await open();
    await type(page, 'hand', 'value', '21.5');
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as a file' }).click(),
    ]);
    await page.getByRole('button', { name: 'Share', exact: true }).click();
    await page.getByRole('button', { name: 'Make a link' }).click();
    const link = await page.getByLabel('Link').inputValue();
    expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(link);

    const other = await browser.newContext({ viewport: { width: 390, height: 800 } });
    onTestFinished(() => other.close());
    const theirs = await other.newPage();
    await opened(theirs, inject('address'));
    await theirs.setInputFiles('input[type=file]', await file.path());
    await expect.poll(() => hand(theirs)).toBe('21.5');
    await kept(theirs);
    await type(theirs, 'hand', 'value', '19');
    await kept(theirs);

    await theirs.goto('about:blank');
    const { wrong } = watch(theirs, inject('address'));
    const asked: string[] = [];
    theirs.on('request', (request) => asked.push(request.url()));
    await opened(theirs, link);
    await notice(theirs, 'came in a link').waitFor();
    expect(await hand(theirs)).toBe('21.5');
    await type(theirs, 'hand', 'value', '30');
    await theirs.getByText('This notebook came in a link').first().waitFor();
    await theirs.keyboard.press('Escape');
    expect(asked.filter((url) => url.includes(link.slice(-40)) && !url.includes('#'))).toEqual([]);
    await theirs.getByRole('button', { name: 'Go to my own notebook' }).click();
    expect(await hand(theirs)).toBe('19.0');
    expect(theirs.url()).toBe(inject('address'));

    await theirs.goto(link);
    await theirs.getByRole('button', { name: 'Keep a copy' }).click();
    await kept(theirs);
    await type(theirs, 'hand', 'value', '22');
    await kept(theirs);
    await theirs.reload();
    await settled(theirs);
    expect(await hand(theirs)).toBe('22.0');
    expect(await listed(theirs)).toHaveLength(2);
    expect(wrong).toEqual([]);
  });

  it('the numbers go out as CSV and as a table on the clipboard, as the page shows them', async () => {
    await context.grantPermissions(['clipboard-read', 'clipboard-write']);
    const page = await open();
    await page.getByRole('button', { name: 'Share', exact: true }).click();
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as a table (CSV)' }).click(),
    ]);
    const { data } = Papa.parse<string[]>(readFileSync(await file.path(), 'utf8').replace(/^\uFEFF/, ''));
    const row = (rows: string[][], cell: string, value = '') =>
      rows.find((line) => line[1] === cell && line[2] === value)!.slice(4);
    expect(data[0]!.slice(4)).toEqual(['XS', 'S', 'M', 'L', 'XL', '2X', '3X', '4X', '5X']);
    expect(row(data, 'Back stitches')).toEqual(await shown(page, 'back-sts', 'count'));
    expect(row(data, 'Sleeve', 'Rounds in all')).toEqual(await shown(page, 'sleeve', 'rows'));
    await page.getByRole('button', { name: 'Copy as a table' }).click();
    await page.getByText('The table is on the clipboard.').waitFor();
    const [text, html] = await page.evaluate(async () => {
      const [item] = await navigator.clipboard.read();
      const as = async (type: string): Promise<string> => (await item!.getType(type)).text();
      return [await as('text/plain'), await as('text/html')];
    });
    const pasted = text!.split('\n').map((line) => line.split('\t'));
    expect(row(pasted, 'Back stitches')).toEqual(await shown(page, 'back-sts', 'count'));
    expect(html).toContain(`<td>Back stitches</td>`);
  });
});

describe('offline', () => {
  it('the page works without a network after the first visit, drawings, dialogs and links too', async () => {
    const page = await context.newPage();
    const { wrong } = watch(page, inject('address'));
    await opened(page, inject('address'));
    await type(page, 'hand', 'value', '21.5');
    await kept(page);
    await page.evaluate(async () => {
      await navigator.serviceWorker.ready;
    });
    await context.setOffline(true);
    await page.reload();
    await settled(page);
    expect(await hand(page)).toBe('21.5');
    await type(page, 'body', 'sts.0.count', '15');
    await settled(page);
    await page.locator('figure canvas').waitFor();
    for (const dialog of ['Units and terms', 'Notebooks', 'Share', 'Starters']) {
      await page.getByRole('button', { name: dialog, exact: true }).click();
      await page.getByRole('dialog').waitFor();
      await page.keyboard.press('Escape');
    }
    expect(wrong.filter((what) => !what.includes('ERR_INTERNET_DISCONNECTED'))).toEqual([]);
    await context.setOffline(false);
    const manifest = await page.evaluate(async () => (await fetch('./manifest.webmanifest')).json());
    for (const { src } of manifest.icons as { src: string }[])
      expect(await page.evaluate(async (icon) => (await fetch(icon)).ok, src)).toBe(true);
  });
});

describe('a newer version of the page', () => {
  it('is said to be ready, leaves the page in use as it is, and comes once no window uses the older', async () => {
    const built = mkdtempSync(join(tmpdir(), 'easewright-'));
    cpSync('dist', built, { recursive: true });
    const server = await preview({
      logLevel: 'error',
      build: { outDir: built },
      preview: { port: 0, host: '127.0.0.1' },
    });
    onTestFinished(async () => {
      await server.close();
      rmSync(built, { recursive: true });
    });
    const address = server.resolvedUrls!.local[0]!;
    const page = await context.newPage();
    await opened(page, address);
    await page.evaluate(async () => {
      await navigator.serviceWorker.ready;
    });
    await page.close();

    const change = (file: string, from: string | RegExp, to: string): void =>
      writeFileSync(join(built, file), readFileSync(join(built, file), 'utf8').replace(from, to));
    change('index.html', '<title>', '<meta name="newer" /><title>');
    change('offline-worker.js', /(index\.html[`"'],\s*revision:\s*[`"'])\w/, '$1-');
    const before = await context.newPage();
    await opened(before, address);
    await notice(before, 'A newer version of this page is ready').waitFor();
    await before.reload();
    await settled(before);
    expect(await before.locator('meta[name=newer]').count()).toBe(0);
    await before.close();
    await expect
      .poll(
        async () => {
          const after = await context.newPage();
          await opened(after, address);
          const newer = await after.locator('meta[name=newer]').count();
          await after.close();
          return newer;
        },
        { timeout: 20_000 },
      )
      .toBe(1);
  });
});

describe('a fault in the page', () => {
  it('shows a sentence, the notebook to save, and a way to go on', async () => {
    const page = await open();
    await page.evaluate(() => {
      const own = Array.prototype.flatMap;
      Object.assign(window, { mend: () => (Array.prototype.flatMap = own) });
      // Which cells are drawn is found by it.
      Array.prototype.flatMap = () => {
        throw new Error('broken on purpose');
      };
    });
    await page.getByRole('radio', { name: 'inches' }).click();
    const fault = page.getByRole('alert').filter({ hasText: 'This part of the page broke' });
    await fault.waitFor();
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      fault.getByRole('button', { name: 'Save the notebook as a file' }).click(),
    ]);
    expect(readFileSync(await file.path(), 'utf8')).toContain('"length": "in"');
    await page.evaluate(() => (window as unknown as { mend(): void }).mend());
    await fault.getByRole('button', { name: 'Show it again' }).click();
    await fault.waitFor({ state: 'detached' });
    await page.getByRole('radio', { name: 'cm' }).click();
    await type(page, 'hand', 'value', '22');
    expect(await hand(page)).toBe('22.0');
  });

  it('that nobody would see is said, and the page goes on', async () => {
    const page = await open();
    const said = page.getByRole('alert');
    await page.evaluate(() => {
      void Promise.reject(new TypeError('Failed to fetch dynamically imported module: x.js'));
    });
    await said.filter({ hasText: 'could not be fetched' }).waitFor();
    await page.evaluate(() => {
      setTimeout(() => {
        throw new Error('broken on purpose');
      });
    });
    await said.filter({ hasText: 'went wrong (broken on purpose)' }).waitFor();
    await type(page, 'hand', 'value', '22');
    expect(await hand(page)).toBe('22.0');
  });
});
