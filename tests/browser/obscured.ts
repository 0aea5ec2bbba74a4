import type { Page } from 'playwright';

/**
 * Where the focus is and cannot be seen, in words: out of the window, or wholly under something that lies over it
 * (WCAG 2.2, 2.4.11 Focus Not Obscured); null where some of it can be seen.
 */
export function obscured(page: Page): Promise<string | null> {
  return page.evaluate(() => {
    const at = document.activeElement;
    if (!at || at === document.body) return null;
    // A box that is ticked by its label is seen where its label is.
    const shown = at.matches('[type=checkbox], [type=radio]') ? (at.closest('label') ?? at) : at;
    const box = shown.getBoundingClientRect();
    // Of what is larger than the window, the part inside it counts.
    const left = Math.max(box.left, 0);
    const right = Math.min(box.right, innerWidth);
    const top = Math.max(box.top, 0);
    const bottom = Math.min(box.bottom, innerHeight);
    const across = [left + 2, (left + right) / 2, right - 2, left + (right - left) / 4];
    const down = [top + 2, (top + bottom) / 2, bottom - 2];
    const seen = across.some((x) =>
      down.some((y) => {
        const found = document.elementFromPoint(x, y);
        return (
          found !== null && (shown.contains(found) || (found.contains(shown) && found.matches('label, td')))
        );
      }),
    );
    if (seen) return null;
    const over = document.elementFromPoint((left + right) / 2, (top + bottom) / 2);
    const name = at.getAttribute('aria-label') ?? at.textContent.trim().slice(0, 50);
    const where = `at ${Math.round(box.left)}, ${Math.round(box.top)}, ${Math.round(box.width)} × ${Math.round(box.height)} px`;
    return `${at.tagName.toLowerCase()} "${name}" ${where}, ${over ? `under ${over.tagName.toLowerCase()} ${over.className}` : 'out of the window'}`;
  });
}
