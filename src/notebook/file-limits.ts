import { mostCells, mostSizes } from './edits';
import { mostValues } from './limits';

/** Levels of lists and objects in one another; a notebook has ten. */
const deepest = 24;
/** Entries of one list or object; a notebook's longest is the list of the cells of a section. */
const mostEntries = mostCells;

const [quote, backslash] = ['"'.charCodeAt(0), '\\'.charCodeAt(0)];
const opens = new Set([...'[{'].map((bracket) => bracket.charCodeAt(0)));
const closes = new Set([...']}'].map((bracket) => bracket.charCodeAt(0)));

/**
 * Whether a text in JSON has lists and objects in one another deeper than a notebook. It is looked at once, before it is
 * read: what reads it may go as deep as the text does.
 *
 * @example tooDeep('['.repeat(25)) // true
 */
export function tooDeep(text: string): boolean {
  let depth = 0;
  let inString = false;
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code === quote) inString = !inString;
    else if (inString) at += code === backslash ? 1 : 0;
    else if (opens.has(code) && ++depth > deepest) return true;
    else if (closes.has(code)) depth--;
  }
  return false;
}

/**
 * Looks over what was read from a file before any of it is taken for a notebook: whether it is too deep, too wide or too
 * much to be one. Costs no more than reading the file did.
 *
 * @returns what is too much, as a part of a sentence; undefined where nothing is
 */
export function tooMuch(data: unknown): string | undefined {
  let level: unknown[] = [data];
  for (let depth = 0; level.length > 0; depth++) {
    if (depth > deepest) return 'more levels than a notebook has';
    const next: unknown[] = [];
    for (const one of level) {
      if (typeof one !== 'object' || one === null) continue;
      const entries = Array.isArray(one) ? one : Object.values(one);
      if (entries.length > mostEntries) return `a list of more than ${mostEntries} entries`;
      for (const entry of entries) {
        if (typeof entry === 'object' && entry !== null) next.push(entry);
      }
    }
    level = next;
  }
  return tooManyCells(data);
}

/** Counts cells and sizes where a notebook would have them, whatever else may be wrong with it. */
function tooManyCells(data: unknown): string | undefined {
  const notebook = (data as { notebook?: { sizes?: unknown; sections?: unknown } } | null)?.notebook;
  const sizes = Array.isArray(notebook?.sizes) ? notebook.sizes.length : 0;
  const sections: unknown[] = Array.isArray(notebook?.sections) ? notebook.sections : [];
  let cells = 0;
  for (const section of sections) {
    const own = (section as { cells?: unknown } | null)?.cells;
    if (Array.isArray(own)) cells += own.length;
  }
  if (cells > mostCells) return `more than ${mostCells} cells`;
  if (sizes > mostSizes) return `more than ${mostSizes} sizes`;
  if (cells * sizes > mostValues) return `${cells} cells in ${sizes} sizes, more than a page can show`;
  return undefined;
}
