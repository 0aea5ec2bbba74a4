import type { Workspace } from '../workspace';
import { loadPickedFile } from '../workspace/lazy';

/** Opens a notebook from a file that a person picked or dropped, unless they open another notebook first. */
export async function openFile(workspace: Workspace, file: File): Promise<void> {
  const { open } = workspace.document;
  const { openPicked } = await loadPickedFile();
  await openPicked(workspace, file, open);
}
