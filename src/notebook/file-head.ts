import type { Notebook } from './document';

/** What a saved notebook says of itself. `version` goes up whenever an older reader could misread a file. */
export const fileFormat = 'easewright notebook';
export const fileVersion = 2;

/**
 * The version that a file's text says it is of, read from its first lines; undefined where they say none.
 *
 * @example fileVersionOf('{"format":"easewright notebook","version":1,"notebook":{}}') // 1
 */
export function fileVersionOf(text: string): number | undefined {
  const found = /"version"\s*:\s*(\d+)/u.exec(text.slice(0, 200));
  return found ? Number(found[1]) : undefined;
}

/** The text of a file that keeps the notebook. */
export function writeFile(notebook: Notebook): string {
  return JSON.stringify({ format: fileFormat, version: fileVersion, notebook }, null, 1);
}
