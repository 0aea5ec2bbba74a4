import type { Browser, BrowserContext, Page } from 'playwright';
import { afterAll, beforeAll, beforeEach, describe, expect, inject, it, onTestFinished } from 'vitest';
import { startBrowser } from './browser';
import { killedInABurst, opened } from './burst';
import { begin, settled, type } from './desk';
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

const hand = (page: Page): Promise<string> =>
  page.locator('[data-place][data-cell="hand"][data-key="value"]:not([data-size])').first().innerText();
const title = (page: Page): Promise<string> => page.getByRole('heading', { level: 1 }).innerText();
const notice = (page: Page, words: string) => page.locator('.notice').filter({ hasText: words });

/** The list of notebooks, as it is read. */
async function listed(page: Page): Promise<string[]> {
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
    expect(await hand(page)).toBe('21.0');
    // Looked at, it cannot be changed.
    await type(page, 'hand', 'value', '30');
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: 'Go to what it is now' }).click();
    expect(await hand(page)).toBe('23.0');

    await page.getByRole('button', { name: 'Earlier states' }).click();
    await states.last().click();
    await page.getByRole('button', { name: 'Bring it back' }).click();
    expect(await hand(page)).toBe('21.0');
    await kept(page);
    await page.keyboard.press('ControlOrMeta+z');
    expect(await hand(page)).toBe('23.0');
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
    expect(await hand(second)).toBe('23.0');
    await type(second, 'hand', 'value', '24');
    await expect.poll(() => hand(first)).toBe('24.0');
    await kept(second);

    await second.close();
    await notice(first, 'being edited in another window').waitFor({ state: 'detached' });
    await type(first, 'hand', 'value', '25');
    await kept(first);
    await first.reload();
    await settled(first);
    expect(await hand(first)).toBe('25.0');
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
