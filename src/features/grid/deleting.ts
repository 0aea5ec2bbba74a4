import { dependenciesOf } from '../../notebook';
import type { Workspace } from '../../workspace';

/** Deletes a cell that nothing uses; where something does, it is asked first, on the cell's actions. */
export function askToDelete(workspace: Workspace, cell: string): void {
  if ((dependenciesOf(workspace.notebook).dependents.get(cell)?.size ?? 0) === 0) {
    deleteCell(workspace, cell);
    return;
  }
  workspace.view.expand(cell);
  workspace.selection.pendingDeletion = cell;
}

export function deleteCell(workspace: Workspace, cell: string): void {
  const label = workspace.cell(cell)?.label;
  workspace.selection.pendingDeletion = null;
  if (workspace.do({ do: 'remove cell', cell }) === undefined)
    workspace.announcement = `Deleted ${label}. Undo brings it back.`;
}
