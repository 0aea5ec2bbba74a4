import type { Notebook } from '../../notebook';
import type { Workspace } from '../../workspace';
import { goTo } from '../../ui';

/** Where a cell stands: its section, and how many cells are before it there. */
export function cellPosition(notebook: Notebook, id: string): { section: string; at: number } | undefined {
  for (const section of notebook.sections) {
    const at = section.cells.findIndex((cell) => cell.id === id);
    if (at >= 0) return { section: section.id, at };
  }
  return undefined;
}

/** Moves a cell one place up or down; past the end of its section it goes on into the next. */
export function moveCell(workspace: Workspace, id: string, by: 1 | -1): void {
  const position = cellPosition(workspace.notebook, id);
  if (!position) return;
  const { sections } = workspace.notebook;
  const index = sections.findIndex((section) => section.id === position.section);
  const here = sections[index]!;
  const at = position.at + by;
  if (at >= 0 && at < here.cells.length) {
    workspace.do({ do: 'move cell', cell: id, section: here.id, at });
  } else {
    const next = sections[index + by];
    if (!next) return;
    workspace.do({ do: 'move cell', cell: id, section: next.id, at: by === 1 ? 0 : next.cells.length });
  }
  workspace.announcement = `${workspace.cell(id)?.label ?? 'The cell'} moved ${by === 1 ? 'down' : 'up'}.`;
  queueMicrotask(() => goTo(workspace, { cell: id, key: '' }));
}

/** Puts a dragged cell before or after another. */
export function dropCell(workspace: Workspace, id: string, neighbour: string, after: boolean): void {
  if (id === neighbour) return;
  const from = cellPosition(workspace.notebook, id);
  const to = cellPosition(workspace.notebook, neighbour);
  if (!from || !to) return;
  const shift = from.section === to.section && from.at < to.at ? -1 : 0;
  workspace.do({ do: 'move cell', cell: id, section: to.section, at: to.at + shift + (after ? 1 : 0) });
}
