import type { Page } from 'playwright';

const valueSelector = '[data-place][data-cell="hand"][data-key="value"]:not([data-size])';

/**
 * Types a number for the hand, and leaves the page in the same task in which the key that takes it is pressed: nothing that
 * the page does later can help.
 *
 * @param where to: another address, or undefined for the same page again
 */
export async function typeAndLeave(page: Page, number: string, where?: string): Promise<void> {
  await page.locator(valueSelector).first().dblclick();
  const input = page.locator('main input:focus');
  await input.waitFor();
  await input.fill(number);
  const left = page.waitForEvent('framenavigated');
  await input.evaluate((field, to) => {
    field.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true, cancelable: true }));
    if (to === undefined) location.reload();
    else location.href = to;
  }, where);
  await left;
}
