import type { Page } from 'playwright';
import { beforeEach, describe, expect, it } from 'vitest';
import type { RangeSpec } from '../../src/pictures';
import { numbers, settled, type } from './workspace';
import { wrong } from './appearances';
import { blouseSleeve } from '../notebooks/blouse-sleeve';
import { vNeck } from '../notebooks/v-neck';
import { openNotebook } from './open-notebook';
import { visiting } from './visiting';

const visit = visiting();
let page: Page;
beforeEach(async () => {
  page = await visit();
  await openNotebook(page, vNeck());
});

const view = (name: string) =>
  page.getByRole('navigation', { name: 'What is shown' }).getByRole('button', { name, exact: true }).click();

/** The rows of a table of the view: what stands in their cells. */
async function rows(caption: RegExp): Promise<string[][]> {
  return page
    .getByRole('region', { name: caption })
    .locator('tbody tr')
    .evaluateAll((all) =>
      all.map((row) =>
        [...row.querySelectorAll('th, td')].map((cell) =>
          (cell as HTMLElement).innerText.replace(/\s+/g, ' ').trim(),
        ),
      ),
    );
}

/** Another swatch of the sleeve, on a smaller hook: 20 stitches and 16 rows over 10 cm. */
async function smallerHook(): Promise<void> {
  await page.locator('[data-place][data-cell="sleeve-fabric"][data-key="sts.0.count"]').focus();
  await page.keyboard.press('w');
  const dialog = page.getByRole('dialog');
  await dialog.waitFor();
  await dialog.getByText('Other values of this cell').click();
  await dialog.getByLabel('Stitches counted').fill('20');
  await dialog.getByLabel('Rows counted').fill('16');
  await dialog.getByLabel('Called').fill('Sleeve on a 4 mm hook');
  await page.keyboard.press('Enter');
  await dialog.waitFor({ state: 'detached' });
}

const number = (text: string): number => Number(text.replace('−', '-').replace('+', ''));

describe('a smaller hook for the sleeves', () => {
  beforeEach(() => openNotebook(page, blouseSleeve()));

  const keys = [
    ['sleeve-sts', 'value', 'Sleeve stitches picked up'],
    ['wrist-sts', 'value', 'Wrist stitches, before gathering'],
  ] as const;

  it('made by keyboard from the swatch, shows every difference, and they are those that making it the notebook makes', async () => {
    const before = await Promise.all(keys.map(([cell, key]) => numbers(page, cell, key)));
    await smallerHook();
    expect(await page.getByRole('region', { name: 'What-ifs that are on' }).innerText()).toContain(
      'Sleeve on a 4 mm hook',
    );
    expect(await Promise.all(keys.map(([cell, key]) => numbers(page, cell, key)))).toEqual(before);

    await page.getByRole('button', { name: 'Side by side' }).click();
    await page.getByText('Yarn for the sleeves').last().waitFor();
    await page.waitForFunction(() => document.querySelectorAll('.difference').length > 10);
    const different = await rows(/^Every value/);
    const under = keys.map(([, , label]) => {
      const at = different.findIndex(([head]) => head?.startsWith(label));
      expect(at).toBeGreaterThan(-1);
      return different[at + 1]!.slice(1).map((cell) => {
        const [value, difference = '0'] = cell.split(' ');
        return { value: number(value!), difference: number(difference) };
      });
    });
    under.forEach((line, at) =>
      line.forEach(({ value, difference }, size) => expect(value - difference).toBe(before[at]![size])),
    );
    expect(different.some(([head]) => head?.startsWith('Cuff stitches'))).toBe(false);

    await page.getByRole('button', { name: 'make it the notebook' }).click();
    await settled(page);
    await view('Leaf');
    const made = await Promise.all(keys.map(([cell, key]) => numbers(page, cell, key)));
    expect(made).toEqual(under.map((line) => line.map(({ value }) => value)));
    await page.getByRole('button', { name: 'Undo' }).click();
    await settled(page);
    expect(await Promise.all(keys.map(([cell, key]) => numbers(page, cell, key)))).toEqual(before);
  });

  it('stands beside the notebook through its edits, which flow into it', async () => {
    await smallerHook();
    await type(page, 'cuff', 'value', '30', 'c4');
    await settled(page);
    await view('What-ifs');
    await page.waitForFunction(() => document.querySelectorAll('.difference').length > 10);
    const side = await rows(/^Chosen results/);
    const at = side.findIndex(([head]) => head?.startsWith('Cuff stitches'));
    // 30 cm at 20 stitches to 10 cm are 60, a multiple of 4.
    expect([side[at]![2], side[at + 1]![2]]).toEqual(['60', '60']);
  });
});

