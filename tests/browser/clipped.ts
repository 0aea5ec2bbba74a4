import type { Page } from 'playwright';

/**
 * Text that cannot be read as it stands, in words: cut off by what holds it and does not scroll, run out of its
 * button or its cell, or lying on other text.
 */
export function clipped(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const within = document.querySelector('dialog[open]') ?? document.body;
    // What is out of sight is not laid out yet, and has the height it is guessed to have.
    const laidOut = new CSSStyleSheet();
    laidOut.replaceSync('* { content-visibility: visible !important; }');
    document.adoptedStyleSheets.push(laidOut);
    const over = (one: Element): boolean =>
      one.closest('[popover], [role=listbox], .completion, .editor') !== null;
    const walker = document.createTreeWalker(within, NodeFilter.SHOW_TEXT);
    const found: { text: string; of: Element; box: DOMRect }[] = [];
    const faults: string[] = [];
    const cuts = (overflow: string): boolean => overflow === 'hidden' || overflow === 'clip';
    const scrolls = (overflow: string): boolean => overflow === 'auto' || overflow === 'scroll';
    const hidden = (one: Element): boolean =>
      !one.checkVisibility({ visibilityProperty: true, opacityProperty: true }) ||
      // Words that are only there to be read out are cut off on purpose.
      one.closest('.said, .heard, [style*="clip"]') !== null ||
      getComputedStyle(one).clipPath !== 'none' ||
      one.closest('select, option, canvas') !== null;
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const of = node.parentElement!;
      const text = node.textContent!.trim();
      if (!text || hidden(of)) continue;
      const range = document.createRange();
      range.selectNodeContents(node);
      const all = range.getBoundingClientRect();
      /** What can be seen of it now: the rest is come to by scrolling what holds it. */
      const seen = { left: -Infinity, right: Infinity, top: -Infinity, bottom: Infinity };
      for (let holder: Element | null = of; holder && holder !== within; holder = holder.parentElement) {
        const { overflowX, overflowY, clipPath } = getComputedStyle(holder);
        if (clipPath !== 'none') break;
        const box = holder.getBoundingClientRect();
        if (scrolls(overflowX) || scrolls(overflowY)) {
          seen.left = Math.max(seen.left, box.left);
          seen.right = Math.min(seen.right, box.right);
          seen.top = Math.max(seen.top, box.top);
          seen.bottom = Math.min(seen.bottom, box.bottom);
          continue;
        }
        if (seen.left > -Infinity) continue;
        if (cuts(overflowX) && (all.right > box.right + 1.5 || all.left < box.left - 1.5))
          faults.push(`"${text.slice(0, 40)}" is cut off sideways`);
        if (cuts(overflowY) && (all.bottom > box.bottom + 3 || all.top < box.top - 3))
          faults.push(`"${text.slice(0, 40)}" is cut off`);
        if (
          holder.matches('button, summary, label') &&
          (all.right > box.right + 2 || all.bottom > box.bottom + 4)
        )
          faults.push(`"${text.slice(0, 40)}" runs out of its ${holder.tagName.toLowerCase()}`);
      }
      for (const box of range.getClientRects()) {
        const left = Math.max(box.left, seen.left);
        const right = Math.min(box.right, seen.right);
        const top = Math.max(box.top, seen.top);
        const bottom = Math.min(box.bottom, seen.bottom);
        if (right - left > 1 && bottom - top > 1)
          found.push({
            text: text.slice(0, 40),
            of,
            box: new DOMRect(left, top, right - left, bottom - top),
          });
      }
    }
    found.sort((one, other) => one.box.top - other.box.top);
    for (let at = 0; at < found.length; at++) {
      const one = found[at]!;
      for (let next = at + 1; next < found.length; next++) {
        const other = found[next]!;
        // Lines that are set close overlap by what hangs below the letters: that is not yet text on text.
        if (other.box.top > one.box.bottom - one.box.height * 0.45) break;
        if (one.of === other.of || over(one.of) || over(other.of)) continue;
        if (one.of.closest('svg') || other.of.closest('svg')) continue;
        const wide = Math.min(one.box.right, other.box.right) - Math.max(one.box.left, other.box.left);
        if (wide > 2) faults.push(`"${one.text}" lies on "${other.text}"`);
      }
    }
    document.adoptedStyleSheets.pop();
    return [...new Set(faults)];
  });
}
