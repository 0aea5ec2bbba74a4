import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { startBrowser } from './browser';
import { begin, settled, type } from './desk';
import { faults } from './faults';

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(async () => {
  await browser?.close();
});

async function opened(options: { width: number; dark?: boolean }): Promise<Page> {
  const context = await browser.newContext({
    viewport: { width: options.width, height: 900 },
    colorScheme: options.dark ? 'dark' : 'light',
    bypassCSP: false,
  });
  const page = await context.newPage();
  await page.goto(inject('address'));
  await settled(page);
  return page;
}

const states: [string, (page: Page) => Promise<unknown>][] = [
  ['as it opens', async () => {}],
  [
    'with cells opened',
    (page) =>
      page
        .locator('[data-cell-rows] .more')
        .evaluateAll((all) => all.slice(0, 60).forEach((one) => (one as HTMLElement).click())),
  ],
  [
    'with a formula being written',
    async (page) => {
      await page.locator('[data-formula][data-cell="cuff-sts"]').dblclick();
      await page.locator('main input:focus').waitFor();
      await page.keyboard.type('cuff + sle');
    },
  ],
  ['with a value refused', (page) => type(page, 'wrist', 'value', 'wide', 'm')],
  [
    'with a piece that cannot be worked',
    async (page) => {
      await type(page, 'wrist', 'value', '160', 'm');
      await settled(page);
    },
  ],
  [
    'with the pictures shown',
    async (page) => {
      await page.getByRole('button', { name: 'Pictures' }).click();
      await page.getByText('Choose measurements').click();
      await page.getByLabel('Compare the three orders').check();
      await page.locator('[data-drawing]').getByText('The same in numbers').click();
      await page.getByRole('table').first().waitFor();
    },
  ],
  ['with a cell being added', (page) => page.getByRole('button', { name: 'Add a cell to Swatches' }).click()],
  ['with the units and terms shown', (page) => page.getByRole('button', { name: 'Units and terms' }).click()],
  ['with the sizes shown', (page) => page.getByRole('button', { name: 'Sizes', exact: true }).click()],
  ['with the checks to add shown', (page) => page.getByRole('button', { name: 'Add a check' }).click()],
  [
    'with the notebooks shown',
    async (page) => {
      await page.getByRole('button', { name: 'Notebooks', exact: true }).click();
      await page
        .getByRole('button', { name: /^Duplicate/ })
        .first()
        .click();
      await page
        .getByRole('button', { name: /^Delete/ })
        .first()
        .click();
      await page.getByRole('button', { name: 'Undo' }).last().waitFor();
    },
  ],
  ['with the earlier states shown', (page) => page.getByRole('button', { name: 'Earlier states' }).click()],
  [
    'with what can be shared shown',
    async (page) => {
      await page.getByRole('button', { name: 'Share', exact: true }).click();
      await page.getByRole('button', { name: 'Make a link' }).click();
      await page.getByLabel('Link').waitFor();
    },
  ],
  ['with the keys shown', (page) => page.getByRole('button', { name: 'Keys', exact: true }).click()],
  ['with an empty notebook', (page) => begin(page, 'Blank')],
  [
    'with schematic and silhouettes shown',
    async (page) => {
      await page.getByRole('button', { name: 'Pictures', exact: true }).click();
      await page.locator('[data-picture="silhouettes"] svg').first().waitFor();
      await page.getByText('The same in numbers').first().click();
    },
  ],
  ['with the starters shown', (page) => page.getByRole('button', { name: 'Starters' }).click()],
];

/** Every state in the light of day; where colours or room differ, the states that show the most. */
const looks: [number, boolean, typeof states][] = [
  [1280, false, states],
  [1280, true, states.slice(1, 6)],
  [320, false, [...states.slice(1, 3), states[5]!]],
];

describe.each(looks)('at %i px, dark: %s', (width, dark, shown) => {
  it.each(shown)('axe finds nothing %s', async (_state, bring) => {
    const page = await opened({ width, dark });
    await begin(page, 'One sleeve');
    await bring(page);
    expect(await faults(page)).toEqual([]);
    await page.context().close();
  });
});

it('axe finds nothing in the whole jacket', async () => {
  const page = await opened({ width: 1280 });
  expect(await faults(page)).toEqual([]);
  await page.context().close();
});

it('nothing but the sizes scrolls sideways, down to 320 px', async () => {
  for (const width of [1280, 768, 320]) {
    const page = await opened({ width });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
    await page.context().close();
  }
});
