import { nameFrom } from '../notebook';
import type { Workspace } from '../workspace';

/** Hands something to the person as a file. */
export function saveAsFile(what: Blob, name: string): void {
  const url = URL.createObjectURL(what);
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}

/** Hands a text to the person as a file. */
export function saveText(text: string, name: string, type: string): void {
  saveAsFile(new Blob([text], { type }), name);
}

/** The open notebook as a file. */
export function fileOf(workspace: Workspace): File {
  return new File([workspace.document.file()], `${nameFrom(workspace.notebook.title)}.notebook.json`, {
    type: 'application/json',
  });
}

/** Hands the open notebook to the person as a file. */
export function saveNotebook(workspace: Workspace): void {
  const file = fileOf(workspace);
  saveAsFile(file, file.name);
  workspace.announcement = `Saved as ${file.name}.`;
}
