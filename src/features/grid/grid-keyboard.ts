import { blockAt, copy, cut, empty, paste } from './clipboard';
import { Choosing, cornerOf, isValueCell, type Step } from './choosing';
import type { Block } from './block';
import type { Workspace } from '../../workspace';
import { fillAlong } from './filling';
import { askToDelete } from './deleting';
import { adjacentLine, nearestLine, valueCell, cellsIn, rowFrom } from './drawn-cells';
import { dropCell, moveCell } from './move-cell';
import { TabStop } from './tab-stop';
import { tapping } from './tapping';

/** How many rows Page Up and Page Down go. */
const page = 10;

const steps: Readonly<Record<string, Step>> = {
  ArrowRight: { lines: 0, sizes: 1 },
  ArrowLeft: { lines: 0, sizes: -1 },
  ArrowDown: { lines: 1, sizes: 0 },
  ArrowUp: { lines: -1, sizes: 0 },
  PageDown: { lines: page, sizes: 0 },
  PageUp: { lines: -page, sizes: 0 },
  Home: { lines: 0, sizes: -Infinity },
  End: { lines: 0, sizes: Infinity },
};

export interface GridControls {
  /** Puts a dragged cell before or after another. */
  drop(cell: string, neighbour: string, after: boolean): void;
  destroy(): void;
}

/**
 * Keyboard paths over the grid, after the WAI-ARIA pattern of a grid: arrows go between the places marked `data-place`,
 * row by row as they are drawn, so that the order on the screen is the order of the keys. One place at a time can be
 * tabbed to. With Shift, a block of values is chosen, to be copied, pasted on, emptied or filled along the sizes.
 */
