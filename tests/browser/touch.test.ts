import type { Locator, Page } from 'playwright';
import { beforeAll, expect, it } from 'vitest';
import { settled } from './desk';
import { visiting } from './visiting';

const visit = visiting();
let page: Page;
beforeAll(async () => {
  page = await visit({ viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true });
  page.setDefaultTimeout(10_000);
});

const tap = (name: string | RegExp): Promise<void> => page.getByRole('button', { name }).first().tap();

/** A place of the leaf whose name, as it is read out, begins so. */
const place = (called: string): Locator =>
  page.locator(`main [data-place][aria-label^="${called}"]:not(button, select)`).first();

/** Where the fingers are on the keys on the glass: the page is told the letters, and Enter. */
async function write(text: string): Promise<void> {
  await page.locator('main input:focus').waitFor();
  await page.keyboard.type(text);
}

async function enter(called: string, text: string): Promise<void> {
  await place(called).tap();
  await write(text);
  await page.keyboard.press('Enter');
  await page.waitForFunction(() => document.activeElement?.tagName !== 'INPUT');
  await settled(page);
}

async function call(label: string): Promise<void> {
  await page.locator('dialog input[maxlength]:focus').waitFor();
  await page.keyboard.type(label);
  await tap('Add it');
  await place(label).waitFor();
  await settled(page);
}

async function add(kind: string, label: string): Promise<void> {
  await tap(/^Add a cell to/);
  await page
    .getByRole('option', { name: new RegExp(`^${kind}`) })
    .first()
    .tap();
  await call(label);
}

/** Opens a place for a formula, and points at what goes in, with a sign between. */
async function point(called: string, from: string, then?: { sign: string; at: string }): Promise<void> {
  await place(called).tap();
  if (!(await page.locator('main [role=combobox]:focus').isVisible())) await write('=');
  await page.locator('main [role=combobox]:focus').waitFor();
  await place(from).tap();
  if (then) {
    await tap(then.sign);
    await place(then.at).tap();
  }
  await tap('Take it');
  await page.locator('main [role=combobox]').waitFor({ state: 'detached' });
  await settled(page);
}

const shownAt = async (called: string): Promise<string> =>
  ((await place(called).getAttribute('aria-label')) ?? '').replace(/^.*: /, '');

/** What would keep a finger from the page as it stands. */
const hindrances = (): Promise<string[]> =>
  page.evaluate(() => {
    const found: string[] = [];
    const root = document.documentElement;
    if (root.scrollWidth > innerWidth) found.push(`the page scrolls sideways, to ${root.scrollWidth} px`);
    if (visualViewport!.scale !== 1) found.push('the page was zoomed');
    const within = document.querySelector('dialog[open]') ?? document.body;
    for (const one of within.querySelectorAll<HTMLElement>(
      'button, [role="button"], select, input, summary',
    )) {
      if (!one.checkVisibility()) continue;
      const { type } = one as HTMLInputElement;
      const target = type === 'radio' || type === 'checkbox' ? (one.closest('label') ?? one) : one;
      const { width, height } = target.getBoundingClientRect();
      const called = one.getAttribute('aria-label') ?? one.textContent;
      if (width > 0 && Math.min(width, height) < 23.9) found.push(`${called}: ${width} × ${height} px`);
      if (one.matches('input, select') && parseFloat(getComputedStyle(one).fontSize) < 16)
        found.push(`${called}: letters that phones zoom into`);
    }
    return found;
  });

