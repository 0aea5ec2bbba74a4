import type { Page } from 'playwright';
import { beforeAll, expect, it } from 'vitest';
import { begin, settled, toolsWithDialogs } from './workspace';
import { obscured } from './obscured';
import { visiting } from './visiting';

const visit = visiting();
let page: Page;
/** A window of 1280 by 1024 at 400 % (WCAG 2.2, 1.4.10). */
beforeAll(async () => {
  page = await visit({ viewport: { width: 320, height: 256 } });
});

/** What is drawn after the next painting may move the focus, and brings it back: counted in paintings. */
async function obscuredOnceDrawn(): Promise<string | null> {
  await settled(page);
  let still = await obscured(page);
  for (let frame = 0; still && frame < 600; frame++) {
    await page.evaluate(() => new Promise(requestAnimationFrame));
    still = await obscured(page);
  }
  return still;
}

/** Goes on by a key, and says wherever the focus came to lie out of sight and stayed there. */
async function unseen(key: string, most: number): Promise<string[]> {
  const found: string[] = [];
  for (let step = 0; step < most; step++) {
    await page.keyboard.press(key);
    if (!(await obscured(page))) continue;
    const still = await obscuredOnceDrawn();
    if (still) found.push(still);
  }
  return found;
}

async function tool(name: string): Promise<void> {
  // Where a test before this one failed, its dialog may be open.
  if ((await page.locator('dialog[open]').count()) > 0) await page.keyboard.press('Escape');
  const more = page.getByRole('button', { name: 'More tools' });
  if (await more.isVisible()) await more.click();
  await page.getByRole('button', { name, exact: true }).click();
  await page.locator('dialog[open]').waitFor();
}

it('at 400 % the focus is never lost from sight in the grid: up and down, under the drawings, and along nine sizes', async () => {
  await page.locator('main [data-place][tabindex="0"]').first().focus();
  expect(await unseen('ArrowDown', 120)).toEqual([]);
  // To the last size and back: what was scrolled aside comes out from under the labels.
  await page.locator('[data-line="bust value"] [data-size]').first().focus();
  expect(await unseen('ArrowRight', 9)).toEqual([]);
  expect(await unseen('ArrowLeft', 9)).toEqual([]);
  await page.locator('[data-line="bust value"] [data-size]').last().focus();
  expect(await unseen('ArrowDown', 40)).toEqual([]);
  expect(await unseen('ArrowUp', 40)).toEqual([]);
});

it('at 400 % a formula can be written: its field and what is wrong with it are in sight', async () => {
  await begin(page, 'One sleeve');
  await page.locator('[data-formula][data-cell="cuff-sts"]').first().focus();
  await page.keyboard.press('Enter');
  await page.locator('main input:focus').waitFor();
  await page.keyboard.type(' + nothing_so_called ');
  await page.keyboard.press('Enter');
  const problem = page.locator('main .editor [role=alert]');
  await problem.waitFor();
  expect(await obscured(page)).toBeNull();
  await problem.scrollIntoViewIfNeeded();
  const box = (await problem.boundingBox())!;
  expect(Math.min(box.x, box.y)).toBeGreaterThanOrEqual(0);
  expect(box.x + box.width).toBeLessThanOrEqual(320);
  expect(box.y + box.height).toBeLessThanOrEqual(256);
  await page.keyboard.press('Escape');
  await page.keyboard.press('Escape');
});

it.each(['Pictures', 'Pattern', 'Adapt', 'What-ifs', 'Range', 'Work back', 'Give or take', 'Class sheet'])(
  'at 400 % the focus is seen wherever Tab takes it in the view %s',
  async (view) => {
    const way = page.getByRole('navigation', { name: 'What is shown' }).getByRole('button', { name: view });
    await way.click();
    if (view !== 'Leaf') await page.locator('main h2').first().waitFor();
    await page.waitForFunction(() => !document.querySelector('main progress'));
    expect(await unseen('Tab', 40)).toEqual([]);
    expect(await unseen('Shift+Tab', 20)).toEqual([]);
  },
);

it.each(toolsWithDialogs)(
  'at 400 % the dialog %s begins at its heading or its first field, and the focus is seen all through it',
  async (name) => {
    await tool(name);
    const dialog = page.locator('dialog[open]');
    expect(await obscured(page)).toBeNull();
    // It begins where one reads on from: not past its first screen.
    expect(await dialog.evaluate(({ scrollTop, clientHeight }) => scrollTop < clientHeight)).toBe(true);
    expect(await unseen('Tab', 14)).toEqual([]);
    expect(await unseen('Shift+Tab', 6)).toEqual([]);
    await page.keyboard.press('Escape');
    await dialog.waitFor({ state: 'hidden' });
    // The focus is back where the person came from.
    expect(await page.evaluate(() => document.activeElement?.textContent.trim())).toMatch(/tools$/);
  },
);
