/**
 * Whose keys the arrows are on a list of choices that is a place of the leaf: the leaf's, as on every place, until the
 * list is opened with Enter, F2, Space, Alt and an arrow, or the pointer; then the list's, until it is closed.
 */
export class SelectKeys {
  /** The list that was opened last, for browsers that do not say which is open. */
  #opened: HTMLSelectElement | null = null;

  /** Whether the list takes this key. */
  takes(select: HTMLSelectElement, event: KeyboardEvent): boolean {
    if (this.#isOpen(select)) {
      if (['Enter', 'Escape', 'Tab'].includes(event.key)) this.#opened = null;
      return true;
    }
    if (event.key === 'Enter' || event.key === 'F2') {
      event.preventDefault();
      this.#open(select);
      return true;
    }
    const opens = event.key === ' ' || (event.altKey && /^Arrow(Down|Up)$/.test(event.key));
    if (opens) this.#opened = select;
    return opens;
  }

  /** A press opens a list, and a second one closes it. */
  pointed(target: Element): void {
    if (target instanceof HTMLSelectElement) this.#opened = target === this.#opened ? null : target;
  }

  /** The focus is on another place. */
  left(to: Element): void {
    if (this.#opened !== to) this.#opened = null;
  }

  chosen(): void {
    this.#opened = null;
  }

  #open(select: HTMLSelectElement): void {
    this.#opened = select;
    try {
      select.showPicker();
    } catch {
      // Without a list that can be opened, the arrows change the choice until Enter, Escape or Tab.
    }
  }

  #isOpen(select: HTMLSelectElement): boolean {
    try {
      return select.matches(':open');
    } catch {
      return this.#opened === select;
    }
  }
}
