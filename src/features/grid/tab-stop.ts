import { valueCell } from './drawn-cells';

/** The one place of the grid that can be tabbed to: where somebody was last. */
export class TabStop {
  readonly #node: HTMLElement;
  #stop: HTMLElement | null = null;

  constructor(node: HTMLElement) {
    this.#node = node;
  }

  settle(at: HTMLElement): void {
    for (const other of this.#node.querySelectorAll(`${valueCell}[tabindex="0"]`)) {
      if (other !== at) other.setAttribute('tabindex', '-1');
    }
    at.setAttribute('tabindex', '0');
    this.#stop = at;
  }

  /**
   * Where the place that could be tabbed to is drawn again, what stands for it can be, so that the grid stays in reach.
   * While an editor is open in its stead, the editor is what can be tabbed to.
   */
  keep(records: readonly MutationRecord[]): void {
    const [node, stop] = [this.#node, this.#stop];
    if (stop?.isConnected || node.querySelector('.editor')) return;
    const before = stop?.dataset;
    const neighbour = stop && neighbourOf(stop, records);
    const again = [...node.querySelectorAll<HTMLElement>(valueCell)].find(
      ({ dataset }) =>
        before?.['cell'] !== undefined &&
        dataset['cell'] === before['cell'] &&
        dataset['key'] === before['key'] &&
        dataset['size'] === before['size'],
    );
    const next =
      again ?? neighbour ?? node.querySelector(`${valueCell}[tabindex="0"]`) ?? node.querySelector(valueCell);
    if (!(next instanceof HTMLElement)) return;
    this.settle(next);
    // With its cell the focus is gone, too: it goes to the cell beside, not back to the top of the page.
    if (neighbour && document.activeElement === document.body) next.focus();
  }
}

/** The first place of the cell or section after one that was taken out, or else before it. */
function neighbourOf(gone: HTMLElement, records: readonly MutationRecord[]): HTMLElement | undefined {
  for (const { removedNodes, nextSibling, previousSibling } of records) {
    const whole = [...removedNodes].some(
      (one) => one instanceof HTMLElement && one.localName === 'tbody' && one.contains(gone),
    );
    if (!whole) continue;
    for (let at = nextSibling; at; at = at.nextSibling) {
      const found = at instanceof HTMLElement && at.querySelector<HTMLElement>(valueCell);
      if (found) return found;
    }
    for (let at = previousSibling; at; at = at.previousSibling) {
      const found = at instanceof HTMLElement && at.querySelector<HTMLElement>(valueCell);
      if (found) return found;
    }
  }
  return undefined;
}
