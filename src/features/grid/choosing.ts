import { blockBetween, isShared, lineAt, refsOf, type Block, type Corner, type DrawnLine } from './block';
import { linesOn } from './clipboard';
import type { Workspace } from '../../workspace';

/** A place of the grid that holds a value or a result, as an element. */
export function isValueCell(element: Element | null): element is HTMLElement {
  return element !== null && element.matches('.place[data-place][data-cell][data-key]');
}

export function cornerOf({ dataset }: HTMLElement): Corner {
  return { cell: dataset['cell']!, key: dataset['key']!, size: dataset['size'] ?? null };
}

/** How far a step goes: over lines and over sizes. `Infinity` is as far as there is. */
export interface Step {
  readonly lines: number;
  readonly sizes: number;
}

/**
 * A block of places that is chosen in the grid: from the place where choosing began to the one in focus. What is
 * chosen is kept by name, so that it is still chosen where a line is drawn again.
 */
export class Choosing {
  #from: Corner | null = null;
  #to: Corner | null = null;
  #marked = false;

  constructor(
    private readonly node: HTMLElement,
    private readonly workspace: Workspace,
  ) {}

  /** The block, where it is more than one place. */
  block(lines: readonly DrawnLine[] = linesOn(this.workspace)): Block | undefined {
    if (!this.#from || !this.#to) return undefined;
    const block = blockBetween(this.workspace.notebook, lines, this.#from, this.#to);
    return block && refsOf(block).length > 1 ? block : undefined;
  }

  clear(): void {
    if (!this.#from) return;
    this.#from = this.#to = null;
    this.mark();
  }

  /** Chooses from where choosing began, or else from the place in focus, to a step further. Gives the place to focus. */
  extend(focused: HTMLElement, step: Step): HTMLElement | undefined {
    const lines = linesOn(this.workspace);
    const end = (this.#to ??= this.#from = cornerOf(focused));
    const { sizes } = this.workspace.notebook;
    const at = sizes.findIndex(({ id }) => id === end.size);
    const size = at < 0 ? end.size : sizes[clamped(at + step.sizes, sizes.length)]!.id;
    const line = this.#lineFrom(lines, lineAt(lines, end), step.lines);
    if (!line) return undefined;
    return this.#chooseTo({ cell: line.cell.id, key: line.line.key, size }, lines);
  }

  /** Chooses from where choosing began, or else from the place in focus, to another place. */
  extendTo(focused: HTMLElement, element: HTMLElement): HTMLElement | undefined {
    this.#from ??= cornerOf(focused);
    return this.#chooseTo(cornerOf(element), linesOn(this.workspace));
  }

  /** Chooses a line in every size. */
  wholeLine(focused: HTMLElement): void {
    const corner = cornerOf(focused);
    const { sizes } = this.workspace.notebook;
    this.#from = { ...corner, size: sizes[0]!.id };
    this.#chooseTo({ ...corner, size: sizes.at(-1)!.id }, linesOn(this.workspace));
  }

  #chooseTo(corner: Corner, lines: readonly DrawnLine[]): HTMLElement | undefined {
    if (!this.#from || lineAt(lines, corner) < 0 || lineAt(lines, this.#from) < 0) {
      this.clear();
      return undefined;
    }
    this.#to = corner;
    this.mark();
    const block = this.block(lines);
    const across = block?.sizes.length ?? 1;
    const down = block?.lines.length ?? 1;
    this.workspace.announcement = `${across === 1 ? '1 size' : `${across} sizes`} on ${down === 1 ? '1 line' : `${down} lines`} chosen.`;
    return this.#elementAt(corner);
  }

  /** The line so many further that has a place to be on; lines of text have none. */
  #lineFrom(lines: readonly DrawnLine[], at: number, by: number): DrawnLine | undefined {
    const step = Math.sign(by);
    let found = lines[at];
    let left = Math.abs(by);
    for (let index = at + step; step !== 0 && left > 0 && lines[index]; index += step) {
      const { cell, line } = lines[index]!;
      if (!this.#row({ cell: cell.id, key: line.key })?.querySelector('.place[data-place]')) continue;
      found = lines[index];
      left--;
    }
    return found;
  }

  #row({ cell, key }: { cell: string; key: string }): HTMLElement | null {
    return this.node.querySelector(`tr[data-line="${CSS.escape(`${cell} ${key}`)}"]`);
  }

  #elementAt(corner: Corner): HTMLElement | undefined {
    const elements = [...(this.#row(corner)?.querySelectorAll<HTMLElement>('.place[data-place]') ?? [])];
    return elements.find((element) => element.dataset['size'] === corner.size) ?? elements[0];
  }

  /** Shows in the grid what is chosen. */
  mark(): void {
    if (!this.#from && !this.#marked) return;
    const chosen = new Set<Element>();
    const block = this.block();
    for (const drawn of block?.lines ?? []) {
      const row = this.#row({ cell: drawn.cell.id, key: drawn.line.key });
      const ids = new Set(block!.sizes.map(({ id }) => id));
      for (const cell of row?.querySelectorAll('td.shared, td.texts, td.value') ?? []) {
        const size = cell.querySelector<HTMLElement>('.place')?.dataset['size'];
        if (isShared(drawn) || size === undefined || ids.has(size)) chosen.add(cell);
      }
    }
    for (const cell of this.node.querySelectorAll('td[aria-selected]')) {
      if (!chosen.has(cell)) cell.removeAttribute('aria-selected');
    }
    for (const cell of chosen) cell.setAttribute('aria-selected', 'true');
    this.#marked = chosen.size > 0;
  }
}

function clamped(at: number, count: number): number {
  return Math.min(Math.max(at, 0), count - 1);
}
