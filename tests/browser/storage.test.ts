import { readFileSync } from 'node:fs';
import type { Page } from 'playwright';
import { describe, expect, inject, it, onTestFinished } from 'vitest';
import { killedInABurst, opened } from './burst';
import { begin, settled, type } from './workspace';
import { closeList, hand, kept, titlesInList, notice, title, ownProfile } from './kept';
import { newProfile, removeProfile, startOn } from './profile';

const own = ownProfile();

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

  it('a first visit begins with the cardigan, the next with what was open last', async () => {
    const page = await own.open();
    expect(await title(page)).toBe('Saltmarsh cardigan');
    expect(await titlesInList(page)).toEqual([]);
    await closeList(page);
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
    const page = await own.open();
    await type(page, 'hand', 'value', '21.5');
    await kept(page);
    await begin(page, 'Blank');
    await kept(page);
    const dialog = page.getByRole('dialog');
    expect(await titlesInList(page)).toEqual(['Untitled', 'Saltmarsh cardigan']);

    await dialog.getByRole('button', { name: 'Duplicate Saltmarsh cardigan' }).click();
    await dialog.getByText('Made a copy of Saltmarsh cardigan.').waitFor();
    await dialog.getByRole('button', { name: 'Rename Saltmarsh cardigan (copy)' }).click();
    await page.keyboard.press('ControlOrMeta+a');
    await page.keyboard.type('Harbour cardigan');
    await page.keyboard.press('Enter');
    await dialog.getByText('Renamed.').waitFor();
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.getAttribute('aria-label')))
      .toBe('Rename Harbour cardigan');
    await dialog.getByRole('button', { name: 'Delete Untitled', exact: true }).click();
    await dialog.getByText('Deleted Untitled.').waitFor();
    // The open notebook is gone: the one changed last takes its place.
    expect(await title(page)).toBe('Harbour cardigan');
    await dialog.getByRole('button', { name: 'Undo' }).click();
    await dialog.getByText('Untitled is back.').waitFor();
    await dialog.getByRole('button', { name: /^Saltmarsh cardigan/ }).click();
    await settled(page);
    await expect.poll(() => title(page)).toBe('Saltmarsh cardigan');
    expect(await hand(page)).toBe('21.5');
    expect((await titlesInList(page)).sort()).toEqual(['Harbour cardigan', 'Saltmarsh cardigan', 'Untitled']);
  });

  it('keeps earlier states, to look at and to bring back, which undo takes back too', async () => {
    const page = await own.open();
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
  expect(await titlesInList(page)).toContain('Saltmarsh cardigan');
  await page
    .getByRole('dialog')
    .getByRole('button', { name: /^Saltmarsh cardigan/ })
    .click();
  await expect.poll(() => hand(page)).toBe('21.5');
}

describe('where the browser does not keep', () => {
  it('because it is denied: the work goes on in memory, is said not to be kept, and can be saved', async () => {
    await own.context.addInitScript(() => {
      IDBFactory.prototype.open = () => {
        throw new DOMException('Denied.', 'SecurityError');
      };
    });
    await goesOnInMemory(await own.open(), /does not let this page save/);
  });

  it('because what it kept is damaged: the same', async () => {
    // As a browser answers whose files of the database are damaged beyond repair.
    await own.context.addInitScript(() => {
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
    await goesOnInMemory(await own.open(), /cannot read or write/);
  });

  it('because the device is full: the same, and it is kept as soon as there is room again', async () => {
    const page = await own.open();
    const devtools = await own.context.newCDPSession(page);
    const { origin } = new URL(inject('address'));
    await devtools.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1 });
    await type(page, 'hand', 'value', '21.5');
    await page
      .getByRole('alert')
      .filter({ hasText: /out of space/ })
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
    const page = await own.open();
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
      .filter({ hasText: 'Saltmarsh cardigan, which was open last, could not be opened' })
      .waitFor();
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save what is left of it' }).click(),
    ]);
    expect(readFileSync(await file.path(), 'utf8')).toContain('"title":3');
    await type(page, 'hand', 'value', '24');
    await kept(page);
    expect(await titlesInList(page)).toHaveLength(2);
  });
});
