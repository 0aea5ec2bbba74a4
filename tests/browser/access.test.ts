import type { Page } from 'playwright';
import { beforeAll, expect, it } from 'vitest';
import { begin, settled, type } from './workspace';
import { wrong } from './appearances';
import { day, ownColours, under } from './settings';
import { visiting } from './visiting';

const visit = visiting();
let page: Page;
beforeAll(async () => {
  page = await visit();
});

const button = (name: string | RegExp) => page.getByRole('button', { name, exact: typeof name === 'string' });

/** On the grid, with nothing open and the notebook of a starter as it begins. */
async function home(starter: string): Promise<void> {
  for (let tries = 0; tries < 3 && (await page.locator('dialog[open]').count()) > 0; tries++)
    await page.keyboard.press('Escape');
  await begin(page, starter);
  await show('Leaf');
  // What is opened is remembered by cell, and the starter's cells are called as they were before.
  await page
    .locator('[data-cell-rows] .more[aria-expanded=true]')
    .evaluateAll((all) => all.forEach((one) => (one as HTMLElement).click()));
}

async function show(view: string): Promise<void> {
  const way = page.getByRole('navigation', { name: 'What is shown' });
  await way.getByRole('button', { name: view, exact: true }).click();
  if (view !== 'Leaf') await page.locator('main h2').first().waitFor();
  await settled(page);
  await page.waitForFunction(() => !document.querySelector('main progress'));
}

/** Opens all that is folded away in what is shown. */
async function unfold(): Promise<void> {
  for (const summary of await page.locator('main details:not([open]) > summary').all()) {
    if (await summary.isVisible()) await summary.click();
  }
}

const opened = async (tool: string): Promise<void> => {
  await button(tool).click();
  await page.locator('dialog[open]').waitFor();
};

/** The states of the page, each with how it is come to from the grid of the small starter. */
const states: readonly (readonly [string, () => Promise<unknown>])[] = [
  ['as it opens', async () => {}],
  [
    'with cells opened',
    () =>
      page
        .locator('[data-cell-rows] .more')
        .evaluateAll((all) => all.slice(0, 60).forEach((one) => (one as HTMLElement).click())),
  ],
  [
    'with a formula being written',
    async () => {
      await page.locator('[data-formula][data-cell="cuff-sts"]').dblclick();
      await page.locator('main input:focus').waitFor();
      await page.keyboard.press('ControlOrMeta+a');
      await page.keyboard.type('cuff + sle');
      await page.locator('main li[role=option]').first().waitFor();
    },
  ],
  [
    'with the menu of a value',
    async () => {
      await page.locator('[data-cell-rows="wrist"] .more').click();
      await page.locator('[aria-label="Wrist: this value"]').click();
      await page.getByRole('menu').waitFor();
    },
  ],
  ['with a value refused', () => type(page, 'wrist', 'value', 'wide', 'm')],
  [
    'with values chosen',
    async () => {
      await page.locator('[data-place][data-cell="wrist"][data-size="m"]').click();
      await page.keyboard.press('Shift+ArrowDown');
      await page.locator('td[aria-selected=true]').first().waitFor();
    },
  ],
  [
    'with a piece that cannot be worked',
    async () => {
      await type(page, 'wrist', 'value', '160', 'm');
      await settled(page);
    },
  ],
  [
    'with the drawing of every size',
    async () => {
      await page.getByLabel('All sizes').check();
      await page.locator('[data-drawing]').getByText('As a table').click();
      await page.getByRole('table').first().waitFor();
    },
  ],
  ['with a cell being added', () => button('Add a cell to Swatches').click()],
  ['with the units and terms', () => opened('Units and terms')],
  ['with the sizes', () => opened('Sizes')],
  ['with the checks to add', () => opened('Add a check')],
  [
    'with the notebooks',
    async () => {
      await opened('Notebooks');
      await button(/^Duplicate/)
        .first()
        .click();
      await button(/^Delete/)
        .first()
        .click();
      await button('Undo').last().waitFor();
    },
  ],
  ['with the earlier states', () => opened('Earlier states')],
  [
    'with what can be shared',
    async () => {
      await opened('Share');
      await button('Make a link').click();
      await page.getByLabel('Link').waitFor();
    },
  ],
  ['with the keys', () => opened('Keys and touch')],
  ['with the starters', () => opened('Starters')],
  [
    'with an empty notebook',
    async () => {
      await begin(page, 'Blank');
    },
  ],
  [
    'with the pictures, and the three orders compared',
    async () => {
      await show('Pictures');
      await page.getByText('Choose measurements').click();
      await page.getByLabel('Compare shaping orders').check();
      await page.locator('[data-picture="silhouettes"] svg').first().waitFor();
      await unfold();
    },
  ],
  [
    'with a what-if asked',
    async () => {
      await page.locator('[data-place][data-cell="wrist"][data-size="m"]').click();
      await page.keyboard.press('w');
      await page
        .getByLabel(/What if/)
        .first()
        .waitFor();
    },
  ],
];

it.each(states)('nothing is wrong %s, under any setting', async (_state, bring) => {
  await home('One sleeve');
  await bring();
  expect(await wrong(page)).toEqual([]);
});

/** The views, each with a starter that has something to show there. */
const views: readonly (readonly [view: string, starter: string])[] = [
  ['Pattern', 'One sleeve'],
  ['Adapt', 'One sleeve'],
  ['What-ifs', 'One sleeve'],
  ['Range', 'One sleeve'],
  ['Work back', 'One sleeve'],
  ['Give or take', 'One sleeve'],
  ['Class sheet', 'Three lessons on gauge'],
];

it.each(views)('nothing is wrong in the view %s, under any setting', async (view, starter) => {
  await home(starter);
  await show(view);
  await unfold();
  expect(await wrong(page)).toEqual([]);
});

it('nothing is wrong in the whole cardigan, of nine sizes', async () => {
  await home('Cardigan');
  expect(await wrong(page)).toEqual([]);
});

it('the way to what is shown is told by its line and its weight where no colour of the page is left', async () => {
  await under(page, ownColours);
  const [here, elsewhere] = await page.evaluate(() =>
    ['[aria-current]', ':not([aria-current])'].map((which) => {
      const { borderBlockEndColor, fontWeight } = getComputedStyle(
        document.querySelector(`nav button${which}`)!,
      );
      return { borderBlockEndColor, fontWeight };
    }),
  );
  const canvas = await page.evaluate(() => {
    const probe = document.body.appendChild(document.createElement('i'));
    probe.style.color = 'Canvas';
    const { color } = getComputedStyle(probe);
    probe.remove();
    return color;
  });
  await under(page, day);
  expect(elsewhere!.borderBlockEndColor).toBe(canvas);
  expect(here!.borderBlockEndColor).not.toBe(canvas);
  expect(Number(here!.fontWeight)).toBeGreaterThan(Number(elsewhere!.fontWeight));
});
