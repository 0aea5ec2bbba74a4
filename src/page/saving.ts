import { nameFrom } from '../notebook';
import type { Desk } from './desk.svelte';

/** Hands a text to the person as a file. */
export function saveText(text: string, name: string, type: string): void {
  const url = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}

/** Hands the notebook on the desk to the person as a file. */
export function saveNotebook(desk: Desk): void {
  const name = `${nameFrom(desk.notebook.title)}.notebook.json`;
  saveText(desk.file(), name, 'application/json');
  desk.said = `Saved as ${name}.`;
}
