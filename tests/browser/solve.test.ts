import type { Page } from 'playwright';
import { describe, expect, it } from 'vitest';
import { numbers, settled } from './workspace';
import { vNeck } from '../notebooks/v-neck';
import { openNotebook } from './open-notebook';
import { visiting } from './visiting';

const first = visiting();
const visit = async (): Promise<Page> => {
  const page = await first();
  await openNotebook(page, vNeck());
  return page;
};

async function show(page: Page, view: string): Promise<void> {
  await page.getByRole('button', { name: view, exact: true }).click();
  await page.getByRole('heading', { name: view, level: 2 }).waitFor();
}

const worked = (page: Page): Promise<unknown> =>
  page.waitForFunction(
    () => document.querySelector('main table') && !document.querySelector('main progress'),
  );

/** The multiple of 8 plus 3 nearest to half of a bust of so many inches and an ease, at 14 stitches to 10 cm. */
const inches = [29, 33, 37, 41, 45, 49, 53, 57, 61];
const labels = ['XS', 'S', 'M', 'L', 'XL', '2X', '3X', '4X', '5X'];
function back(bust: number, ease: number): number {
  return 8 * Math.floor((((bust * 2.54 + ease) / 2) * 1.4 - 3) / 8 + 0.5 + 1e-9) + 3;
}

describe('the V-neck worked back', () => {
  it('finds the ease that gives 91 stitches in most sizes, and takes it', async () => {
    const page = await visit();
    await show(page, 'Work back');
    await page.getByLabel('gives').selectOption({ label: 'Back stitches' });
    await page.getByLabel('Which').selectOption({ label: 'Finished bust: ease' });
    await page.getByLabel('the amount').fill('91');
    await worked(page);
    // The same by trying every tenth of a millimetre, with arithmetic that shares nothing with the page.
    const eases = Array.from({ length: 4001 }, (_ease, at) => at / 100);
    const serves = (ease: number) => inches.filter((bust) => back(bust, ease) === 91).length;
    const most = Math.max(...eases.map(serves));
    const choose = page.getByRole('button', { name: /^Take [\d.]+ cm/ });
    await choose.waitFor();
    const taken = Number((await choose.textContent())!.match(/[\d.]+/)![0]);
    expect(serves(taken)).toBe(most);
    const failed = labels.filter((_label, at) => back(inches[at]!, taken) !== 91);
    expect(await page.locator('.sum').textContent()).toContain(`It fails ${failed.join(', ')}.`);

    // Every stretch of the table begins and ends where the arithmetic says.
    const inRow = page
      .locator('main tbody tr')
      .filter({ has: page.getByRole('rowheader', { name: 'M', exact: true }) });
    const medium = (await inRow.locator('td').first().textContent())!.match(/([\d.]+) to ([\d.]+)/)!;
    const inM = eases.filter((ease) => back(37, ease) === 91);
    expect(Math.abs(Number(medium[1]) - inM[0]!)).toBeLessThanOrEqual(0.01);
    expect(Math.abs(Number(medium[2]) - inM.at(-1)!)).toBeLessThanOrEqual(0.01);

    await choose.click();
    await settled(page);
    await page.getByRole('button', { name: 'Leaf', exact: true }).click();
    await settled(page);
    expect(await numbers(page, 'back-sts', 'count')).toEqual(inches.map((bust) => back(bust, taken)));
    await page.getByRole('button', { name: 'Undo' }).click();
    await settled(page);
    expect(await numbers(page, 'back-sts', 'count')).toEqual(inches.map((bust) => back(bust, 20)));
  });

  it('by keyboard alone: to the view from an opened cell, a wish, and a value taken', async () => {
    const page = await visit();
    await page.locator('[data-cell-rows="back-sts"] .more').first().click();
    await page.getByRole('button', { name: 'work back', exact: true }).focus();
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: 'Work back', level: 2 }).waitFor();
    await worked(page);
    // The focus is on the heading. The form comes next, in the order it is read: which value, from, to, by, gives what.
    for (let tab = 0; tab < 5; tab++) await page.keyboard.press('Tab');
    expect(await page.evaluate(() => (document.activeElement as HTMLSelectElement).value)).toContain(
      'back-sts',
    );
    for (let tab = 0; tab < 2; tab++) await page.keyboard.press('Tab');
    await page.keyboard.press('ControlOrMeta+a');
    await page.keyboard.type('83');
    await worked(page);
    const choose = page.getByRole('button', { name: /^Take/ });
    await choose.waitFor();
    for (
      let tab = 0;
      tab < 12 && !(await choose.evaluate((node) => node === document.activeElement));
      tab++
    ) {
      await page.keyboard.press('Tab');
    }
    await page.keyboard.press('Enter');
    await settled(page);
    expect(await page.getByRole('button', { name: 'Undo' }).isEnabled()).toBe(true);
  });
});

describe('the give or take of the V-neck', () => {
  it('of the bust as worked, what adds to it and what would halve it', async () => {
    const page = await visit();
    await show(page, 'Give or take');
    await worked(page);
    await page.getByRole('button', { name: 'Bust as worked' }).click();
    await page.getByRole('combobox', { name: 'Size' }).selectOption({ label: 'M' });
    const text = (await page.getByRole('region', { name: 'What it comes from' }).textContent())!;
    // Two fronts of 35 and a back of 83 at 1.4 to the cm, two bands of 5 rows at 1.3; each gauge one reading.
    const count = 83 + 2 * 35;
    const u = Math.hypot(
      (count / 1.4 ** 2) * (0.05 / Math.sqrt(3)),
      (10 / 1.3 ** 2) * (0.05 / Math.sqrt(3)),
      0.5 / Math.sqrt(3),
    );
    const value = count / 1.4 + 10 / 1.3;
    expect(text).toContain(`${value.toFixed(1)} ± ${(1.959964 * u).toFixed(1)} cm (about 19 times in 20)`);
    expect(text).toMatch(/Body fabric, stitch gauge/);
    expect(text).toMatch(/To halve it, count \d+ more stitches/);
  });

  it('stands under a cell of the grid as well, in the size in focus', async () => {
    const page = await visit();
    await page.locator('[data-cell-rows="bust-as-worked"] .more').first().click();
    await page.getByRole('button', { name: 'give or take', exact: true }).click();
    const panel = page.getByRole('region', { name: 'Give or take of Bust as worked' });
    await panel.getByText('about 19 times in 20').waitFor();
  });
});