it('from a blank notebook, by touch alone on a phone: swatch, measure, ease, formula, repeat fit, a taper, a check and the pattern', async () => {
  expect(await hindrances()).toEqual([]);
  await tap('Begin a notebook of your own');
  await page.getByRole('dialog').waitFor();
  expect(await hindrances()).toEqual([]);
  await page
    .getByRole('dialog')
    .getByRole('button', { name: /^Blank/ })
    .tap();
  await settled(page);

  await tap('Add a swatch');
  await call('Wool');
  await enter('Wool, stitches counted', '14');
  await enter('Wool, rows counted', '20');
  await add('Measure', 'Arm');
  await enter('Arm, every size', '31,5');
  await add('Ease', 'Top');
  await point('Top, body', 'Arm: change');
  await enter('Top, ease', '6');
  await add('Formula', 'Wanted');
  await point('Wanted, size', 'Top: change', { sign: 'times', at: 'Wool, stitch gauge' });
  await add('Repeat fit', 'Top stitches');
  await point('Top stitches, wanted', 'Wanted: change');
  await enter('Top stitches, multiple of', '4');
  await enter('Top stitches, plus', '2');
  // (31.5 + 6) × 1.4 = 52.5, to a multiple of 4 plus 2: 54.
  expect(await shownAt('Top stitches, size')).toBe('54 sts');

  await add('Piece', 'Sleeve');
  await enter('Sleeve, start with', '30');
  await enter('Sleeve, rows, every size', '10');
  await page.getByRole('combobox', { name: 'Add a stretch to Sleeve' }).selectOption({ label: 'a taper' });
  await point('Sleeve, to', 'Top stitches: change');
  await enter('Sleeve, over', '60');
  expect(await shownAt('Sleeve, stitches at the end')).toBe('54 sts');
  expect(await shownAt('Sleeve, length')).toBe('35.0 cm');
  expect(await hindrances()).toEqual([]);

  // The drawing stands under its cell, and no wider than the phone.
  const drawing = page.locator('[data-cell-rows] figure canvas');
  await drawing.waitFor();
  const box = (await drawing.boundingBox())!;
  expect(box.x).toBeGreaterThanOrEqual(0);
  expect(box.x + box.width).toBeLessThanOrEqual(360);

  await add('Check', 'Long enough');
  await place('Long enough, size').tap();
  await page.locator('main [role=combobox]:focus').waitFor();
  await place('Sleeve, length').tap();
  await write('>=CM(30)');
  await tap('Take it');
  await page.getByText('The check holds.').waitFor();
  await tap('Pattern');
  await page.getByText('Proven by recount').waitFor();
  expect(await page.locator('main').innerText()).toContain('[54 sts]');
  expect(await hindrances()).toEqual([]);
});

it('a result is looked at with a tap and opened with another; what was typed wrong says so within the phone', async () => {
  await tap('Leaf');
  await place('Top stitches, size').tap();
  expect(await page.locator('main .editor input').count()).toBe(0);
  await place('Arm, every size').tap();
  await write('a lot');
  await page.keyboard.press('Enter');
  const said = page.locator('main [role=alert]').first();
  await said.waitFor();
  const box = (await said.boundingBox())!;
  expect(box.x).toBeGreaterThanOrEqual(0);
  expect(box.x + box.width).toBeLessThanOrEqual(360);
  await page.keyboard.press('Escape');
  await place('Top stitches: change').tap();
  expect(await page.locator('main .editor input').count()).toBe(0);
  await place('Top stitches: change').tap();
  await page.locator('main input:focus').waitFor();
  await page.keyboard.press('Escape');
});

it('every dialog of the tools fits the phone and can be closed by touch', async () => {
  for (const tool of [
    'Units and terms',
    'Sizes',
    'Add a check',
    'Keys and touch',
    'Notebooks',
    'Earlier states',
    'Share',
    'Starters',
  ]) {
    await tap('More tools');
    await page.getByRole('button', { name: tool, exact: true }).tap();
    const dialog = page.locator('dialog[open]');
    await dialog.waitFor();
    expect(await hindrances(), tool).toEqual([]);
    const box = (await dialog.boundingBox())!;
    expect(box.x >= 0 && box.y >= 0 && box.x + box.width <= 360 && box.y + box.height <= 740, tool).toBe(
      true,
    );
    await dialog
      .getByRole('button', { name: /^(Done|Leave it|Stay|Back|Close)/ })
      .last()
      .tap();
    await dialog.waitFor({ state: 'detached' }).catch(() => dialog.waitFor({ state: 'hidden' }));
  }
});
