import { fetched, type Workspace } from '../../workspace';

/** Opens a notebook from a file that a person picked or dropped, unless they open another notebook first. */
export async function openFile(workspace: Workspace, file: File): Promise<void> {
  const start = workspace.document.open;
  const part = await fetched(() => import('./picked-file')).catch(() => undefined);
  if (part) await part.openPicked(workspace, file, start);
  else
    workspace.complaint = `${file.name} was not opened: the part of the page that opens files did not load. Is there a network? Pick it again.`;
}
