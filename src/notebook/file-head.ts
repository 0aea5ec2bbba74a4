import type { Notebook } from './document';

/** What a saved notebook says of itself. `version` goes up whenever an older reader could misread a file. */
export const fileFormat = 'easewright notebook';
export const fileVersion = 2;

/** The text of a file that keeps the notebook. */
export function writeFile(notebook: Notebook): string {
  return JSON.stringify({ format: fileFormat, version: fileVersion, notebook }, null, 1);
}
