import type { BrowserContext, Page } from 'playwright';
import { afterAll, beforeAll, beforeEach, expect, inject, it } from 'vitest';
import { settled, type } from '../browser/workspace';
import { hand, kept, titlesInList, notice } from '../browser/kept';
import { typeAndLeave } from '../browser/leaving';
import { sickDatabase, toDatabase } from '../browser/sick-database';
import { profiles } from '../browser/visiting';

/** How often each is done: as many as named, or `TIMES` for a quick look. */
const times = (number: number): number => Math.min(number, Number(process.env['TIMES'] ?? number));

const another = profiles();
let context: BrowserContext;
let page: Page;
const counted = new Map<string, { done: number; lost: number }>();

/** Counts how often something was done, and how often an edit was lost by it. */
async function count(what: string, held: Promise<boolean>): Promise<void> {
  const figures = counted.get(what) ?? { done: 0, lost: 0 };
  counted.set(what, { done: figures.done + 1, lost: figures.lost + ((await held) ? 0 : 1) });
}

beforeAll(() => counted.clear());
afterAll(() => {
  for (const [what, { done, lost }] of counted) console.log(`${what}: ${done} times, ${lost} edits lost.`);
});
beforeEach(async () => {
  context = await another();
});

/** Opens the page, with the edits that the journal held once all is worked out. */
async function opened(): Promise<void> {
  page = await context.newPage();
  await page.goto(inject('address'));
}

it('an edit is there after leaving the page in its own task', async () => {
  await opened();
  await settled(page);
  for (let number = 1; number <= times(100); number++) {
    await typeAndLeave(page, String(number));
    await count(
      'Left at 0 ms',
      hand(page).then((shown) => Number(shown) === number),
    );
  }
  expect(counted.get('Left at 0 ms')?.lost).toBe(0);
});

it('two notebooks outlive a full device', async () => {
  await sickDatabase(context);
  await opened();
  await settled(page);
  await type(page, 'hand', 'value', '1');
  await kept(page);
  for (let number = 1; number <= times(20); number++) {
    await toDatabase.fill(page, true);
    await type(page, 'hand', 'value', String(number + 0.5));
    await page.locator('[data-standing="not kept"]').waitFor();
    await page.getByRole('button', { name: 'Starters' }).click();
    await page.getByRole('dialog').getByRole('button', { name: 'Hat crown' }).first().click();
    await page.getByRole('button', { name: 'Open it without saving' }).click();
    await notice(page, 'Saltmarsh cardigan is not saved yet').waitFor();
    await toDatabase.fill(page, false);
    await notice(page, 'is not saved yet').waitFor({ state: 'detached' });
    await kept(page);
    await titlesInList(page);
    await page
      .getByRole('dialog')
      .getByRole('button', { name: /^Saltmarsh cardigan/ })
      .first()
      .click();
    await count(
      'Full, two notebooks',
      hand(page).then((shown) => Number(shown) === number + 0.5),
    );
  }
  expect(counted.get('Full, two notebooks')?.lost).toBe(0);
});

it('a database that hangs is said not to answer, and holds the edit in the end', async () => {
  await sickDatabase(context);
  await opened();
  await settled(page);
  await type(page, 'hand', 'value', '0.5');
  await kept(page);
  for (let number = 1; number <= times(100); number++) {
    await toDatabase.hang(page);
    await type(page, 'hand', 'value', String(number));
    await page.locator('[data-standing="not kept"]').waitFor();
    await toDatabase.goOn(page);
    await kept(page);
    await page.reload();
    await count(
      'Hung',
      hand(page).then((shown) => Number(shown) === number),
    );
  }
  expect(counted.get('Hung')?.lost).toBe(0);
});

it('a database that answers late is waited for, and no other notebook is shown', async () => {
  await opened();
  await settled(page);
  await sickDatabase(context, { silent: true });
  for (let number = 1; number <= times(100); number++) {
    await typeAndLeave(page, String(number));
    await page.getByText('Looking for your notebooks').waitFor();
    expect(await page.locator('[data-place]').count()).toBe(0);
    await toDatabase.answer(page);
    await count(
      'Answered late',
      hand(page).then((shown) => Number(shown) === number),
    );
  }
  expect(counted.get('Answered late')?.lost).toBe(0);
});

it('where the part that saves does not come, that is said, and the edit is there', async () => {
  await context.route(/assets\/start-/, (route) => route.abort());
  await opened();
  await settled(page);
  for (let number = 1; number <= times(100); number++) {
    await page.getByRole('alert').filter({ hasText: 'Not saved' }).waitFor();
    await typeAndLeave(page, String(number));
    await count(
      'Without a part',
      hand(page).then((shown) => Number(shown) === number),
    );
  }
  expect(counted.get('Without a part')?.lost).toBe(0);
});
