const valueSelector = '[data-place][role="button"]:not(button)';

/**
 * What a double click opens, by touch: a typed value, or a place that waits for one, opens at a tap. What may only be
 * looked at (a result, a formula, a label) is gone to by the first tap and opened by the next.
 */
export function tapping(node: HTMLElement): { destroy(): void } {
  /** What had the focus as the finger came down; undefined where it was no finger. */
  let before: Element | null | undefined;

  function onPress(event: PointerEvent): void {
    before = event.pointerType === 'mouse' ? undefined : document.activeElement;
  }

  function onTap(event: MouseEvent): void {
    const at = (event.target as Element).closest<HTMLElement>(valueSelector);
    if (before === undefined || !at || event.detail === 0) return;
    at.focus({ preventScroll: true });
    if (at === before || at.dataset['typed'] !== undefined) {
      at.dispatchEvent(new MouseEvent('dblclick', { bubbles: true }));
    }
  }

  node.addEventListener('pointerdown', onPress, true);
  node.addEventListener('click', onTap);
  return {
    destroy() {
      node.removeEventListener('pointerdown', onPress, true);
      node.removeEventListener('click', onTap);
    },
  };
}
