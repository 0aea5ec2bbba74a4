import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { preview } from 'vite';
import { describe, expect, inject, it, onTestFinished } from 'vitest';
import { opened } from './burst';
import { settled, type } from './workspace';
import { watch } from './hostile-files';
import { hand, kept, notice, ownProfile } from './kept';

const own = ownProfile({ serviceWorkers: 'allow' });

describe('offline', () => {
  it('the page works without a network after the first visit, drawings, dialogs and links too', async () => {
    const page = await own.context.newPage();
    const { wrong } = watch(page, inject('address'));
    await opened(page, inject('address'));
    await type(page, 'hand', 'value', '21.5');
    await kept(page);
    await page.evaluate(async () => {
      await navigator.serviceWorker.ready;
    });
    await own.context.setOffline(true);
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
    await own.context.setOffline(false);
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
    const page = await own.context.newPage();
    await opened(page, address);
    await page.evaluate(async () => {
      await navigator.serviceWorker.ready;
    });
    await page.close();

    const change = (file: string, from: string | RegExp, to: string): void =>
      writeFileSync(join(built, file), readFileSync(join(built, file), 'utf8').replace(from, to));
    change('index.html', '<title>', '<meta name="newer" /><title>');
    change('offline-worker.js', /(index\.html[`"'],\s*revision:\s*[`"'])\w/, '$1-');
    const before = await own.context.newPage();
    await opened(before, address);
    await notice(before, 'A newer version of this page is ready').waitFor();
    await before.reload();
    await settled(before);
    expect(await before.locator('meta[name=newer]').count()).toBe(0);
    await before.close();
    await expect
      .poll(async () => {
        const after = await own.context.newPage();
        await opened(after, address);
        const newer = await after.locator('meta[name=newer]').count();
        await after.close();
        return newer;
      })
      .toBe(1);
  });
});
