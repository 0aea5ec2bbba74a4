import axe from 'axe-core';
import type { Page } from 'playwright';

/** The faults that axe finds (WCAG 2.2 A and AA and its best practices), in words. */
export async function faults(page: Page): Promise<string[]> {
  // Evaluated by the driver: the page's own policy would let no script of ours in.
  await page.evaluate(axe.source);
  const found = await page.evaluate(() =>
    (window as unknown as { axe: typeof axe }).axe.run(document, {
      runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
    }),
  );
  return found.violations.map(
    (violation) => `${violation.id}: ${violation.help} (${violation.nodes[0]?.target.join(' ')})`,
  );
}
