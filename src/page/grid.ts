/**
 * Keyboard paths over the leaf: arrows go between the places marked `data-place`, row by row as they are
 * drawn, so that the order on the screen is the order of the keys. One place at a time can be tabbed to.
 */
export function grid(node: HTMLElement): { destroy(): void } {
  const places = (within: Element): HTMLElement[] => [
    ...within.querySelectorAll<HTMLElement>('[data-place]'),
  ];

  function rows(): HTMLElement[][] {
    return [...node.querySelectorAll('[role="row"], tr')].map(places).filter((row) => row.length > 0);
  }

  function middle(place: HTMLElement): number {
    const box = place.getBoundingClientRect();
    return box.left + box.width / 2;
  }

  function nearest(row: HTMLElement[], x: number): HTMLElement | undefined {
    return row.toSorted((a, b) => Math.abs(middle(a) - x) - Math.abs(middle(b) - x))[0];
  }

  function go(place: HTMLElement | undefined): void {
    if (!place) return;
    settle(place);
    place.focus();
    place.scrollIntoView({ block: 'nearest', inline: 'nearest' });
  }

  function settle(place: HTMLElement): void {
    for (const other of node.querySelectorAll('[data-place][tabindex="0"]'))
      other.setAttribute('tabindex', '-1');
    place.setAttribute('tabindex', '0');
  }

  function onKey(event: KeyboardEvent): void {
    const place = event.target as HTMLElement;
    if (!place.matches('[data-place]') || event.altKey) return;
    const all = rows();
    const at = all.findIndex((row) => row.includes(place));
    const row = all[at];
    if (!row) return;
    const column = row.indexOf(place);
    const far = event.ctrlKey || event.metaKey;
    const to: Record<string, () => HTMLElement | undefined> = {
      ArrowRight: () => row[column + 1],
      ArrowLeft: () => row[column - 1],
      ArrowDown: () => all[at + 1] && nearest(all[at + 1]!, middle(place)),
      ArrowUp: () => all[at - 1] && nearest(all[at - 1]!, middle(place)),
      Home: () => (far ? all[0]![0] : row[0]),
      End: () => (far ? all.at(-1)!.at(-1) : row.at(-1)),
      PageDown: () => nearest(all[Math.min(at + 10, all.length - 1)]!, middle(place)),
      PageUp: () => nearest(all[Math.max(at - 10, 0)]!, middle(place)),
    };
    const move = to[event.key];
    if (!move) return;
    event.preventDefault();
    go(move());
  }

  function onFocus(event: FocusEvent): void {
    const place = (event.target as HTMLElement).closest<HTMLElement>('[data-place]');
    if (place) settle(place);
  }

  node.addEventListener('keydown', onKey);
  node.addEventListener('focusin', onFocus);
  return {
    destroy() {
      node.removeEventListener('keydown', onKey);
      node.removeEventListener('focusin', onFocus);
    },
  };
}
