/**
 * Keyboard paths over the sentences of a pattern: one of their buttons at a time can be tabbed to, and the arrow keys go
 * from one to the next. A double click on a sentence begins to reword it too.
 */
export function rewordKeys(node: HTMLElement): { destroy(): void } {
  const buttons = (): HTMLButtonElement[] => [...node.querySelectorAll<HTMLButtonElement>('[data-reword]')];

  function settle(at?: HTMLButtonElement): void {
    const all = buttons();
    const stop = at ?? all.find((button) => button.tabIndex === 0) ?? all[0];
    for (const button of all) button.tabIndex = button === stop ? 0 : -1;
  }

  function onkeydown(event: KeyboardEvent): void {
    const at = event.target as HTMLElement;
    if (!at.matches('[data-reword]') || event.ctrlKey || event.metaKey || event.altKey) return;
    const all = buttons();
    const here = all.indexOf(at as HTMLButtonElement);
    const to = { ArrowDown: here + 1, ArrowUp: here - 1, Home: 0, End: all.length - 1 }[event.key];
    if (to === undefined) return;
    event.preventDefault();
    all[Math.min(Math.max(to, 0), all.length - 1)]?.focus();
  }

  const onfocusin = (event: FocusEvent): void => {
    if ((event.target as HTMLElement).matches('[data-reword]')) settle(event.target as HTMLButtonElement);
  };
  const ondblclick = (event: MouseEvent): void => {
    const sentence = (event.target as HTMLElement).closest('.sentence');
    sentence?.querySelector<HTMLButtonElement>('[data-reword]')?.click();
  };

  const watcher = new MutationObserver(() => settle());
  watcher.observe(node, { childList: true, subtree: true });
  node.addEventListener('keydown', onkeydown);
  node.addEventListener('focusin', onfocusin);
  node.addEventListener('dblclick', ondblclick);
  settle();
  return {
    destroy() {
      watcher.disconnect();
      node.removeEventListener('keydown', onkeydown);
      node.removeEventListener('focusin', onfocusin);
      node.removeEventListener('dblclick', ondblclick);
    },
  };
}
