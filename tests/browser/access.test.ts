import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { startBrowser } from './browser';
import { begin, settled, type } from './desk';
import { faults } from './faults';
import { smallTargets } from './targets';

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(async () => {
  await browser?.close();
});

interface Options {
  width: number;
  dark?: boolean;
  forcedColors?: boolean;
  reducedMotion?: boolean;
}

async function opened(options: Options): Promise<Page> {
  const context = await browser.newContext({
    viewport: { width: options.width, height: 900 },
    colorScheme: options.dark ? 'dark' : 'light',
    forcedColors: options.forcedColors ? 'active' : 'none',
    reducedMotion: options.reducedMotion ? 'reduce' : 'no-preference',
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
  ['with the keys shown', (page) => page.getByRole('button', { name: 'Keys and touch' }).click()],
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

/** Every view, with a starter that has something to show there. */
const views: [view: string, starter: string][] = [
  ['Give or take', 'Jacket'],
  ['Work back', 'Jacket'],
  ['Leaf', 'One sleeve'],
  ['Pictures', 'One sleeve'],
  ['Pattern', 'One sleeve'],
  ['What-ifs', 'One sleeve'],
  ['Range', 'One sleeve'],
  ['Class sheet', 'Three lessons on gauge'],
];

/** At 320 px: what is left of 1280 at 400 %. */
const conditions: [string, Parameters<typeof opened>[0]][] = [
  ['at 1280 px', { width: 1280 }],
  ['in the dark', { width: 1280, dark: true }],
  ['at 320 px, with less motion', { width: 320, reducedMotion: true }],
  ['in colours of the person’s own', { width: 1280, forcedColors: true }],
];

describe.each(conditions)('every view %s', (_condition, options) => {
  let page: Page;
  let shown = 'Jacket';
  beforeAll(async () => {
    page = await opened(options);
  });
  afterAll(async () => {
    await page.context().close();
  });

  it.each(views)(
    '%s: axe finds nothing, targets are large enough, nothing is lost',
    async (view, starter) => {
      if (shown !== starter) await begin(page, starter);
      shown = starter;
      const way = page
        .getByRole('navigation', { name: 'What is shown' })
        .getByRole('button', { name: view, exact: true });
      await way.click();
      if (view !== 'Leaf') await page.getByRole('heading', { level: 2 }).first().waitFor();
      await settled(page);
      await page.waitForFunction(() => !document.querySelector('main progress'));
      for (const summary of await page.locator('main details:not([open]) > summary').all()) {
        if (await summary.isVisible()) await summary.click();
      }
      expect(await faults(page)).toEqual([]);
      expect(await smallTargets(page)).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(options.width);
      expect(await beyondReach(page)).toEqual([]);
      if (options.reducedMotion) {
        const moving = (): Promise<number> =>
          page.evaluate(
            () => document.getAnimations().filter(({ playState }) => playState === 'running').length,
          );
        await way.focus();
        expect(await moving()).toBe(0);
      }
      if (options.forcedColors) {
        // Where no colour of ours is left, what is shown is told from the rest by its line and its weight.
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
          return getComputedStyle(probe).color;
        });
        expect(elsewhere!.borderBlockEndColor).toBe(canvas);
        expect(here!.borderBlockEndColor).not.toBe(canvas);
        expect(Number(here!.fontWeight)).toBeGreaterThan(Number(elsewhere!.fontWeight));
      }
    },
  );
});

/** Text and controls that stand out of the window sideways and in nothing that scrolls: they would be lost. */
function beyondReach(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const scrolls = (at: Element | null): boolean =>
      at !== null &&
      (['auto', 'scroll'].includes(getComputedStyle(at).overflowX) || scrolls(at.parentElement));
    return [
      ...document.querySelectorAll('main button, main select, main input, main p, main h2, main h3, main li'),
    ]
      .filter((one) => one.checkVisibility() && !scrolls(one))
      .filter((one) => {
        const { left, right, width } = one.getBoundingClientRect();
        return width > 1 && (left < -0.5 || right > innerWidth + 0.5);
      })
      .map((one) => `${one.tagName.toLowerCase()} "${one.textContent.trim().slice(0, 40)}"`);
  });
}
