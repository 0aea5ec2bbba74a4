import { readFileSync } from 'node:fs';
import type { Page } from 'playwright';
import { describe, expect, it } from 'vitest';
import { type } from './workspace';
import { hand, ownProfile } from './kept';

const own = ownProfile();

describe('a fault in the page', () => {
  it('shows a sentence, the notebook to save, and a way to go on', async () => {
    const page = await own.open();
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
    const page = await own.open();
    const message = page.getByRole('alert');
    await page.evaluate(() => {
      void Promise.reject(new TypeError('Failed to fetch dynamically imported module: x.js'));
    });
    await message.filter({ hasText: 'could not be fetched' }).waitFor();
    await page.evaluate(() => {
      setTimeout(() => {
        throw new Error('broken on purpose');
      });
    });
    await message.filter({ hasText: 'went wrong (broken on purpose)' }).waitFor();
    await type(page, 'hand', 'value', '22');
    expect(await hand(page)).toBe('22.0');
  });
});

describe('a part of the page that could not be fetched', () => {
  /** A window in which some files cannot be fetched until it is mended. */
  async function cutOff(files: RegExp): Promise<{ page: Page; mend(): void }> {
    let cut = true;
    await own.context.route(files, (route) => (cut ? route.abort() : route.continue()));
    return { page: await own.open(), mend: () => (cut = false) };
  }

  const styled = (page: Page, name: string): Promise<boolean> =>
    page.evaluate(
      (part) => [...document.styleSheets].some(({ href }) => href?.includes(`/${part}-`) ?? false),
      name,
    );

  it.each([
    ['its code', /assets\/Adapt-.*\.js$/],
    ['what its code is made with', /assets\/read-pattern-.*\.js$/],
    ['its style', /assets\/Adapt-.*\.css$/],
  ])('is fetched when its view is chosen again: %s', async (_what, files) => {
    const { page, mend } = await cutOff(files);
    const way = page
      .getByRole('navigation', { name: 'What is shown' })
      .getByRole('button', { name: 'Adapt' });
    await way.click();
    await page.getByRole('alert').filter({ hasText: 'choose “Adapt” again' }).waitFor();
    mend();
    await way.click();
    await page.getByRole('heading', { name: 'Put the pattern in' }).waitFor();
    expect(await styled(page, 'Adapt')).toBe(true);
    // A view that is there keeps what was written in it.
    const pasted = page.locator('main textarea').first();
    await pasted.fill('Gauge: 14 sts');
    await way.click();
    expect(await pasted.inputValue()).toBe('Gauge: 14 sts');
  });

  it.each([
    ['its code', /assets\/Notebooks-.*\.js$/],
    ['its style', /assets\/Notebooks-.*\.css$/],
  ])('is fetched when its dialog is opened again: %s', async (_what, files) => {
    const { page, mend } = await cutOff(files);
    const way = page.getByRole('button', { name: 'Notebooks', exact: true });
    await way.click();
    await page.getByRole('alert').filter({ hasText: 'could not be fetched' }).waitFor();
    mend();
    await way.click();
    await page.getByRole('dialog').getByRole('heading', { name: 'Notebooks' }).waitFor();
    expect(await styled(page, 'Notebooks')).toBe(true);
  });
});
