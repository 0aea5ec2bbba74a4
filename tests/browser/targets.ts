import type { Page } from 'playwright';

/** WCAG 2.2, 2.5.8: 24 by 24 CSS pixels. */
const least = 24;

/**
 * What can be pointed at and is smaller than a finger needs, in words. A box that is ticked by its label is as large as
 * its label; what is drawn narrower than it can be hit is measured by hitting it.
 */
export async function smallTargets(page: Page): Promise<string[]> {
  return page.evaluate((least) => {
    const controls =
      'button, a[href], select, input, summary, textarea, [role=button], [role=menuitem], [role=slider]';
    const hit = (control: Element, dx: number, dy: number): boolean => {
      const { left, top, width, height } = control.getBoundingClientRect();
      const found = document.elementFromPoint(left + width / 2 + dx, top + height / 2 + dy);
      return found !== null && control.contains(found);
    };
    return [...document.querySelectorAll<HTMLElement>(controls)].flatMap((control) => {
      if (!control.checkVisibility({ visibilityProperty: true, opacityProperty: true })) return [];
      const box = control.getBoundingClientRect();
      const ticked = control.matches('[type=checkbox], [type=radio]') && control.closest('label');
      const label = ticked ? ticked.getBoundingClientRect() : box;
      const [width, height] = [Math.max(box.width, label.width), Math.max(box.height, label.height)];
      if (width === 0 || (width >= least - 0.01 && height >= least - 0.01)) return [];
      control.scrollIntoView({ block: 'center', inline: 'center' });
      const reach = least / 2 - 0.5;
      const wide = width >= least || (hit(control, -reach, 0) && hit(control, reach, 0));
      const high = height >= least || (hit(control, 0, -reach) && hit(control, 0, reach));
      if (wide && high) return [];
      const name = control.getAttribute('aria-label') ?? control.textContent.trim();
      return [`${control.tagName.toLowerCase()} "${name}": ${width.toFixed(1)} × ${height.toFixed(1)} px`];
    });
  }, least);
}
