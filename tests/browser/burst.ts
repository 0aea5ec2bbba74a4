import type { Page } from 'playwright';
import { settled } from './workspace';
import { startOn, type Running } from './profile';

/** What a burst of edits came to. */
export interface Burst {
  /** The last edit that had been made more than a second before the process was killed. */
  readonly due: number;
  /** The last edit made at all. */
  readonly made: number;
  /** The edit that the notebook holds when it is opened again. */
  readonly held: number;
}

const valueSelector = '[data-place][data-cell="hand"][data-key="value"]:not([data-size])';

/**
 * Edits a measure again and again, each time to a number of its own, kills the browser in the midst of it, starts it on the
 * same profile and reads what the notebook holds.
 *
 * @param running a browser on the profile, with the page opened; the one that is started in its place comes back
 */
export async function killedInABurst(
  running: Running,
  at: { profile: string; address: string },
  from: number,
  edits: number,
): Promise<{ burst: Burst; running: Running }> {
  const made: { number: number; at: number }[] = [];
  for (let number = from; number < from + edits; number++) {
    await edit(running.page, number);
    made.push({ number, at: performance.now() });
  }
  const killedAt = performance.now();
  await running.kill();

  const next = await startOn(at.profile);
  await opened(next.page, at.address);
  const shown = next.page.locator(valueSelector).first();
  await shown.filter({ hasText: /\d/ }).waitFor();
  // What lies out of sight is not laid out, and has no inner text.
  const held = Number(((await shown.textContent()) ?? '').trim());
  const due = made.findLast((one) => one.at < killedAt - 1000)?.number ?? NaN;
  return { burst: { due, made: from + edits - 1, held }, running: next };
}

export async function opened(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await settled(page);
  await page.locator('[data-standing]').waitFor();
}

/** An edit as a person makes it by keyboard. */
async function edit(page: Page, number: number): Promise<void> {
  await page.locator(valueSelector).first().focus();
  await page.keyboard.press('Enter');
  await page.locator('main input:focus').waitFor();
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.insertText(String(number));
  await page.keyboard.press('Enter');
}