describe('a range', () => {
  const drawn = (at: number): Promise<RangeSpec> =>
    page
      .locator('figure canvas')
      .nth(at)
      .evaluate((canvas) => (canvas as unknown as { plotted(): RangeSpec }).plotted());

  it('of the ease finds, for each of nine sizes, where the back needs no rounding; taking one makes it so', async () => {
    await view('Range');
    await page.getByText('Whole repeats: Back stitches').waitFor();
    const spec = await drawn(0);
    expect(spec.stairs).toBe(true);
    expect(spec.sizes).toHaveLength(9);
    for (const size of spec.sizes) {
      expect(size.whole.length).toBeGreaterThan(0);
      expect(size.values.every((value) => value !== null && value % 8 === 3)).toBe(true);
    }
    const list = page.locator('dl').first();
    expect(await list.locator('dt').allInnerTexts()).toHaveLength(9);

    await page.getByRole('button', { name: 'Give each size the nearest of its own' }).first().click();
    await settled(page);
    await view('Leaf');
    await page.locator('[data-cell-rows="back-sts"] .more').first().click();
    const off = await page.$$eval('tr[data-line="back-sts off"] [data-size]', (all) =>
      all.map((one) => Number((one.firstChild?.textContent ?? '').trim().replace('−', '-'))),
    );
    expect(off).toHaveLength(9);
    expect(off.every((by) => by === 0)).toBe(true);
  });

  it('gives a value to a click on a point, and to Enter on one walked to', async () => {
    await view('Range');
    await page.getByText('Whole repeats: Back stitches').waitFor();
    const plot = page.getByRole('application').first();
    await plot.focus();
    await page.keyboard.press('Home');
    await page.keyboard.press('ArrowRight');
    await page.locator('.saying').first().filter({ hasText: '10.5 cm: XS' }).waitFor();
    await page.keyboard.press('Enter');
    await settled(page);
    await expect.poll(async () => (await drawn(0)).now).toBe(10.5);
    const box = (await plot.boundingBox())!;
    await page.mouse.click(box.x + box.width * 0.75, box.y + box.height / 3);
    await expect.poll(async () => (await drawn(0)).now).toBeGreaterThan(20);
  });

  it('says what is wrong with a step of 0, an end before its start, a million steps, and what does not depend', async () => {
    await view('Range');
    await page.getByText('Whole repeats: Back stitches').waitFor();
    const problem = page.locator('#range-problem');
    await page.getByLabel('Step, cm').fill('0');
    expect(await problem.innerText()).toContain('never arrives');
    await page.getByLabel('Step, cm').fill('0.00002');
    expect(await problem.innerText()).toContain('take a longer step');
    await page.getByLabel('Step, cm').fill('0.5');
    await page.getByLabel('End, cm').fill('3');
    expect(await problem.innerText()).toContain('exchange them');
    await page.getByLabel('End, cm').fill('30');
    await page.getByLabel('Show as well').selectOption({ label: 'Rows of the armhole' });
    await page.getByText('Rows of the armhole does not depend on Finished bust: ease').waitFor();
  });

  it('shows how far it is, and stops', async () => {
    await view('Range');
    await page.getByText('Whole repeats: Back stitches').waitFor();
    await page.getByLabel('Step, cm').fill('0.004');
    await page.getByLabel('End, cm').fill('29');
    await page.getByText(/^\d+ of 4751 steps/).waitFor();
    await page.getByRole('button', { name: 'Stop' }).click();
    await page.getByText(/^Stopped /).waitFor();
    await page.getByRole('button', { name: 'Go on' }).waitFor();
  });
});

it('nothing is wrong with either view, whatever it is seen in', async () => {
  await view('What-ifs');
  expect(await wrong(page)).toEqual([]);
  await page.getByLabel('The cell whose values might be others').selectOption({ label: 'Rib' });
  await page.getByRole('button', { name: 'What if …' }).click();
  await page.getByRole('dialog').waitFor();
  expect(await wrong(page)).toEqual([]);
  await page.getByRole('dialog').getByLabel('Stitches counted').fill('18');
  await page.keyboard.press('Enter');
  await page.waitForFunction(() => document.querySelectorAll('.difference').length > 20);
  expect(await wrong(page)).toEqual([]);
  await view('Range');
  await page.getByText('Whole repeats: Back stitches').waitFor();
  await page.getByText('As a table').first().click();
  expect(await wrong(page)).toEqual([]);
});
