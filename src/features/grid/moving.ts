import type { Notebook } from '../../notebook';
import type { Desk } from '../../workspace/workspace.svelte';
import { goTo } from '../../ui/focus';

/** Where a cell stands: its section, and how many cells are before it there. */
export function cellPlace(notebook: Notebook, id: string): { section: string; at: number } | undefined {
  for (const section of notebook.sections) {
    const at = section.cells.findIndex((cell) => cell.id === id);
    if (at >= 0) return { section: section.id, at };
  }
  return undefined;
}

/** Moves a cell one place up or down; past the end of its section it goes on into the next. */
export function moveCell(desk: Desk, id: string, by: 1 | -1): void {
  const place = cellPlace(desk.notebook, id);
  if (!place) return;
  const { sections } = desk.notebook;
  const index = sections.findIndex((section) => section.id === place.section);
  const here = sections[index]!;
  const at = place.at + by;
  if (at >= 0 && at < here.cells.length) {
    desk.do({ do: 'move cell', cell: id, section: here.id, at });
  } else {
    const next = sections[index + by];
    if (!next) return;
    desk.do({ do: 'move cell', cell: id, section: next.id, at: by === 1 ? 0 : next.cells.length });
  }
  desk.said = `${desk.cell(id)?.label ?? 'The cell'} moved ${by === 1 ? 'down' : 'up'}.`;
  queueMicrotask(() => goTo(desk, { cell: id, key: '' }));
}

/** Puts a dragged cell before or after another. */
export function dropCell(desk: Desk, id: string, beside: string, after: boolean): void {
  if (id === beside) return;
  const from = cellPlace(desk.notebook, id);
  const to = cellPlace(desk.notebook, beside);
  if (!from || !to) return;
  const shift = from.section === to.section && from.at < to.at ? -1 : 0;
  desk.do({ do: 'move cell', cell: id, section: to.section, at: to.at + shift + (after ? 1 : 0) });
}
