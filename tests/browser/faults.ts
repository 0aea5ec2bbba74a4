import axe from 'axe-core';
import type { Page } from 'playwright';

/** What depends on nothing but colours. */
const ofColours = ['color-contrast', 'link-in-text-block'];
const ofEverything = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** The faults that axe finds (WCAG 2.2 A and AA and its best practices), in words; of `colours` only those, and sooner. */
export async function faults(page: Page, which: 'all' | 'colours' = 'all'): Promise<string[]> {
  // Evaluated by the driver: the page's own policy would let no script of ours in.
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axe.source);
  const found = await page.evaluate(
    (runOnly) =>
      (window as unknown as { axe: typeof axe }).axe.run(document, { runOnly, resultTypes: ['violations'] }),
    which === 'all'
      ? { type: 'tag' as const, values: ofEverything }
      : { type: 'rule' as const, values: ofColours },
  );
  return found.violations.map(
    (violation) => `${violation.id}: ${violation.help} (${violation.nodes[0]?.target.join(' ')})`,
  );
}
