import type { Page } from 'playwright';
import type { Plotted } from '../../src/pictures';

/** The values of a line of a cell as the page shows them, from the first size to the last. */
export async function shown(page: Page, cell: string, key: string): Promise<string[]> {
  return page.$$eval(`tr[data-line="${cell} ${key}"] [data-size]`, (elements) =>
    elements.map((element) => (element.firstChild?.textContent ?? '').trim()),
  );
}

export async function numbers(page: Page, cell: string, key: string): Promise<number[]> {
  return (await shown(page, cell, key)).map((text) => Number(text.replace('−', '-')));
}

/** Types over the value at a place, as a person does: go there, type, Enter. */
export async function type(
  page: Page,
  cell: string,
  key: string,
  text: string,
  size?: string,
): Promise<void> {
  const at = size === undefined ? ':not([data-size])' : `[data-size="${size}"]`;
  await page.locator(`[data-place][data-cell="${cell}"][data-key="${key}"]${at}`).first().dblclick();
  await page.locator('main input:focus').waitFor();
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.type(text);
  await page.keyboard.press('Enter');
}

/** Waits until the page has worked everything out that it was told. */
export async function settled(page: Page): Promise<void> {
  await page.waitForSelector('#page main[aria-busy="false"]');
}

export async function plotted(page: Page): Promise<Plotted> {
  return page.$eval('figure canvas', (canvas) => (canvas as unknown as { plotted(): Plotted }).plotted());
}

/** Opens the starter whose label begins so. */
export async function begin(page: Page, label: string): Promise<void> {
  const folded = page.getByRole('button', { name: 'More tools' });
  if (await folded.isVisible()) await folded.click();
  await page.getByRole('button', { name: 'Starters' }).click();
  await page.getByRole('dialog').getByRole('button', { name: label }).first().click();
  await settled(page);
}

/** The tools of the page that open a dialog, by what stands on their buttons. */
export const toolsWithDialogs = [
  'Units and terms',
  'Sizes',
  'Add a check',
  'Keys and touch',
  'Notebooks',
  'Earlier states',
  'Share',
  'Starters',
] as const;
