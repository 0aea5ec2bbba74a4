import type { Page } from 'playwright';

/** How a page is looked at: in what light, in how large a window, with what letters. */
export interface Setting {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  readonly colorScheme?: 'dark';
  readonly forcedColors?: 'active';
  /** What the person’s own style sheet adds. */
  readonly css?: string;
}

export const day: Setting = { name: 'in the light of day', width: 1280, height: 900 };
export const dark: Setting = { name: 'in the dark', width: 1280, height: 900, colorScheme: 'dark' };
export const ownColours: Setting = {
  name: 'in colours of the person’s own',
  width: 1280,
  height: 900,
  forcedColors: 'active',
};

/** WCAG 2.2, 1.4.10 Reflow: a window of 1280 by 1024 at 400 % leaves 320 by 256 CSS pixels. */
export const zoomed: Setting = { name: 'at 320 × 256 px, which is 400 %', width: 320, height: 256 };

/** WCAG 2.2, 1.4.12: the least that has to be borne, for every script that has the property. */
const spacing = `
  * { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; }
  p { margin-block-end: 2em !important; }
`;
export const spaced: Setting = { name: 'with text spaced out', width: 1280, height: 900, css: spacing };
export const spacedAndZoomed: Setting = { ...zoomed, name: 'at 400 %, with text spaced out', css: spacing };

/** WCAG 2.2, 1.4.4: text alone, twice as large (the page's own is 106.25 %). */
export const doubled: Setting = {
  name: 'with text twice as large',
  width: 1280,
  height: 900,
  css: 'html { font-size: 212.5% !important; }',
};

/** Brings the page under a setting as it stands, without loading it again. */
export async function under(page: Page, setting: Setting): Promise<void> {
  const { colorScheme = 'light', forcedColors = 'none', width, height, css = '' } = setting;
  await page.emulateMedia({ colorScheme, forcedColors, reducedMotion: 'reduce' });
  const now = page.viewportSize();
  if (now?.width !== width || now.height !== height) await page.setViewportSize({ width, height });
  // The page's policy lets no style of ours in; a sheet that is made by the driver is not the page's.
  await page.evaluate((css) => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(css);
    document.adoptedStyleSheets = [sheet];
    return new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn)));
  }, css);
}
