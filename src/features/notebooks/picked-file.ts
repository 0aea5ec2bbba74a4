import { largestFile, readFile } from '../../notebook';
import type { OpenNotebook, Workspace } from '../../workspace';

let newest: File | undefined;

/**
 * Opens a notebook from a file that a person picked or dropped. The notebook that was open stays saved, and stays open
 * where the file is refused; a complaint says why.
 *
 * @param start which notebook was open when the file was picked: instead of another one it is not opened
 */
export async function openPicked(workspace: Workspace, file: File, start: OpenNotebook): Promise<void> {
  const { document, complaints } = workspace;
  if (file.size > largestFile) {
    complaints.add(
      `${file.name}: this file is larger than any notebook (${Math.round(file.size / 1e6)} MB), so it was not opened.`,
    );
    return;
  }
  newest = file;
  const text = await file.text();
  // Of several files the one picked last is wanted.
  if (file !== newest) return;
  if (!document.isStillOpen(start)) {
    workspace.complaint = `${file.name} was not opened, since you opened another notebook meanwhile. Pick it again.`;
    return;
  }
  const read = readFile(text);
  if ('problem' in read) {
    complaints.add(`${file.name}: ${read.problem}`);
    return;
  }
  if (document.begin(read.notebook)) workspace.announcement = `Opened ${file.name}.`;
}