export function grid(node: HTMLElement, workspace: Workspace): GridControls {
  const choosing = new Choosing(node, workspace);
  const taps = tapping(node);
  const tabStop = new TabStop(node);
  /** The column that going up and down keeps to, past rows that do not have it. */
  let column: { size: string | undefined; x: number } | null = null;
  let travelling: 'down the column' | 'choosing' | null = null;

  function middle(element: HTMLElement): number {
    const box = element.getBoundingClientRect();
    return box.left + box.width / 2;
  }

  function go(to: HTMLElement | undefined, how: typeof travelling = null): void {
    if (!to) return;
    travelling = how;
    to.focus();
    travelling = null;
    to.scrollIntoView({ block: 'nearest', inline: 'nearest' });
  }

  function upOrDown(from: HTMLElement, row: Element, by: number): void {
    const elements = adjacentLine(from, row, by) ?? nearestLine(rowFrom(row, by), by);
    if (!elements) return;
    const { size, x } = (column ??= { size: from.dataset['size'], x: middle(from) });
    const same = elements.find((other) => size !== undefined && other.dataset['size'] === size);
    go(
      same ?? elements.toSorted((a, b) => Math.abs(middle(a) - x) - Math.abs(middle(b) - x))[0],
      'down the column',
    );
  }

  function move(from: HTMLElement, key: string, far: boolean): boolean {
    const step = steps[key];
    const row = from.closest('tr');
    if (!step || !row) return false;
    if (far && (key === 'Home' || key === 'End')) {
      const all = cellsIn(node);
      go(key === 'Home' ? all[0] : all.at(-1));
    } else if (step.lines !== 0) {
      upOrDown(from, row, step.lines);
    } else {
      // Left and right read on through a sentence; Home and End are of the line.
      const elements = Number.isFinite(step.sizes)
        ? cellsIn(row)
        : (adjacentLine(from, row, 0) ?? cellsIn(row));
      const at = elements.indexOf(from) + step.sizes;
      go(elements[Math.min(Math.max(at, 0), elements.length - 1)]);
    }
    return true;
  }

  function choose(from: HTMLElement, key: string, far: boolean): boolean {
    if (key === ' ') {
      choosing.wholeLine(from);
      return true;
    }
    const step = steps[key];
    if (!step) return false;
    const whole = far && (key === 'Home' || key === 'End') ? { lines: step.sizes, sizes: step.sizes } : step;
    go(choosing.extend(from, whole), 'choosing');
    return true;
  }

  /** What is chosen, or else the place in focus. */
  function blockHere(): Block | undefined {
    const at = document.activeElement;
    if (!node.contains(at) || !isValueCell(at)) return undefined;
    return choosing.block() ?? blockAt(workspace, cornerOf(at));
  }

  function work(key: string, far: boolean): boolean {
    const block = blockHere();
    if (!block) return false;
    if (!far && (key === 'Delete' || key === 'Backspace')) empty(workspace, block);
    else if (!far && key === '>') fillAlong(workspace, block);
    else return false;
    return true;
  }

  function handled(at: HTMLElement, event: KeyboardEvent): boolean {
    const far = event.ctrlKey || event.metaKey;
    const { key } = event;
    if (key === 'Escape') {
      const chosen = choosing.block() !== undefined;
      choosing.clear();
      return chosen;
    }
    // A key that Shift is held for to type it is that key: '>' on most keyboards.
    if (event.shiftKey && key !== '>') return isValueCell(at) && choose(at, key, far);
    return move(at, key, far) || work(key, far);
  }

  /** The keys of a cell's label: with Alt, the arrows move the cell; Delete deletes it. */
  function handledOnLabel({ dataset }: HTMLElement, { altKey, key }: KeyboardEvent): boolean {
    const { cell } = dataset;
    if (cell === undefined || dataset['key'] !== '') return false;
    if (altKey && key === 'ArrowUp') moveCell(workspace, cell, -1);
    else if (altKey && key === 'ArrowDown') moveCell(workspace, cell, 1);
    else if (key === 'Delete') askToDelete(workspace, cell);
    else return false;
    return true;
  }

  function onKey(event: KeyboardEvent): void {
    const at = event.target as HTMLElement;
    if (!at.matches(valueCell)) return;
    if (handledOnLabel(at, event)) {
      event.preventDefault();
      return;
    }
    if (event.altKey || event.defaultPrevented) return;
    if (handled(at, event)) event.preventDefault();
  }

  function onFocus(event: FocusEvent): void {
    const at = (event.target as HTMLElement).closest<HTMLElement>(valueCell);
    if (!at) return;
    tabStop.settle(at);
    if (travelling !== 'down the column') column = null;
    if (travelling !== 'choosing') choosing.clear();
  }

  function onPress(event: MouseEvent): void {
    const to = (event.target as Element).closest(valueCell);
    const from = document.activeElement;
    if (!event.shiftKey || !isValueCell(to) || !isValueCell(from) || !node.contains(from)) return;
    event.preventDefault();
    go(choosing.extendTo(from, to), 'choosing');
  }

  /** Text that was marked with the pointer is copied as everywhere. */
  const textIsMarked = (): boolean =>
    choosing.block() === undefined && (document.getSelection()?.toString() ?? '') !== '';

  function onCopy(event: ClipboardEvent): void {
    const block = textIsMarked() ? undefined : blockHere();
    if (!block || !event.clipboardData) return;
    event.preventDefault();
    if (event.type === 'cut') cut(workspace, block, event.clipboardData);
    else copy(workspace, block, event.clipboardData);
  }

  function onPaste(event: ClipboardEvent): void {
    const at = document.activeElement;
    const block = blockHere();
    const first = block?.lines[0];
    const text = event.clipboardData?.getData('text/plain') ?? '';
    if (!block || !first || !isValueCell(at)) return;
    event.preventDefault();
    const { size } = cornerOf(at);
    const chosen = choosing.block() !== undefined;
    void paste(
      workspace,
      { cell: first.cell.id, key: first.line.key, size: chosen ? block.sizes[0]!.id : size },
      text,
    );
  }

  const redrawn = new MutationObserver((records) => {
    tabStop.keep(records);
    choosing.mark();
  });
  redrawn.observe(node, { childList: true, subtree: true });

  node.addEventListener('keydown', onKey);
  node.addEventListener('focusin', onFocus);
  node.addEventListener('mousedown', onPress);
  // Without marked text, browsers send these to the page rather than to the place in focus.
  document.addEventListener('copy', onCopy);
  document.addEventListener('cut', onCopy);
  document.addEventListener('paste', onPaste);
  return {
    drop(cell, neighbour, after) {
      dropCell(workspace, cell, neighbour, after);
    },
    destroy() {
      redrawn.disconnect();
      taps.destroy();
      node.removeEventListener('keydown', onKey);
      node.removeEventListener('focusin', onFocus);
      node.removeEventListener('mousedown', onPress);
      document.removeEventListener('copy', onCopy);
      document.removeEventListener('cut', onCopy);
      document.removeEventListener('paste', onPaste);
    },
  };
}
