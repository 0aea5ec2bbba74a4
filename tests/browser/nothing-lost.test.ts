import { readFileSync } from 'node:fs';
import { describe, expect, inject, it } from 'vitest';
import { begin, settled, type } from './workspace';
import { closeList, hand, kept, titlesInList, notice, ownProfile, title } from './kept';
import { typeAndLeave } from './leaving';
import { sickDatabase, toDatabase } from './sick-database';

const own = ownProfile();

/** Opens a notebook from the list by the beginning of its name. */
async function openFromList(page: Parameters<typeof titlesInList>[0], name: RegExp): Promise<void> {
  await titlesInList(page);
  await page.getByRole('dialog').getByRole('button', { name }).first().click();
  await settled(page);
}

describe('leaving the page in the very task of an edit', () => {
  it('loses nothing: of a first visit, of a notebook that is kept, and of one gone on with', async () => {
    const page = await own.open();
    for (const number of ['21', '23']) {
      await typeAndLeave(page, number);
      await settled(page);
      await expect.poll(() => hand(page)).toBe(`${number}.0`);
    }
    await kept(page);
    expect(await titlesInList(page)).toEqual(['Saltmarsh cardigan']);
    await closeList(page);
    // What was undone stays undone.
    await type(page, 'hand', 'value', '30');
    await page.keyboard.press('ControlOrMeta+z');
    await page.reload();
    await expect.poll(() => hand(page)).toBe('23.0');
    await kept(page);
    const left = () => Object.keys(localStorage).filter((key) => key.startsWith('easewright edit/'));
    await expect.poll(() => page.evaluate(left)).toEqual([]);
  });

  it('for another notebook loses nothing of either; the next window has both', async () => {
    const page = await own.open();
    await type(page, 'hand', 'value', '21');
    await kept(page);
    await begin(page, 'Hat crown');
    await kept(page);
    await openFromList(page, /^Saltmarsh cardigan/);
    await typeAndLeave(page, '22', 'about:blank');
    const next = await own.open();
    await expect.poll(() => hand(next)).toBe('22.0');
    expect((await titlesInList(next)).sort()).toEqual(['A hat with eight wedges', 'Saltmarsh cardigan']);
  });
});

describe('where the device is full', () => {
  it('another notebook is opened only once the person has said so, and what is not saved stays and is saved later', async () => {
    await sickDatabase(own.context);
    const page = await own.open();
    await type(page, 'hand', 'value', '21');
    await kept(page);
    await toDatabase.fill(page, true);
    await type(page, 'hand', 'value', '22');
    await page.getByRole('alert').filter({ hasText: 'out of space' }).waitFor();

    const ask = page.getByRole('dialog', { name: 'Saltmarsh cardigan is not saved' });
    const wanted = async (): Promise<void> => {
      await page.getByRole('button', { name: 'Starters' }).click();
      await page.getByRole('dialog').getByRole('button', { name: 'Hat crown' }).first().click();
      await ask.waitFor();
    };
    await wanted();
    await ask.getByRole('button', { name: 'Stay here' }).click();
    expect([await title(page), await hand(page)]).toEqual(['Saltmarsh cardigan', '22.0']);
    await wanted();
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      ask.getByRole('button', { name: 'Save a file' }).click(),
    ]);
    expect(readFileSync(await file.path(), 'utf8')).toContain('"value": 22');
    await settled(page);
    expect(await title(page)).toBe('A hat with eight wedges');
    await notice(page, 'Saltmarsh cardigan is not saved yet').waitFor();

    // It is here, although it is nowhere else. The hat finds no room either, and is asked about once that is known.
    await page.getByRole('alert').filter({ hasText: 'out of space' }).waitFor();
    await notice(page, 'Saltmarsh cardigan').getByRole('button', { name: 'Open' }).click();
    await ask
      .or(page.getByRole('dialog', { name: 'A hat' }))
      .getByRole('button', { name: 'without saving' })
      .click();
    await expect.poll(() => hand(page)).toBe('22.0');
    await type(page, 'hand', 'value', '23');
    await notice(page, 'A hat with eight wedges is not saved yet').waitFor();

    await toDatabase.fill(page, false);
    await notice(page, 'is not saved yet').waitFor({ state: 'detached' });
    await kept(page);
    expect((await titlesInList(page)).sort()).toEqual(['A hat with eight wedges', 'Saltmarsh cardigan']);
    await page.reload();
    await expect.poll(() => hand(page)).toBe('23.0');
  });
});

describe('a database that does not answer', () => {
  it('is waited for: the page says so, shows no other notebook meanwhile, and then the own one', async () => {
    const first = await own.open();
    await type(first, 'hand', 'value', '21');
    await kept(first);
    await first.close();
    await sickDatabase(own.context, { silent: true });
    const page = await own.context.newPage();
    await page.goto(inject('address'));
    await page.getByText('Looking for your notebooks').waitFor();
    await page.getByRole('alert').filter({ hasText: 'does not answer' }).waitFor();
    expect(await page.locator('[data-place]').count()).toBe(0);
    await toDatabase.answer(page);
    await expect.poll(() => hand(page)).toBe('21.0');
    expect(await title(page)).toBe('Saltmarsh cardigan');
  });

  it('while the person goes on with an example: it is said not to be saved, and neither work is lost or mixed', async () => {
    const first = await own.open();
    await type(first, 'hand', 'value', '21');
    await kept(first);
    await first.close();
    await sickDatabase(own.context, { silent: true });
    const page = await own.context.newPage();
    await page.goto(inject('address'));
    await page.getByRole('button', { name: 'Go on with an example' }).click();
    await settled(page);
    await page.getByRole('alert').filter({ hasText: 'Not saved' }).waitFor();
    await type(page, 'hand', 'value', '44');
    await toDatabase.answer(page);
    await kept(page);
    expect(await hand(page)).toBe('44.0');
    await page.getByRole('alert').waitFor({ state: 'detached' });
    await notice(page, 'Your notebooks are here again').getByRole('button', { name: 'Open' }).click();
    await expect.poll(() => hand(page)).toBe('21.0');
    expect(await titlesInList(page)).toEqual(['Saltmarsh cardigan', 'Saltmarsh cardigan']);
  });

  it('to a write: it is said not to be saved, and once it answers, that it is', async () => {
    await sickDatabase(own.context);
    const page = await own.open();
    await type(page, 'hand', 'value', '21');
    await kept(page);
    await toDatabase.hang(page);
    await type(page, 'hand', 'value', '22');
    await page.getByRole('alert').filter({ hasText: 'does not answer' }).waitFor();
    await type(page, 'hand', 'value', '23');
    await page.locator('[data-standing="not kept"]').waitFor();
    await toDatabase.goOn(page);
    await kept(page);
    await page.reload();
    await expect.poll(() => hand(page)).toBe('23.0');
  });
});

describe('where the part of the page that saves does not come', () => {
  it('it is said, edits are in the journal all the same, and it is fetched as soon as it can be', async () => {
    await own.context.route(/assets\/start-/, (route) => route.abort());
    const page = await own.context.newPage();
    await page.goto(inject('address'));
    await settled(page);
    await page.getByRole('alert').filter({ hasText: 'Not saved' }).waitFor();
    await typeAndLeave(page, '21');
    await expect.poll(() => hand(page)).toBe('21.0');
    await type(page, 'hand', 'value', '22');
    await own.context.unroute(/assets\/start-/);
    await kept(page);
    await page.getByRole('alert').waitFor({ state: 'detached' });
    await page.reload();
    await expect.poll(() => hand(page)).toBe('22.0');
  });
});
