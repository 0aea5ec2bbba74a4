import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type } from './desk';
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
