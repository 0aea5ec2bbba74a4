import type { Page } from 'playwright';

/** What of a page is lost sideways, in words: the whole page that scrolls so, or what stands out of the window for good. */
export function beyondReach(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const scrolls = (at: Element | null): boolean =>
      at !== null &&
      (['auto', 'scroll'].includes(getComputedStyle(at).overflowX) || scrolls(at.parentElement));
    const { scrollWidth } = document.documentElement;
    const lost = scrollWidth > innerWidth ? [`the page scrolls sideways, to ${scrollWidth} px`] : [];
    const dialog = document.querySelector('dialog[open]');
    if (dialog) {
      const { left, right, top, bottom } = dialog.getBoundingClientRect();
      if (left < 0 || right > innerWidth || top < 0 || bottom > innerHeight)
        lost.push('the dialog stands out of the window');
      if (dialog.scrollWidth > dialog.clientWidth + 1) lost.push('the dialog scrolls sideways');
    }
    const within = dialog ?? document.body;
    for (const one of within.querySelectorAll('button, select, input, p, h2, h3, li')) {
      if (!one.checkVisibility() || getComputedStyle(one).clipPath !== 'none') continue;
      if (!dialog && scrolls(one)) continue;
      const { left, right, width } = one.getBoundingClientRect();
      if (width > 1 && (left < -0.5 || right > innerWidth + 0.5))
        lost.push(
          `${one.tagName.toLowerCase()} "${one.textContent.trim().slice(0, 40)}" stands out of the window`,
        );
    }
    return lost;
  });
}
