/** Notes which cells of the grid are far out of sight: the browser says so of those it does not lay out. */
export function sight(grid: HTMLElement, outOfSight: Set<string>): { destroy(): void } {
  function onChange(event: Event): void {
    const cell = (event.target as HTMLElement).dataset['cellRows'];
    if (cell === undefined) return;
    if ((event as ContentVisibilityAutoStateChangeEvent).skipped) outOfSight.add(cell);
    else outOfSight.delete(cell);
  }
  grid.addEventListener('contentvisibilityautostatechange', onChange);
  return {
    destroy() {
      grid.removeEventListener('contentvisibilityautostatechange', onChange);
      outOfSight.clear();
    },
  };
}
