import type { Page } from 'playwright';

/** Wide and narrow (1280 px at 400 %), light and dark. */
const looks = [
  [1280, 'light'],
  [1280, 'dark'],
  [320, 'dark'],
  [320, 'light'],
] as const;

/** Looks at the page as it stands in every look, one after the other, without another visit. */
export async function inEveryLook(page: Page, look: (width: number) => Promise<void>): Promise<void> {
  for (const [width, colorScheme] of looks) {
    await page.setViewportSize({ width, height: 900 });
    await page.emulateMedia({ colorScheme });
    try {
      await look(width);
    } catch (found) {
      throw new Error(`At ${width} px, ${colorScheme}: ${(found as Error).message}`, { cause: found });
    }
  }
}
